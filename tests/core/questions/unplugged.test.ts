import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { unplugged } from '../../../src/core/questions/families/unplugged.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Deck, DeckLever, Pressure } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED, publishedUnits } from '../../units.ts';
import { describeRules } from './rules.ts';

const deckNamed = (id: string) => deckOf(PUBLISHED.find((train) => train.id === id)!);
const fourSpeed = deckNamed('four-range-two-crossed-sets');

/** The deck with these elements under pressure when unplugged and no others. */
const fullAt = (deck: Deck, ...full: string[]): Deck => ({
  ...deck,
  solenoids: deck.solenoids!.map((solenoid) => ({
    ...solenoid,
    whenUnplugged: (full.includes(solenoid.feeds[0]!) ? 'full' : 'none') as Pressure,
  })),
});

const asked = (deck: Deck, position: string) =>
  ask(makeUnit(deck), unplugged, 1, `position:${position}/unplugged`);
const rightIn = (deck: Deck, position: string) => asked(deck, position)?.answers[0];

const byHand: DeckLever = {
  valve: 'manual',
  positions: [
    { id: 'D', rows: ['1', '2', '3', '4'], opens: ['UD', 'OD', 'B24'], feeds: ['LR'] },
    { id: '2', rows: ['1', '2'], opens: ['OD', 'LR'], feeds: ['UD', 'B24'] },
  ],
};

describe('unplugged on published trains (tests/published names their sources), worked by hand', () => {
  test.each([
    ['plumbing of tests/units.ts: OD and B24', fourSpeed, 'D', 'range:4'],
    // from memory: this four-speed falls to its second range with the power cut
    ['UD and B24', fullAt(fourSpeed, 'UD', 'B24'), 'D', 'range:2'],
    ['UD and LR', fullAt(fourSpeed, 'UD', 'LR'), 'D', 'range:1'],
    ['three at once bind', fullAt(fourSpeed, 'UD', 'OD', 'B24'), 'D', 'tied-up'],
    // Lepelletier: the front sun is fixed, so the front carrier turns with the input; B and C would hold it
    ['B and C', deckNamed('lepelletier-6-a'), 'D', 'tied-up'],
    // Ravigneaux: C1 alone drives, because F2 takes the carrier
    ['C1 alone, with a one-way', fullAt(deckNamed('ravigneaux-4-a'), 'C1'), 'D', 'range:1'],
    ['C1 and the brake on the carrier', fullAt(deckNamed('ravigneaux-4-a'), 'C1', 'B2'), 'D', 'range:1m'],
    ['fed by hand, no solenoid full', { ...fullAt(fourSpeed), lever: byHand }, '2', 'range:2'],
    ['fed by hand and by one solenoid', { ...fullAt(fourSpeed, 'UD'), lever: byHand }, 'D', 'range:1'],
    [
      'no manual valve, so R does what D does',
      { ...fullAt(fourSpeed, 'UD', 'B24'), lever: { ...fourSpeed.lever!, valve: 'none' as const } },
      'R',
      'range:2',
    ],
  ])('%s', (_, deck, position, pick) => {
    expect(rightIn(deck, position)).toEqual({ form: 'one', pick });
  });

  // common practice, no source
  test('no pressure anywhere when unplugged and no feed by hand: drives in no range', () => {
    let count = 0;
    for (const { deck } of publishedUnits())
      for (const { id } of deck.lever!.positions) {
        const right = rightIn(fullAt(deck), id);
        if (right) count++;
        expect(right ?? { form: 'one', pick: 'no-drive' }).toEqual({ form: 'one', pick: 'no-drive' });
      }
    expect(count).toBeGreaterThanOrEqual(7);
  });

  test('wrong rules are known by name', () => {
    const question = asked(fourSpeed, 'D')!;
    const said = (pick: string) => judge(question, { form: 'one', pick });
    expect(said('range:4').right).toBe(true);
    expect(said('no-drive').slipUps).toContain('all-off-nothing-on');
    // 1 is the lowest, and what UD and LR would give if each solenoid worked the other way round
    expect(said('range:1').slipUps).toEqual(['lowest-range-when-dead', 'polarity-turned-round']);
    const second = asked(fullAt(fourSpeed, 'UD', 'B24'), 'D')!;
    expect(judge(second, { form: 'one', pick: 'range:4' }).slipUps).toEqual(['top-range-when-dead']);
  });

  test('it says which solenoids decide it, and not those the valve cuts off', () => {
    expect(asked(fourSpeed, 'D')!.facts).toEqual([
      'position:D/unplugged',
      'solenoid:S1/pressure',
      'solenoid:S2/pressure',
      'solenoid:S4/pressure',
      'solenoid:S5/pressure',
    ]);
  });

  test('not asked: neutral positions, elements nothing feeds, a valve that does not say what it opens', () => {
    expect(unplugged.facts(makeUnit(fourSpeed))).not.toContain('position:N/unplugged');
    const unfed = { ...fourSpeed, solenoids: fourSpeed.solenoids!.slice(0, 4) };
    expect(unplugged.facts(makeUnit(unfed))).not.toContain('position:D/unplugged');
    const [drive, ...rest] = fourSpeed.lever!.positions;
    const silent: DeckLever = { valve: 'manual', positions: [{ id: drive!.id, rows: drive!.rows }, ...rest] };
    expect(unplugged.facts(makeUnit({ ...fourSpeed, lever: silent }))).not.toContain('position:D/unplugged');
    expect(unplugged.facts(makeUnit({ ...fourSpeed, lever: undefined }))).toEqual([]);
  });
});

describeRules(unplugged);
