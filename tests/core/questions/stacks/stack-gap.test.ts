import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stackGap } from '../../../../src/core/questions/families/stacks/stack-gap.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { packUnit } from './packs.ts';

const unit = packUnit();

/** The question on the pack with this plate covered. */
function covering(stack: string, item: string) {
  for (let seed = 0; seed < 300; seed++) {
    const question = ask(unit, stackGap, seed, `stack:${stack}/order`);
    if (question?.drawing?.kind === 'stack' && question.drawing.covered?.[0] === item) return question;
  }
  throw new Error(`${item} is never covered`);
}

describe('stack-gap, by hand from packs.ts', () => {
  test.each([
    // a friction of C1 lies between steels; the mirrored place of f1 (4th of 10) is the 7th, a steel
    ['C1', 'f1', 'C1/f1', []],
    ['C1', 'f1', 'C1/s1', ['likes-together']],
    ['C1', 'f1', 'B1/f1', ['other-pack-plate']],
    ['C1', 'f1', 'B2/f1', ['other-pack-plate']],
    ['C1', 'backing', 'B1/backing', ['other-pack-plate']],
    ['C1', 'backing', 'C1/ring', ['likes-together']],
    // the backing is the second from the opening, the wave the second from the floor
    ['C1', 'backing', 'C1/wave', ['opposite-end-plate']],
  ])('%s, %s covered, taken for %s: %j', (stack, item, answer, slipUps) => {
    const verdict = judge(covering(stack, item), { form: 'one', pick: answer });
    expect(verdict.right).toBe(slipUps.length === 0);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('no two choices are called alike', () => {
    const say = makeSay(unit.deck);
    for (let seed = 0; seed < 100; seed++) {
      const { space } = ask(unit, stackGap, seed)!;
      const labels = space.form === 'one' ? space.options.map(({ label }) => say(label)) : [];
      expect(new Set(labels).size).toBe(labels.length);
    }
  });
});

describeRules(stackGap, { seeds: 100 });
