/** What comes in from others: a link that was opened, a file, a picture, the camera. */
import { useState } from 'react';
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Received } from '../../exchange/message.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { RestoreOffer } from '../device/RestoreOffer.tsx';
import { Receive } from '../handing/Receive.tsx';
import { useServices } from '../services.ts';
import { AssignmentOffer } from './AssignmentOffer.tsx';
import { ReportTaken } from './ReportTaken.tsx';

interface Props {
  /** What stands behind "#/take/" in the address. */
  readonly word: string | undefined;
  /** Called when decks, settings or assignments have changed. */
  readonly onChange: () => void;
}

export function TakeScreen({ word, onChange }: Props) {
  const say = useServices().sayFor(null);
  const [received, setReceived] = useState<Received | null>(null);
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('take.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
    >
      {received?.kind === 'assignment' && <AssignmentOffer received={received} onChange={onChange} />}
      {received?.kind === 'report' && <ReportTaken key={received.text} received={received} />}
      {received?.kind === 'backup' && (
        <RestoreOffer key={received.madeAt} received={received} onChange={onChange} />
      )}
      {received?.kind === 'deck' && (
        <section className="note" role="status">
          <p>{say(phrase('take.deck'))}</p>
          <Link href="/decks" className="button">
            {say(phrase('take.decks'))}
          </Link>
        </section>
      )}
      <Receive say={say} how={phrase('take.how')} word={word} onReceived={setReceived} />
    </Sheet>
  );
}
