import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { slipSpeed } from '../../../src/core/questions/families/slip-speed.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { parseRational, rational } from '../../../src/core/rational.ts';
import { slipOf } from '../../../src/core/speeds/slip.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const trainNamed = (id: string) => PUBLISHED.find((train) => train.id === id)!;

/** The question with this range, output / 50 and slip / 10 (or percent of the input). */
const scripted = (train: string, fact: string, range: string, output: number, slip: number) => {
  const real = randomFrom(1);
  const ints = [output / 50, slip];
  return slipSpeed.pose(makeUnit(deckOf(trainNamed(train))), fact, {
    ...real,
    int: () => ints.shift()!,
    pick: <T>(items: readonly T[]): T => items.find((item) => (item as { id?: string }).id === range)!,
  })!;
};

describe('the arithmetic, on rows worked out by hand from slip = input − output × ratio', () => {
  test.each([
    // input, output, ratio commanded, slip rpm, % of input, % of expected
    [2500, 1000, '2.34', '160', '6.40', '6.84'],
    [3000, 2000, '1.45', '100', '3.33', '3.45'],
    [1800, 2600, '0.69', '6', '0.33', '0.33'],
    [1800, 2600, '0.70', '-20', '-1.11', '-1.10'],
  ])(
    '%d in, %d out, %s : 1 slips %s rpm, %s % of input, %s % of expected',
    (input, output, ratio, ...expected) => {
      const slip = slipOf({ inputRpm: rational(input), outputRpm: rational(output) }, parseRational(ratio)!);
      if (!slip.ok) throw new Error(slip.error.code);
      const { slipRpm, ofInput, ofExpected } = slip.value;
      expect([
        slipRpm.toFraction(),
        (ofInput.valueOf() * 100).toFixed(2),
        (ofExpected.valueOf() * 100).toFixed(2),
      ]).toEqual(expected);
    },
  );
});

describe('slip-speed on published ratios (tests/published names their sources)', () => {
  // Lepelletier 2 is published as 2.340: 1000 rpm out and 160 rpm of slip are 2500 rpm in
  test('2500 in, 1000 out, 2.34 : 1', () => {
    const posed = scripted('lepelletier-6-a', 'skill:slip-speed', '2', 1000, 16);
    expect(posed.prompt.values).toMatchObject({ input: '2500', output: '1000', ratio: '2.340' });
    const said = (value: string) => judge(posed, { form: 'number', value });
    expect(said('160').right).toBe(true);
    expect(said('1500').slipUps).toEqual(['output-times-nothing']);
    // 2500 − 1000 ÷ 2.34
    expect(said('2072.6').slipUps).toEqual(['inverse-ratio']);
    // 2500 − 1000 × 1.521, the row below
    expect(said('979').slipUps).toEqual(['neighbour-range']);
    expect(said('170')).toMatchObject({ right: false, slipUps: [] });
  });

  test('the share is of the input speed, and a share of the expected speed is told apart', () => {
    // 1000 × 2.340 ÷ 0.9 = 2600 rpm in: 260 rpm are 10.0 % of 2600 and 11.1 % of 2340
    const posed = scripted('lepelletier-6-a', 'skill:slip-share', '2', 1000, 10);
    expect(posed.prompt.values).toMatchObject({ input: '2600', output: '1000' });
    expect(judge(posed, { form: 'number', value: '10.0' }).right).toBe(true);
    expect(judge(posed, { form: 'number', value: '11.1' }).slipUps).toEqual(['slip-over-expected']);
  });

  test('over many seeds the published ratio gives the answer, within the tolerance that is told', () => {
    let asked = 0;
    for (const train of PUBLISHED) {
      const unit = makeUnit(deckOf(train));
      for (let seed = 0; seed < 30; seed++) {
        const question = ask(unit, slipSpeed, seed, 'skill:slip-speed');
        if (question?.answers[0].form !== 'number') continue;
        asked++;
        const { input, output, tolerance, range } = question.prompt.values!;
        const { id } = (range as Phrase).values!;
        const row = train.chart.find((candidate) => candidate.range === id)!;
        const published = Number(input) - Number(output) * row.publishedRatio;
        // a published ratio may be a whole unit of its last digit off where it is printed cut, not rounded
        const room = Number(tolerance) + Number(output) * 10 ** -row.decimals;
        const answer = parseRational(question.answers[0].value)!.valueOf();
        expect(Math.abs(published - answer)).toBeLessThan(room);
        expect(answer).toBeGreaterThan(0);
      }
    }
    expect(asked).toBeGreaterThan(200);
  });
});

describeRules(slipSpeed);
