import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { skipShift } from '../../../src/core/questions/families/skip-shift.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

/** The first question about this shift. */
function shifting(train: string, from: string, to: string): Question {
  const unit = unitOf(train);
  for (let seed = 0; seed < 400; seed++) {
    const question = ask(unit, skipShift, seed)!;
    const hidden = question.drawing?.kind === 'chart' ? question.drawing.hiddenRows : [];
    if (hidden?.[0] === from && hidden[1] === to) return question;
  }
  throw new Error(`${from} to ${to} is never asked`);
}

const inLetters = { '+': 'comes-on', '-': 'goes-off', '=': 'stays-on', o: 'stays-off' } as const;

/** "UD+ OD- B24=": what each element does. */
const told = (text: string) => ({
  form: 'pair' as const,
  pairs: Object.fromEntries(
    text.split(' ').map((part) => [part.slice(0, -1), inLetters[part.slice(-1) as keyof typeof inLetters]]),
  ),
});

describe('skip-shift, read off published charts (tests/published names their sources)', () => {
  test.each([
    // 4 OD B24, 1 UD LR
    ['four-range-two-crossed-sets', '4', '1', 'UD+ OD- RVo B24- LR+'],
    // 4 OD B24, 2 UD B24: B24 is off in 3 and yet stays on
    ['four-range-two-crossed-sets', '4', '2', 'UD+ OD- RVo B24= LRo'],
    ['four-range-two-crossed-sets', '1', '3', 'UD= OD+ RVo B24o LR-'],
    // 4 C2 B1, 1 C1 F2
    ['ravigneaux-4-a', '4', '1', 'C1+ C2- C3o B1- B2o F2+'],
    // 6 C E, 2 A C
    ['lepelletier-6-a', '6', '2', 'A+ Bo E- C= Do'],
  ])('%s, %s to %s: %s', (train, from, to, changes) => {
    expect(judge(shifting(train, from, to), told(changes)).right).toBe(true);
  });

  test('wrong rules are known by name', () => {
    const said = (text: string) =>
      judge(shifting('four-range-two-crossed-sets', '4', '2'), told(text)).slipUps;
    // through 3, where B24 lets go and comes back
    expect(said('UD+ OD- RVo B24+ LRo')).toEqual(['steps-added', 'held-through-counted']);
    expect(said('UD- OD+ RVo B24= LRo')).toEqual(['release-apply-swapped']);
    // 3 UD OD to 2 UD B24; 4 to 3
    expect(said('UD= OD- RVo B24+ LRo')).toEqual(['last-step-only']);
    expect(said('UD+ OD= RVo B24- LRo')).toEqual(['first-step-only', 'neighbour-range']);
    expect(said('UDo OD- RVo B24= LRo')).toEqual([]);
  });

  test('always leaves at least one range out, and asks about nothing with two ranges', () => {
    const unit = unitOf('four-range-two-crossed-sets');
    const order = ['1', '2', '3', '4'];
    for (let seed = 0; seed < 60; seed++) {
      const { drawing } = ask(unit, skipShift, seed)!;
      const [from, to] = drawing?.kind === 'chart' ? drawing.hiddenRows! : [];
      expect(Math.abs(order.indexOf(from!) - order.indexOf(to!))).toBeGreaterThan(1);
    }
    const { chart, ...deck } = unit.deck;
    expect(skipShift.facts(makeUnit({ ...deck, chart: { ranges: chart.ranges.slice(0, 2) } }))).toEqual([]);
  });
});

describeRules(skipShift);
