/**
 * What a solved plan leads to, fact by fact and day by day: the plan's choices are taken as they are, and recall
 * is reckoned for a learner who may forget faster or slower than the plan believes.
 */
import { setOut } from './groups.ts';
import { lookForward, noFlow, type Programme } from './programme.ts';
import type { Solved } from './solve.ts';
import { recallAfter } from './transition.ts';

/** A learner beside the one believed: a factor on every stability, and a shift of first recall's log-odds. */
export interface Difference {
  readonly factor: number;
  readonly firstShift: number;
}

export const AS_BELIEVED: Difference = { factor: 1, firstShift: 0 };

/** Expected recall at class just after an ask, [day][layer][row][column], under the programme's gates. */
function prospects(p: Programme, factor: number): Float64Array {
  const { grid, calendar, layers, gate } = p;
  const { columns, rows, knownAt, missedAt, transition } = grid;
  const { days, attendance, classDay } = calendar;
  const count = days.length;
  const plane = rows * columns;
  const cells = layers * plane;
  const recall = grid.recall.map((_, at) =>
    recallAfter(transition, Math.floor(at / columns), factor * grid.stabilities[at % columns]!),
  );
  const found = new Float64Array(count * cells);
  const ifKnown = new Float64Array(count * cells);
  const ifMissed = new Float64Array(count * cells);
  for (let t = count - 1; t >= 0; t--) {
    for (let cell = 0; cell < cells; cell++) {
      const inPlane = cell % plane;
      const c = inPlane % columns;
      const rowStart = cell - c;
      const up = cell < cells - plane ? plane : 0;
      let worth = recall[(classDay - days[t]!) * columns + c]!;
      for (let u = count - 1; u > t; u--) {
        const open = gate[(t * count + u) * cells + cell]! * attendance[u]!;
        if (open === 0) continue;
        const gap = days[u]! - days[t]!;
        const at = gap * plane + inPlane;
        const xKnown = knownAt[at]!;
        const xMissed = missedAt[at]!;
        const k = u * cells + rowStart + up + (xKnown | 0);
        const m = u * cells + (rowStart % plane) + (xMissed | 0);
        const known = ifKnown[k]! + (xKnown - (xKnown | 0)) * (ifKnown[k + 1]! - ifKnown[k]!);
        const missed = ifMissed[m]! + (xMissed - (xMissed | 0)) * (ifMissed[m + 1]! - ifMissed[m]!);
        const r = recall[gap * columns + c]!;
        worth += open * (missed + r * (known - missed) - worth);
      }
      found[t * cells + cell] = worth;
    }
    for (let layer = 0; layer < layers; layer++)
      for (let row = 0; row < rows; row++) {
        const [known, missed] = [grid.knownRow[row]!, grid.missedRow[row]!];
        const base = t * cells + layer * plane;
        for (let c = 0; c < columns; c++) {
          const blend = ({ at, part }: typeof known) => {
            const low = found[base + at * columns + c]!;
            return low + part * (found[base + (at + 1) * columns + c]! - low);
          };
          ifKnown[base + row * columns + c] = blend(known);
          ifMissed[base + row * columns + c] = blend(missed);
        }
      }
  }
  return found;
}

/** Recall at class expected for each group. */
export function recallAtClass({ problem }: Solved, { factor, firstShift }: Difference): Float64Array {
  const { programmes, asks, calendar, grid } = problem;
  const { groups, gate, knownCell, knownPart, missedCell, missedPart, rowPart } = asks;
  const found = programmes.map((p) => prospects(p, factor));
  const count = calendar.days.length;
  const { columns } = grid;
  const plane = grid.rows * columns;
  return Float64Array.from(groups, ({ memory, elapsed, firstRecall, kind, part, layer }, g) => {
    const { layers } = programmes[kind]!;
    const upper = Math.min(layer + 1, layers - 1);
    const odds = (firstRecall / (1 - firstRecall)) * Math.exp(firstShift);
    const after = (days: number) => recallAfter(grid.transition, elapsed + days, factor * memory!.stability);
    const read = (cell: number, along: number, down: number) => {
      const at = (values: Float64Array) => {
        const low = values[cell]! + along * (values[cell + 1]! - values[cell]!);
        const below = cell + columns;
        const high = values[below]! + along * (values[below + 1]! - values[below]!);
        return low + down * (high - low);
      };
      const near = at(found[kind]!);
      return part > 0 ? near + part * (at(found[kind + 1]!) - near) : near;
    };
    let worth = memory ? after(calendar.classDay) : 0;
    for (let u = count - 1; u >= 0; u--) {
      const at = g * count + u;
      const open = gate[at]! * calendar.attendance[u]!;
      if (open === 0) continue;
      const r = memory ? after(calendar.days[u]!) : odds / (1 + odds);
      const known = read((u * layers + upper) * plane + knownCell[at]!, knownPart[at]!, rowPart[2 * g]!);
      const missed = read(u * layers * plane + missedCell[at]!, missedPart[at]!, rowPart[2 * g + 1]!);
      worth += open * (missed + r * (known - missed) - worth);
    }
    return worth;
  });
}

/** Expected share of the weight recalled on each practice day before practice, and at last on the class day. */
export interface Course {
  /** Days from today. */
  readonly days: readonly number[];
  readonly recalled: readonly number[];
  /** Seconds expected in each session. Where several days are planned as one, they stand at the middle one. */
  readonly seconds: readonly number[];
}

/** The days to class when the plan is kept, or when it is kept from the next practice day on. */
export function courseOf({ problem }: Solved, { skipToday }: { readonly skipToday: boolean }): Course {
  const { asks, programmes, calendar, weight } = problem;
  const count = calendar.days.length;
  const flow = noFlow(count, true);
  const today = skipToday && calendar.days[0] === 0;
  const gate = Float64Array.from(asks.gate, (open, at) => (today && at % count === 0 ? 0 : open));
  setOut({ ...asks, gate }, programmes, flow, new Float64Array(asks.groups.length));
  for (const programme of programmes) lookForward(programme, flow);
  const share = (amount: number) => (weight > 0 ? amount / weight : 0);
  return {
    days: [...calendar.days, calendar.classDay],
    recalled: [...flow.byDay!, flow.recalled].map(share),
    seconds: Array.from(flow.seconds, (seconds, u) => seconds / (calendar.sessions?.[u] ?? 1)),
  };
}
