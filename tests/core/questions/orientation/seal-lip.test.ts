import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { sealLip } from '../../../../src/core/questions/families/orientation/seal-lip.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { lineUnit } from './line.ts';

const pick = (id: string) => ({ form: 'one' as const, pick: id });

describe('seal-lip, by hand: S1 lies between pump and drum, its lip to the drum, where the pressure is', () => {
  const question = ask(lineUnit(), sealLip, 0)!;
  test.each([
    ['rear/pressure', true, []],
    ['front/away', false, ['lip-away-from-pressure']],
    ['rear/away', false, ['pressure-side-mistaken']],
    ['front/pressure', false, ['mirror-view']],
  ])('%s: right %s', (answer, right, slipUps) => {
    const verdict = judge(question, pick(answer));
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('where the record says that the lip looks away from the pressure, the record is right', () => {
    const unit = lineUnit({ S1: { pressure: 'B' } });
    const odd = ask(unit, sealLip, 0)!;
    expect(odd.answers).toEqual([pick('rear/away')]);
    expect(makeSay(unit.deck)(odd.explanation.reason)).toMatch('differs from the usual rule');
  });

  test('the drawing above does not tell: the seal is covered, and the pressure is not drawn', () => {
    expect(question.drawing).toEqual({
      kind: 'shaft-line',
      from: 'pump',
      to: 'drum',
      covered: ['S1'],
      lit: ['S1'],
    });
  });

  test('a seal with no pressure side recorded is not asked', () => {
    expect(sealLip.facts(lineUnit({ S1: { pressure: undefined } }))).toEqual([]);
  });
});

describeRules(sealLip, { seeds: 100 });
