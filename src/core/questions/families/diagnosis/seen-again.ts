/**
 * What a test shows with a fault in the unit, worked out a second time: ports and brakes straight from the raw
 * deck, the train by `solveBySpeeds`. Only proves answers; none is made with it. Null where it cannot tell.
 */
import type { Observation, Reading, Test } from '../../../diagnosis/test.ts';
import { solveBySpeeds } from '../../../faults/by-speeds.ts';
import { type Fault, faultId } from '../../../faults/fault.ts';
import { type Solution, solveSpeeds } from '../../../gears/solve.ts';
import type { Train } from '../../../gears/train.ts';
import type { Deck, DeckSolenoid } from '../../../unit/deck.ts';
import type { Unit } from '../../../unit/unit.ts';
import type { Answer } from '../../question.ts';

type Driven = Pick<Solution, 'state' | 'ratio'>;

const driven = new WeakMap<Train, Map<string, Driven>>();

function once(train: Train, key: string, solve: () => Driven): Driven {
  const known = driven.get(train) ?? new Map<string, Driven>();
  driven.set(train, known);
  const found = known.get(key) ?? solve();
  known.set(key, found);
  return found;
}

const rawRow = ({ chart }: Deck, id: string) =>
  chart.ranges.find((row) => row.id === id) ?? chart.neutral?.find((row) => row.id === id);

/** Whether the solenoid has current whatever is asked of it: true, false, or null where it does as asked. */
function current({ electrical }: Deck, fault: Fault, { id }: DeckSolenoid): boolean | null {
  switch (fault.kind) {
    case 'connector-off':
      return false;
    case 'supply-lost':
      return electrical?.windings?.some(({ solenoid, supply }) => solenoid === id && supply === fault.supply)
        ? false
        : null;
    case 'solenoid-unplugged':
    case 'solenoid-stuck-off':
      return fault.solenoid === id ? false : null;
    case 'solenoid-stuck-on':
      return fault.solenoid === id ? true : null;
    default:
      return null;
  }
}

/** Brakes and clutches with pressure at their port. */
export function portsAgain(
  deck: Deck,
  fault: Fault,
  rowId: string,
  position: string | null,
): string[] | null {
  const row = rawRow(deck, rowId);
  if (!row) return null;
  const lever =
    deck.lever?.valve === 'manual' ? deck.lever.positions.find(({ id }) => id === position) : null;
  let on = deck.train.elements.flatMap(({ id, kind }) =>
    kind !== 'one-way' && row.applied.includes(id) ? [id] : [],
  );
  for (const solenoid of deck.solenoids ?? []) {
    const has = current(deck, fault, solenoid);
    if (has === null) continue;
    const gives = (solenoid.whenUnplugged === 'full') !== has;
    if (solenoid.feeds.includes('line-pressure') && !gives) return null;
    for (const element of solenoid.feeds) {
      if (lever === undefined || lever?.feeds?.includes(element)) continue;
      if (lever && !lever.opens?.includes(element)) continue;
      on = on.filter((id) => id !== element);
      if (gives && deck.train.elements.some(({ id }) => id === element)) on.push(element);
    }
  }
  if (fault.kind === 'feed-lost') on = on.filter((id) => id !== fault.element);
  const acting = () =>
    deck.interlocks?.find(
      ({ whenApplied, blocks }) =>
        whenApplied.every((id) => on.includes(id)) && blocks.some((id) => on.includes(id)),
    );
  for (let lock = acting(); lock; lock = acting()) {
    const { blocks } = lock;
    on = on.filter((id) => !blocks.includes(id));
  }
  return on;
}

function brokenTrain(train: Train, fault: Fault): Train {
  if (fault.kind === 'gearset-stripped')
    return { ...train, gearsets: train.gearsets.filter(({ id }) => id !== fault.gearset) };
  if (!('element' in fault)) return train;
  return {
    ...train,
    elements: train.elements.flatMap((element): Train['elements'] => {
      if (element.id !== fault.element || element.kind !== 'one-way') return [element];
      const [first, second] = element.between;
      if (fault.kind === 'one-way-reversed') return [{ ...element, between: [second, first] }];
      return fault.kind === 'element-stuck' ? [{ ...element, kind: 'clutch' }] : [];
    }),
  };
}

function roadAgain(
  { deck, ranges }: Unit,
  fault: Fault,
  row: string,
  position: string | null,
): Reading | null {
  const ports = portsAgain(deck, fault, row, position);
  if (!ports) return null;
  const part = 'element' in fault ? fault.element : null;
  const on = ports.filter((id) => !(fault.kind === 'element-fails' && id === part));
  if (fault.kind === 'element-stuck' && !on.includes(fault.element)) on.push(fault.element);
  const left = brokenTrain(deck.train, fault);
  const known = left.elements.filter(({ id, kind }) => kind !== 'one-way' && on.includes(id));
  const changed = left === deck.train ? '' : faultId(fault);
  const names = known.map(({ id }) => id);
  const { state, ratio } = once(deck.train, `${changed} ${names.join(' ')}`, () =>
    solveBySpeeds(left, names),
  );
  const charted = (id: string) =>
    once(deck.train, `chart ${id}`, () => solveSpeeds(deck.train, rawRow(deck, id)!.applied)).ratio!;
  const isRange = ranges.some(({ id }) => id === row);
  if (!ratio) {
    if (state !== 'free') return state === 'drives' ? null : state;
    return isRange ? 'no-drive' : 'works';
  }
  if (isRange && charted(row).equals(ratio)) return 'works';
  const equal = ranges.filter(({ id }) => charted(id).equals(ratio));
  const exact = equal.find(({ applied }) => {
    const friction = applied.filter((id) =>
      deck.train.elements.some((element) => element.id === id && element.kind !== 'one-way'),
    );
    return friction.length === names.length && friction.every((id) => names.includes(id));
  });
  const becomes = exact ?? equal[0];
  return becomes ? `range:${becomes.id}` : 'other-ratio';
}

/** Faults that only weaken an element, and tests of codes and sensors, are not covered. */
export function seenAgain(unit: Unit, fault: Fault, test: Test): Reading | null {
  const { deck } = unit;
  if (fault.kind === 'friction-short') return null;
  switch (test.kind) {
    case 'road':
      return fault.kind === 'low-pressure' ? null : roadAgain(unit, fault, test.row, test.position);
    case 'gauge': {
      const ports = portsAgain(deck, fault, test.row, test.position);
      if (!ports) return null;
      if (!ports.includes(test.element)) return 'none';
      return fault.kind === 'low-pressure' ? 'low' : 'full';
    }
    case 'resistance':
      return fault.kind === 'solenoid-unplugged' && fault.solenoid === test.solenoid ? 'open' : 'in-band';
    case 'voltage': {
      const winding = deck.electrical?.windings?.find(({ solenoid }) => solenoid === test.solenoid);
      const cut =
        fault.kind === 'connector-off' || (fault.kind === 'supply-lost' && fault.supply === winding?.supply);
      return cut ? 'no-voltage' : 'voltage';
    }
    default:
      return null;
  }
}

/** Whether the fault shows all of this. */
export const showsAgain = (unit: Unit, fault: Fault, seen: readonly Observation[]): boolean =>
  seen.every(({ test, reading }) => seenAgain(unit, fault, test) === reading);

/** Right is to tick these faults and no others. They are worked out when an answer is first checked. */
export function ticksJust(faults: () => readonly Fault[]): (answer: Answer) => boolean {
  let right: ReadonlySet<string> | undefined;
  return (answer) => {
    right ??= new Set(faults().map(faultId));
    return (
      answer.form === 'set' &&
      answer.picks.length === right.size &&
      answer.picks.every((pick) => right!.has(pick))
    );
  };
}
