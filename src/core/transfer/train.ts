/** A layout as a train and a chart with names, solved exactly; one-ways where they can take a brake's place. */
import { holdOf, overrunOf, settle } from '../gears/one-way.ts';
import { type Solution, solveSpeeds } from '../gears/solve.ts';
import { solveTorques, type Torques } from '../gears/torque.ts';
import { CASE, type Element, type Train } from '../gears/train.ts';
import type { Rational } from '../rational.ts';
import type { DeckElement, DeckGearset, DeckTrain } from '../unit/deck.ts';
import { HOUSING, type Layout } from './layout.ts';
import { INPUT, OUTPUT, type Skeleton } from './skeleton.ts';

/** No element carries more than this many times the input torque. */
const MOST_SHARE = 6n;

export interface ChartRow {
  readonly id: string;
  readonly applied: readonly string[];
}

export interface Chart {
  /** Falling forward ranges; a range held by a one-way is followed by the same held by its brake. */
  readonly forward: readonly ChartRow[];
  readonly reverse: ChartRow;
  /** On in neutral and park: one element short of a range. */
  readonly neutral: readonly string[];
}

export interface Charted {
  readonly train: DeckTrain;
  readonly chart: Chart;
}

const shaftName = (shaft: number): string =>
  shaft === HOUSING ? CASE : shaft === INPUT ? 'in' : shaft === OUTPUT ? 'out' : `s${shaft - 1}`;

/** Clutches C1, C2 …, then brakes B1, B2 …, as the layout's elements stand in it. */
function elementsOf({ joins }: Layout): {
  readonly elements: DeckElement[];
  readonly ids: readonly string[];
} {
  const count = { brake: 0, clutch: 0 };
  const made = joins.map(([a, b]): DeckElement => {
    const kind = b === HOUSING ? 'brake' : 'clutch';
    const id = `${kind === 'brake' ? 'B' : 'C'}${++count[kind]}`;
    return { id, kind, between: [shaftName(a), shaftName(b)] };
  });
  const clutchesFirst = (element: Element) => (element.kind === 'clutch' ? 0 : 1);
  return {
    elements: [...made].sort((a, b) => clutchesFirst(a) - clutchesFirst(b)),
    ids: made.map(({ id }) => id),
  };
}

/** The train and chart of a layout; null where exact solving finds something idle, doubled or driving in neutral. */
export function chartTrain(skeleton: Skeleton, layout: Layout): Charted | null {
  const gearsets = skeleton.sets.map(
    (set, index): DeckGearset => ({
      id: `P${index + 1}`,
      kind: set.kind,
      sun: { shaft: shaftName(set.sun), teeth: set.sunTeeth },
      ring: { shaft: shaftName(set.ring), teeth: set.ringTeeth },
      carrier: { shaft: shaftName(set.carrier) },
      ...(set.planets ? { planets: set.planets } : {}),
    }),
  );
  const { elements, ids } = elementsOf(layout);
  const train: DeckTrain = { input: 'in', output: 'out', gearsets, elements };
  const onIn = (mask: number) => elements.map(({ id }) => id).filter((id) => mask & (1 << ids.indexOf(id)));
  const forward = layout.forward.map(({ mask }, index) => ({ id: String(index + 1), applied: onIn(mask) }));
  const reverse = { id: 'R', applied: onIn(layout.reverse.mask) };
  const chart: Chart = { forward, reverse, neutral: neutralOf(forward[0]!, reverse) };
  return stands(train, chart) ? { train, chart } : null;
}

/** Reverse less one element, where it can be one that the first range does without. */
function neutralOf(first: ChartRow, reverse: ChartRow): string[] {
  const dropped = reverse.applied.find((id) => !first.applied.includes(id)) ?? reverse.applied[0];
  return reverse.applied.filter((id) => id !== dropped);
}

/** Every row drives at a ratio of its own, every part carries torque in some range and none too much, neutral is free. */
function stands(train: Train, { forward, reverse, neutral }: Chart): boolean {
  const rows = [...forward, reverse].map(({ applied }) => ({
    ratio: solveSpeeds(train, applied).ratio,
    torques: solveTorques(train, applied),
  }));
  if (rows.some(({ ratio, torques }) => !ratio || !torques)) return false;
  const ratios = rows.map(({ ratio }) => ratio!);
  const distinct = ratios.every(
    (ratio, index) => !ratios.slice(0, index).some((other) => other.equals(ratio)),
  );
  const bearable = rows.every(({ torques }) =>
    [...torques!.elements.values()].every((share) => share?.abs().lte(MOST_SHARE)),
  );
  const loaded = (pick: (torques: Torques) => Rational | null | undefined) =>
    rows.some(({ torques }) => (pick(torques!)?.n ?? 0n) !== 0n);
  return (
    distinct &&
    bearable &&
    train.gearsets.every(({ id }) => loaded(({ members }) => members.get(id)?.sun)) &&
    train.elements.every(({ id }) => loaded((torques) => torques.elements.get(id))) &&
    settle(train, neutral).solution.state === 'free'
  );
}

/** Whether a one-way can stand beside a brake: it holds in the first range and runs free in every other. */
function runsFree(oneWay: Element, solution: Solution, holds: boolean): boolean {
  const overrun = overrunOf(oneWay, solution);
  return overrun !== null && (holds ? overrun.n === 0n : overrun.n === 0n || overrun.s > 0n);
}

/**
 * The same with a one-way beside a brake of the first range, which the brake then only helps out when the engine
 * is to brake; null where no brake of that range allows it.
 */
export function withOneWay({ train, chart }: Charted): Charted | null {
  const [first, ...others] = chart.forward as [ChartRow, ...ChartRow[]];
  const torques = solveTorques(train, first.applied)!;
  for (const brake of train.elements) {
    if (brake.kind !== 'brake' || !first.applied.includes(brake.id)) continue;
    const oneWay: DeckElement = { id: 'F1', kind: 'one-way', between: brake.between };
    const hold = holdOf(oneWay, torques.elements.get(brake.id) ?? null, 'drive');
    const sense: DeckElement = hold && hold.s < 0n ? { ...oneWay, overruns: 'backward' } : oneWay;
    const usedElsewhere = [...others, chart.reverse].some(({ applied }) => applied.includes(brake.id));
    const fits = [...others, chart.reverse].every(({ applied }) =>
      runsFree(sense, solveSpeeds(train, applied), false),
    );
    if (!hold || hold.n === 0n || !usedElsewhere || !fits) continue;
    const made: Charted = {
      train: { ...train, elements: [...train.elements, sense] },
      chart: {
        ...chart,
        forward: [
          { id: first.id, applied: [...first.applied.filter((id) => id !== brake.id), sense.id] },
          { id: `${first.id}m`, applied: first.applied },
          ...others,
        ],
      },
    };
    if (settle(made.train, chart.neutral).solution.state === 'free') return made;
  }
  return null;
}
