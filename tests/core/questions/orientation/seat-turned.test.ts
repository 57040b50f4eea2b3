import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { seatTurned } from '../../../../src/core/questions/families/orientation/seat-turned.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { lineUnit } from './line.ts';

const unit = lineUnit();
const asked = (seat: string, seed = 0) => ask(unit, seatTurned, seed, `seat:${seat}/turned`)!;
const pick = (id: string) => ({ form: 'one' as const, pick: id });

describe('seat-turned, by hand from the line in line.ts', () => {
  test.each([
    // goes in: its own note is right
    ['T1', 'T1', []],
    ['T1', 'nothing', ['turned-is-harmless']],
    ['T1', 'keyed', ['taken-for-keyed']],
    // does not go in: nothing else can be right
    ['T2', 'keyed', []],
    ['T2', 'nothing', ['turned-is-harmless']],
  ])('%s answered %s: %j', (seat, answer, slipUps) => {
    const verdict = judge(asked(seat), pick(answer));
    expect(verdict.right).toBe(slipUps.length === 0);
    expect(verdict.slipUps).toEqual(slipUps);
    expect(verdict.missed).toEqual(slipUps.length === 0 ? [] : [`seat:${seat}/turned`]);
  });

  test('the note of a part of the same kind is never a wrong answer for one that goes in', () => {
    const twin = lineUnit({ T3: { turned: { goesIn: true, effect: 'The needles run on the hub.' } } });
    for (let seed = 0; seed < 60; seed++) {
      const { space } = ask(twin, seatTurned, seed, 'seat:T1/turned')!;
      const ids = space.form === 'one' ? space.options.map(({ id }) => id) : [];
      expect(ids).toContain('T1');
      expect(ids).not.toContain('T3');
      expect(ids.filter((id) => ['S1', 'W3'].includes(id)).length).toBeGreaterThanOrEqual(1);
    }
  });

  test('two notes in the same words never stand in one question', () => {
    const same = lineUnit({ S1: { turned: { goesIn: true, effect: 'the NEEDLES run on the pump. ' } } });
    for (let seed = 0; seed < 60; seed++) {
      const { space } = ask(same, seatTurned, seed, 'seat:T1/turned')!;
      expect(space.form === 'one' && space.options.map(({ id }) => id)).not.toContain('S1');
    }
  });

  test('with no note there is nothing to ask, nor with notes of one kind only', () => {
    expect(seatTurned.facts(unit)).not.toContain('seat:T3/turned');
    const none = { turned: undefined };
    expect(seatTurned.facts(lineUnit({ S1: none, W3: none, T2: none }))).toEqual([]);
  });

  test('what comes of it is told, and the viewing end', () => {
    const { explanation } = asked('T2');
    const say = makeSay(unit.deck);
    expect(say(explanation.row)).toBe(
      'T2 does not go in the wrong way round. The shoulder of the hub keeps it out.',
    );
    expect(say(explanation.reason)).toContain('Noted as seen from the rear.');
  });
});

describeRules(seatTurned, { seeds: 100 });
