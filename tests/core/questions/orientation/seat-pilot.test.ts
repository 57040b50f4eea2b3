import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { seatPilot } from '../../../../src/core/questions/families/orientation/seat-pilot.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { DeckFace } from '../../../../src/core/unit/seats.ts';
import { describeRules } from '../rules.ts';
import { lineUnit } from './line.ts';

const pilot = (at: 'inner' | 'outer', value: string) => ({ at, diameter: { value, unit: 'mm' as const } });
const faces = (a: DeckFace, b: DeckFace) => ({ faces: { A: a, B: b } });

// T1 by the pump at its inner rim (front), T2 by the hub at its outer rim (rear), T4 by the sun at its outer rim (front)
const unit = lineUnit({
  T1: faces({ touches: 'pump', mark: 'x', pilot: pilot('inner', '40') }, { touches: 'drum', mark: 'y' }),
  T2: faces({ touches: 'hub', mark: 'x', pilot: pilot('outer', '66') }, { touches: 'drum', mark: 'y' }),
  T4: faces({ touches: 'cover', mark: 'x' }, { touches: 'sun', mark: 'y', pilot: pilot('outer', '52') }),
});
const question = ask(unit, seatPilot, 0)!;
const told = (T1: string, T2: string, T4: string) => ({ form: 'pair' as const, pairs: { T1, T2, T4 } });

describe('seat-pilot, by hand', () => {
  test('only parts that one side centres are asked', () => {
    expect(seatPilot.facts(unit)).toEqual(['seat:T1/pilot', 'seat:T2/pilot', 'seat:T4/pilot']);
    const both = faces(
      { touches: 'pump', mark: 'x', pilot: pilot('inner', '40') },
      { touches: 'drum', mark: 'y', pilot: pilot('outer', '60') },
    );
    expect(seatPilot.facts(lineUnit({ T1: both }))).toEqual([]);
  });

  test.each([
    [told('front/inner', 'rear/outer', 'front/outer'), true, [], []],
    [told('rear/inner', 'front/outer', 'rear/outer'), false, ['mirror-view'], []],
    [told('front/outer', 'rear/inner', 'front/inner'), false, ['pilot-rim-swapped'], []],
    [told('front/inner', 'front/outer', 'front/outer'), false, ['seat-turned-round'], ['seat:T2/pilot']],
    [told('front/inner', 'rear/outer', 'front/inner'), false, ['pilot-rim-swapped'], ['seat:T4/pilot']],
    [told('rear/outer', 'rear/outer', 'front/outer'), false, [], []],
  ])('%j: right %s', (answer, right, slipUps, missed) => {
    expect(judge(question, answer)).toEqual({ right, slipUps, missed });
  });

  test('three parts of four choices are guessed once in 64', () => {
    expect(question.guessRate).toBe(1 / 64);
  });
});

describeRules(seatPilot, { seeds: 100 });
