import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { rangeSolenoids } from '../../../src/core/questions/families/range-solenoids.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit, type Unit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const deckNamed = (id: string) => deckOf(PUBLISHED.find((train) => train.id === id)!);

/** The first question that shows this range's row. */
function askedFor(unit: Unit, range: string): Question {
  for (let seed = 0; seed < 200; seed++) {
    const question = ask(unit, rangeSolenoids, seed)!;
    if (question.drawing?.kind === 'chart' && question.drawing.rows?.[0] === range) return question;
  }
  throw new Error(`range ${range} never asked`);
}

const fill = (currents: Readonly<Record<string, string>>) => ({
  form: 'fill' as const,
  cells: Object.fromEntries(Object.entries(currents).map(([id, mark]) => [`${id}/current`, mark])),
});

describe('range-solenoids on published trains (tests/published), plumbing of tests/units.ts, by hand', () => {
  // four ranges: S1 UD none, S2 OD full, S4 B24 full, S5 LR none when unplugged; S3 RV is shut off in D
  // Lepelletier: S1 A none, S2 B full, S3 E none, S4 C full, S5 D none
  test.each([
    ['four-range-two-crossed-sets', '1', { S1: 'on', S2: 'on', S4: 'on', S5: 'on' }],
    ['four-range-two-crossed-sets', '2', { S1: 'on', S2: 'on', S4: 'off', S5: 'off' }],
    ['four-range-two-crossed-sets', '4', { S1: 'off', S2: 'off', S4: 'off', S5: 'off' }],
    ['lepelletier-6-a', '1', { S1: 'on', S2: 'on', S3: 'off', S4: 'on', S5: 'on' }],
    ['lepelletier-6-a', '5', { S1: 'off', S2: 'off', S3: 'on', S4: 'on', S5: 'off' }],
  ])('%s, range %s', (train, range, currents) => {
    const question = askedFor(makeUnit(deckNamed(train)), range);
    expect(judge(question, fill(currents)).right).toBe(true);
  });

  test('wrong senses are known by name, one solenoid alone by its fact', () => {
    const question = askedFor(makeUnit(deckNamed('four-range-two-crossed-sets')), '2');
    const said = (currents: Readonly<Record<string, string>>) => judge(question, fill(currents));
    // UD and B24 are on: current wherever there is pressure
    expect(said({ S1: 'on', S2: 'off', S4: 'on', S5: 'off' }).slipUps).toEqual(['current-means-pressure']);
    expect(said({ S1: 'off', S2: 'on', S4: 'off', S5: 'on' }).slipUps).toEqual(['current-cuts-pressure']);
    expect(said({ S1: 'off', S2: 'off', S4: 'on', S5: 'on' }).slipUps).toEqual(['polarity-turned-round']);
    expect(said({ S1: 'on', S2: 'on', S4: 'on', S5: 'off' })).toEqual({
      right: false,
      slipUps: ['solenoid-turned-round'],
      missed: ['solenoid:S4/pressure'],
    });
  });

  test('a solenoid is left out where the row does not settle it', () => {
    const deck = deckNamed('lepelletier-6-a');
    const crossed = makeUnit({
      ...deck,
      solenoids: [...deck.solenoids!, { id: 'S6', kind: 'on-off', feeds: ['A'], whenUnplugged: 'none' }],
    });
    expect(rangeSolenoids.facts(crossed)).not.toContain('solenoid:S1/pressure');
    expect(rangeSolenoids.facts(crossed)).toContain('solenoid:S2/pressure');
  });
});

describeRules(rangeSolenoids);
