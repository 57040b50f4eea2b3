/**
 * Seeded chance: the only source of it in core. The same seed gives the same draws on every machine, and
 * neighbouring seeds give draws that have nothing to do with each other. xoroshiro128+ (docs/sources.md
 * [R1]); changing anything here changes every question ever asked.
 */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';

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

/** Scrambles 32 bits: the last step of MurmurHash3 (docs/sources.md [R2]). */
function scramble(bits: number): number {
  let mixed = bits ^ (bits >>> 16);
  mixed = Math.imul(mixed, 0x85ebca6b);
  mixed ^= mixed >>> 13;
  mixed = Math.imul(mixed, 0xc2b2ae35);
  return mixed ^ (mixed >>> 16);
}

/** A generator for a 32-bit whole-number seed; any text can be made a seed with `seedOf`. */
export function randomFrom(seed: number): Random {
  // Started from the bare seed, the first draws would count up with it.
  const state = [1, 2, 3, 4].map((word) => scramble((seed + Math.imul(word, 0x9e3779b9)) | 0));
  const generator = xoroshiro128plusFromState(state);
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

/**
 * A 32-bit seed from words and numbers: FNV-1a (docs/sources.md [R3]) over the code points of the parts,
 * with a zero between parts. Stable across versions and machines.
 */
export function seedOf(...parts: readonly (string | number)[]): number {
  let hash = 0x811c9dc5;
  for (const char of parts.join('\u0000')) {
    hash ^= char.codePointAt(0)!;
    hash = Math.imul(hash, 0x01000193);
  }
  return hash | 0;
}
