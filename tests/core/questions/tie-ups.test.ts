import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { tieUps } from '../../../src/core/questions/families/tie-ups.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));
const crossed = unitOf('four-range-two-crossed-sets');
const questions = Array.from({ length: 120 }, (_, seed) => ask(crossed, tieUps, seed)!);
const idsOf = (question: (typeof questions)[number]) =>
  question.space.form === 'set' ? question.space.options.map((option) => option.id) : [];
const tiedIn = ({ answers: [answer] }: (typeof questions)[number]) =>
  answer.form === 'set' ? answer.picks : [];
const about = (id: string) => questions.filter((question) => idsOf(question).includes(id));

describe('tie-ups on the four-range crossed sets (teeth and chart in tests/published)', () => {
  test.each([
    // OD drives the front carrier, LR holds it; RV drives the front sun, B24 holds it
    ['OD+LR', true],
    ['RV+B24', true],
    // front sun and front carrier held: ring, that is the output, held; the input is on neither
    ['B24+LR', false],
    // front sun and front carrier both at input speed, or both suns: everything turns as one
    ['OD+RV', false],
    ['UD+RV', false],
    ['UD+OD+RV', false],
    // a range, and one element more that wants another speed
    ['UD+B24', false],
    ['UD+B24+LR', true],
    ['UD+OD+LR', true],
    ['OD+B24+LR', true],
  ])('%s ties up: %s', (id, tied) => {
    expect(about(id).length).toBeGreaterThan(0);
    for (const question of about(id)) expect(tiedIn(question).includes(id)).toBe(tied);
  });

  test('one that only holds the output, counted as well, is named', () => {
    const [question] = about('B24+LR');
    const verdict = judge(question!, { form: 'set', picks: [...tiedIn(question!), 'B24+LR'] });
    expect(verdict.right).toBe(false);
    expect(verdict.slipUps).toContain('held-output-counted');
  });

  test('a range counted as well is named', () => {
    const [question] = about('UD+B24');
    const verdict = judge(question!, { form: 'set', picks: [...tiedIn(question!), 'UD+B24'] });
    expect(verdict.slipUps).toContain('pair-from-chart');
  });

  test('the proof ends in an equation that cannot be true, or in an input that is held', () => {
    const say = makeSay(crossed.deck);
    for (const question of questions)
      expect(say(question.explanation.more.at(-1)!)).toMatch(
        /cannot be true\.$|^So the input itself is held to the case\.$/,
      );
    // UD drives the rear sun; B24 and LR stop both members of the front set, and so the rear carrier and ring
    const proofs = questions
      .filter((question) => tiedIn(question)[0] === 'UD+B24+LR')
      .map((question) => say(question.explanation.more.at(-1)!));
    expect(new Set(proofs)).toEqual(new Set(['R: 45 × 1 + 83 × 0 = 128 × 0 cannot be true.']));
  });

  test('has at least one that ties up and one that does not, and at most six', () => {
    for (const question of questions) {
      expect(tiedIn(question).length).toBeGreaterThan(0);
      expect(idsOf(question).length).toBeGreaterThan(tiedIn(question).length);
      expect(idsOf(question).length).toBeLessThanOrEqual(6);
    }
  });
});

test('asks nothing of a train with one brake', () => {
  expect(tieUps.facts(unitOf('textbook-sun-held-23-55'))).toEqual([]);
});

describeRules(tieUps);
