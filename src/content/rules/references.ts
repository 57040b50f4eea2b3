/** Every place where a deck names something by its id, so that one rule for each kind can look it up. */
import { type Deck, OTHER_FEEDS } from '../../core/unit/deck.ts';
import type { Path, Spot } from '../finding.ts';
import { rowsOf } from './rows.ts';

export interface Reference {
  readonly at: Path;
  readonly id: string;
}

const listed = (at: Path, ids: readonly string[] | undefined): Reference[] =>
  (ids ?? []).map((id, index) => ({ at: [...at, index], id }));

/** Lists in which an element is named. A solenoid may also feed what is no element. */
export function elementReferences(deck: Deck): Reference[] {
  const other: readonly string[] = OTHER_FEEDS;
  return [
    ...rowsOf(deck).flatMap(({ at, row }) => [
      ...listed([...at, 'applied'], row.applied),
      ...listed([...at, 'unsureCells'], row.unsureCells),
    ]),
    ...(deck.solenoids ?? [])
      .flatMap((solenoid, index) => listed(['solenoids', index, 'feeds'], solenoid.feeds))
      .filter(({ id }) => !other.includes(id)),
    ...(deck.lever?.positions ?? []).flatMap((position, index) => [
      ...listed(['lever', 'positions', index, 'opens'], position.opens),
      ...listed(['lever', 'positions', index, 'feeds'], position.feeds),
    ]),
  ];
}

export function rowReferences(deck: Deck): Reference[] {
  return (deck.lever?.positions ?? []).flatMap((position, index) =>
    listed(['lever', 'positions', index, 'rows'], position.rows),
  );
}

/** Every list of ids in the deck. */
export function idLists(deck: Deck): Reference[] {
  return [
    ...elementReferences(deck),
    ...(deck.solenoids ?? [])
      .flatMap((solenoid, index) => listed(['solenoids', index, 'feeds'], solenoid.feeds))
      .filter(({ id }) => (OTHER_FEEDS as readonly string[]).includes(id)),
    ...rowReferences(deck),
    ...(deck.cautions ?? []).flatMap((caution, index) =>
      listed(['cautions', index, 'attachedTo'], caution.attachedTo),
    ),
    ...(deck.sequences ?? []).flatMap((sequence, s) =>
      sequence.steps.flatMap((step, index) =>
        (step.after ?? []).map(({ step: id }, entry) => ({
          at: ['sequences', s, 'steps', index, 'after', entry],
          id,
        })),
      ),
    ),
  ];
}

/** A spot for each reference that leads nowhere. */
export function missing(references: readonly Reference[], existing: readonly string[]): Spot[] {
  const known = new Set(existing);
  return references
    .filter(({ id }) => !known.has(id))
    .map(({ at, id }) => ({ at, values: { id, known: [...known], count: known.size } }));
}
