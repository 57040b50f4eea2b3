import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stackHeightFamily } from '../../../../src/core/questions/families/stacks/stack-height.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { DeckStack } from '../../../../src/core/unit/stacks.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { PACKS, packUnit, plate } from './packs.ts';

const inch = (value: string) => ({ value, unit: 'in' as const });

// Three frictions of 0.081, two steels of 0.070, a pressure plate of 0.250: 0.633 in all. The pack is worked by hand.
const INCHES: DeckStack = {
  id: 'K9',
  floor: 'drum floor',
  floorAt: 'front',
  items: [
    ...[1, 2, 3].map((n) =>
      plate(`f${n}`, 'friction', undefined, { thickness: inch('0.081'), identical: 'f' }),
    ),
    ...[1, 2].map((n) => plate(`s${n}`, 'steel', undefined, { thickness: inch('0.070'), identical: 's' })),
    plate('backing', 'backing', undefined, { thickness: inch('0.250') }),
  ],
};

function asked(stack: DeckStack, how: string) {
  const unit = packUnit([stack]);
  const say = makeSay(unit.deck);
  for (let seed = 0; seed < 50; seed++) {
    const question = ask(unit, stackHeightFamily, seed)!;
    if (say(question.prompt).includes(how)) return question;
  }
  throw new Error(`never asked: ${how}`);
}

describe('stack-height, added up by hand from packs.ts', () => {
  test.each([
    // 1.8 + 3 × 2.0 + 3 × 1.9 + 5.0 + 2.2; with no load the waved plate is 0.8 higher
    [PACKS.C1, 'pressed flat', '20.7', true, []],
    [PACKS.C1, 'pressed flat', '21.5', false, ['other-wave-height']],
    [PACKS.C1, 'pressed flat', '18.5', false, ['ring-left-out']],
    // 1.8 + 2.0 + 1.9 + 5.0 + 2.2
    [PACKS.C1, 'pressed flat', '12.9', false, ['one-of-each-counted']],
    [PACKS.C1, 'no load', '21.5', true, []],
    [PACKS.C1, 'no load', '20.7', false, ['other-wave-height']],
    [PACKS.C1, 'no load', '19.3', false, ['ring-left-out']],
    // nothing sprung: 4.0 + 2 × 2.1 + 1.7 + 4.6 + 1.5
    [PACKS.B1, 'B1', '16', true, []],
    [PACKS.B1, 'B1', '14.5', false, ['ring-left-out']],
    [PACKS.B1, 'B1', '13.9', false, ['one-of-each-counted']],
    [INCHES, 'K9', '0.633', true, []],
    [INCHES, 'K9', '0.401', false, ['one-of-each-counted']],
    [INCHES, 'K9', '0.635', false, []],
  ])('%o, %s: %s is right %s', (stack, how, value, right, slipUps) => {
    const verdict = judge(asked(stack, how), { form: 'number', value });
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('it is asked in the unit it is written in, to half its last place', () => {
    expect(asked(INCHES, 'K9').space).toMatchObject({ unit: 'in', tolerance: '0.0005', decimals: 3 });
    expect(asked(PACKS.C1, 'flat').space).toMatchObject({ unit: 'mm', tolerance: '0.05', decimals: 1 });
  });

  test('piston and spring take no room, nor do separators outside the frictions', () => {
    const more = [
      plate('spring', 'return-spring', '9.9'),
      plate('sep', 'separator', '1.0', { free: { value: '3', unit: 'mm' } }),
    ];
    const stack = { ...PACKS.B1, items: [...more, ...PACKS.B1.items] };
    expect(judge(asked(stack, 'B1'), { form: 'number', value: '16' }).right).toBe(true);
  });
});

describeRules(stackHeightFamily, { seeds: 100 });
