import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { shaftSpeed } from '../../../src/core/questions/families/shaft-speed.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

/** The question that asks for this shaft in this range, and the input speed it tells. */
function asking(id: string, range: string, shaft: string): { question: Question; rpm: number } {
  const unit = unitOf(id);
  for (let seed = 0; seed < 60; seed++) {
    const question = ask(unit, shaftSpeed, seed, `range:${range}/speeds`)!;
    if (question.drawing?.kind === 'train' && question.drawing.litShafts?.[0] === shaft)
      return { question, rpm: Number(question.prompt.values!.rpm) };
  }
  throw new Error(`${shaft} is never asked in ${range}`);
}

describe('shaft-speed, worked by hand (teeth and charts in tests/published)', () => {
  test.each([
    // Ravigneaux R: 30·1 + 69·out = 0, then 69·out − 24·s1 = 0
    ['ravigneaux-4-a', 'R', 's1', -30 / 24],
    // Ravigneaux 4: carrier at 1, large sun held: out = 99/69, then 69·out − 24·s1 = 45
    ['ravigneaux-4-a', '4', 's1', (99 - 45) / 24],
    // crossed sets 4: front carrier at 1, front sun held: out = 90/62, then 45·s + 83 = 128·out
    ['four-range-two-crossed-sets', '4', 'sun-rear', ((128 * 90) / 62 - 83) / 45],
    // crossed sets R: out = −28/62 with the front carrier held, then 45·s + 0 = 128·out
    ['four-range-two-crossed-sets', 'R', 'sun-rear', (-128 * 28) / 62 / 45],
    // six-speed, any range: 37·0 + 71·1 = 108·c1
    ['lepelletier-6-a', '6', 'c1', 71 / 108],
  ])('%s range %s: %s turns %d times the input', (id, range, shaft, times) => {
    const { question, rpm } = asking(id, range, shaft);
    const given = (value: number) => judge(question, { form: 'number', value: String(Math.round(value)) });
    expect(given(times * rpm).right).toBe(true);
    expect(given(times * rpm + rpm / 250).right).toBe(true);
    expect(given(times * rpm + rpm / 100)).toEqual({ right: false, slipUps: [], missed: [] });
    expect(given(0).slipUps).toContain('assumed-still');
    expect(given(rpm).slipUps).toContain('turns-with-input');
    if (times < 0) expect(given(-times * rpm).slipUps).toContain('sign-lost');
  });

  test('pinions in pairs taken for single ones turn the small sun the wrong way', () => {
    const { question, rpm } = asking('ravigneaux-4-a', 'R', 's1');
    const verdict = judge(question, { form: 'number', value: String((30 / 24) * rpm) });
    expect(verdict.slipUps).toEqual(['sign-lost', 'pinion-pair-missed']);
  });

  test('the steps are those on paper', () => {
    const { question } = asking('ravigneaux-4-a', '4', 's1');
    const say = makeSay(null);
    expect(question.explanation.more.slice(5, 7).map(say)).toEqual([
      'Plarge: 30 × 0 + 69 × out = 99 × 1, so out = 1.4348.',
      'Psmall: 69 × 1.4348 − 24 × s1 = 45 × 1, so s1 = 2.25.',
    ]);
  });

  test('asks of no shaft that is held, driven straight, or left open', () => {
    const shafts = new Set(
      PUBLISHED.map((train) => makeUnit(deckOf(train))).flatMap((unit) =>
        shaftSpeed.facts(unit).flatMap((fact) =>
          Array.from({ length: 12 }, (_, seed) => {
            const { answers, prompt } = ask(unit, shaftSpeed, seed, fact)!;
            const [numerator, denominator] = (answers[0].form === 'number' ? answers[0].value : '').split(
              '/',
            );
            return Number(numerator) / Number(denominator ?? 1) / Number(prompt.values!.rpm);
          }),
        ),
      ),
    );
    expect(shafts.size).toBeGreaterThan(30);
    for (const times of shafts) {
      expect(Math.abs(times)).toBeGreaterThan(0.05);
      expect(Math.abs(times - 1)).toBeGreaterThan(0.05);
    }
    // direct drive: everything turns as one
    expect(shaftSpeed.facts(unitOf('ravigneaux-4-a'))).not.toContain('range:3/speeds');
  });
});

describeRules(shaftSpeed);
