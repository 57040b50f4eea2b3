import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { plateShort } from '../../../../src/core/questions/families/diagnosis/plate-short.ts';
import { slipsFirst } from '../../../../src/core/questions/families/diagnosis/slips-first.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../../src/core/questions/phrase.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import { shippedDecks } from '../../../units.ts';
import { describeRules } from '../rules.ts';

const kestrel = makeUnit(shippedDecks().find(({ id }) => id === 'kestrel-7')!);

/**
 * Kestrel 7 at 15 bar, μ 0.13, by hand: (pressure × ring area − spring) × faces × μ × mean radius.
 * B1: 1.5 × π/4 (150² − 110²) − 900 = 11 352 N, 10 faces, 75 mm. B2: 1.5 × π/4 (135² − 105²) − 800 = 7682 N,
 * 8 faces, 70 mm. B3: 1.5 × π/4 (185² − 150²) − 1200 = 12 613 N, 12 faces, 88 mm.
 */
const HOLDS: Readonly<Record<string, number>> = { B1: 1106.8, B2: 559.3, B3: 1731.5 };

/** With one brake on, it takes all that the case gives: ratio less 1, by the ratios on the plate. */
const SHARES: Readonly<Record<string, number>> = {
  'B1/3': 2.105 - 1,
  'B1/4': 1.465 - 1,
  'B2/6': 1 - 0.659,
  'B3/7': 1 - 0.554,
  'B3/R': 1 + 1.8,
};

describe('slips-first on Kestrel 7', () => {
  test('by hand: what brakes hold, what they carry where one is on, and the order that follows', () => {
    let held = 0;
    let pairs = 0;
    for (let seed = 0; seed < 60; seed++) {
      const question = ask(kestrel, slipsFirst, seed)!;
      const [answer] = question.answers;
      if (question.drawing?.kind !== 'table' || answer.form !== 'order') throw new Error('no table');
      for (const { head, cells } of question.drawing.rows) {
        const id = (head.values!.element as Phrase).values!.id as string;
        if (HOLDS[id] === undefined) continue;
        held++;
        expect(Number(cells[0]!.values!.torque)).toBeCloseTo(HOLDS[id], -0.5);
      }
      const known = answer.order.filter((id) => SHARES[id] !== undefined);
      for (const [place, later] of known.slice(1).entries()) {
        const margin = (id: string) => HOLDS[id.split('/')[0]!]! / SHARES[id]!;
        pairs++;
        expect(margin(known[place]!)).toBeLessThan(margin(later));
      }
    }
    expect(held).toBeGreaterThan(60);
    expect(pairs).toBeGreaterThan(10);
  });
});

describe('plate-short on Kestrel 7', () => {
  // B3 is on in 1, 7 and R; R asks most of it, 2.8 of the input. Five of six plates: 1731.5 × 5/6 = 1442.9.
  test('B3 with five of six plates slips in R at 1442.9 ÷ 2.8 = 515 N·m on the input', () => {
    const question = ask(kestrel, plateShort, 1, 'element:B3/plate-short')!;
    const said = (value: string) => judge(question, { form: 'number', value });
    expect(said('515').right).toBe(true);
    // 1731.5 ÷ 2.8
    expect(said('618').slipUps).toEqual(['plate-count-kept']);
    // 1731.5 × 11/12 ÷ 2.8
    expect(said('567').slipUps).toEqual(['one-face-less']);
    expect(said('1443').slipUps).toEqual(['share-left-out']);
    // 1442.9 ÷ 0.446, range 7
    expect(said('3235').slipUps).toEqual(['least-loaded-range']);
    expect(said('800')).toMatchObject({ right: false, slipUps: [] });
  });
});

describeRules(slipsFirst, { seeds: 40 });
describeRules(plateShort, { seeds: 40 });
