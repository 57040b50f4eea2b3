import { describe, expect, test } from 'vitest';
import {
  changedRefs,
  differencePhrase,
  differencesBetween,
} from '../../../src/core/deck-merge/differences.ts';
import { changedFacts } from '../../../src/core/questions/resting.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { shippedDecks } from '../../units.ts';

const base = shippedDecks().find((deck) => deck.id === 'kestrel-7')!;

// biome-ignore lint/suspicious/noExplicitAny: an edit reaches anywhere into a copy
type Edit = (deck: any) => void;
const edited = (edit: Edit): Deck => {
  const copy = structuredClone(base);
  edit(copy);
  return copy;
};
const say = makeSay(null);

/** An edit, what is said of it, and the references whose value it changes; by hand. */
const ROWS: readonly [name: string, edit: Edit, said: string[], refs: string[]][] = [
  ['nothing', () => {}, [], []],
  ['only the revision', (d) => (d.revision = 9), [], []],
  ['a set in another order', (d) => d.chart.ranges[0].applied.reverse(), [], []],
  ['a cell of the chart', (d) => (d.chart.ranges[2].applied = ['B1', 'B2']), ['range "3", applied: B1 C2 → B1 B2'], ['cell:3/B2', 'cell:3/C2', 'range:3']],
  ['a name', (d) => (d.train.elements[0].name = 'first brake'), ['element "B1", name: forward brake → first brake'], []],
  ['a note', (d) => (d.train.elements[0].note = 'seen'), ['element "B1", note: added, seen'], []],
  ['no longer sure', (d) => (d.train.elements[0].unsure = true), ['element "B1", unsure: added, yes'], []],
  ['a tooth', (d) => (d.train.gearsets[0].sun.teeth = 44), ['gearset "P1", sun.teeth: 43 → 44'], ['gearset:P1']],
  ['a solenoid taken away', (d) => d.solenoids.shift(), ['solenoid "SA": taken away, was id SA, name '], ['solenoid:SA']],
  ['a row added', (d) => d.chart.neutral.push({ id: 'X', applied: ['B2'] }), ['neutral row "X": added, id X'], ['cell:X/B2', 'neutral:X']],
  ['a record added to a list', (d) => d.torques.push({ id: 'pan-new', torque: { value: '9.5', unit: 'N·m' }, count: 2 }), ['torque "pan-new": added, id pan-new, count 2'], ['torque:pan-new']],
  ['a caution', (d) => (d.cautions = d.cautions.slice(1)), ['caution'], []],
  ['what the lever does', (d) => (d.lever.valve = d.lever.valve === 'none' ? 'manual' : 'none'), ['deck, lever.valve'], ['position:L', 'position:P', 'position:R', 'position:N', 'position:D']],
  ['the chart in another order', (d) => d.chart.ranges.unshift(d.chart.ranges.pop()), ['deck, chart.ranges: order was 1 2 3 4 5 6 7 R, is R 1 2 3 4 5 6 7'], ['range:1', 'range:2', 'range:3', 'range:4', 'range:5', 'range:6', 'range:7', 'range:R']],
]; // biome-ignore format: a table reads across

describe('differences between revisions', () => {
  test.each(ROWS)('%s', (_, edit, said, refs) => {
    const after = edited(edit);
    const sentences = differencesBetween(base, after).map((difference) => say(differencePhrase(difference)));
    expect(sentences).toHaveLength(said.length);
    for (const [place, sentence] of sentences.entries()) expect(sentence.startsWith(said[place]!)).toBe(true);
    expect(changedRefs(base, after)).toEqual([...refs].sort());
    expect(changedRefs(after, base)).toEqual([...refs].sort());
  });

  test('parts within a record: a plate is its stack too, an amount is told with its unit', () => {
    const stack = (thickness: string) =>
      edited((d) => {
        const items = [{ id: 'steel-1', kind: 'steel', thickness: { value: thickness, unit: 'mm' } }];
        d.stacks = [{ id: 'C1', floor: 'drum', floorAt: 'rear', items }];
      });
    const [before, after] = [stack('1.80'), stack('1.78')];
    expect(differencesBetween(before, after).map((difference) => say(differencePhrase(difference)))).toEqual([
      'plate "C1/steel-1", thickness: 1.80 mm → 1.78 mm',
    ]);
    expect(changedRefs(before, after)).toEqual(['plate:C1/steel-1', 'stack:C1']);
  });
});

describe('facts that come out otherwise', () => {
  test('a swapped element in range 3 changes its row, both columns and what follows from them, nothing of range 1', () => {
    const after = edited((d) => {
      d.chart.ranges[2].applied = ['B1', 'C1'];
      d.chart.ranges[2].ratio = undefined;
    });
    const facts = changedFacts(makeUnit(base), makeUnit(after), changedRefs(base, after));
    for (const fact of ['range:3/elements', 'range:3/ratio', 'element:C1/ranges', 'element:C2/ranges', 'shift:2>3'])
      expect(facts).toContain(fact);
    for (const fact of ['range:1/elements', 'range:1/ratio', 'element:B2/ranges', 'shift:5>6'])
      expect(facts).not.toContain(fact);
    expect(facts.some((fact) => fact.startsWith('skill:'))).toBe(false);
  });

  test('a name, a note or a ratio stated to the same figures changes no fact', () => {
    const after = edited((d) => {
      d.train.elements[0].name = 'first brake';
      d.chart.ranges[0].note = 'seen';
    });
    expect(changedFacts(makeUnit(base), makeUnit(after), changedRefs(base, after))).toEqual([]);
  });

  // In range 3 the direct clutch joins carrier and sun of the rear set: it turns as one, whatever its teeth.
  test('teeth change ratios and speeds where they count, not the chart', () => {
    const after = edited((d) => {
      d.train.gearsets[2].sun.teeth = 47;
      for (const row of d.chart.ranges) row.ratio = undefined;
    });
    const facts = changedFacts(makeUnit(base), makeUnit(after), ['gearset:P3']);
    expect(facts).toContain('range:1/ratio');
    expect(facts).not.toContain('range:3/ratio');
    expect(facts.filter((fact) => fact.endsWith('/elements') || fact.endsWith('/ranges'))).toEqual([]);
  });
}); // biome-ignore format: lists of facts read across
