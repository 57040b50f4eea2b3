/**
 * Solves a planetary train for the speed of every shaft, exactly, with the input turning at 1.
 * Positive is the input's way round. An applied element makes its two shafts one; each gearset adds Willis'
 * equation. The four states are told apart by what the equations say of input and output, not by counting
 * freedoms: an idle shaft may stay open while the train drives, and a train may be tied up while another
 * shaft can still turn.
 */
import { ONE, type Rational, ZERO } from '../rational.ts';
import { eliminate } from './elimination.ts';
import { CASE, elementOf, MEMBERS, shaftsOf, type Train, willis } from './train.ts';

export const STATES = ['drives', 'free', 'output-held', 'tied-up'] as const;
/**
 * drives: the output's speed is settled and not 0. free: it is not settled. output-held: settled at 0.
 * tied-up: the input cannot turn.
 */
export type State = (typeof STATES)[number];

export interface Solution {
  readonly state: State;
  /** Input speed / output speed, negative when the output turns backward; null unless the train drives. */
  readonly ratio: Rational | null;
  /** Speed of each shaft per turn of the input; null where the train leaves it open. Empty when tied up. */
  readonly speeds: ReadonlyMap<string, Rational | null>;
}

export const TIED_UP: Solution = { state: 'tied-up', ratio: null, speeds: new Map() };

/** Joins shafts that turn as one; the case is always in a group of its own with what is braked to it. */
function groupShafts(train: Train, applied: readonly string[]): (shaft: string) => string {
  const parent = new Map<string, string>();
  const find = (shaft: string): string => {
    let root = shaft;
    for (let up = parent.get(root); up !== undefined; up = parent.get(root)) root = up;
    return root;
  };
  for (const id of applied) {
    const [a, b] = elementOf(train, id).between.map(find) as [string, string];
    if (a === b) continue;
    if (a === CASE) parent.set(b, a);
    else parent.set(a, b);
  }
  return find;
}

/** Speeds, ratio and state with exactly these elements applied (ids of the train; order does not matter). */
export function solveSpeeds(train: Train, applied: readonly string[]): Solution {
  const groupOf = groupShafts(train, applied);
  const input = groupOf(train.input);
  if (input === CASE) return TIED_UP;

  const shafts = shaftsOf(train);
  const columns = new Map<string, number>();
  for (const shaft of shafts) {
    const group = groupOf(shaft);
    if (group !== CASE && group !== input && !columns.has(group)) columns.set(group, columns.size);
  }
  const unknowns = columns.size;
  const rows = train.gearsets.map((set) => {
    const row: bigint[] = new Array(unknowns + 1).fill(0n);
    const coefficients = willis(set);
    for (const member of MEMBERS) {
      const group = groupOf(set[member].shaft);
      if (group === CASE) continue;
      if (group === input) row[unknowns]! -= coefficients[member];
      else row[columns.get(group)!]! += coefficients[member];
    }
    return row;
  });
  const reading = eliminate(rows, unknowns);
  if (!reading) return TIED_UP;

  const speeds = new Map<string, Rational | null>();
  for (const shaft of shafts) {
    const group = groupOf(shaft);
    speeds.set(shaft, group === CASE ? ZERO : group === input ? ONE : reading[columns.get(group)!]!);
  }
  const output = train.output === CASE ? ZERO : speeds.get(train.output)!;
  if (output === null) return { state: 'free', ratio: null, speeds };
  if (output.n === 0n) return { state: 'output-held', ratio: null, speeds };
  return { state: 'drives', ratio: output.inverse(), speeds };
}
