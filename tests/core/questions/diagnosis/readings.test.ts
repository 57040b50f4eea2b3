import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { airCheck } from '../../../../src/core/questions/families/diagnosis/air-check.ts';
import { firstBreak } from '../../../../src/core/questions/families/diagnosis/first-break.ts';
import { slipOrRatio } from '../../../../src/core/questions/families/diagnosis/slip-or-ratio.ts';
import type { Phrase } from '../../../../src/core/questions/phrase.ts';
import type { Question } from '../../../../src/core/questions/question.ts';
import { PUBLISHED } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { questionsOf, unitOn } from './by-hand.ts';

const pairsOf = ({ answers: [answer] }: Question) => (answer.form === 'pair' ? answer.pairs : {});
const rowsOf = ({ drawing }: Question) => (drawing?.kind === 'table' ? drawing.rows : []);
const keysOf = (phrases: readonly Phrase[]) => phrases.map(({ key }) => key.split('.')[1]);

describe('first-break, by hand along the chain', () => {
  // Gives unplugged; commanded, voltage, current, after the solenoid, at the port: the first that does not follow.
  const WORKED: Readonly<Record<string, string>> = {
    'none: on no-voltage off none none': 'driver',
    'none: on voltage off none none': 'winding',
    'none: on voltage on none none': 'valve',
    'none: on voltage on full none': 'feed',
    'none: on voltage on full full': 'element',
    'none: off no-voltage off full full': 'valve',
    'none: off no-voltage off none none': 'element',
    'full: on no-voltage off full full': 'driver',
    'full: on voltage off full full': 'winding',
    'full: on voltage on full full': 'valve',
    'full: on voltage on none none': 'element',
    'full: off no-voltage off none none': 'valve',
    'full: off no-voltage off full none': 'feed',
    'full: off no-voltage off full full': 'element',
  };

  test('every case drawn is one of them', () => {
    const met = new Set<string>();
    for (const { question } of questionsOf(firstBreak, 60))
      for (const [place, { head, cells }] of rowsOf(question).entries()) {
        const read = `${head.values!.gives}: ${keysOf(cells).slice(0, 5).join(' ')}`;
        met.add(read);
        expect(pairsOf(question)[['A', 'B', 'C'][place]!], read).toBe(WORKED[read]);
      }
    expect(met.size).toBeGreaterThan(8);
  });
});

test('slip-or-ratio by the published ratios: right, drifting, one factor for both, or one range alone', () => {
  const train = PUBLISHED.find(({ id }) => id === 'lepelletier-6-a')!;
  const verdicts = new Set<string>();
  for (let seed = 0; seed < 60; seed++) {
    const question = ask(unitOn(train.id), slipOrRatio, seed)!;
    for (const name of ['A', 'B', 'C', 'D']) {
      const factors = rowsOf(question)
        .filter(({ head }) => head.values!.name === name)
        .map(({ head, cells }) => {
          const range = (head.values!.range as Phrase).values!.id;
          const { publishedRatio } = train.chart.find((row) => row.range === range)!;
          return cells.map(({ values }) => Number(values!.input) / Number(values!.output) / publishedRatio);
        });
      const steady = factors.every(([one, other]) => Math.abs(one! / other! - 1) < 0.02);
      const off = factors.filter(([one]) => Math.abs(one! - 1) > 0.03);
      const alike = Math.abs(factors[0]![0]! / factors[1]![0]! - 1) < 0.02;
      const hand = !steady
        ? 'slip'
        : off.length === 0
          ? 'as-commanded'
          : off.length === 2 && alike
            ? 'wrong-count'
            : 'other-range';
      verdicts.add(hand);
      expect(pairsOf(question)[name]).toBe(hand);
    }
  }
  expect(verdicts.size).toBe(4);
});

// common practice, no source
test.each([
  ['thud', 'sound'],
  ['nothing', 'blocked'],
  ['hiss', 'seal'],
  ['two', 'crosses'],
])('air-check: %s is %s', (noticed, verdict) => {
  let met = 0;
  for (const { question } of questionsOf(airCheck, 20))
    if (question.space.form === 'pair')
      for (const { id, label } of question.space.left)
        if ((label.values!.noticed as Phrase).key === `air-check.${noticed}`) {
          met++;
          expect(pairsOf(question)[id]).toBe(verdict);
        }
  expect(met).toBeGreaterThan(20);
});

describeRules(firstBreak, { seeds: 40 });
describeRules(slipOrRatio, { seeds: 40 });
describeRules(airCheck, { seeds: 40 });
