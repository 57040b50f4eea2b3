/** Every shipped deck is in order, and every family that can ask has something to ask on it. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadDeck } from '../src/content/load.ts';
import { behaviourOf } from '../src/core/faults/behaviour.ts';
import { unpluggedAt } from '../src/core/hydraulics/pressurised.ts';
import { ask } from '../src/core/questions/ask.ts';
import { FAMILIES } from '../src/core/questions/families/index.ts';
import { sentence } from './content/base.ts';

const folder = new URL('../decks/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const textOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');

function unitOf(name: string) {
  const loaded = loadDeck(textOf(name));
  if (!loaded.ok) throw new Error(loaded.error.map(sentence).join('\n'));
  return loaded.value;
}

describe.each(files)('decks/%s', (name) => {
  test('has neither errors nor warnings', () => {
    expect(unitOf(name).warnings.map(sentence)).toEqual([]);
  });

  test('is named as its file, and points editors at the schema', () => {
    expect(unitOf(name).deck.id).toBe(name.replace(/\.json$/, ''));
    expect(JSON.parse(textOf(name)).$schema).toBe('../public/deck.schema.json');
  });

  test('every family with facts here asks about them', () => {
    const { unit } = unitOf(name);
    for (const family of FAMILIES) {
      if (family.facts(unit).length === 0) continue;
      const asked = [1, 2, 3, 4, 5].filter((seed) => ask(unit, family, seed));
      expect([family.id, asked.length]).toEqual([family.id, 5]);
    }
  });

  test('says where its values come from, and leaves some unsure', () => {
    const { deck } = unitOf(name).unit;
    const values = [...deck.train.gearsets, ...deck.train.elements, ...deck.chart.ranges, ...deck.solenoids!];
    expect(values.filter((value) => value.source === undefined)).toEqual([]);
    expect(JSON.stringify(deck)).toMatch(/"unsure"|"unsureCells"/);
  });

  test('every caution is reviewed', () => {
    const cautions = unitOf(name).deck.cautions ?? [];
    expect(cautions.length).toBeGreaterThan(0);
    expect(cautions.filter((caution) => caution.reviewed === undefined)).toEqual([]);
  });
});

test('each family has facts in a shipped deck', () => {
  const units = files.map((name) => unitOf(name).unit);
  const idle = FAMILIES.filter((family) => units.every((unit) => family.facts(unit).length === 0));
  expect(idle.map((family) => family.id)).toEqual([]);
});

/** What each unit does with its connector off, worked by hand from chart, solenoids and valve. */
describe('connector off', () => {
  test.each([
    // full when unplugged: A (B1) and E (C2); R feeds B3 by hand; L closes C2
    ['kestrel-7.json', 'D', '3'],
    ['kestrel-7.json', 'R', 'R'],
    ['kestrel-7.json', 'N', null],
    ['kestrel-7.json', 'P', null],
    ['kestrel-7.json', 'L', null],
    // full when unplugged: 2 (C2) and 3 (B1), the neutral row, wherever the lever is
    ['dunlin-9.json', 'D', null],
    ['dunlin-9.json', 'R', null],
    // full when unplugged: 1 (C1), 4 (B3), 5 (C3). In D, B3 holds the race and its one-way the large sun; in
    // "2" only C1 is left and the low one-way holds; R, N and L feed B2 by hand
    ['plover-4.json', 'D', '2'],
    ['plover-4.json', '2', '1'],
    ['plover-4.json', 'L', '1m'],
    ['plover-4.json', 'R', 'R'],
    ['plover-4.json', 'N', null],
  ])('%s in %s: range %s', (name, position, range) => {
    const { unit, deck } = unitOf(name);
    const behaviour = behaviourOf(unit, unpluggedAt(deck, position)!);
    expect(behaviour.does === 'drives' ? behaviour.range : null).toBe(range);
  });
});
