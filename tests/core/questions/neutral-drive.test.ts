import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { neutralDrive } from '../../../src/core/questions/families/neutral-drive.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

/** A published train whose neutral leaves these elements on. */
function withNeutral(id: string, applied: readonly string[]) {
  const deck = deckOf(PUBLISHED.find((train) => train.id === id)!);
  return makeUnit({ ...deck, chart: { ...deck.chart, neutral: [{ id: 'N', applied }] } });
}

describe('neutral-drive, worked by hand (trains in tests/published; the neutral rows are made up)', () => {
  test.each([
    // crossed sets, LR held: UD makes range 1, RV reverse; OD drives what LR holds; B24 stops the output
    ['four-range-two-crossed-sets', ['LR'], ['UD', 'RV'], true, []],
    ['four-range-two-crossed-sets', ['LR'], ['UD'], false, ['reverse-left-out']],
    ['four-range-two-crossed-sets', ['LR'], ['UD', 'OD', 'RV', 'B24'], false, ['every-element-drives']],
    ['four-range-two-crossed-sets', ['LR'], [], false, ['neutral-needs-nothing']],
    // six-speed, D holds the carrier: A range 1, B reverse, E drives the held carrier, C stops the output
    ['lepelletier-6-a', ['D'], ['A', 'B'], true, []],
    // six-speed, C holds the large sun: with A 2, with E 6; B drives the held sun, D stops the output
    ['lepelletier-6-a', ['C'], ['A', 'E'], true, []],
    // Ravigneaux with nothing on: C1 alone is range 1, since the one-way holds the carrier by itself
    ['ravigneaux-4-a', [], ['C1'], true, []],
    ['ravigneaux-4-a', [], ['C1', 'C3'], false, []],
  ])('%s, %j on in N, answered %j', (id, on, picks, right, slipUps) => {
    const question = ask(withNeutral(id, on), neutralDrive, 1, 'neutral:N/drive')!;
    const verdict = judge(question, { form: 'set', picks });
    expect(verdict.right).toBe(right);
    for (const slipUp of slipUps) expect(verdict.slipUps).toContain(slipUp);
    if (slipUps.length === 0) expect(verdict.slipUps).toEqual([]);
  });

  test('tells what each one does', () => {
    const unit = withNeutral('four-range-two-crossed-sets', ['LR']);
    const { explanation } = ask(unit, neutralDrive, 1)!;
    expect(explanation.more.map(makeSay(unit.deck))).toEqual([
      'LR + UD: drives as range 1, at 2.844 : 1.',
      'LR + OD: ties up, the input cannot turn.',
      'LR + RV: drives as range R, at −2.214 : 1.',
      'LR + B24: holds the output still, but the input can turn.',
    ]);
  });

  test('asks nothing where no single element would make it drive', () => {
    expect(neutralDrive.facts(withNeutral('lepelletier-6-a', []))).toEqual([]);
  });
});

describeRules(neutralDrive);
