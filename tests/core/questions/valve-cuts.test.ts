import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { valveCuts } from '../../../src/core/questions/families/valve-cuts.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED, shippedDecks } from '../../units.ts';
import { describeRules } from './rules.ts';

const REACH = { s: 'solenoid', h: 'by-hand', c: 'cut' } as const;

const said = (deck: Deck, position: string, marks: string) => {
  const question = ask(makeUnit(deck), valveCuts, 0, `position:${position}/valve`)!;
  const left = question.space.form === 'pair' ? question.space.left : [];
  return judge(question, {
    form: 'pair',
    pairs: Object.fromEntries(left.map(({ id }, place) => [id, REACH[marks[place] as keyof typeof REACH]])),
  });
};

// Four-range chart (tests/published names its source) with the valve made up in tests/units.ts: D opens what the
// forward rows use, R what R uses (RV LR), N nothing. In the order UD OD RV B24 LR.
const crossed = deckOf(PUBLISHED.find((train) => train.id === 'four-range-two-crossed-sets')!);
// B1 B2 B3 C1 C2, read off the deck: R opens C2 and feeds B3 by hand; L opens the brakes.
const kestrel = shippedDecks().find(({ id }) => id === 'kestrel-7')!;

describe('valve-cuts, read off the lever', () => {
  test.each([
    [crossed, 'D', 'sscss'],
    [crossed, 'R', 'ccscs'],
    [kestrel, 'R', 'cchcs'],
    [kestrel, 'N', 'ccscc'],
    [kestrel, 'L', 'ssscc'],
  ])('%#: in %s %s', (deck, position, marks) => {
    expect(said(deck, position, marks).right).toBe(true);
  });

  test('wrong rules are known by name', () => {
    expect(said(kestrel, 'R', 'sssss').slipUps).toEqual(['valve-forgotten']);
    expect(said(kestrel, 'R', 'ccscs').slipUps).toEqual(['hand-feed-forgotten']);
    expect(said(kestrel, 'R', 'ssscc').slipUps).toEqual(['other-lever-position']);
    expect(said(crossed, 'D', 'ccccc').slipUps).toEqual([]);
  });

  test('a feed that is open though no row there uses it is not cut', () => {
    const positions = crossed.lever!.positions.map((position) =>
      position.id === 'R' ? { ...position, opens: ['RV', 'LR', 'OD'] } : position,
    );
    const deck: Deck = { ...crossed, lever: { valve: 'manual', positions } };
    expect(said(deck, 'R', 'csscs').right).toBe(true);
    expect(said(deck, 'R', 'ccscs').slipUps).toEqual(['unused-means-cut']);
  });

  test('a position that cuts everything, or nothing, is not asked; nor is a lever without a valve', () => {
    const facts = (deck: Deck) => valveCuts.facts(makeUnit(deck));
    expect(facts(crossed)).toEqual(['position:D/valve', 'position:R/valve']);
    expect(facts(kestrel)).toEqual(['position:R/valve', 'position:N/valve', 'position:L/valve']);
    expect(facts(shippedDecks().find(({ id }) => id === 'dunlin-9')!)).toEqual([]);
  });
});

describeRules(valveCuts);
