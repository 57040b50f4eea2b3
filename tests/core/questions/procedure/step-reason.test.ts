import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stepReason } from '../../../../src/core/questions/families/procedure/step-reason.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { WORK, workUnit } from './works.ts';

const unit = workUnit();
const say = makeSay(unit.deck);
const pick = (id: string) => ({ form: 'one' as const, pick: id });

describe('step-reason, from the reasons in works.ts', () => {
  test('the recorded reason is right, another pair’s is that slip-up', () => {
    const question = ask(unit, stepReason, 0, 'step:job/g/before')!;
    expect(say(question.prompt)).toBe('Why does “Converter off” have to come before “Pump off”?');
    const { space } = question;
    const options = space.form === 'one' ? space.options : [];
    for (const { id, label } of options) {
      const right = say(label) === 'The converter covers its bolts.';
      expect(judge(question, pick(id))).toEqual({
        right,
        slipUps: right ? [] : ['reason-of-another-step'],
        missed: right ? [] : ['step:job/g/before'],
      });
    }
    expect(options.length).toBeGreaterThanOrEqual(4);
  });

  test('reasons of pairs that share a step with the asked one are not offered', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { space } = ask(unit, stepReason, seed, 'step:job/g/before')!;
      const ids = space.form === 'one' ? space.options.map(({ id }) => id) : [];
      // f and g are the asked ones; a comes before f, g before h
      for (const id of ids) if (id !== 'f>g') expect(id).not.toMatch(/[fg]/);
    }
  });

  test('a reason that two pairs share tells nothing and is left out', () => {
    const steps = WORK.steps.map((step) => ({
      ...step,
      after: step.after?.map((relation) => ({
        ...relation,
        reason: ['b', 'c'].includes(step.id) ? 'It is in the way.' : relation.reason,
      })),
    }));
    const vague = workUnit({ steps });
    expect(stepReason.facts(vague)).not.toContain('step:job/b/before');
    expect(stepReason.facts(vague)).not.toContain('step:job/c/before');
    for (let seed = 0; seed < 60; seed++) {
      const { space } = ask(vague, stepReason, seed)!;
      const ids = space.form === 'one' ? space.options.map(({ id }) => id) : [];
      expect(ids).not.toContain('a>b');
      expect(ids).not.toContain('b>c');
    }
  });
});

describeRules(stepReason, { seeds: 100 });
