import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { actualRange } from '../../../src/core/questions/families/actual-range.ts';
import { scanOf } from '../../../src/core/questions/families/scan-parts.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { makeUnit, type Unit } from '../../../src/core/unit/unit.ts';
import { deckOf, everyUnit, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const trainNamed = (id: string) => PUBLISHED.find((train) => train.id === id)!;
const unitOf = (id: string) => makeUnit(deckOf(trainNamed(id)));

const told = ({ prompt }: Question) => ({
  commanded: String((prompt.values!.commanded as Phrase).values!.id),
  input: Number(prompt.values!.input),
  output: Number(prompt.values!.output),
});

/** The question with this commanded range, these ints for the share of sound units, and output / 50. */
const scripted = (unit: Unit, actual: string, commanded: string, output: number) => {
  const real = randomFrom(7);
  const picks = [actual, commanded];
  const ints = [actual === commanded ? 1 : 2, output / 50];
  return actualRange.pose(unit, 'skill:actual-range', {
    ...real,
    int: (low, high) => ints.shift() ?? real.int(low, high),
    pick: <T>(items: readonly T[]): T => {
      const wanted = picks.shift();
      return items.find((item) => (item as { id?: string }).id === wanted) ?? real.pick(items);
    },
  })!;
};

describe('actual-range on published ratios (tests/published names their sources)', () => {
  test.each([
    // Lepelletier as published: 4.171 2.340 1.521 1.143 0.867 0.691; input = output × ratio, to whole rpm
    ['lepelletier-6-a', '3', '2', 1000, 1521],
    ['lepelletier-6-a', '2', '3', 1000, 2340],
    ['lepelletier-6-a', '6', '5', 2000, 1382],
    ['four-range-two-crossed-sets', '2', '3', 1500, 2358],
  ])('%s really in %s, commanded %s, %d rpm out: %d rpm in', (train, actual, commanded, output, input) => {
    const posed = scripted(unitOf(train), actual, commanded, output);
    // the published ratio is rounded: within half its last digit times the output
    const { decimals } = trainNamed(train).chart[0]!;
    expect(Math.abs(Number(posed.prompt.values!.input) - input)).toBeLessThanOrEqual(
      (output * 10 ** -decimals) / 2 + 1,
    );
    expect(judge(posed, { form: 'one', pick: actual }).right).toBe(true);
    expect(judge(posed, { form: 'one', pick: commanded }).slipUps).toContain('commanded-not-actual');
  });

  test('with the commanded range really there, it is right', () => {
    const posed = scripted(unitOf('lepelletier-6-a'), '3', '3', 1000);
    expect(posed.answers).toEqual([{ form: 'one', pick: '3' }]);
    expect(judge(posed, { form: 'one', pick: '2' }).slipUps).toEqual([
      'neighbour-range',
      'range-before-assumed',
    ]);
  });

  test('over many seeds the right range is the one whose published ratio is nearest by share', () => {
    let asked = 0;
    for (const train of PUBLISHED.filter(({ chart }) => chart.length > 3)) {
      const unit = makeUnit(deckOf(train));
      for (let seed = 0; seed < 40; seed++) {
        const question = ask(unit, actualRange, seed);
        if (!question) continue;
        asked++;
        const { input, output } = told(question);
        const nearest = train.chart
          .filter(({ publishedRatio }) => publishedRatio > 0)
          .map(({ range, publishedRatio }) => ({
            range,
            off: Math.abs(input / output / publishedRatio - 1),
          }))
          .sort((a, b) => a.off - b.off)[0]!;
        expect(question.answers[0]).toEqual({ form: 'one', pick: nearest.range });
        expect(output).toBeGreaterThan(0);
      }
    }
    expect(asked).toBeGreaterThan(200);
  });

  test('the commanded range is right some of the time, so striking it out does not pay', () => {
    const questions = Array.from(
      { length: 200 },
      (_, seed) => ask(unitOf('lepelletier-6-a'), actualRange, seed)!,
    );
    const right = questions.filter(
      (question) => judge(question, { form: 'one', pick: told(question).commanded }).right,
    ).length;
    expect(right).toBeGreaterThan(15);
    expect(right).toBeLessThan(80);
  });

  test('ranges of one ratio, or closer than both tolerances, are never asked', () => {
    // common practice: 3 to 10 % of the ratio; at 3 % two ranges must stand 6 % apart
    for (const unit of everyUnit()) {
      const apart = scanOf(unit)!.apart;
      for (const range of apart)
        for (const other of scanOf(unit)!.forward) {
          const [a, b] = [range, other].map(({ ratio }) => ratio.valueOf()) as [number, number];
          if (other !== range) expect(Math.abs(a - b) / Math.max(a, b)).toBeGreaterThan(0.058);
        }
    }
    const ids = scanOf(unitOf('ravigneaux-4-a'))!.apart.map(({ id }) => id);
    expect(ids).toEqual(['2', '3', '4']);
  });
});

describeRules(actualRange);
