import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { torqueOrder } from '../../../src/core/questions/families/torque-order.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

/**
 * The crossed sets by hand (teeth in tests/published), per 1 on the input, signs as on the first of the shafts:
 * what goes in by one clutch is 1; a lone brake gives ratio − 1; in 3 the rear set shares as its teeth.
 */
const TORQUES: Readonly<Record<string, number>> = {
  '1/UD': 1,
  '1/LR': 83 / 45,
  '2/UD': 1,
  // 45·sun + 83·fc = 128·out and 90·fc = 62·out, so sun = out·(128 − 83·62/90)/45
  '2/B24': (128 - (83 * 62) / 90) / 45 - 1,
  '3/UD': 45 / 128,
  '3/OD': 83 / 128,
  '4/OD': 1,
  '4/B24': 28 / 90,
  'R/RV': 1,
  'R/LR': 90 / 28,
};

const questions = Array.from(
  { length: 80 },
  (_, seed) => ask(unitOf('four-range-two-crossed-sets'), torqueOrder, seed)!,
);
const itemsIn = ({ space }: Question) => (space.form === 'order' ? space.items.map(({ id }) => id) : []);

describe('torque-order on the crossed sets, by hand', () => {
  test('each order is that of the worked torques, and no two are within a tenth', () => {
    for (const question of questions) {
      const order = itemsIn(question).toSorted((a, b) => TORQUES[b]! - TORQUES[a]!);
      expect(judge(question, { form: 'order', order }).right).toBe(true);
      for (const [place, id] of order.slice(1).entries())
        expect(TORQUES[id]!).toBeLessThan(0.9 * TORQUES[order[place]!]!);
    }
    expect(new Set(questions.flatMap(itemsIn)).size).toBe(Object.keys(TORQUES).length);
  });

  test('wrong rules are known by name', () => {
    const ids = ['1/LR', '2/B24', '4/B24', 'R/LR'];
    const question = questions.find((asked) => ids.every((id) => itemsIn(asked).includes(id)))!;
    const said = (...order: string[]) => judge(question, { form: 'order', order }).slipUps;
    // by the size of the ratio: 2.84, 2.21, 1.57, 0.69
    expect(said('1/LR', 'R/LR', '2/B24', '4/B24')).toEqual(['output-torque-everywhere']);
    // R and 4 push backward
    expect(said('1/LR', '2/B24', '4/B24', 'R/LR')).toEqual(['sign-counted', 'more-elements-lower']);
    expect(said('4/B24', '2/B24', '1/LR', 'R/LR')).toEqual(['order-turned-round']);
  });
});

test('asks nothing of a unit with one range', () => {
  expect(torqueOrder.facts(unitOf('textbook-sun-held-23-55'))).toEqual([]);
});

describeRules(torqueOrder);
