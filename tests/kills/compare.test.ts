import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../src/core/memory/attempt.ts';
import type { Drill } from '../../src/core/memory/drill.ts';
import { aDrill, anAttempt } from '../attempts.ts';
import { compare, type Shown, type Stored } from './compare.ts';

/** Answers 1 to `count`, each to its question of the drill; even ones are wrong. */
const log = (count: number): Attempt[] =>
  aDrill()
    .items.slice(0, count)
    .map(({ fact, family, seed }, index) =>
      anAttempt({ sequence: index + 1, fact, family, seed, right: index % 2 === 0 }),
    );
const shown = (from: number, to: number): Shown[] =>
  Array.from({ length: to - from + 1 }, (_, i) => ({ place: from + i, right: (from + i) % 2 === 1 }));
const verdict = { right: true, slipUps: [], missed: [] };
const at = (answered: number, changes: Partial<Drill> = {}): Stored => ({
  attempts: log(answered),
  drill: aDrill({ index: answered, answered, ...changes }),
});

describe('nothing is wrong when', () => {
  test.each<[string, Stored, Shown[], Stored, boolean]>([
    ['every answer shown is stored', at(1), shown(2, 3), at(3), false],
    ['one more is stored: it came before the kill and was not shown any more', at(1), shown(2, 3), at(4), true],
    ['the verdict still stands', at(1), shown(2, 3), { ...at(3), drill: aDrill({ index: 2, answered: 3, verdict }) }, false],
    ['a verdict stood and stands again', { ...at(1), drill: aDrill({ index: 0, answered: 1, verdict }) }, shown(1, 2), at(2), false],
    ['nothing was answered', at(2), [], at(2), false],
    ['the drill was ended', at(1), shown(2, 3), { attempts: log(3), drill: undefined }, false],
  ])('%s', (_, before, seen, after, unseen) => {
    expect(compare(before, seen, after)).toMatchObject({ faults: [], unseen });
  }); // biome-ignore format: a table reads across
});

describe('it is told when', () => {
  const doubled = (): Stored => {
    const attempts = log(3);
    return {
      attempts: [...attempts, { ...attempts[2]!, id: 'again', sequence: 4 }],
      drill: aDrill({ index: 4, answered: 4 }),
    };
  };
  test.each<[string, Stored, Shown[], Stored, RegExp]>([
    ['the last one shown is missing', at(1), shown(2, 4), at(3), /3 answers shown, 2 stored/],
    ['one of an earlier run is gone', at(3), [], { attempts: log(3).slice(1), drill: undefined }, /lost or changed/],
    ['one of an earlier run is another', at(3), [], { attempts: log(3).map((a) => ({ ...a, seconds: 1 })), drill: undefined }, /lost or changed/],
    ['an answer is there twice', at(1), shown(2, 3), doubled(), /not to its question 4/],
    ['two are there that were not shown', at(1), shown(2, 2), at(4), /1 answers shown, 3 stored/],
    ['it was shown right and stored wrong', at(1), [{ place: 2, right: true }], at(2), /stored otherwise/],
    ['the drill was turned back', at(2), [], { ...at(2), drill: aDrill({ index: 1, answered: 1 }) }, /the drill counts 1, the log 2/],
    ['the verdict that stood is another', { ...at(1), drill: aDrill({ index: 0, answered: 1, verdict }) }, [{ place: 1, right: false }], at(1), /another one/],
    ['a number is missing', at(0), shown(1, 3), { attempts: log(4).filter((a) => a.sequence !== 2), drill: undefined }, /gap/],
  ])('%s', (_, before, seen, after, told) => {
    expect(compare(before, seen, after).faults.join('; ')).toMatch(told);
  }); // biome-ignore format: a table reads across
});
