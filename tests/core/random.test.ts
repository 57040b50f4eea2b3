import { describe, expect, test } from 'vitest';
import { randomFrom, seedOf } from '../../src/core/random.ts';

// FNV-1a, 32 bits: from the table its authors publish (Fowler, Noll, Vo), from memory.
const FNV_1A: readonly [text: string, hash: number][] = [
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['b', 0xe70c2de5],
  ['foobar', 0xbf9cf968],
];

/** xoroshiro128+ as Blackman and Vigna publish it (rotations 24, 16, 37), in 64-bit words; low half out. */
function xoroshiro(state: readonly [bigint, bigint]): () => number {
  let [s0, s1] = state;
  const word = (value: bigint) => BigInt.asUintN(64, value);
  const rotate = (value: bigint, by: bigint) => word((value << by) | (value >> (64n - by)));
  return () => {
    const out = Number(BigInt.asUintN(32, s0 + s1));
    s1 ^= s0;
    s0 = word(rotate(s0, 24n) ^ s1 ^ (s1 << 16n));
    s1 = rotate(s1, 37n);
    return out;
  };
}

/** MurmurHash3 of an empty text with this seed, in bigints. */
function murmurOfNothing(seed: bigint): bigint {
  let h = BigInt.asUintN(32, seed);
  h ^= h >> 16n;
  h = BigInt.asUintN(32, h * 0x85ebca6bn);
  h ^= h >> 13n;
  h = BigInt.asUintN(32, h * 0xc2b2ae35n);
  return h ^ (h >> 16n);
}

/** Distance of observed counts from even ones, in standard deviations (chi-squared, normal approximation). */
function unevenness(counts: readonly number[]): number {
  const even = counts.reduce((sum, count) => sum + count, 0) / counts.length;
  const chi = counts.reduce((sum, count) => sum + (count - even) ** 2 / even, 0);
  const free = counts.length - 1;
  return (chi - free) / Math.sqrt(2 * free);
}

const SEEDS = Array.from({ length: 10_000 }, (_, seed) => seed);

describe('the published algorithms', () => {
  test.each(FNV_1A)('the seed of "%s" is its FNV-1a hash', (text, hash) => {
    expect(seedOf(text) >>> 0).toBe(hash);
  });

  test.each([
    [0n, 0n],
    [1n, 0x514e28b7n],
    [0xffffffffn, 0x81f16f39n],
  ])('MurmurHash3 of nothing with seed %i (test vectors, from memory)', (seed, hash) => {
    expect(murmurOfNothing(seed)).toBe(hash);
  });

  test('draws are those of xoroshiro128+ started from four scrambled words', () => {
    for (const seed of [0, 1, -1, 12345, 2 ** 31 - 1, -(2 ** 31), seedOf('kestrel-7', 'x', 3)]) {
      const [a, b, c, d] = [1n, 2n, 3n, 4n].map((k) => murmurOfNothing(BigInt(seed) + k * 0x9e3779b9n));
      const next = xoroshiro([(a! << 32n) | b!, (c! << 32n) | d!]);
      const random = randomFrom(seed);
      // A range that is a power of two takes no draw twice, so the top bit is all that changes.
      for (let i = 0; i < 200; i++)
        expect(random.int(0, 2 ** 16 - 1)).toBe(((next() ^ 0x80000000) >>> 0) % 2 ** 16);
    }
  });
});

describe('properties', () => {
  test('the same seed draws the same, another seed differently', () => {
    const draw = (seed: number) => {
      const random = randomFrom(seed);
      return [
        random.int(0, 999),
        random.unit(),
        random.pick('abcdefgh'.split('')),
        random.shuffle([1, 2, 3, 4]),
      ];
    };
    const seen = new Set(SEEDS.slice(0, 1000).map((seed) => JSON.stringify(draw(seed))));
    for (const seed of SEEDS.slice(0, 50)) expect(draw(seed)).toEqual(draw(seed));
    expect(seen.size).toBe(1000);
  });

  test('neighbouring seeds have nothing to do with each other, at any of the first draws', () => {
    for (const size of [2, 3, 4, 5, 8])
      for (const draws of [1, 2, 3, 4]) {
        const values = SEEDS.map((seed) => {
          const random = randomFrom(seed);
          for (let i = 1; i < draws; i++) random.int(0, size - 1);
          return random.int(0, size - 1);
        });
        const pairs = new Array<number>(size * size).fill(0);
        for (let i = 1; i < values.length; i++) pairs[values[i - 1]! * size + values[i]!]!++;
        expect(Math.abs(unevenness(pairs))).toBeLessThan(5);
      }
  });

  test('one draw tells nothing about the next of the same seed', () => {
    for (const size of [2, 3, 4, 5, 8]) {
      const pairs = new Array<number>(size * size).fill(0);
      for (const seed of SEEDS) {
        const random = randomFrom(seed);
        pairs[random.int(0, size - 1) * size + random.int(0, size - 1)]!++;
      }
      expect(Math.abs(unevenness(pairs))).toBeLessThan(5);
    }
  });

  test('every order of four comes up equally often', () => {
    const counts = new Map<string, number>();
    for (const seed of SEEDS) {
      const order = randomFrom(seed).shuffle(['a', 'b', 'c', 'd']).join('');
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(counts.size).toBe(24);
    expect(Math.abs(unevenness([...counts.values()]))).toBeLessThan(5);
  });

  test('draws keep their bounds, ends included', () => {
    const random = randomFrom(7);
    const drawn = new Set(Array.from({ length: 500 }, () => random.int(-2, 3)));
    expect([...drawn].sort((a, b) => a - b)).toEqual([-2, -1, 0, 1, 2, 3]);
    for (let i = 0; i < 500; i++) {
      const unit = random.unit();
      expect(unit >= 0 && unit < 1).toBe(true);
    }
  });

  test('a shuffle keeps the items, a sample takes different ones, and neither touches the list', () => {
    const items = Object.freeze(['a', 'b', 'c', 'd', 'e']);
    for (const seed of SEEDS.slice(0, 200)) {
      const random = randomFrom(seed);
      expect([...random.shuffle(items)].sort()).toEqual(items);
      const sample = random.sample(items, 3);
      expect(new Set(sample).size).toBe(3);
      expect(random.sample(items, 9)).toHaveLength(5);
      expect(items).toContain(random.pick(items));
    }
  });

  test('seeds of different parts differ, and where a part ends matters', () => {
    expect(seedOf('ab', 'c')).not.toBe(seedOf('a', 'bc'));
    expect(seedOf('deck', 12)).toBe(seedOf('deck', '12'));
    const seeds = SEEDS.map((n) => seedOf('deck', 'family', n));
    expect(new Set(seeds).size).toBe(SEEDS.length);
  });
});

describe('frozen, so that a question can be reopened', () => {
  // Printed by the first version that had them. If this fails, questions already asked have changed.
  test('the draws of one seed', () => {
    const random = randomFrom(seedOf('kestrel-7', 'range-elements', 1));
    expect(Array.from({ length: 8 }, () => random.int(0, 99))).toEqual([96, 43, 92, 58, 4, 27, 86, 64]);
    expect(random.shuffle(['a', 'b', 'c', 'd', 'e']).join('')).toBe('beadc');
  });
});

describe('refusals', () => {
  test('picking from nothing throws', () => {
    expect(() => randomFrom(1).pick([])).toThrow('empty');
  });
});
