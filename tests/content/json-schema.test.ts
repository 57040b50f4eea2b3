import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { makeDeckSchema } from '../../src/content/json-schema.ts';
import { checkShape } from '../../src/content/shape.ts';
import { shippedDecks } from '../units.ts';
import { baseDeck, type Loose } from './base.ts';

const stored = readFileSync(new URL('../../public/deck.schema.json', import.meta.url), 'utf8');
const accepts = new Ajv2020({ validateFormats: false }).compile(JSON.parse(stored));

/** Every object in the schema that is a field's own schema. */
function fields(schema: Loose, path = ''): [string, Loose][] {
  const own = Object.entries<Loose>(schema.properties ?? {}).flatMap(([key, field]) => [
    [`${path}.${key}`, field] as [string, Loose],
    ...fields(field, `${path}.${key}`),
  ]);
  const items = schema.items ? fields(schema.items, `${path}[]`) : [];
  const shared = Object.entries(schema.$defs ?? {}).flatMap(([key, def]) => fields(def, key));
  return [...own, ...items, ...shared];
}

describe('public/deck.schema.json', () => {
  test('is what `npm run schema` makes', () => {
    expect(stored).toBe(makeDeckSchema());
  });

  test('describes every field', () => {
    const schema = JSON.parse(stored);
    const said = (field: Loose): boolean =>
      typeof field.description === 'string' ||
      (field.$ref && said(schema.$defs[field.$ref.replace('#/$defs/', '')]));
    const all = fields(schema);
    expect(all.length).toBeGreaterThan(80);
    expect(all.filter(([, field]) => !said(field)).map(([path]) => path)).toEqual([]);
  });

  test('a validator of its own takes the shipped decks', () => {
    for (const deck of shippedDecks()) expect([deck.id, accepts(deck)]).toEqual([deck.id, true]);
  });

  test.each<[string, (deck: Loose) => unknown]>([
    ['a field misspelled', (d) => (d.train.gearsets[0].sun = { shaft: 's1', teehts: 24 })],
    ['a field missing', (d) => delete d.title],
    ['no teeth', (d) => (d.train.gearsets[0].sun.teeth = 0)],
    ['half a tooth', (d) => (d.train.gearsets[0].sun.teeth = 24.5)],
    ['a third shaft', (d) => d.train.elements[0].between.push('c')],
    ['one shaft', (d) => d.train.elements[0].between.pop()],
    ['an unknown kind', (d) => (d.train.elements[0].kind = 'band')],
    ['a ratio as a number', (d) => (d.chart.ranges[0].ratio = 2.875)],
    ['an id with a space', (d) => (d.chart.ranges[0].id = 'first gear')],
    ['another format', (d) => (d.detentDeck = 2)],
    ['an unknown part', (d) => (d.wheels = [])],
  ])('validator and loader both refuse %s', (_, breakIt) => {
    const deck = baseDeck();
    expect([accepts(deck), checkShape(deck).ok]).toEqual([true, true]);
    breakIt(deck);
    expect([accepts(deck), checkShape(deck).ok]).toEqual([false, false]);
  });
});
