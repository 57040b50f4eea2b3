import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countTry, type Lock, newLock, waitAfter, waitLeft } from '../../../src/storage/learners/lock.ts';

const pin = { iterations: 1, salt: '0'.repeat(32), hash: '0'.repeat(64) };
const HOUR = 3_600_000;

describe('wrong tries', () => {
  test.each([
    [0, 0],
    [2, 0],
    [3, 15_000],
    [4, 30_000],
    [5, 60_000],
    [10, 1_920_000],
    [11, HOUR],
    [5000, HOUR],
  ])('N11 after %d wrong ones one waits %d ms', (wrong, wait) => {
    expect(waitAfter(wrong)).toBe(wait);
  });

  test('N11 while one waits, a try is not counted', () => {
    let lock: Lock = newLock(pin);
    for (const at of [1000, 1001, 1002]) lock = countTry(lock, at).lock;
    expect(countTry(lock, 2002)).toEqual({ lock, waitMs: 14_000 });
    expect(countTry(lock, 16_002)).toEqual({ lock: { pin, wrong: 4, triedAt: 16_002 }, waitMs: 0 });
  });

  test('N12 a clock moved back starts the wait anew and never makes it longer', () => {
    const lock = { pin, wrong: 3, triedAt: 1_000_000_000 };
    const moved = countTry(lock, 5000);
    expect(moved.waitMs).toBe(15_000);
    expect(countTry(moved.lock, 20_000).waitMs).toBe(0);
    fc.assert(
      fc.property(
        fc.nat(40),
        fc.integer({ min: -1e12, max: 1e12 }),
        fc.integer({ min: -1e12, max: 1e12 }),
        (wrong, triedAt, at) => {
          const left = waitLeft({ pin, wrong, triedAt }, at);
          expect(left).toBeGreaterThanOrEqual(0);
          expect(left).toBeLessThanOrEqual(waitAfter(wrong));
        },
      ),
    );
  });

  test('N11 however tries are spread over a day, no more than 34 wrong ones are looked at', () => {
    // By hand: 3 free; waits of 15 s to 32 min (8 of them) sum to 63 min 45 s; then one an hour: 3 + 8 + 22 and the one at the end.
    let lock: Lock = newLock(pin);
    let looked = 0;
    for (let at = 0; at <= 24 * HOUR; at += 1000) {
      const tried = countTry(lock, at);
      if (tried.waitMs === 0) looked++;
      lock = tried.lock;
    }
    expect(looked).toBeGreaterThan(30);
    expect(looked).toBeLessThanOrEqual(34);
  });
});
