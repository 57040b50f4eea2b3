import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stackCount } from '../../../../src/core/questions/families/stacks/stack-count.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Question } from '../../../../src/core/questions/question.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { PACKS, packUnit } from './packs.ts';

const unit = packUnit();
const number = (value: string) => ({ form: 'number' as const, value });

function asked(fact: string, what: string): Question {
  const say = makeSay(unit.deck);
  for (let seed = 0; seed < 50; seed++) {
    const question = ask(unit, stackCount, seed, fact)!;
    if (say(question.prompt).includes(`many ${what}`)) return question;
  }
  throw new Error(`${what} of ${fact} never asked`);
}

describe('stack-count, counted by hand from packs.ts', () => {
  test.each([
    ['stack:C1/count', 'friction', '3', true, []],
    ['stack:C1/count', 'steel', '3', true, []],
    // three steels and one backing plate; two frictions in B1; one in B2
    ['stack:C1/count', 'steel', '4', false, ['end-plates-counted']],
    ['stack:C1/count', 'friction', '2', false, ['other-pack-count']],
    ['stack:C1/count', 'friction', '1', false, ['other-pack-count']],
    ['stack:B1/count', 'friction', '2', true, []],
    ['stack:B1/count', 'friction', '1', false, ['other-kind-counted', 'other-pack-count']],
    ['stack:B1/count', 'steel', '3', false, ['end-plates-counted', 'other-pack-count']],
    // 3 + 2 + 1 frictions; 3 + 1 steels
    ['kit:friction/count', 'friction', '6', true, []],
    ['kit:friction/count', 'friction', '5', false, ['one-pack-left-out']],
    ['kit:friction/count', 'friction', '4', false, ['other-kind-counted', 'one-pack-left-out']],
    ['kit:friction/count', 'friction', '3', false, ['one-pack-left-out']],
    ['kit:steel/count', 'steel', '4', true, []],
    ['kit:steel/count', 'steel', '7', false, ['end-plates-counted']],
    ['kit:steel/count', 'steel', '6', false, ['other-kind-counted']],
  ])('%s, %s: %s is right %s', (fact, what, value, right, slipUps) => {
    const verdict = judge(asked(fact, what), number(value));
    expect(verdict.right).toBe(right);
    expect([...verdict.slipUps].sort()).toEqual([...slipUps].sort());
  });

  test('a kit is only counted where every pack is verified', () => {
    const doubtful = { ...PACKS.B2, unsure: true } as const;
    expect(stackCount.facts(packUnit([PACKS.C1, PACKS.B1, doubtful]))).toEqual([
      'stack:C1/count',
      'stack:B1/count',
    ]);
  });
});

describeRules(stackCount, { seeds: 100 });
