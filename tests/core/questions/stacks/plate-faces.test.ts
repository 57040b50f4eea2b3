import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { plateFaces } from '../../../../src/core/questions/families/stacks/plate-faces.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { describeRules } from '../rules.ts';
import { PACKS, packUnit } from './packs.ts';

const question = ask(packUnit(), plateFaces, 0)!;
const ids = ['C1/backing', 'B1/apply', 'B1/backing', 'B2/apply'] as const;
const told = (...towards: string[]) => ({
  form: 'pair' as const,
  pairs: Object.fromEntries(ids.map((id, index) => [id, towards[index] === 'F' ? 'floor' : 'opening'])),
});

describe('plate-faces, by hand from packs.ts: C1 backing to the opening, B1 both to the floor, B2 apply to the opening', () => {
  test.each([
    ['OFFO', true, [], []],
    ['FOOF', false, ['mirror-view'], []],
    ['FFFF', false, ['all-face-alike'], []],
    ['OOOO', false, ['all-face-alike'], []],
    ['OOFO', false, ['plate-turned-round'], ['plate:B1/apply/face']],
    ['FOFO', false, [], []],
  ])('%s: right %s', (towards, right, slipUps, missed) => {
    expect(judge(question, told(...towards))).toEqual({ right, slipUps, missed });
  });

  test('four two-way plates are guessed once in sixteen; with fewer than three none is asked', () => {
    expect(question.guessRate).toBe(1 / 16);
    expect(plateFaces.facts(packUnit([PACKS.C1, PACKS.B2]))).toEqual([]);
  });
});

describeRules(plateFaces, { seeds: 100 });
