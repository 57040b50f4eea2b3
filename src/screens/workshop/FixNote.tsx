/** Above the desk while something is put right: what was flagged, which records it rests on, and what comes next. */
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import { REF_KINDS, type RefKind } from '../../core/unit/refs.ts';
import { placeOf } from '../../core/workshop/place-of.ts';
import { useServices } from '../services.ts';
import { useLoaded } from '../use-loaded.ts';
import type { Desk } from './desk.ts';
import { refsAbout } from './FixScreen.tsx';
import { type SectionId, sectionOf } from './sections.ts';

/** Kinds that the checks never name. */
const KIND_WORDS: Readonly<Partial<Record<RefKind, string>>> = {
  cell: 'fix.cell',
  capacity: 'fix.capacity',
  'valve-body': 'fix.valve-body',
};

interface Props {
  readonly desk: Desk;
  readonly draftId: string;
  readonly section: SectionId;
  readonly about: string;
}

export function FixNote({ desk, draftId, section, about }: Props) {
  const services = useServices();
  const { say, draft } = desk;
  const id = draft.id ?? '';
  const loaded = useLoaded(async () => {
    const decks = await services.store.decks();
    const stored = decks.ok ? decks.value.find((deck) => deck.id === id) : undefined;
    return stored ? refsAbout(services, stored.text, about) : null;
  }, `${id} ${about}`);
  if (!loaded?.ok) return null;
  const { note, refs } = loaded.value;
  const to = (one: SectionId, ref?: string) =>
    `/workshop/${draftId}/${one}/${encodeURIComponent(about)}${ref ? `/${encodeURIComponent(ref)}` : ''}`;
  return (
    <section className="note">
      <p>
        <strong>{say(note === null ? phrase('fix.looked-up') : phrase('fix.flagged', { note }))}</strong>
      </p>
      <ul className="attached">
        {refs.slice(0, 6).map((ref) => {
          const place = placeOf(draft, ref);
          const own = place && sectionOf(`/${place.join('/')}`);
          const kind = REF_KINDS.find((known) => ref.startsWith(`${known}:`));
          if (!kind) return null;
          const what = say(
            phrase('place.record', {
              what: phrase(KIND_WORDS[kind] ?? `place.${kind}`),
              id: ref.slice(kind.length + 1),
            }),
          );
          return <li key={ref}>{own && own !== section ? <Link href={to(own, ref)}>{what}</Link> : what}</li>;
        })}
      </ul>
      <p>
        {say(phrase('fix.then'))} <Link href={to('publish')}>{say(phrase('workshop.section.publish'))}</Link>
      </p>
    </section>
  );
}
