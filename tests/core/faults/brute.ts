/**
 * What a row does with a fault, worked out again from the plain deck and apart from src/core/faults: valves and
 * currents spelled out one by one, speeds in floating point by rank (one-ways as inequalities), torque by virtual
 * work, capacity in plain numbers.
 */
import type { Fault } from '../../../src/core/faults/fault.ts';
import { CASE, type Train } from '../../../src/core/gears/train.ts';
import type { Deck, DeckElement } from '../../../src/core/unit/deck.ts';
import { solveInFloats } from '../gears/float-solver.ts';
import { outputRange } from '../gears/output-range.ts';

/** "works", "no-drive", "output-held", "tied-up", "slips B1 C1", "unsettled", or the ratio it drives at. */
export type Told = string | number;

/** Currents that command the row on a sound unit with one solenoid for each element, then pressure after the fault. */
function elementsOn(
  deck: Deck,
  fault: Fault | null,
  applied: readonly string[],
  position: string,
): Set<string> {
  const valve = deck.lever!.positions.find(({ id }) => id === position)!;
  const on = new Set<string>();
  for (const { id: element, kind } of deck.train.elements) {
    if (kind === 'one-way') continue;
    const solenoid = deck.solenoids!.find(({ feeds }) => feeds.includes(element))!;
    const commanded = applied.includes(element) === (solenoid.whenUnplugged === 'none');
    let current = commanded;
    if (fault?.kind === 'connector-off') current = false;
    if (fault?.kind === 'solenoid-unplugged' && fault.solenoid === solenoid.id) current = false;
    if (fault?.kind === 'solenoid-stuck-off' && fault.solenoid === solenoid.id) current = false;
    if (fault?.kind === 'solenoid-stuck-on' && fault.solenoid === solenoid.id) current = true;
    if (fault?.kind === 'supply-lost') {
      const winding = deck.electrical!.windings!.find((candidate) => candidate.solenoid === solenoid.id)!;
      if (winding.supply === fault.supply) current = false;
    }
    let pressure = current === (solenoid.whenUnplugged === 'none');
    if (!valve.opens!.includes(element)) pressure = false;
    if (fault?.kind === 'feed-lost' && fault.element === element) pressure = false;
    if (fault?.kind === 'element-fails' && fault.element === element) pressure = false;
    if (fault?.kind === 'element-stuck' && fault.element === element) pressure = true;
    if (pressure) on.add(element);
  }
  return on;
}

function broken(train: Train, fault: Fault | null): Train {
  const elements = train.elements.flatMap((element): Train['elements'] => {
    if (element.kind !== 'one-way' || !fault || !('element' in fault) || fault.element !== element.id)
      return [element];
    if (fault.kind === 'element-fails') return [];
    if (fault.kind === 'element-stuck') return [{ id: element.id, kind: 'brake', between: element.between }];
    const [first, second] = element.between;
    return [{ ...element, between: [second, first] }];
  });
  const gearsets = train.gearsets.filter(
    ({ id }) => !(fault?.kind === 'gearset-stripped' && fault.gearset === id),
  );
  return { ...train, elements, gearsets };
}

/** State by rank where no one-way is in play, by inequalities where one is. */
function drive(train: Train, on: readonly string[]): Told {
  const plain = solveInFloats(train, on);
  const byRank = (): Told =>
    plain.state === 'drives'
      ? 1 / plain.speeds.get(train.output)!
      : plain.state === 'free'
        ? 'no-drive'
        : plain.state;
  if (!train.elements.some(({ kind }) => kind === 'one-way')) return byRank();
  const range = outputRange(train, on);
  if (range === 'none') return 'tied-up';
  const { low, high } = range;
  if (low?.gt(0n)) return low.inverse().valueOf();
  if (high?.lt(0n)) return high.inverse().valueOf();
  return plain.state === 'output-held' ? 'output-held' : 'no-drive';
}

function capacityNm({ capacity }: DeckElement, percent: number, platesShort: number): number {
  const { piston, spring, frictions, lining, friction, pressure } = capacity!;
  const n = Number;
  const area = (Math.PI / 4) * (n(piston.outer.value) ** 2 - n(piston.inner!.value) ** 2);
  const newtons = (n(pressure.value) * 0.1 * area * percent) / 100 - n(spring.value);
  const radius = (n(lining.outer.value) + n(lining.inner.value)) / 4 / 1000;
  return 2 * (frictions - platesShort) * n(friction) * Math.max(newtons, 0) * radius;
}

/** Torque on each brake and clutch that is on, per 1 on the input: slip it a little, see what the output does. */
function torquesIn(train: Train, applied: readonly string[]): Map<string, number | null> {
  const step = 1e-3;
  const out = (slips: Record<string, number>) => {
    const { state, speeds } = solveInFloats(train, applied, slips);
    return state === 'tied-up' ? null : speeds.get(train.output)!;
  };
  const sound = out({})!;
  return new Map(
    applied.map((id) => {
      const slipped = out({ [id]: step });
      return [id, slipped === null ? null : (slipped - sound) / step / sound];
    }),
  );
}

const friction = (deck: Deck, applied: readonly string[]) =>
  deck.train.elements.filter(({ id, kind }) => kind !== 'one-way' && applied.includes(id));

/** Input torque of full load. */
function fullLoad(deck: Deck): number {
  const limits = deck.chart.ranges.flatMap(({ applied }) => {
    const torques = torquesIn(deck.train, applied);
    return friction(deck, applied).flatMap((element) => {
      const torque = torques.get(element.id)!;
      return torque === null || Math.abs(torque) < 1e-6
        ? []
        : [capacityNm(element, 100, 0) / Math.abs(torque)];
    });
  });
  return (1 / 1.15) * Math.min(...limits);
}

const loads = new WeakMap<Deck, number>();

function slip(deck: Deck, fault: Fault, applied: readonly string[]): Told {
  const load = loads.get(deck) ?? fullLoad(deck);
  loads.set(deck, load);
  const torques = torquesIn(deck.train, applied);
  const margins = friction(deck, applied).flatMap((element) => {
    const percent = fault.kind === 'low-pressure' ? fault.percent : 100;
    const short = fault.kind === 'friction-short' && fault.element === element.id ? 1 : 0;
    const torque = torques.get(element.id)!;
    if (torque !== null && Math.abs(torque) < 1e-6) return [];
    const margin = torque === null ? null : capacityNm(element, percent, short) / (Math.abs(torque) * load);
    return [{ id: element.id, margin, weak: percent < 100 || short > 0 }];
  });
  const slipping = margins.filter(({ margin }) => margin !== null && margin < 1);
  if (slipping.length > 0)
    return `slips ${slipping
      .sort((a, b) => a.margin! - b.margin!)
      .map(({ id }) => id)
      .join(' ')}`;
  return margins.some(({ margin, weak }) => margin === null && weak) ? 'unsettled' : 'works';
}

export function bruteOutcome(deck: Deck, fault: Fault | null, rowId: string, position: string): Told {
  const range = deck.chart.ranges.find(({ id }) => id === rowId);
  const { applied } = range ?? deck.chart.neutral!.find(({ id }) => id === rowId)!;
  const told = drive(broken(deck.train, fault), [
    ...elementsOn(deck, fault, applied, position),
    ...(fault?.kind === 'element-stuck' ? [fault.element] : []),
  ]);
  if (!range) return told === 'no-drive' ? 'works' : told;
  const own = 1 / solveInFloats(deck.train, applied).speeds.get(deck.train.output)!;
  if (typeof told !== 'number' || Math.abs(told / own - 1) > 1e-9) return told;
  return fault?.kind === 'low-pressure' || fault?.kind === 'friction-short'
    ? slip(deck, fault, applied)
    : 'works';
}

/** Whether the gearsets and what is on leave the input no way to turn: rank with the input at 1 and without. */
export function isOverHeld(train: Train, on: readonly string[]): boolean {
  const driven = solveInFloats(train, on);
  const still = solveInFloats({ ...train, elements: [...train.elements, { id: ' still', kind: 'brake', between: [train.input, CASE] }] }, [...on, ' still']); // biome-ignore format: one line
  // Holding the input takes a freedom away unless it was held already.
  return driven.state === 'tied-up' && still.freedoms === driven.freedoms;
}
