import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { shiftGuard } from '../../../src/core/questions/families/shift-guard.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

/** Published ratios of the six-speed (tests/published names their source). */
const RATIOS: Readonly<Record<string, number>> = {
  1: 4.171,
  2: 2.34,
  3: 1.521,
  4: 1.143,
  5: 0.867,
  6: 0.691,
};

const questions = Array.from({ length: 60 }, (_, seed) => ask(unitOf('lepelletier-6-a'), shiftGuard, seed)!);
const [output, engine, limit] = ['output', 'engine', 'limit'].map(
  (name) => (question: Question) => Number(question.prompt.values![name]),
) as [(q: Question) => number, (q: Question) => number, (q: Question) => number];
const nowIn = ({ prompt }: Question) => String((prompt.values!.range as Phrase).values!.id);

const pairs = (question: Question, markFor: (ratio: number, now: number) => string) => ({
  form: 'pair' as const,
  pairs: Object.fromEntries(
    Object.entries(RATIOS)
      .filter(([id]) => id !== nowIn(question))
      .map(([id, ratio]) => [id, markFor(ratio, RATIOS[nowIn(question)]!)]),
  ),
});

describe('shift-guard with published ratios', () => {
  test('the input turns at output speed times ratio', () => {
    for (const question of questions) {
      const right = pairs(question, (ratio, now) =>
        output(question) * ratio > limit(question) ? 'too-fast' : ratio < now ? 'slower' : 'within',
      );
      expect(judge(question, right).right).toBe(true);
      expect(Object.values(right.pairs)).toContain('too-fast');
    }
  });

  test('wrong rules are known by name', () => {
    const seen = new Set<string>();
    for (const question of questions) {
      const said = (markFor: (ratio: number, now: number) => string) => {
        const { slipUps } = judge(question, pairs(question, markFor));
        for (const slipUp of slipUps) seen.add(slipUp);
        return slipUps;
      };
      const lower = (ratio: number, now: number, mark: string) => (ratio > now ? mark : 'slower');
      expect(said((ratio, now) => lower(ratio, now, 'within'))).toContain('limit-left-out');
      said((ratio, now) => lower(ratio, now, 'too-fast'));
      said((ratio, now) =>
        (engine(question) * ratio) / now > limit(question) ? 'too-fast' : ratio < now ? 'slower' : 'within',
      );
      const input = output(question) * RATIOS[nowIn(question)]!;
      said((ratio, now) =>
        (input * now) / ratio > limit(question) ? 'too-fast' : ratio > now ? 'slower' : 'within',
      );
    }
    expect(seen).toEqual(
      new Set([
        'limit-left-out',
        'every-downshift-too-fast',
        'engine-for-input',
        'inverse-ratio',
        'only-next-allowed',
      ]),
    );
  });

  test('no speed is near the limit', () => {
    for (const question of questions)
      for (const ratio of Object.values(RATIOS))
        expect(Math.abs(output(question) * ratio - limit(question)) / limit(question)).toBeGreaterThan(0.029);
  });
});

test('one range has nothing to shift to', () => {
  expect(shiftGuard.facts(unitOf('textbook-sun-held-23-55'))).toEqual([]);
});

describeRules(shiftGuard);
