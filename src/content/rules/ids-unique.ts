import type { Path, Spot } from '../finding.ts';
import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

type Records = readonly { readonly at: Path; readonly id: string }[];

const placed = (at: Path, records: readonly { readonly id: string }[] = []): Records =>
  records.map(({ id }, index) => ({ at: [...at, index], id }));

function repeated(records: Records): Spot[] {
  const first = new Map<string, number>();
  return records.flatMap(({ at, id }, index) => {
    const before = first.get(id);
    if (before !== undefined) return [{ at: [...at, 'id'], values: { id, first: before + 1 } }];
    first.set(id, index);
    return [];
  });
}

/** An id names one thing of its kind. Ranges and neutral rows share theirs: both are rows of one chart. */
export const idsUnique: Rule = {
  id: 'ids-unique',
  severity: 'error',
  check: (deck) => [
    ...repeated(placed(['sources'], deck.sources)),
    ...repeated(placed(['train', 'shafts'], deck.train.shafts)),
    ...repeated(placed(['train', 'gearsets'], deck.train.gearsets)),
    ...repeated(placed(['train', 'elements'], deck.train.elements)),
    ...repeated(rowsOf(deck).map(({ at, row }) => ({ at, id: row.id }))),
    ...repeated(placed(['solenoids'], deck.solenoids)),
    ...repeated(placed(['lever', 'positions'], deck.lever?.positions)),
    ...repeated(placed(['sensors'], deck.sensors)),
    ...repeated(placed(['sequences'], deck.sequences)),
    ...(deck.sequences ?? []).flatMap((sequence, index) =>
      repeated(placed(['sequences', index, 'steps'], sequence.steps)),
    ),
    ...repeated(placed(['cautions'], deck.cautions)),
  ],
};
