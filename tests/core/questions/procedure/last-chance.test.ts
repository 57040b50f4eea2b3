import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { lastChance } from '../../../../src/core/questions/families/procedure/last-chance.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { describeRules } from '../rules.ts';
import { withSteps, workUnit } from './works.ts';

const unit = workUnit();

/** The question about a check with this step among the choices. */
function offering(check: string, step: string) {
  for (let seed = 0; seed < 100; seed++) {
    const question = ask(unit, lastChance, seed, `check:job/${check}/closes`)!;
    if (question.space.form === 'one' && question.space.options.some(({ id }) => id === step))
      return question;
  }
  throw new Error(`${step} is never offered`);
}

describe('last-chance, by hand from works.ts', () => {
  test.each([
    // stripping: possible once f is done, gone with g, which comes before h in every order
    ['play', 'g', true, []],
    ['play', 'h', false, ['chance-missed']],
    ['play', 'f', false, ['not-yet-possible']],
    ['play', 'a', false, ['not-yet-possible']],
    ['play', 'e', false, ['harmless-step-blamed']],
    // assembly: possible once g is set in (h before it), gone with f, after which nothing comes
    ['again', 'f', true, []],
    ['again', 'g', false, ['not-yet-possible']],
    ['again', 'h', false, ['not-yet-possible']],
    ['again', 'm', false, ['harmless-step-blamed']],
  ])('%s, answered %s: right %s', (check, step, right, slipUps) => {
    const verdict = judge(offering(check, step), { form: 'one', pick: step });
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('where either of two steps may be the first to close it, it is not asked', () => {
    expect(lastChance.facts(unit)).toEqual(['check:job/play/closes', 'check:job/again/closes']);
  });

  test('nor where a step that it needs is not verified', () => {
    const doubtful = workUnit(withSteps(({ id }) => (id === 'f' ? { unsure: true } : {})));
    expect(lastChance.facts(doubtful)).toEqual([]);
  });
});

describeRules(lastChance, { seeds: 100 });
