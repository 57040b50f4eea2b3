/** Chance that does as it is told, so that a family poses just the case a table gives. */
import { type Random, randomFrom } from '../../../src/core/random.ts';

interface Script {
  /** What `pick` takes in turn, by id, or the first for null; afterwards it takes the first. */
  readonly picks?: readonly (string | null)[];
  /** What `int` gives in turn; afterwards the lowest allowed. */
  readonly ints?: readonly number[];
  /** What `unit` gives in turn; afterwards 0. */
  readonly units?: readonly number[];
  /** Starts over when the script is done, so that a second attempt draws the same case. */
  readonly again?: boolean;
}

const idOf = (item: unknown): unknown => {
  if (typeof item !== 'object' || item === null) return String(item);
  if ('id' in item) return item.id;
  if ('fit' in item) return idOf(item.fit);
  return undefined;
};

/** Fails when a script asks for what is not on offer, so that a test cannot pass on another case. */
export function scripted({ picks = [], ints = [], units = [], again = false }: Script): Random {
  const left = { picks: [...picks], ints: [...ints], units: [...units] };
  const next = <T>(list: T[], script: readonly T[]): T | undefined => {
    if (again && list.length === 0) list.push(...script);
    return list.shift();
  };
  return {
    ...randomFrom(0),
    pick<T>(items: readonly T[]): T {
      const wanted = next(left.picks, picks);
      const found =
        wanted === undefined || wanted === null ? items[0] : items.find((item) => idOf(item) === wanted);
      if (found === undefined) throw new Error(`nothing to pick as ${wanted}`);
      return found;
    },
    int(low, high) {
      const wanted = next(left.ints, ints) ?? low;
      if (wanted < low || wanted > high) throw new Error(`${wanted} is not from ${low} to ${high}`);
      return wanted;
    },
    unit: () => next(left.units, units) ?? 0,
    shuffle: (items) => [...items],
    sample: (items, count) => items.slice(0, count),
  };
}
