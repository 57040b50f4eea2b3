import { describe, expect, test } from 'vitest';
import { everyAnswer, sizeOf } from '../../../src/core/questions/answer-space.ts';
import { countRight, guessRateOf, unfairness } from '../../../src/core/questions/ask.ts';
import { isAmongRight, judge, sameAnswer } from '../../../src/core/questions/judge.ts';
import { nearestRight } from '../../../src/core/questions/nearest-right.ts';
import { say } from '../../../src/core/questions/phrase.ts';
import type { Accepts, Answer, AnswerSpace, Posed } from '../../../src/core/questions/question.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';

const end = say('text', { text: 'end' });
const spaceOf = (ids: string, alike: readonly string[] = []): Extract<AnswerSpace, { form: 'order' }> => ({
  form: 'order',
  items: [...ids].map((id) => ({ id, label: say('text', { text: id }) })),
  first: end,
  last: end,
  alike: alike.map((group) => [...group]),
});
const order = (ids: string): Answer => ({ form: 'order', order: [...ids] });
/** relations('ab bc') puts a before b and b before c. */
const relations = (text: string): Accepts => ({
  rule: 'precedence',
  pairs: text.split(' ').map((pair) => [pair[0]!, pair[1]!] as const),
});

describe('items that cannot be told apart', () => {
  test.each([
    // multinomial coefficients: 6!/(3! 2! 1!) = 60; letters of MISSISSIPPI 11!/(4! 4! 2!) = 34650
    ['aaabbc', ['abc', 'de'], 'abcdef', 60],
    ['none alike', [], 'abcde', 120],
    ['all alike', ['abcd'], 'abcd', 1],
    ['letters of MISSISSIPPI', ['abcd', 'efgh', 'ij'], 'abcdefghijk', 34650],
  ])('A3 the space of %s', (_, alike, ids, size) => {
    const space = spaceOf(ids, alike);
    expect(sizeOf(space)).toBe(size);
    if (size <= 5040) {
      const all = [...everyAnswer(space)];
      expect(all).toHaveLength(size);
      for (const [index, one] of all.entries())
        for (const other of all.slice(index + 1)) expect(sameAnswer(space, one, other)).toBe(false);
    }
  });

  const pack: Pick<Posed, 'space' | 'answers' | 'lures'> = {
    // s steel, f friction: s1 f1 s2 f2 and a backing plate
    space: spaceOf('sStTb', ['st', 'ST']),
    answers: [order('sStTb')],
    lures: [{ answer: order('stSTb'), slipUp: 'reverse-left-out' }],
  };
  test.each([
    ['sStTb', true],
    ['tSsTb', true],
    ['tTsSb', true],
    ['SstTb', false],
    ['sStbT', false],
  ])('A3 %s is right: %s', (given, right) => {
    expect(judge(pack, order(given)).right).toBe(right);
  });

  test('A3 A2 a slip-up is known whichever of the likes stands where', () => {
    for (const given of ['stSTb', 'tsTSb', 'tsSTb'])
      expect(judge(pack, order(given)).slipUps).toEqual(['reverse-left-out']);
    expect(judge(pack, order('SsTtb')).slipUps).toEqual([]);
  });
});

describe('orders accepted by relations', () => {
  // Orders counted by hand: a diamond has 2, two chains of two 4!/(2! 2!) = 6, a fork 2, nothing fixed 4! = 24.
  test.each([
    ['diamond', 'abcd', 'ab ac bd cd', 2],
    ['two chains', 'abcd', 'ab cd', 6],
    ['chain', 'abcd', 'ab bc cd', 1],
    ['fork', 'abc', 'ab ac', 2],
    // the zigzag a<b>c<d>e: Euler's number for 5, OEIS A000111
    ['zigzag', 'acbed', 'ab cb cd ed', 16],
  ])('A4 A6 %s: as many right as there are linear extensions', (_, ids, pairs, count) => {
    const posed = { space: spaceOf(ids), answers: [order(ids)] as const, accepts: relations(pairs) };
    expect(countRight(posed)).toBe(count);
    expect(guessRateOf(posed)).toBeCloseTo(count / sizeOf(posed.space), 12);
    const right = [...everyAnswer(posed.space)].filter(
      (answer) => answer.form === 'order' && judge({ ...posed, lures: [] }, answer).right,
    );
    expect(right).toHaveLength(count);
  });

  test('A4 any order drawn at random from the legal ones is right, and turned round it is not', () => {
    const random = randomFrom(5);
    for (let round = 0; round < 200; round++) {
      const hidden = random.shuffle([...'abcdefgh']);
      const pairs = hidden.flatMap((later, index) =>
        hidden.slice(0, index).filter(() => random.unit() < 0.3).map((earlier) => [earlier, later] as const),
      ); // biome-ignore format: one relation in three
      const posed = {
        space: spaceOf('abcdefgh'),
        answers: [order(hidden.join(''))] as const,
        accepts: { rule: 'precedence', pairs } as const,
        lures: [],
      };
      const left = [...'abcdefgh'];
      const legal: string[] = [];
      while (left.length > 0) {
        const ready = left.filter((id) => !pairs.some(([a, b]) => b === id && left.includes(a)));
        legal.push(...left.splice(left.indexOf(random.pick(ready)), 1));
      }
      expect(judge(posed, order(legal.join(''))).right).toBe(true);
      const turned = legal.toReversed();
      expect(judge(posed, order(turned.join(''))).right).toBe(pairs.length === 0);
      const shown = nearestRight(posed, order(turned.join('')));
      expect(isAmongRight(posed, shown)).toBe(true);
    }
  });

  test('A5 likes are named in their own order before relations are looked at', () => {
    const posed = {
      space: spaceOf('sSbx', ['sS']),
      answers: [order('sSbx')] as const,
      accepts: relations('sb sS Sb'),
      lures: [],
    };
    for (const given of ['sSbx', 'Ssbx', 'xSsb', 'Sxsb']) expect(judge(posed, order(given)).right).toBe(true);
    for (const given of ['Sbsx', 'bsSx']) expect(judge(posed, order(given)).right).toBe(false);
    // of 4!/2! = 12 orders those with b after both: x in any of 4 places
    expect(countRight(posed)).toBe(4);
    expect(sizeOf(posed.space)).toBe(12);
  });

  test.each([
    ['a legal order is shown as it is', 'cabd', 'cabd'],
    ['d is held back until b and c are done', 'adbc', 'abcd'],
    ['turned round, everything waits for a', 'dcba', 'cabd'],
  ])('A7 %s', (_, given, shown) => {
    const posed = {
      space: spaceOf('abcd'),
      answers: [order('abcd')] as const,
      accepts: relations('ab bd cd'),
    };
    expect(nearestRight(posed, order(given))).toEqual(order(shown));
  });
});

test('A8 a question with fewer than four places is not fair', () => {
  const unit = makeUnit(deckOf(PUBLISHED[1]!));
  const posed = (count: number): Posed => ({
    facts: ['f'],
    uses: [],
    prompt: end,
    space: { form: 'place', spots: [...'abcd'].slice(0, count).map((id) => ({ id, label: end })) },
    answers: [{ form: 'place', spot: 'b' }],
    lures: [{ answer: { form: 'place', spot: 'a' }, slipUp: 'neighbour-range' }],
    explanation: { row: end, reason: end, more: [] },
    isRight: (answer) => answer.form === 'place' && answer.spot === 'b',
  });
  expect(unfairness(unit, posed(3))).toMatch('four places');
  expect(unfairness(unit, posed(4))).toBeNull();
  expect(guessRateOf(posed(4))).toBe(1 / 4);
  expect(judge(posed(4), { form: 'place', spot: 'a' }).slipUps).toEqual(['neighbour-range']);
  expect(judge(posed(4), { form: 'place', spot: 'd' }).slipUps).toEqual([]);
});
