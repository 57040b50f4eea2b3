/** Every single fault that a deck's data can tell of: the space that diagnosis searches. */
import { frictionOf } from '../hydraulics/feeds.ts';
import { type Rational, rational } from '../rational.ts';
import type { Unit } from '../unit/unit.ts';
import type { Fault, FaultKind } from './fault.ts';
import { fullLoadNm, slipPoints } from './slip.ts';

/**
 * The pressure, in whole percent, at which some ranges slip and others do not: halfway between the pressures at
 * which the first and the next range begin to. Null where capacities are missing or all ranges begin together.
 */
export function telltalePercent(unit: Unit): number | null {
  const firstOf = new Map<string, Rational>();
  for (const { range, percent } of slipPoints(unit) ?? [])
    if (!firstOf.has(range)) firstOf.set(range, percent);
  const starts = [...firstOf.values()].sort((a, b) => b.compare(a));
  const [first] = starts;
  const next = starts.find((percent) => percent.lt(first!));
  if (!first || !next) return null;
  const percent = Number(first.add(next).div(2n).floor().n);
  const between = rational(percent).lt(first) && rational(percent).gte(next);
  return between && percent >= 1 && percent <= 99 ? percent : null;
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
  return kinds ? faults.filter(({ kind }) => kinds.includes(kind)) : faults;
}
