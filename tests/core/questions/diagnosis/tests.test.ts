import { describe, expect, test } from 'vitest';
import { nextTest } from '../../../../src/core/questions/families/diagnosis/next-test.ts';
import { predictedGauge } from '../../../../src/core/questions/families/diagnosis/predicted-gauge.ts';
import { separatingTest } from '../../../../src/core/questions/families/diagnosis/separating-test.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../../src/core/questions/phrase.ts';
import type { Question } from '../../../../src/core/questions/question.ts';
import { describeRules } from '../rules.ts';
import { byHand, faultIn, questionsOf, readingIn } from './by-hand.ts';

const optionsOf = ({ space }: Question) =>
  space.form === 'one'
    ? space.options
    : space.form === 'pair'
      ? space.left
      : space.form === 'order'
        ? space.items
        : [];

describe('against what was worked by hand on the published trains (tests/core/faults/worked.ts)', () => {
  test('separating-test: the one picked shows two things by hand, every other one and the same', () => {
    let held = 0;
    for (const { train, question } of questionsOf(separatingTest)) {
      const suspects = ['first', 'second'].map((name) => faultIn(question.prompt.values![name] as Phrase));
      for (const { id, label } of optionsOf(question)) {
        const [one, other] = suspects.map((fault) => byHand(train, fault, label));
        if (one === undefined || other === undefined) continue;
        held++;
        expect(judge(question, { form: 'one', pick: id }).right, `${train} ${suspects} ${id}`).toBe(
          one !== other,
        );
      }
    }
    expect(held).toBeGreaterThan(100);
  });

  test('next-test: the table shown is the one worked by hand, and heaps of it give the order', () => {
    let held = 0;
    for (const { train, question } of questionsOf(nextTest)) {
      if (question.drawing?.kind !== 'table' || question.answers[0].form !== 'order')
        throw new Error('no table');
      const { columns, rows } = question.drawing;
      for (const { head, cells } of rows)
        for (const [column, cell] of cells.entries()) {
          const hand = byHand(train, faultIn(head), columns[column]!);
          if (hand === undefined) continue;
          held++;
          expect(readingIn(cell)).toBe(hand);
        }
      // Struck out on average is n − Σk²/n; effort: road test 1, voltage 2, resistance 3, gauge 4 (D3).
      const efforts: Record<string, number> = { road: 1, voltage: 2, resistance: 3, gauge: 4 };
      const gains = optionsOf(question).map(({ id }, column) => {
        const heaps = new Map<string, number>();
        for (const { cells } of rows) {
          const reading = readingIn(cells[column]!);
          heaps.set(reading, (heaps.get(reading) ?? 0) + 1);
        }
        const left = [...heaps.values()].reduce((sum, heap) => sum + heap * heap, 0) / rows.length;
        return { id, gain: (rows.length - left) / efforts[id.split(':')[0]!]! };
      });
      gains.sort((a, b) => b.gain - a.gain);
      expect(question.answers[0].order).toEqual(gains.map(({ id }) => id));
    }
    expect(held).toBeGreaterThan(500);
  });

  test('predicted-gauge: ports as the published chart has them, none behind a lost feed', () => {
    let held = 0;
    for (const { train, question } of questionsOf(predictedGauge)) {
      if (question.answers[0].form !== 'pair') throw new Error('no pairs');
      const fault = faultIn(question.prompt.values!.fault as Phrase);
      for (const { id, label } of optionsOf(question)) {
        const hand = byHand(train, fault, label);
        if (hand === undefined) continue;
        held++;
        expect(question.answers[0].pairs[id], `${train} ${fault} ${id}`).toBe(hand);
      }
    }
    expect(held).toBeGreaterThan(100);
  });
});

test('a gauge that is taken to read the plates is known by name', () => {
  const names = new Set(
    questionsOf(predictedGauge).flatMap(({ question }) => question.lures.map(({ slipUp }) => slipUp)),
  );
  expect(names).toContain('gauge-reads-the-plates');
});

describeRules(separatingTest, { seeds: 40 });
describeRules(nextTest, { seeds: 40 });
describeRules(predictedGauge, { seeds: 40 });
