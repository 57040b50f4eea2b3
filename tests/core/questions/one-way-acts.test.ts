import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { oneWayActs } from '../../../src/core/questions/families/one-way-acts.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED, shippedDecks } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

/**
 * The published four-range Ravigneaux (tests/published names its source). F2 keeps the carrier from turning
 * backward. In 1 the small sun drives the ring through pinions in pairs and pushes the carrier backward; in 2,
 * 3 and 4 the carrier turns forward. In 1m and R the brake B2 holds the carrier, so F2 does nothing.
 */
const question = ask(unitOf('ravigneaux-4-a'), oneWayActs, 3)!;

/** Drive and coast for ranges 1 to 4, "ho" for holds then overruns. */
const said = (text: string) =>
  judge(question, {
    form: 'fill',
    cells: Object.fromEntries(
      text
        .split(' ')
        .flatMap((pair, index) =>
          ['drive', 'coast'].map((load, place) => [
            `${index + 1}/${load}`,
            pair[place] === 'h' ? 'holds' : 'overruns',
          ]),
        ),
    ),
  });

describe('one-way-acts, on a published chart', () => {
  test('F2 holds in 1 with the engine pulling, and nowhere else', () => {
    expect(said('ho oo oo oo').right).toBe(true);
  });

  test.each([
    ['hh hh hh hh', ['one-way-always-holds']],
    ['hh oo oo oo', ['one-way-holds-both-ways']],
    ['ho ho ho ho', ['holds-whenever-driven']],
    ['oh oo oo oo', ['drive-coast-swapped']],
    ['oo oo oo oo', []],
  ])('%s: %j', (text, slipUps) => {
    expect(said(text)).toMatchObject({ right: false, slipUps });
  });

  test('ranges in which a brake holds the same shaft are not asked', () => {
    for (let seed = 0; seed < 20; seed++) {
      const { space } = ask(unitOf('ravigneaux-4-a'), oneWayActs, seed)!;
      expect(space.form === 'fill' && space.rows.map(({ id }) => id)).toEqual(['1', '2', '3', '4']);
    }
  });

  test('a one-way that the chart never leans on is not asked', () => {
    expect(oneWayActs.facts(unitOf('five-speed-3sets-a'))).toEqual([]);
  });

  test('Plover 4: the low one-way holds in 1, the second one-way in 2', () => {
    const plover = makeUnit(shippedDecks().find(({ id }) => id === 'plover-4')!);
    const holding = (oneWay: string) => {
      const ranges = new Set<string>();
      for (let seed = 0; seed < 20; seed++)
        for (const answer of ask(plover, oneWayActs, seed, `element:${oneWay}/holds`)!.answers)
          if (answer.form === 'fill')
            for (const [cell, act] of Object.entries(answer.cells)) if (act === 'holds') ranges.add(cell);
      return [...ranges];
    };
    expect(holding('F1')).toEqual(['1/drive']);
    expect(holding('F2')).toEqual(['2/drive']);
  });
});

describeRules(oneWayActs);
