import { describe, expect, test } from 'vitest';
import { areaOf } from '../../../src/core/assign/assignment.ts';
import { factsOf } from '../../../src/core/questions/facts.ts';
import { questionOf } from '../../../src/core/questions/reopen.ts';
import { drawFacts, makeSheet } from '../../../src/core/sheet/sheet.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { shippedDecks } from '../../units.ts';

const unit = makeUnit(shippedDecks().find(({ id }) => id === 'kestrel-7')!);
const facts = factsOf(unit);
const areas = new Set(facts.map(areaOf));
const ids = (some: readonly { readonly id: string }[]) => some.map(({ id }) => id);

describe('facts of a sheet', () => {
  test('as many as there are areas touch each area once', () => {
    for (let seed = 0; seed < 50; seed++) {
      const drawn = drawFacts(facts, areas.size, seed);
      expect(new Set(drawn.map(areaOf))).toEqual(areas);
    }
  });

  test('no more than there are, each once, and the same for the same seed', () => {
    const all = drawFacts(facts, 10_000, 3);
    expect(ids(all).toSorted()).toEqual(ids(facts).toSorted());
    expect(ids(drawFacts(facts, 12, 3))).toEqual(ids(all).slice(0, 12));
    expect(ids(drawFacts(facts, 12, 4))).not.toEqual(ids(all).slice(0, 12));
    expect(drawFacts([], 5, 1)).toEqual([]);
  });
});

describe('a sheet', () => {
  const some = drawFacts(facts, 10, 1);

  test('asks each fact once, by questions that can be opened again', () => {
    const items = makeSheet(unit, some, 7);
    expect(items.map(({ fact }) => fact).toSorted()).toEqual(ids(some).toSorted());
    for (const item of items) expect(questionOf(unit, item)?.fact).toBe(item.fact);
  });

  test('two people’s seeds give other questions on the same facts; one seed gives the same', () => {
    const [one, other] = [makeSheet(unit, some, 7), makeSheet(unit, some, 8)];
    expect(makeSheet(unit, some, 7)).toEqual(one);
    expect(one.map(({ fact }) => fact).toSorted()).toEqual(other.map(({ fact }) => fact).toSorted());
    expect(one.map(({ seed }) => seed)).not.toEqual(other.map(({ seed }) => seed));
    expect(one.map(({ fact }) => fact)).not.toEqual(other.map(({ fact }) => fact));
  });

  test('a fact that no family can ask is left out', () => {
    expect(makeSheet(unit, [{ ...some[0]!, id: 'range:none/elements' }], 1)).toEqual([]);
  });
});
