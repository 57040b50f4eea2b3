import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { seatView } from '../../../../src/core/questions/families/orientation/seat-view.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { lineUnit } from './line.ts';

const unit = lineUnit();
const say = makeSay(unit.deck);

/** Every row met over many seeds, in words, and what is right for it. */
function rows(): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (let seed = 0; seed < 300; seed++) {
    const { space, answers } = ask(unit, seatView, seed)!;
    if (space.form !== 'pair' || answers[0].form !== 'pair') throw new Error('not a pair');
    for (const { id, label } of space.left)
      found.set(say(label), (found.get(say(label)) ?? new Set()).add(answers[0].pairs[id]!));
  }
  return found;
}

describe('seat-view, by hand from the line in line.ts', () => {
  const met = rows();
  test.each([
    // T1's closed race looks to the front
    ['T1: closed race; up is the front', 'up'],
    ['T1: closed race; up is the rear', 'down'],
    ['T1: needles in view; up is the front', 'down'],
    ['T1: closed race; looking from the front', 'seen'],
    ['T1: closed race; looking from the rear', 'hidden'],
    // T2's to the rear
    ['T2: closed race; up is the front', 'down'],
    ['T2: closed race; looking from the rear', 'seen'],
    ['W3: grooves; looking from the front', 'hidden'],
    ['S1: lip; up is the rear', 'up'],
  ])('%s: %s', (row, right) => {
    expect([...(met.get(row) ?? [])]).toEqual([right]);
  });

  test('both ends are met in every question, so that one turn for all is never right', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { space } = ask(unit, seatView, seed)!;
      const texts = space.form === 'pair' ? space.left.map(({ label }) => say(label)) : [];
      expect(texts.some((text) => /(up is|looking from) the front/.test(text))).toBe(true);
      expect(texts.some((text) => /(up is|looking from) the rear/.test(text))).toBe(true);
    }
  });

  test('slip-ups: the mirror image of all, and the drawing taken as it lies', () => {
    const seen = new Set<string>();
    for (let seed = 0; seed < 40; seed++) {
      const question = ask(unit, seatView, seed)!;
      for (const lure of question.lures) {
        seen.add(lure.slipUp);
        expect(judge(question, lure.answer).slipUps).toContain(lure.slipUp);
      }
    }
    expect([...seen].sort()).toEqual(['as-drawn', 'mirror-view']);
  });
});

describeRules(seatView, { seeds: 100 });
