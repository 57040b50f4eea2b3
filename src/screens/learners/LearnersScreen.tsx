/** Who uses this device: one's own place, and what concerns everybody. */
import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { useServices } from '../services.ts';
import { useLoaded } from '../use-loaded.ts';
import { FoundForm } from './FoundForm.tsx';
import { OwnPlace } from './OwnPlace.tsx';
import { ShopPart } from './ShopPart.tsx';
import { type Sharing, useSharing } from './sharing.ts';
import './learners.css';

function Parts({ sharing }: { sharing: Sharing }) {
  const { sayFor } = useServices();
  const say = sayFor(null);
  const { listing, learner } = sharing;
  const isNew = !listing || (listing.learners.length === 0 && listing.unreadable === 0);
  const registry = useLoaded(() => sharing.registry(), 'registry');
  if (isNew) return <FoundForm sharing={sharing} say={say} />;
  if (!registry) return null;
  return (
    <>
      {learner && <OwnPlace learner={learner} registry={registry} say={say} />}
      <ShopPart listing={listing} registry={registry} here={learner?.id} say={say} />
    </>
  );
}

export function LearnersScreen() {
  const say = useServices().sayFor(null);
  const sharing = useSharing();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <Sheet
      top={
        <>
          <h1 ref={heading} tabIndex={-1}>
            {say(phrase('learners.title'))}
          </h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
    >
      {sharing && <Parts sharing={sharing} />}
    </Sheet>
  );
}
