import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { meanReading } from '../../../../src/core/questions/families/measuring/mean-reading.ts';
import { repeatReadings } from '../../../../src/core/questions/families/measuring/repeat-readings.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { everyUnit } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { fitOf, mm, unitWithFits } from './bench.ts';

const unit = unitWithFits(fitOf(mm, '0.20', '0.45', { spread: mm('0.05') }));

describe('mean-reading', () => {
  // readings about 0.30: steps of 0.01 off it
  const posed = (...off: number[]) =>
    meanReading.pose(unit, 'skill:mean-reading', scripted({ ints: [10, ...off] }))!;

  test.each([
    // Chrysler clutch packs are read at four places round the drum; figures here by hand
    [[0, 6, -4, 2], '0.31', '0.30 · 0.36 · 0.26 · 0.32'],
    [[-6, 5, 5, 5], '0.3225', '0.24 · 0.35 · 0.35 · 0.35'],
    [[6, -6, -6, -5], '0.2725', '0.36 · 0.24 · 0.24 · 0.25'],
  ])('%o: %s', (off, mean, readings) => {
    const question = posed(...off);
    expect(question.prompt.values!.readings).toMatchObject({ values: { readings } });
    expect(judge(question, { form: 'number', value: mean }).right).toBe(true);
    expect(judge(question, { form: 'number', value: Number(mean).toFixed(2) }).right).toBe(true);
    expect(judge(question, { form: 'number', value: (Number(mean) + 0.007).toFixed(4) }).right).toBe(false);
  });

  test('slip-ups are known', () => {
    const slips = (value: string) => judge(posed(-6, 5, 5, 5), { form: 'number', value }).slipUps;
    expect(slips('0.24')).toEqual(['first-reading-only', 'lowest-reading']);
    expect(slips('0.295')).toEqual(['middle-of-extremes']);
    expect(slips('1.29')).toEqual(['sum-not-divided']);
    expect(slips('0.35')).toEqual(['highest-reading']);
  });
});

describe('repeat-readings', () => {
  test('every verdict follows from spread and mean as they are printed', () => {
    const seen = new Map<string, number>();
    for (const one of everyUnit())
      for (let seed = 0; seed < 60; seed++) {
        const question = ask(one, repeatReadings, seed);
        if (question?.space.form !== 'pair' || question.answers[0].form !== 'pair') continue;
        const { low, high, spread } = question.prompt.values!;
        for (const { id, label } of question.space.left) {
          const readings = String(label.values!.readings).split(' · ').map(Number);
          const apart = Math.max(...readings) - Math.min(...readings) > Number(spread) + 1e-9;
          const mean = readings.reduce((sum, reading) => sum + reading, 0) / 4;
          const within = mean >= Number(low) && mean <= Number(high);
          const verdict = apart ? 'reseat' : within ? 'accept' : 'out-of-limits';
          expect(question.answers[0].pairs[id]).toBe(verdict);
          seen.set(verdict, (seen.get(verdict) ?? 0) + 1);
        }
      }
    for (const verdict of ['accept', 'reseat', 'out-of-limits'])
      expect(seen.get(verdict)).toBeGreaterThan(50);
  });

  test('without a word on spread there is nothing to judge by', () => {
    expect(repeatReadings.facts(unitWithFits(fitOf(mm, '0.20', '0.45')))).toEqual([]);
  });
});

describeRules(meanReading, { seeds: 60 });
describeRules(repeatReadings, { seeds: 60 });
