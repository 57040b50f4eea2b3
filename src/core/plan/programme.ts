/**
 * One fact to the class date: what the rest of the days are worth to it, and when it is then asked, when every
 * second of practice on day t costs a price. Backwards for values, forwards for probabilities.
 *
 * Between two asks nothing is learnt about a fact, so the state after an ask on day t is all that matters, and
 * "ask on day u or wait" is settled day by day: U(u) = a(u) max(ask(u), U(u+1)) + (1 - a(u)) U(u+1), U(class) =
 * recall at class, with a(u) the chance that day u takes place. The maximum is rounded off quadratically over
 * `width`, which makes use of a day a smooth function of its price; width 0 gives the exact maximum.
 * A fact that must be right on separate days has layers: right goes one up, wrong back to the first, and the
 * last one earns a bonus at class.
 */
import type { Grid } from './grid.ts';

export interface Calendar {
  /** Days that practice may take place, as whole days from today, rising; 0 is today. */
  readonly days: readonly number[];
  /** Chance that the day takes place, and its seconds when it does. */
  readonly attendance: readonly number[];
  readonly seconds: readonly number[];
  /** Sessions those seconds are spread over, where several days are planned as one; 1 each when left out. */
  readonly sessions?: readonly number[];
  /** Class day, from today. */
  readonly classDay: number;
}

/** Facts alike in what an ask costs and what they must reach; costs are per unit of weight. */
export interface Kind {
  readonly rightCost: number;
  readonly wrongCost: number;
  /** Separate days in a row it must be right on, and what that is worth in facts; 0 asks for none. */
  readonly rightDays: number;
  readonly bonus: number;
}

export interface Programme {
  readonly grid: Grid;
  readonly calendar: Calendar;
  readonly kind: Kind;
  readonly layers: number;
  /** Value just after an ask: [day][layer][row][column]. */
  readonly value: Float64Array;
  /** `value` at the difficulty that follows a known and a missed answer given at this row's difficulty. */
  readonly valueKnown: Float64Array;
  readonly valueMissed: Float64Array;
  /** Chance that a state after an ask on day t is asked on day u, having waited: [t][u][layer][row][column]. */
  readonly gate: Float32Array;
  /** Gates of a pair of days: all cells, or 0 where they are not kept and only values are wanted. */
  readonly gates: number;
  /** Probability mass just after a first ask: [day][layer][row][column]. */
  readonly entering: Float64Array;
  /** The same after later asks, by the difficulty before a known and before a missed answer. */
  readonly massKnown: Float64Array;
  readonly massMissed: Float64Array;
}

/** With `valuesOnly` it can be looked back, not forward; gates then take no room. */
export function programmeFor(grid: Grid, calendar: Calendar, kind: Kind, valuesOnly = false): Programme {
  const days = calendar.days.length;
  const layers = kind.rightDays + 1;
  const cells = layers * grid.rows * grid.columns;
  return {
    grid,
    calendar,
    kind,
    layers,
    value: new Float64Array(days * cells),
    valueKnown: new Float64Array(days * cells),
    valueMissed: new Float64Array(days * cells),
    gate: new Float32Array((valuesOnly ? 1 : days * days) * cells),
    gates: valuesOnly ? 0 : cells,
    entering: new Float64Array(days * cells),
    massKnown: new Float64Array(days * cells),
    massMissed: new Float64Array(days * cells),
  };
}

/** Fills `value` and `gate` for these prices (facts per second, one per calendar day). */
export function lookBack(p: Programme, prices: Float64Array, width: number): void {
  const { grid, calendar, kind, layers, value, valueKnown, valueMissed, gate } = p;
  const { columns, rows, recall, knownAt, missedAt } = grid;
  const { days, attendance, classDay } = calendar;
  const count = days.length;
  const plane = rows * columns;
  const cells = layers * plane;
  const narrow = 1 / (4 * Math.max(width, 1e-12));
  const costSpread = kind.rightCost - kind.wrongCost;
  for (let t = count - 1; t >= 0; t--) {
    const toClass = (classDay - days[t]!) * columns;
    for (let layer = 0; layer < layers; layer++) {
      const base = t * cells + layer * plane;
      const met = layer === layers - 1 && kind.rightDays > 0 ? kind.bonus : 0;
      for (let row = 0; row < rows; row++)
        for (let c = 0; c < columns; c++) value[base + row * columns + c] = recall[toClass + c]! + met;
      const up = layer === layers - 1 ? 0 : plane;
      for (let u = count - 1; u > t; u--) {
        const gap = days[u]! - days[t]!;
        const price = prices[u]!;
        const wrongPay = price * kind.wrongCost;
        const spreadPay = price * costSpread;
        const share = attendance[u]!;
        const chances = gap * columns;
        const gates = (t * count + u) * p.gates + layer * plane;
        const then = u * cells;
        const thenKnown = then + layer * plane + up;
        for (let row = 0; row < rows; row++) {
          const here = row * columns;
          const table = gap * plane + here;
          const open = gates + here;
          const now = base + here;
          const ifKnown = thenKnown + here;
          const ifMissed = then + here;
          for (let c = 0; c < columns; c++) {
            const r = recall[chances + c]!;
            const xKnown = knownAt[table + c]!;
            const xMissed = missedAt[table + c]!;
            const k = ifKnown + (xKnown | 0);
            const m = ifMissed + (xMissed | 0);
            const lowKnown = valueKnown[k]!;
            const lowMissed = valueMissed[m]!;
            const known = lowKnown + (xKnown - (xKnown | 0)) * (valueKnown[k + 1]! - lowKnown);
            const missed = lowMissed + (xMissed - (xMissed | 0)) * (valueMissed[m + 1]! - lowMissed);
            const waited = value[now + c]!;
            const better = missed + r * (known - missed - spreadPay) - wrongPay - waited;
            if (better <= -width) gate[open + c] = 0;
            else if (better >= width) {
              gate[open + c] = 1;
              value[now + c] = waited + share * better;
            } else {
              const over = better + width;
              gate[open + c] = 2 * over * narrow;
              value[now + c] = waited + share * over * over * narrow;
            }
          }
        }
      }
      for (let row = 0; row < rows; row++) {
        const known = grid.knownRow[row]!;
        const missed = grid.missedRow[row]!;
        for (let c = 0; c < columns; c++) {
          const lowK = value[base + known.at * columns + c]!;
          const lowM = value[base + missed.at * columns + c]!;
          valueKnown[base + row * columns + c] =
            lowK + known.part * (value[base + (known.at + 1) * columns + c]! - lowK);
          valueMissed[base + row * columns + c] =
            lowM + missed.part * (value[base + (missed.at + 1) * columns + c]! - lowM);
        }
      }
    }
  }
}

/** What the class date and the days receive from the probability put into `entering`. */
export interface Flow {
  /** Expected seconds on each calendar day, given that it takes place. */
  readonly seconds: Float64Array;
  /** Expected facts recalled at class, and expected bonus. */
  recalled: number;
  bonus: number;
  /** Expected facts recalled on each calendar day before its practice, where wanted. */
  readonly byDay: Float64Array | null;
}

export const noFlow = (days: number, byDay = false): Flow => ({
  seconds: new Float64Array(days),
  recalled: 0,
  bonus: 0,
  byDay: byDay ? new Float64Array(days) : null,
});

/** Less than this is not followed further. */
const LEAST_MASS = 1e-9;

/** Pushes all probability mass forward through `gate` and adds it to `flow`; the mass is used up. */
export function lookForward(p: Programme, flow: Flow): void {
  const { grid, calendar, kind, layers, gate, entering, massKnown, massMissed } = p;
  const { columns, rows, recall, knownAt, missedAt } = grid;
  const { days, attendance, classDay } = calendar;
  const dayCount = days.length;
  const plane = rows * columns;
  const cells = layers * plane;
  const costSpread = kind.rightCost - kind.wrongCost;
  const mass = new Float64Array(cells);
  const live = new Int32Array(cells);
  for (let t = 0; t < dayCount; t++) {
    mass.set(entering.subarray(t * cells, (t + 1) * cells));
    entering.fill(0, t * cells, (t + 1) * cells);
    for (let layer = 0; layer < layers; layer++)
      for (let row = 0; row < rows; row++) {
        const known = grid.knownRow[row]!;
        const missed = grid.missedRow[row]!;
        const from = t * cells + layer * plane + row * columns;
        const toK = layer * plane + known.at * columns;
        const toM = layer * plane + missed.at * columns;
        for (let c = 0; c < columns; c++) {
          const k = massKnown[from + c]!;
          if (k > 0) {
            mass[toK + c]! += k * (1 - known.part);
            mass[toK + columns + c]! += k * known.part;
            massKnown[from + c] = 0;
          }
          const m = massMissed[from + c]!;
          if (m > 0) {
            mass[toM + c]! += m * (1 - missed.part);
            mass[toM + columns + c]! += m * missed.part;
            massMissed[from + c] = 0;
          }
        }
      }
    let count = 0;
    for (let cell = 0; cell < cells; cell++) if (mass[cell]! >= LEAST_MASS) live[count++] = cell;
    for (let u = t + 1; u < dayCount; u++) {
      const gap = days[u]! - days[t]!;
      const gates = (t * dayCount + u) * cells;
      const then = u * cells;
      const table = gap * plane;
      const share = attendance[u]!;
      let [seconds, recalled] = [0, 0];
      for (let i = 0; i < count; i++) {
        const cell = live[i]!;
        const c = cell % columns;
        const left = mass[cell]!;
        const r = recall[gap * columns + c]!;
        recalled += left * r;
        const open = gate[gates + cell]!;
        if (open === 0) continue;
        const asked = left * open;
        seconds += asked * (kind.wrongCost + costSpread * r);
        const taken = asked * share;
        mass[cell] = left - taken;
        const inPlane = cell % plane;
        const at = table + inPlane;
        const up = cell < cells - plane ? plane : 0;
        const xKnown = knownAt[at]!;
        const k = then + cell - c + up + (xKnown | 0);
        const knownMass = taken * r;
        const kPart = knownMass * (xKnown - (xKnown | 0));
        massKnown[k]! += knownMass - kPart;
        massKnown[k + 1]! += kPart;
        const xMissed = missedAt[at]!;
        const m = then + inPlane - c + (xMissed | 0);
        const missedMass = taken - knownMass;
        const mPart = missedMass * (xMissed - (xMissed | 0));
        massMissed[m]! += missedMass - mPart;
        massMissed[m + 1]! += mPart;
      }
      flow.seconds[u]! += seconds;
      if (flow.byDay) flow.byDay[u]! += recalled;
    }
    const toClass = (classDay - days[t]!) * columns;
    for (let i = 0; i < count; i++) {
      const cell = live[i]!;
      const left = mass[cell]!;
      flow.recalled += left * recall[toClass + (cell % columns)]!;
      if (kind.rightDays > 0 && cell >= cells - plane) flow.bonus += left * kind.bonus;
    }
  }
}
