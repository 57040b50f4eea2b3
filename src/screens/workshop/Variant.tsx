/**
 * A variant and the deck it was taken from: what is different, marked field by field, and what was corrected there
 * since. Facts that both share are changed once and brought over; what is the variant's own stays.
 */
import { useMemo, useState } from 'react';
import { asVariant } from '../../core/deck-merge/base.ts';
import { differencePhrase, differencesBetween } from '../../core/deck-merge/differences.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Deck } from '../../core/unit/deck.ts';
import { makeUnit } from '../../core/unit/unit.ts';
import type { DeckDraft } from '../../core/workshop/draft.ts';
import { finishDraft } from '../../core/workshop/finish.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import type { SectionProps } from './desk.ts';
import { deckIn, knownRevisions } from './publish.ts';
import { Together } from './Together.tsx';

/** Names of a deck that are the variant's own anyway. */
const OWN = ['id', 'title', 'unit', 'variantOf', 'language'];

export function Variant({ desk }: SectionProps) {
  const services = useServices();
  const { say, settled, check } = desk;
  const { deck: parent = '', revision } = settled.variantOf ?? {};
  const taken = Number(revision);
  const known = useLoaded(() => knownRevisions(services, parent), parent);
  const [bringing, setBringing] = useState(false);
  const mine = useMemo(() => finishDraft(settled) as unknown as Deck, [settled]);
  const decks = useMemo(() => (known?.ok ? known.value.map(({ text }) => deckIn(text)) : []), [known]);
  const newest = decks.reduce<Deck | null>(
    (best, deck) => (best && best.revision >= deck.revision ? best : deck),
    null,
  );
  const base = decks.find((deck) => deck.revision === taken);
  const sides = useMemo(() => {
    if (!newest) return null;
    const mineThen = mine;
    return {
      base: base ? asVariant(base, mineThen) : ({ id: mine.id } as Deck),
      theirs: asVariant(newest, mineThen),
      solved: check.deck
        ? { mine: makeUnit(check.deck), theirs: makeUnit(asVariant(newest, check.deck)) }
        : null,
    };
  }, [newest, base, mine, check.deck]);
  if (!known) return null;
  if (!known.ok) return <TroubleNote trouble={known.error} say={say} />;
  if (!newest || !sides) return <p className="note">{say(phrase('variant.no-parent', { deck: parent }))}</p>;
  const differences = differencesBetween(asVariant(newest, mine), mine).filter(
    ({ path }) => !OWN.includes(path[0]?.field ?? ''),
  );
  const behind = newest.revision > taken;
  return (
    <>
      <p>{say(phrase('variant.of', { title: newest.title, revision: taken, newest: newest.revision }))}</p>
      <p role="status">
        {say(phrase('variant.differs', { count: differences.length, title: newest.title }))}
      </p>
      <ul className="steps">
        {differences.map((difference) => {
          const words = say(differencePhrase(difference));
          return <li key={words}>{words}</li>;
        })}
      </ul>
      {behind && !bringing && (
        <button type="button" className="button" onClick={() => setBringing(true)}>
          {say(phrase('variant.bring', { title: newest.title, revision: newest.revision }))}
        </button>
      )}
      {behind && bringing && check.missing.length === 0 && (
        <Together
          base={sides.base}
          mine={mine}
          theirs={sides.theirs}
          solved={sides.solved}
          other={phrase('text', { text: newest.title })}
          say={say}
          onTake={(merged) => {
            desk.replace({
              ...merged,
              revision: settled.revision,
              variantOf: { deck: parent, revision: newest.revision },
            } as DeckDraft);
            setBringing(false);
          }}
        />
      )}
    </>
  );
}
