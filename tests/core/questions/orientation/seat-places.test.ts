import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { seatPlaces } from '../../../../src/core/questions/families/orientation/seat-places.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { lineUnit } from './line.ts';

const unit = lineUnit();
const say = makeSay(unit.deck);
const mm = (value: string) => ({ value, unit: 'mm' as const });

/** The question whose parts are just these, from front to rear. */
function withParts(ids: string) {
  for (let seed = 0; seed < 200; seed++) {
    const question = ask(unit, seatPlaces, seed)!;
    const { space } = question;
    if (space.form === 'pair' && space.right.map(({ id }) => id).join(' ') === ids) return question;
  }
  throw new Error(`never asked: ${ids}`);
}

describe('seat-places, by hand from the line in line.ts', () => {
  const question = withParts('T1 T2 T3 T4');
  const put = (pairs: Record<string, string>) => ({ form: 'pair' as const, pairs });

  test('parts go by size, gaps by the bodies on both sides; no id is shown', () => {
    const { space } = question;
    const [left, right] = space.form === 'pair' ? [space.left, space.right] : [[], []];
    expect(left.map(({ label }) => say(label)).sort()).toEqual([
      'thrust bearing, 30 × 52 × 4.0 mm',
      'thrust bearing, 40 × 60 × 4.0 mm',
      'thrust bearing, 44 × 66 × 4.0 mm',
      'thrust bearing, 48 × 70 × 3.5 mm',
    ]);
    expect(right.map(({ label }) => say(label))).toEqual([
      '1: between pump and drum',
      '2: between drum and hub',
      '3: between hub and sun',
      '4: between sun and cover',
    ]);
  });

  test.each([
    [{ T1: 'T1', T2: 'T2', T3: 'T3', T4: 'T4' }, true, [], []],
    [{ T1: 'T2', T2: 'T1', T3: 'T3', T4: 'T4' }, false, ['neighbour-seats-swapped'], ['T1', 'T2']],
    [{ T1: 'T4', T2: 'T3', T3: 'T2', T4: 'T1' }, false, ['counted-from-rear'], []],
    [{ T1: 'T3', T2: 'T2', T3: 'T1', T4: 'T4' }, false, [], []],
    // the same gap named twice
    [{ T1: 'T1', T2: 'T1', T3: 'T3', T4: 'T4' }, false, [], []],
  ])('%j: right %s', (pairs, right, slipUps, missed) => {
    const verdict = judge(question, put(pairs));
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
    expect(verdict.missed).toEqual(missed.map((id) => `seat:${id}/place`));
  });

  test('parts that a hand cannot tell apart never stand in one question', () => {
    // T2 a hair wider than T1 only
    const near = lineUnit({ T2: { size: { inner: mm('40.2'), outer: mm('60.4'), thickness: mm('4.1') } } });
    for (let seed = 0; seed < 100; seed++) {
      const { space } = ask(near, seatPlaces, seed)!;
      const ids = space.form === 'pair' ? space.left.map(({ id }) => id) : [];
      expect(ids.includes('T1') && ids.includes('T2')).toBe(false);
    }
  });

  test('nor do two that lie in one gap', () => {
    for (let seed = 0; seed < 100; seed++) {
      const { space } = ask(unit, seatPlaces, seed)!;
      const ids = space.form === 'pair' ? space.left.map(({ id }) => id) : [];
      expect(ids.includes('T3') && ids.includes('W3')).toBe(false);
    }
  });

  test('without sizes there is nothing to tell them by', () => {
    const bare = { size: undefined };
    expect(seatPlaces.facts(lineUnit({ T1: bare, T2: bare, T3: bare }))).toEqual([]);
  });
});

describeRules(seatPlaces, { seeds: 100 });
