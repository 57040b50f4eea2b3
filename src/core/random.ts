/** Seeded chance: the only source of it in core. The same seed gives the same draws on every machine. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Random {
  /** A whole number, low and high included. */
  int(low: number, high: number): number;
  /** A number in [0, 1), in steps of 2^-30. */
  unit(): number;
  /** One item of a list that must not be empty. */
  pick<T>(items: readonly T[]): T;
  /** A shuffled copy. */
  shuffle<T>(items: readonly T[]): T[];
  /** `count` different items in random order (all of them when the list is shorter). */
  sample<T>(items: readonly T[], count: number): T[];
}

/** A generator for a whole-number seed; any text can be made a seed with `seedOf`. */
export function randomFrom(seed: number): Random {
  const generator = xoroshiro128plus(seed | 0);
  const int = (low: number, high: number) => uniformInt(generator, low, high);
  const shuffle = <T>(items: readonly T[]): T[] => {
    const copy = [...items];
    for (let i = copy.length - 1; i > 0; i--) {
      const j = int(0, i);
      const held = copy[i]!;
      copy[i] = copy[j]!;
      copy[j] = held;
    }
    return copy;
  };
  return {
    int,
    unit: () => int(0, 2 ** 30 - 1) / 2 ** 30,
    pick: (items) => {
      if (items.length === 0) throw new Error('pick from an empty list');
      return items[int(0, items.length - 1)]!;
    },
    shuffle,
    sample: (items, count) => shuffle(items).slice(0, count),
  };
}

/** A 32-bit seed from words and numbers (FNV-1a, public domain): stable across versions and machines. */
export function seedOf(...parts: readonly (string | number)[]): number {
  let hash = 0x811c9dc5;
  for (const char of parts.join('\u0000')) {
    hash ^= char.codePointAt(0)!;
    hash = Math.imul(hash, 0x01000193);
  }
  return hash | 0;
}
