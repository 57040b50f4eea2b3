/** Every place where a deck names something by its id, so that one rule for each kind can look it up. */
import { type Deck, OTHER_FEEDS } from '../../core/unit/deck.ts';
import type { Path, Spot } from '../finding.ts';
import { rowsOf } from './rows.ts';
import { everyStep } from './steps.ts';

export interface Reference {
  readonly at: Path;
  readonly id: string;
}

const listed = (at: Path, ids: readonly string[] | undefined): Reference[] =>
  (ids ?? []).map((id, index) => ({ at: [...at, index], id }));

const single = (at: Path, id: string | undefined): Reference[] => (id === undefined ? [] : [{ at, id }]);

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
    ...(deck.interlocks ?? []).flatMap((interlock, index) => [
      ...listed(['interlocks', index, 'whenApplied'], interlock.whenApplied),
      ...listed(['interlocks', index, 'blocks'], interlock.blocks),
    ]),
    ...(deck.stacks ?? []).flatMap(({ element }, index) => single(['stacks', index, 'element'], element)),
  ];
}

export function rowReferences(deck: Deck): Reference[] {
  return (deck.lever?.positions ?? []).flatMap((position, index) =>
    listed(['lever', 'positions', index, 'rows'], position.rows),
  );
}

/** References by kind and id, cautions apart. */
export function pointers(deck: Deck): Reference[] {
  const connectors = deck.electrical?.connectors ?? [];
  return [
    ...(deck.shaftLine ?? []).flatMap(({ belongsTo }, index) =>
      listed(['shaftLine', index, 'belongsTo'], belongsTo),
    ),
    ...connectors.flatMap(({ pins }, c) =>
      pins
        .map(({ serves: id }, index) => ({
          at: ['electrical', 'connectors', c, 'pins', index, 'serves'],
          id,
        }))
        .filter(({ id }) => id.includes(':')),
    ),
    ...(deck.codes ?? []).flatMap(({ watches }, index) => listed(['codes', index, 'watches'], watches)),
    ...(deck.aliases ?? []).map(({ of: id }, index) => ({ at: ['aliases', index, 'of'], id })),
  ];
}

/** Records that other records name by a bare id. */
export const NAMED_KINDS = [
  'stack',
  'plate',
  'seat',
  'part',
  'solenoid',
  'sensor',
  'supply',
  'torque',
  'fit',
] as const;

export interface RecordReference extends Reference {
  readonly kind: (typeof NAMED_KINDS)[number];
  /** Ids that would do. */
  readonly known: readonly string[];
}

/** Every bare id that names a record of another list: element, row, shaft, step and source apart. */
export function recordReferences(deck: Deck): RecordReference[] {
  const { windings = [], pickups = [], supplies } = deck.electrical ?? {};
  const idsOf = (records: readonly { readonly id: string }[] = []) => records.map(({ id }) => id);
  const to =
    (kind: RecordReference['kind'], known: readonly string[]) =>
    (at: Path, id: string | undefined): RecordReference[] =>
      id === undefined ? [] : [{ at, id, kind, known }];
  const [toStack, toSeat, toFit] = [
    to('stack', idsOf(deck.stacks)),
    to('seat', idsOf(deck.seats)),
    to('fit', idsOf(deck.fits)),
  ];
  const [toSolenoid, toSensor, toSupply, toTorque] = [
    to('solenoid', idsOf(deck.solenoids)),
    to('sensor', idsOf(deck.sensors)),
    to('supply', idsOf(supplies)),
    to('torque', idsOf(deck.torques)),
  ];
  return [
    ...(deck.fits ?? []).flatMap((fit, index) => {
      const at = ['fits', index];
      const stack = deck.stacks?.find(({ id }) => id === fit.stack);
      const toPart = to('part', idsOf(fit.parts));
      return [
        ...toStack([...at, 'stack'], fit.stack),
        ...(stack ? to('plate', idsOf(stack.items))([...at, 'item'], fit.item) : []),
        ...toSeat([...at, 'seat'], fit.seat),
        ...(fit.readings ?? []).flatMap(({ fitted, chosen }, entry) => [
          ...toPart([...at, 'readings', entry, 'fitted'], fitted),
          ...toPart([...at, 'readings', entry, 'chosen'], chosen),
        ]),
      ];
    }),
    ...everyStep(deck).flatMap(({ at, step }) => toTorque([...at, 'tightens'], step.tightens)),
    ...(deck.sequences ?? []).flatMap(({ checks }, s) =>
      (checks ?? []).flatMap(({ fit }, index) => toFit(['sequences', s, 'checks', index, 'fit'], fit)),
    ),
    ...(deck.valveBody?.solenoids ?? []).flatMap(({ solenoid }, index) =>
      toSolenoid(['valveBody', 'solenoids', index, 'solenoid'], solenoid),
    ),
    ...windings.flatMap(({ solenoid, supply }, index) => [
      ...toSolenoid(['electrical', 'windings', index, 'solenoid'], solenoid),
      ...toSupply(['electrical', 'windings', index, 'supply'], supply),
    ]),
    ...pickups.flatMap(({ sensor, supply }, index) => [
      ...toSensor(['electrical', 'pickups', index, 'sensor'], sensor),
      ...toSupply(['electrical', 'pickups', index, 'supply'], supply),
    ]),
  ];
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
    ...(deck.shaftLine ?? []).flatMap(({ belongsTo }, index) =>
      listed(['shaftLine', index, 'belongsTo'], belongsTo),
    ),
    ...(deck.codes ?? []).flatMap(({ watches }, index) => listed(['codes', index, 'watches'], watches)),
    ...(deck.aliases ?? []).flatMap(({ names }, index) => listed(['aliases', index, 'names'], names)),
    ...everyStep(deck).flatMap(({ at, step }) => [
      ...(step.after ?? []).map(({ step: id }, entry) => ({ at: [...at, 'after', entry], id })),
      ...listed([...at, 'hazards'], step.hazards),
    ]),
    ...(deck.sequences ?? []).flatMap(({ assembly, checks }, s) => [
      ...(assembly?.leftOut ?? []).map(({ step: id }, entry) => ({
        at: ['sequences', s, 'assembly', 'leftOut', entry],
        id,
      })),
      ...(checks ?? []).flatMap(({ needs, closedBy }, index) => [
        ...listed(['sequences', s, 'checks', index, 'needs'], needs),
        ...listed(['sequences', s, 'checks', index, 'closedBy'], closedBy),
      ]),
    ]),
  ];
}

/** A spot for each reference that leads nowhere. */
export function missing(references: readonly Reference[], existing: readonly string[]): Spot[] {
  const known = new Set(existing);
  return references
    .filter(({ id }) => !known.has(id))
    .map(({ at, id }) => ({ at, values: { id, known: [...known], count: known.size } }));
}
