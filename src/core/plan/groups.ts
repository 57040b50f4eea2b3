/**
 * The facts as the programme sees them: alike ones counted together, each with what an ask on any coming day
 * would lead to. Values are per unit of weight.
 */
import { columnOf, type Grid, rowOf } from './grid.ts';
import type { Flow, Programme } from './programme.ts';
import { difficultyAfter, type Memory, recallAfter, stabilityKnown, stabilityMissed } from './transition.ts';

export interface Group {
  readonly kind: number;
  /** Separate days it has been right on since the last miss, up to what its kind asks for. */
  readonly layer: number;
  /** Seconds of an ask per unit of weight; its kind's are those of the asks after the next. */
  readonly rightCost: number;
  readonly wrongCost: number;
  readonly weight: number;
  readonly count: number;
  /** Null until first asked. */
  readonly memory: Memory | null;
  /** Whole days since the last ask, at today; 0 when it was asked today and waits for tomorrow. */
  readonly elapsed: number;
  /** Chance of knowing it at the first ask; used while memory is null. */
  readonly firstRecall: number;
}

/** Stands for the recall of a fact that cannot be asked, because it was asked that day. */
const ASKED_THAT_DAY = -1;

/** Where asks of the groups lead: [group][day], cells within one layer. */
export interface Asks {
  readonly groups: readonly Group[];
  readonly recall: Float64Array;
  readonly knownCell: Int32Array;
  readonly knownPart: Float64Array;
  readonly missedCell: Int32Array;
  readonly missedPart: Float64Array;
  /** Difficulty rows are blended in the programme; this is how far towards the next row each group lies. */
  readonly rowPart: Float64Array;
  readonly gate: Float64Array;
  /** What an ask adds over waiting, per unit of weight: [group][day]. */
  readonly better: Float64Array;
  /** Worth of each group, per fact and unit of weight, at the last prices. */
  readonly value: Float64Array;
  readonly recallAtClass: Float64Array;
}

export function asksOf(
  groups: readonly Group[],
  grid: Grid,
  days: readonly number[],
  classDay: number,
): Asks {
  const count = days.length;
  const size = groups.length * count;
  const asks: Asks = {
    groups,
    recall: new Float64Array(size),
    knownCell: new Int32Array(size),
    knownPart: new Float64Array(size),
    missedCell: new Int32Array(size),
    missedPart: new Float64Array(size),
    rowPart: new Float64Array(groups.length * 2),
    gate: new Float64Array(size),
    better: new Float64Array(size),
    value: new Float64Array(groups.length),
    recallAtClass: new Float64Array(groups.length),
  };
  const { transition: m, columns, difficulties } = grid;
  for (const [g, group] of groups.entries()) {
    const { memory } = group;
    const rowK = rowOf(
      difficulties,
      memory ? difficultyAfter(m, memory.difficulty, true) : m.first.known.difficulty,
    );
    const rowM = rowOf(
      difficulties,
      memory ? difficultyAfter(m, memory.difficulty, false) : m.first.missed.difficulty,
    );
    asks.rowPart[2 * g] = rowK.part;
    asks.rowPart[2 * g + 1] = rowM.part;
    asks.recallAtClass[g] = memory ? recallAfter(m, group.elapsed + classDay, memory.stability) : 0;
    for (let u = 0; u < count; u++) {
      const at = g * count + u;
      const gap = group.elapsed + days[u]!;
      if (memory && gap < 1) {
        asks.recall[at] = ASKED_THAT_DAY;
        continue;
      }
      const r = memory ? recallAfter(m, gap, memory.stability) : group.firstRecall;
      const known = columnOf(
        grid,
        memory ? stabilityKnown(m, memory.stability, memory.difficulty, r) : m.first.known.stability,
      );
      const missed = columnOf(
        grid,
        memory ? stabilityMissed(m, memory.stability, memory.difficulty, r) : m.first.missed.stability,
      );
      asks.recall[at] = r;
      asks.knownCell[at] = rowK.at * columns + known.at;
      asks.knownPart[at] = known.part;
      asks.missedCell[at] = rowM.at * columns + missed.at;
      asks.missedPart[at] = missed.part;
    }
  }
  return asks;
}

/** Values and gates of all groups, from programmes already looked back at these prices. */
export function settle(
  asks: Asks,
  programmes: readonly Programme[],
  prices: Float64Array,
  width: number,
): void {
  const { groups, recall, knownCell, knownPart, missedCell, missedPart, rowPart, gate, better } = asks;
  const count = prices.length;
  const narrow = 1 / (4 * Math.max(width, 1e-12));
  for (let g = 0; g < groups.length; g++) {
    const group = groups[g]!;
    const p = programmes[group.kind]!;
    const { value, kind, layers, grid, calendar } = p;
    const { columns } = grid;
    const plane = grid.rows * columns;
    const upper = Math.min(group.layer + 1, layers - 1);
    const fk = rowPart[2 * g]!;
    const fm = rowPart[2 * g + 1]!;
    const met = kind.rightDays > 0 && group.layer === layers - 1 ? kind.bonus : 0;
    let worth = asks.recallAtClass[g]! + met;
    for (let u = count - 1; u >= 0; u--) {
      const at = g * count + u;
      const r = recall[at]!;
      if (r === ASKED_THAT_DAY) {
        better[at] = Number.NEGATIVE_INFINITY;
        gate[at] = 0;
        continue;
      }
      const k = (u * layers + upper) * plane + knownCell[at]!;
      const m = u * layers * plane + missedCell[at]!;
      const pk = knownPart[at]!;
      const pm = missedPart[at]!;
      const k0 = value[k]! + pk * (value[k + 1]! - value[k]!);
      const k1 = value[k + columns]! + pk * (value[k + columns + 1]! - value[k + columns]!);
      const m0 = value[m]! + pm * (value[m + 1]! - value[m]!);
      const m1 = value[m + columns]! + pm * (value[m + columns + 1]! - value[m + columns]!);
      const known = k0 + fk * (k1 - k0);
      const missed = m0 + fm * (m1 - m0);
      const pay = prices[u]! * (group.wrongCost + (group.rightCost - group.wrongCost) * r);
      const gain = missed + r * (known - missed) - pay - worth;
      better[at] = gain;
      const share = calendar.attendance[u]!;
      if (gain <= -width) gate[at] = 0;
      else if (gain >= width) {
        gate[at] = 1;
        worth += share * gain;
      } else {
        const over = gain + width;
        gate[at] = 2 * over * narrow;
        worth += share * over * over * narrow;
      }
    }
    asks.value[g] = worth;
  }
}

/**
 * Starts every group's probability on its way: adds to `flow` what the groups do first, and leaves the rest as
 * mass entering the programmes. `flow` counts facts times weight; `touched` receives each group's chance of
 * being asked at all.
 */
export function setOut(
  asks: Asks,
  programmes: readonly Programme[],
  flow: Flow,
  touched: Float64Array,
): void {
  const { groups, recall, knownCell, knownPart, missedCell, missedPart, rowPart, gate } = asks;
  for (let g = 0; g < groups.length; g++) {
    const group = groups[g]!;
    const { entering, kind, layers, grid, calendar } = programmes[group.kind]!;
    const { columns } = grid;
    const plane = grid.rows * columns;
    const upper = Math.min(group.layer + 1, layers - 1);
    const count = calendar.days.length;
    const add = (cell: number, part: number, rowShare: number, mass: number) => {
      entering[cell]! += mass * (1 - part) * (1 - rowShare);
      entering[cell + 1]! += mass * part * (1 - rowShare);
      entering[cell + columns]! += mass * (1 - part) * rowShare;
      entering[cell + columns + 1]! += mass * part * rowShare;
    };
    const total = group.count * group.weight;
    let left = total;
    for (let u = 0; u < count && left > 1e-12; u++) {
      const at = g * count + u;
      const asked = left * gate[at]!;
      if (asked === 0) continue;
      const r = recall[at]!;
      flow.seconds[u]! += asked * (group.wrongCost + (group.rightCost - group.wrongCost) * r);
      const taken = asked * calendar.attendance[u]!;
      left -= taken;
      add((u * layers + upper) * plane + knownCell[at]!, knownPart[at]!, rowPart[2 * g]!, taken * r);
      add(u * layers * plane + missedCell[at]!, missedPart[at]!, rowPart[2 * g + 1]!, taken * (1 - r));
    }
    touched[g] = total > 0 ? 1 - left / total : 0;
    const r = asks.recallAtClass[g]!;
    flow.recalled += left * r;
    flow.spread += left * r * (1 - r);
    if (kind.rightDays > 0 && group.layer === layers - 1) flow.bonus += left * kind.bonus;
  }
}
