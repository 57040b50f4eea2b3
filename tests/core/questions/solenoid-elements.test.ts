import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { solenoidElements } from '../../../src/core/questions/families/solenoid-elements.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

// The published four-range train (tests/published names its source), plumbing made up in tests/units.ts:
// S1 UD none, S2 OD full, S4 B24 full, S5 LR none when unplugged. D opens those four, so RV (S3) is left out.
const deck = deckOf(PUBLISHED.find((train) => train.id === 'four-range-two-crossed-sets')!);
const unit = makeUnit(deck);

/** What the table of the question shows: the solenoids with current. */
function poweredIn({ drawing }: Question): string[] {
  if (drawing?.kind !== 'table') throw new Error('no table');
  const on = (cell: Phrase | undefined) => cell?.key === 'solenoid.on';
  return drawing.rows.filter((row) => on(row.cells[1])).map((row) => String(row.head.values!.id));
}

/** The first question whose table shows just these powered. */
function withPowered(...ids: string[]): Question {
  for (let seed = 0; seed < 400; seed++) {
    const question = ask(unit, solenoidElements, seed, 'solenoid:S2/pressure')!;
    if (poweredIn(question).join() === ids.join()) return question;
  }
  throw new Error(`never powered ${ids}`);
}

describe('solenoid-elements on the published four-range train, worked by hand', () => {
  test.each([
    [[], ['OD', 'B24']],
    [['S1'], ['UD', 'OD', 'B24']],
    [['S2'], ['B24']],
    [
      ['S2', 'S5'],
      ['B24', 'LR'],
    ],
    [['S1', 'S2', 'S4'], ['UD']],
    [
      ['S1', 'S2', 'S4', 'S5'],
      ['UD', 'LR'],
    ],
  ])('current on %j: pressure at %j', (powered, picks) => {
    expect(judge(withPowered(...powered), { form: 'set', picks }).right).toBe(true);
  });

  test('with S2 and S5 powered, wrong rules are known by name and by the fact they miss', () => {
    const question = withPowered('S2', 'S5');
    const said = (...picks: string[]) => judge(question, { form: 'set', picks });
    expect(said('OD', 'LR')).toEqual({ right: false, slipUps: ['current-means-pressure'], missed: [] });
    expect(said('UD', 'B24')).toEqual({ right: false, slipUps: ['current-cuts-pressure'], missed: [] });
    expect(said('OD', 'B24', 'LR')).toEqual({
      right: false,
      slipUps: ['solenoid-turned-round'],
      missed: ['solenoid:S2/pressure'],
    });
    expect(said('UD', 'OD', 'LR').slipUps).toEqual([]);
  });

  test('an element that two solenoids feed is left out, as is a solenoid that feeds no element', () => {
    const shared = makeUnit({
      ...deck,
      lever: undefined,
      solenoids: [
        ...deck.solenoids!,
        { id: 'S6', kind: 'linear', feeds: ['LR'], whenUnplugged: 'none' },
        { id: 'S7', kind: 'on-off', feeds: ['converter-clutch'], whenUnplugged: 'none' },
      ],
    });
    expect(solenoidElements.facts(shared)).toEqual([
      'solenoid:S1/pressure',
      'solenoid:S2/pressure',
      'solenoid:S3/pressure',
      'solenoid:S4/pressure',
    ]);
  });

  test('fewer than four elements are too easily guessed to ask', () => {
    const few = makeUnit({ ...deck, solenoids: deck.solenoids!.slice(0, 4) });
    expect(solenoidElements.facts(few)).toEqual([]);
  });
});

describeRules(solenoidElements);
