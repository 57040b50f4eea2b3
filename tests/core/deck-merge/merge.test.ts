import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadDeck } from '../../../src/content/load.ts';
import { conflictsByFact } from '../../../src/core/deck-merge/by-fact.ts';
import { conflictPhrase } from '../../../src/core/deck-merge/differences.ts';
import { type Conflict, mergeDecks } from '../../../src/core/deck-merge/merge.ts';
import type { Deck, DeckRange } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';

const text = readFileSync(`${import.meta.dirname}/../../../decks/kestrel-7.json`, 'utf8');
const base = JSON.parse(text) as Deck;

// biome-ignore lint/suspicious/noExplicitAny: an edit reaches anywhere into a copy
type Edit = (deck: any) => void;
const edited = (...edits: Edit[]): Deck => {
  const copy = structuredClone(base);
  for (const edit of edits) edit(copy);
  return copy;
};
const range = (deck: Deck, id: string) =>
  deck.chart.ranges.find((row) => row.id === id) as { -readonly [K in keyof DeckRange]: DeckRange[K] };
const withoutRevision = ({ revision: _, ...deck }: Deck) => deck;
const idsOf = (conflicts: readonly Conflict[]) => conflicts.map(({ id, kind }) => `${kind} ${id}`);

/** Each row: an edit on one side, one on the other, and the conflicts there must be, worked out by hand. */
const ROWS: readonly [name: string, mine: Edit, theirs: Edit, conflicts: string[]][] = [
  ['two rows of the chart', (d) => (range(d, '1').ratio = '3.48'), (d) => (range(d, '2').ratio = '2.57'), []],
  ['two fields of one record', (d) => (d.solenoids[0].name = 'x'), (d) => (d.solenoids[0].kind = 'linear'), []],
  ['the same change on both sides', (d) => (range(d, '1').applied = ['B1', 'C2']), (d) => (range(d, '1').applied = ['C2', 'B1']), []],
  ['one ratio, two values', (d) => (range(d, '4').ratio = '1.46'), (d) => (range(d, '4').ratio = '1.5'), ['changed chart/ranges:4/ratio', 'vouched chart/ranges:4/verified']],
  ['a row is never put together from two', (d) => (range(d, '4').applied = ['B1', 'B2']), (d) => (range(d, '4').applied = ['C1', 'C2']), ['changed chart/ranges:4/applied', 'vouched chart/ranges:4/verified']],
  ['taken away and changed', (d) => d.solenoids.splice(0, 1), (d) => (d.solenoids[0].whenUnplugged = 'none'), ['removed solenoids:SA']],
  ['added on both sides, alike', (d) => d.sources.push({ id: 'new', title: 'A' }), (d) => d.sources.push({ id: 'new', title: 'A' }), []],
  ['added on both sides, not alike', (d) => d.sources.push({ id: 'new', title: 'A' }), (d) => d.sources.push({ id: 'new', title: 'B' }), ['added sources:new/title']],
  ['two added records', (d) => d.sources.push({ id: 'n1', title: 'A' }), (d) => d.sources.push({ id: 'n2', title: 'B' }), []],
  ['the chart in two other orders', (d) => d.chart.ranges.reverse(), (d) => d.chart.ranges.unshift(d.chart.ranges.pop()), ['order chart/ranges']],
  ['order of what has none', (d) => d.sources.reverse(), (d) => d.sources.unshift(d.sources.pop()), []],
  ['a value changed here, the old one verified there', (d) => (d.train.gearsets[0].sun.teeth = 44), (d) => (d.train.gearsets[0].verified = { by: 'Ada', on: '2026-10-01' }), ['vouched train/gearsets:P1/verified']],
  ['half an amount each is no amount', (d) => (d.fluids = [{ id: 'f', type: 't', refill: { value: '5', unit: 'L' } }]), (d) => (d.fluids = [{ id: 'f', type: 't', refill: { value: '5', unit: 'US qt' } }]), ['added fluids:f/refill']],
]; // biome-ignore format: a table reads across

describe('three-way merge', () => {
  test.each(ROWS)('B1 %s', (_, mine, theirs, expected) => {
    const { conflicts } = mergeDecks(base, edited(mine), edited(theirs));
    expect(idsOf(conflicts)).toEqual(expected);
    const turned = mergeDecks(base, edited(theirs), edited(mine)).conflicts;
    expect(idsOf(turned).sort()).toEqual([...expected].sort());
    for (const conflict of conflicts) {
      const other = turned.find(({ id }) => id === conflict.id)!;
      expect([other.mine, other.theirs]).toEqual([conflict.theirs, conflict.mine]);
    }
  });

  test('B1 what only one side changed is in, from both sides', () => {
    const { deck } = mergeDecks(
      base,
      edited((d) => (range(d, '1').note = 'mine')),
      edited((d) => (range(d, '2').note = 'theirs')),
    );
    expect([range(deck, '1').note, range(deck, '2').note]).toEqual(['mine', 'theirs']);
    expect(deck.revision).toBe(base.revision + 1);
    expect(loadDeck(JSON.stringify(deck)).ok).toBe(true);
  });

  test('B1 a choice settles a conflict; the list of conflicts stays', () => {
    const [mine, theirs] = [edited((d) => (d.title = 'A')), edited((d) => (d.title = 'B'))];
    expect(mergeDecks(base, mine, theirs).deck.title).toBe('A');
    const chosen = mergeDecks(base, mine, theirs, new Map([['title', 'theirs' as const]]));
    expect(chosen.deck.title).toBe('B');
    expect(idsOf(chosen.conflicts)).toEqual(['changed title']);
  });

  test('B3 a value that nobody verified as it now stands comes unsure, until somebody chooses', () => {
    const mine = edited((d) => (d.train.gearsets[0].sun.teeth = 44));
    const theirs = edited((d) => (d.train.gearsets[0].verified = { by: 'Ada', on: '2026-10-01' }));
    const set = (choice?: 'mine' | 'theirs') =>
      mergeDecks(base, mine, theirs, new Map(choice ? [['train/gearsets:P1/verified', choice]] : [])).deck
        .train.gearsets[0]!;
    expect(set()).toMatchObject({ sun: { teeth: 44 }, unsure: true });
    expect(set().verified).toBeUndefined();
    expect(set('mine')).toMatchObject({ sun: { teeth: 44 }, verified: base.train.gearsets[0]!.verified });
    expect(set('theirs')).toMatchObject({ sun: { teeth: 43 }, verified: { by: 'Ada' } });
  });

  test('decks with different ids have nothing to merge', () => {
    expect(() => mergeDecks(base, base, { ...base, id: 'other' })).toThrow('not one deck');
  });

  test('B5 conflicts are listed by the facts that rest on them; names by themselves', () => {
    const sides = [
      edited(
        (d) => (range(d, '3').applied = ['B1', 'C1']),
        (d) => (range(d, '3').ratio = '1.465'),
        (d) => (d.title = 'A'),
      ),
      edited(
        (d) => (range(d, '3').note = 'as it was'),
        (d) => (d.title = 'B'),
      ),
    ] as const;
    const older = edited((d) => (range(d, '3').applied = ['B1', 'B2']));
    const { conflicts } = mergeDecks(older, ...sides);
    const { facts, others } = conflictsByFact(conflicts, makeUnit(sides[0]), makeUnit(sides[1]));
    const named = facts.map(({ fact }) => fact);
    // Range 3 has C1 here and C2 there: its row, both columns and its ratio come out otherwise; nothing of range 1.
    for (const fact of ['range:3/elements', 'range:3/ratio', 'element:C1/ranges', 'element:C2/ranges'])
      expect(named).toContain(fact);
    for (const fact of ['range:1/elements', 'range:1/ratio', 'element:B3/ranges'])
      expect(named).not.toContain(fact);
    expect(others.map(({ id }) => id)).toEqual(['title']);
  });

  test('each kind of conflict has a sentence', () => {
    const say = makeSay(base);
    const said = ROWS.flatMap(
      ([, mine, theirs]) => mergeDecks(base, edited(mine), edited(theirs)).conflicts,
    ).map((conflict) => say(conflictPhrase(conflict)));
    expect(said).toEqual(
      expect.arrayContaining([
        'Range "4", ratio: here 1.46, there 1.5, before 1.465. Choose one.',
        'Range "4", applied: here B1 B2, there C1 C2, before B1 C1. Choose one.',
        'Solenoid "SA": taken away on one side and changed on the other. Choose one.',
        'Source "new", title: added on both sides, not alike: here A, there B. Choose one.',
        'Deck, chart.ranges: put in another order on both sides. Choose one.',
        'Fluid "f", refill: added on both sides, not alike: here 5 L, there 5 US qt. Choose one.',
        'Gearset "P1": the merged value is not the one that was verified. It counts as unsure, and is not asked, until somebody checks it.',
      ]),
    );
  });
});

/** Edits that each touch one field of one record, so that two different ones never meet. */
const FIELDS: readonly Edit[] = [
  ...base.chart.ranges.map(
    ({ id }): Edit =>
      (d) =>
        (range(d, id).note = `note ${id}`),
  ),
  ...base.train.elements.map(
    (_, i): Edit =>
      (d) =>
        (d.train.elements[i].name = `name ${i}`),
  ),
  (d) => (d.title = 'another title'),
  (d) => d.sources.push({ id: 'added', title: 'added' }),
  (d) => d.chart.ranges.splice(3, 1),
  (d) => (d.cautions = undefined),
];

describe('laws of merging, over random edits', () => {
  const some = fc.subarray([...FIELDS.keys()]);
  const by = (indexes: readonly number[]) => {
    const kept = indexes.filter((index) => !(indexes.includes(15) && index === 3));
    return edited(...kept.map((index) => FIELDS[index]!));
  };

  test('B1 nothing changed on one side gives the other side; the same on both gives it too', () => {
    fc.assert(
      fc.property(some, (indexes) => {
        const side = by(indexes);
        for (const [mine, theirs] of [[side, base], [base, side], [side, side]] as const) {
          const { deck, conflicts } = mergeDecks(base, mine, theirs);
          expect(JSON.parse(JSON.stringify(withoutRevision(deck)))).toEqual(
            JSON.parse(JSON.stringify(withoutRevision(side))),
          );
          expect(conflicts).toEqual([]);
        }
      }),
      { numRuns: 60 },
    ); // biome-ignore format: three pairs
  });

  test('B1 edits that do not meet merge to what doing both would give, whoever is merged into whom', () => {
    fc.assert(
      fc.property(some, some, (first, second) => {
        const [a, b] = [first, second.filter((index) => !first.includes(index))];
        fc.pre(!([a, b].some((side) => side.includes(15)) && [a, b].some((side) => side.includes(3))));
        const both = JSON.parse(JSON.stringify(withoutRevision(by([...a, ...b].sort((x, y) => x - y)))));
        for (const [mine, theirs] of [[by(a), by(b)], [by(b), by(a)]] as const) {
          const { deck, conflicts } = mergeDecks(base, mine, theirs);
          expect(conflicts).toEqual([]);
          expect(JSON.parse(JSON.stringify(withoutRevision(deck)))).toEqual(both);
        }
      }),
      { numRuns: 60 },
    ); // biome-ignore format: two pairs
  });
});
