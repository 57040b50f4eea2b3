import { describe, expect, test } from 'vitest';
import {
  FEWEST_ITERATIONS,
  hashPin,
  isPin,
  isPinOf,
  iterationsFor,
  measureIterations,
  sameBytes,
  slowHash,
} from '../../../src/storage/learners/pin.ts';

const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');
const bytes = (text: string) => new TextEncoder().encode(text);

// RFC 7914, section 11: the first 32 of the 64 bytes given there, which are PBKDF2's first block.
const PUBLISHED: readonly [password: string, salt: string, iterations: number, first32: string][] = [
  ['passwd', 'salt', 1, '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc'],
  ['Password', 'NaCl', 80_000, '4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56'],
];

describe('the slow hash', () => {
  test.each(PUBLISHED)(
    'N9 %s, %s, %d iterations as published',
    async (password, salt, iterations, first32) => {
      expect(hex(await slowHash(password, bytes(salt), iterations))).toBe(first32);
    },
  );

  test('N9 the same PIN is kept differently each time, and never as itself', async () => {
    const [a, b] = await Promise.all([hashPin('4711', 1000), hashPin('4711', 1000)]);
    expect(a.salt).not.toBe(b.salt);
    expect(a.hash).not.toBe(b.hash);
    expect(JSON.stringify([a, b])).not.toContain('4711');
    expect(await isPinOf('4711', a)).toBe(true);
    expect(await isPinOf('4711', b)).toBe(true);
    for (const other of ['4712', '471', '47110', '', '4711 ']) expect(await isPinOf(other, a)).toBe(false);
  });

  test('N10 as many iterations as take the time aimed at, and never fewer than recommended', async () => {
    // 50,000 took: so long -> as many as fit into 400 ms, by hand.
    expect(iterationsFor(20)).toBe(1_000_000);
    expect(iterationsFor(2)).toBe(10_000_000);
    expect(iterationsFor(200)).toBe(FEWEST_ITERATIONS);
    expect(iterationsFor(0)).toBe(20_000_000);
    let at = 0;
    expect(await measureIterations(() => (at += 10))).toBe(2_000_000);
    expect(FEWEST_ITERATIONS).toBeGreaterThanOrEqual(600_000);
  });

  test('N9 bytes are the same when all are, whatever their length', () => {
    expect(sameBytes(bytes(''), bytes(''))).toBe(true);
    expect(sameBytes(bytes('abc'), bytes('abc'))).toBe(true);
    for (const other of ['abd', 'bbc', 'ab', 'abcd', '', 'abc\0']) {
      expect(sameBytes(bytes('abc'), bytes(other))).toBe(false);
      expect(sameBytes(bytes(other), bytes('abc'))).toBe(false);
    }
  });

  test.each([
    ['1234', true],
    ['00000000', true],
    ['123', false],
    ['123456789', false],
    ['12a4', false],
    ['12 34', false],
    ['١٢٣٤', false],
  ])('a PIN is four to eight digits: %s', (text, is) => {
    expect(isPin(text)).toBe(is);
  });
});
