import type { DeckElectrical } from '../../core/unit/electrical.ts';
import type { Path, Spot } from '../finding.ts';
import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

type Records = readonly { readonly at: Path; readonly id: string }[];

const placed = (at: Path, records: readonly { readonly id: string }[] = []): Records =>
  records.map(({ id }, index) => ({ at: [...at, index], id }));

function repeated(records: Records, field = 'id'): Spot[] {
  const first = new Map<string, number>();
  return records.flatMap(({ at, id }, index) => {
    const before = first.get(id);
    if (before !== undefined) return [{ at: [...at, field], values: { id, first: before + 1 } }];
    first.set(id, index);
    return [];
  });
}

function electricalIds(electrical: DeckElectrical): Spot[] {
  const { supplies, windings, pickups, thermistors, connectors } = electrical;
  const at = (part: keyof DeckElectrical) => ['electrical', part];
  return [
    ...repeated(placed(at('supplies'), supplies)),
    ...repeated(
      placed(
        at('windings'),
        windings?.map(({ solenoid: id }) => ({ id })),
      ),
      'solenoid',
    ),
    ...repeated(
      placed(
        at('pickups'),
        pickups?.map(({ sensor: id }) => ({ id })),
      ),
      'sensor',
    ),
    ...repeated(placed(at('thermistors'), thermistors)),
    ...repeated(placed(at('connectors'), connectors)),
    ...(connectors ?? []).flatMap(({ pins }, index) =>
      repeated(placed([...at('connectors'), index, 'pins'], pins)),
    ),
  ];
}

/**
 * An id names one thing of its kind. Ranges and neutral rows share theirs, both being rows of one chart; so do
 * parts and seats of the shaft line, and the steps of a sequence and of its assembly.
 */
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
    ...repeated(placed(['interlocks'], deck.interlocks)),
    ...repeated(placed(['sensors'], deck.sensors)),
    ...repeated([...placed(['shaftLine'], deck.shaftLine), ...placed(['seats'], deck.seats)]),
    ...repeated(placed(['stacks'], deck.stacks)),
    ...(deck.stacks ?? []).flatMap(({ items }, index) => repeated(placed(['stacks', index, 'items'], items))),
    ...repeated(placed(['fits'], deck.fits)),
    ...(deck.fits ?? []).flatMap(({ parts, readings }, index) => [
      ...repeated(placed(['fits', index, 'parts'], parts)),
      ...repeated(placed(['fits', index, 'readings'], readings)),
    ]),
    ...repeated(placed(['sequences'], deck.sequences)),
    ...(deck.sequences ?? []).flatMap(({ steps, assembly, checks }, index) => [
      ...repeated([
        ...placed(['sequences', index, 'steps'], steps),
        ...placed(['sequences', index, 'assembly', 'added'], assembly?.added),
      ]),
      ...repeated(placed(['sequences', index, 'checks'], checks)),
    ]),
    ...electricalIds(deck.electrical ?? {}),
    ...(['fluids', 'torques', 'weights', 'codes'] as const).flatMap((part) =>
      repeated(placed([part], deck[part])),
    ),
    ...repeated(placed(['cautions'], deck.cautions)),
  ],
};
