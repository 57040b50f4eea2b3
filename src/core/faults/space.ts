/** Every single fault that a deck's data can tell of: the space that diagnosis searches. Nothing unverified. */
import { frictionOf } from '../hydraulics/feeds.ts';
import { type Rational, rational } from '../rational.ts';
import type { Ref, Unit } from '../unit/unit.ts';
import type { Fault, FaultKind } from './fault.ts';
import { suppliedBy } from './pressure.ts';
import { fullLoadNm, slipPoints } from './slip.ts';

/**
 * The pressure, in whole percent, at which some ranges slip and others do not: between the pressures at which the
 * first range begins to and the next does, halfway; where no whole percent lies between, then below the next.
 * Null where capacities are missing or all ranges begin together.
 */
export function telltalePercent(unit: Unit): number | null {
  const firstOf = new Map<string, Rational>();
  for (const { range, percent } of slipPoints(unit) ?? [])
    if (!firstOf.has(range)) firstOf.set(range, percent);
  const starts = [...firstOf.values()].sort((a, b) => b.compare(a));
  for (const [index, start] of starts.entries()) {
    const next = starts[index + 1];
    if (!next) return null;
    const percent = Number(start.add(next).div(2n).floor().n);
    const between = rational(percent).lt(start) && rational(percent).gte(next);
    if (between && percent >= 1 && percent <= 99) return percent;
  }
  return null;
}

/** What a fault is told by, beside the train: it is left out when one of these is not verified. */
export function faultRefs({ deck }: Unit, fault: Fault): Ref[] {
  const all = (solenoids: readonly { readonly id: string }[]) =>
    solenoids.map(({ id }): Ref => `solenoid:${id}`);
  switch (fault.kind) {
    case 'gearset-stripped':
      return [`gearset:${fault.gearset}`];
    case 'solenoid-stuck-off':
    case 'solenoid-stuck-on':
    case 'solenoid-unplugged':
      return [`solenoid:${fault.solenoid}`];
    case 'supply-lost': {
      const supplied = suppliedBy(deck, fault.supply);
      const windings = supplied.map(({ id }): Ref => `winding:${id}`);
      return [`supply:${fault.supply}`, ...windings, ...all(supplied)];
    }
    case 'connector-off':
      return all(deck.solenoids ?? []);
    case 'sensor-lost':
      return [`sensor:${fault.sensor}`];
    case 'friction-short':
    case 'low-pressure':
      return deck.train.elements.flatMap(({ id, capacity }): Ref[] => (capacity ? [`capacity:${id}`] : []));
    default:
      return [`element:${fault.element}`];
  }
}

/** All single faults, or those of some kinds, in a fixed order. */
export function faultSpace(unit: Unit, kinds?: readonly FaultKind[]): Fault[] {
  const { train, solenoids = [], sensors = [], electrical } = unit.deck;
  const friction = frictionOf(unit.deck);
  const percent = telltalePercent(unit);
  const short = train.elements.filter(({ capacity }) => fullLoadNm(unit) !== null && capacity);
  const supplies = (electrical?.supplies ?? []).filter(({ id }) =>
    electrical?.windings?.some((winding) => winding.supply === id),
  );
  const faults: Fault[] = [
    ...train.elements.flatMap(({ id: element, kind }): Fault[] => [
      { kind: 'element-fails', element },
      { kind: 'element-stuck', element },
      ...(kind === 'one-way' ? [{ kind: 'one-way-reversed' as const, element }] : []),
    ]),
    ...friction.map((element): Fault => ({ kind: 'feed-lost', element })),
    ...short.map(({ id: element }): Fault => ({ kind: 'friction-short', element })),
    ...train.gearsets.map(({ id: gearset }): Fault => ({ kind: 'gearset-stripped', gearset })),
    ...solenoids.flatMap(({ id: solenoid }): Fault[] => [
      { kind: 'solenoid-stuck-off', solenoid },
      { kind: 'solenoid-stuck-on', solenoid },
      { kind: 'solenoid-unplugged', solenoid },
    ]),
    ...supplies.map(({ id: supply }): Fault => ({ kind: 'supply-lost', supply })),
    ...(solenoids.length > 0 ? [{ kind: 'connector-off' } as const] : []),
    ...sensors.map(({ id: sensor }): Fault => ({ kind: 'sensor-lost', sensor })),
    ...(percent === null ? [] : [{ kind: 'low-pressure' as const, percent }]),
  ];
  return faults
    .filter(({ kind }) => !kinds || kinds.includes(kind))
    .filter((fault) => faultRefs(unit, fault).every((ref) => unit.sure(ref)));
}
