/**
 * The facts as the programme sees them: alike ones counted together, each with what an ask on any coming day
 * would lead to. Values are per unit of weight.
 */
import { columnOf, type Grid, rowOf } from './grid.ts';
import type { Flow, Programme } from './programme.ts';
import { difficultyAfter, type Memory, recallAfter, stabilityKnown, stabilityMissed } from './transition.ts';

export interface Group {
  /** Between this kind and the next one, `part` of the way. */
  readonly kind: number;
  readonly part: number;
  /** Separate days it has been right on since the last miss, up to what its kind asks for. */
  readonly layer: number;
  /** Seconds of the next ask per unit of weight; those of later asks are its kinds'. */
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
export const ASKED_THAT_DAY = -1;

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

/** Worth after the ask: a value at stability and difficulty between grid points. */
function between(value: Float64Array, cell: number, part: number, rowPart: number, columns: number): number {
  const low = value[cell]! + part * (value[cell + 1]! - value[cell]!);
  const high = value[cell + columns]! + part * (value[cell + columns + 1]! - value[cell + columns]!);
  return low + rowPart * (high - low);
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
    const { part } = group;
    const { value, kind, layers, grid, calendar } = programmes[group.kind]!;
    const dearer = part > 0 ? programmes[group.kind + 1]!.value : value;
    const { columns } = grid;
    const plane = grid.rows * columns;
    const upper = Math.min(group.layer + 1, layers - 1);
    const knownRow = rowPart[2 * g]!;
    const missedRow = rowPart[2 * g + 1]!;
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
      let known = between(value, k, knownPart[at]!, knownRow, columns);
      let missed = between(value, m, missedPart[at]!, missedRow, columns);
      if (part > 0) {
        known += part * (between(dearer, k, knownPart[at]!, knownRow, columns) - known);
        missed += part * (between(dearer, m, missedPart[at]!, missedRow, columns) - missed);
      }
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

/** Puts mass on the four grid points around a state. */
function enter(
  entering: Float64Array,
  cell: number,
  part: number,
  rowPart: number,
  columns: number,
  mass: number,
): void {
  const low = mass * (1 - rowPart);
  const high = mass * rowPart;
  entering[cell]! += low * (1 - part);
  entering[cell + 1]! += low * part;
  entering[cell + columns]! += high * (1 - part);
  entering[cell + columns + 1]! += high * part;
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
    const total = group.count * group.weight;
    let left = total;
    for (let u = 0; u < count && left > 1e-12; u++) {
      const at = g * count + u;
      const r = recall[at]!;
      if (flow.byDay && group.memory) flow.byDay[u]! += left * (r === ASKED_THAT_DAY ? 1 : r);
      const asked = left * gate[at]!;
      if (asked === 0) continue;
      flow.seconds[u]! += asked * (group.wrongCost + (group.rightCost - group.wrongCost) * r);
      const taken = asked * calendar.attendance[u]!;
      left -= taken;
      const k = (u * layers + upper) * plane + knownCell[at]!;
      const m = u * layers * plane + missedCell[at]!;
      const pk = knownPart[at]!;
      const pm = missedPart[at]!;
      const known = taken * r * (1 - group.part);
      const missed = taken * (1 - r) * (1 - group.part);
      enter(entering, k, pk, rowPart[2 * g]!, columns, known);
      enter(entering, m, pm, rowPart[2 * g + 1]!, columns, missed);
      if (group.part > 0) {
        const dearer = programmes[group.kind + 1]!.entering;
        enter(dearer, k, pk, rowPart[2 * g]!, columns, taken * r * group.part);
        enter(dearer, m, pm, rowPart[2 * g + 1]!, columns, taken * (1 - r) * group.part);
      }
    }
    touched[g] = total > 0 ? 1 - left / total : 0;
    const r = asks.recallAtClass[g]!;
    flow.recalled += left * r;
    if (kind.rightDays > 0 && group.layer === layers - 1) flow.bonus += left * kind.bonus;
  }
}
