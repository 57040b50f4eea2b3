/** Looking things up by what people call them. */
import { describe, expect, test } from 'vitest';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { calledIn, findIn } from '../../../src/core/unit/find.ts';
import { refsOf } from '../../../src/core/unit/refs.ts';
import { shippedDecks } from '../../units.ts';

const [dunlin] = shippedDecks();
const face = (touches: string) => ({ touches });
const seat = (place: number, name?: string) => ({
  id: `T${place}`,
  ...(name ? { name } : {}),
  kind: 'thrust-bearing' as const,
  place,
  viewedFrom: 'front' as const,
  faces: { A: face('pump'), B: face('drum') },
});
const deck: Deck = {
  ...dunlin!,
  train: {
    ...dunlin!.train,
    elements: [
      { id: 'B1', kind: 'brake', name: 'low-reverse brake', between: ['s0', 'case'] },
      { id: 'C1', kind: 'clutch', name: 'Rückwärtskupplung', between: ['s0', 's1'] },
    ],
    gearsets: [],
  },
  chart: { ranges: [] },
  solenoids: [{ id: 'SA', name: 'low solenoid', kind: 'linear', feeds: ['B1'], whenUnplugged: 'none' }],
  lever: undefined,
  sensors: undefined,
  shaftLine: [{ id: 'pump', name: 'pump body' }, { id: 'drum' }],
  seats: [seat(1, 'pump bearing'), seat(10), seat(11, 'drum bearing')],
  stacks: [
    {
      id: 'low',
      name: 'low pack',
      floor: 'piston',
      floorAt: 'front',
      items: [{ id: 'steel-1', kind: 'steel' }],
    },
  ],
  fits: undefined,
  sequences: [{ id: 'strip', name: 'stripping', steps: [{ id: 'pump-off', text: 'Draw the pump.' }] }],
  electrical: {
    supplies: [{ id: 'main' }],
    windings: [
      {
        solenoid: 'SA',
        at20: { low: { value: '5', unit: 'Ω' }, high: { value: '6', unit: 'Ω' } },
        supply: 'main',
        switched: 'low',
      },
    ],
  },
  fluids: undefined,
  torques: undefined,
  weights: undefined,
  codes: [{ id: 'P0777', kind: 'stuck-on', watches: ['solenoid:SA'], meaning: 'Solenoid stays on' }],
  aliases: [
    { of: 'seat:T10', names: ['pump washer'] },
    { of: 'element:B1', names: ['coast brake', 'Bremse für Rückwärts'] },
    { of: 'solenoid:SA', names: ['shift valve A'] },
  ],
};

const refs = (text: string) => findIn(deck, text)?.map(({ ref }) => ref) ?? null;

test.each<[string, string, string[]]>([
  ['an id', 'SA', ['solenoid:SA', 'winding:SA']],
  ['in small letters', 'b1', ['element:B1']],
  ['a number is whole: T1 is not T10', 'T1', ['seat:T1']],
  ['a number on its way to a longer one', 'p07', ['code:P0777']],
  ['two words in any order, begun', 'bear pum', ['seat:T1']],
  ['with a mark between', 'low reverse', ['element:B1']],
  ['without the accent', 'ruckwartsk', ['element:C1']],
  [
    'own names, then other names, then steps',
    'pump',
    ['seat:T1', 'part:pump', 'seat:T10', 'step:strip/pump-off'],
  ],
  ['a winding by its solenoid’s other name', 'valve a', ['solenoid:SA', 'winding:SA']],
  ['what is printed beside: id and other name together', 'B1 coast', ['element:B1']],
  ['a plate within its pack', 'steel', ['plate:low/steel-1']],
  ['not in the middle of a word', 'verse', []],
  ['nothing of the kind', 'T12', []],
])('%s: "%s"', (_, text, expected) => {
  expect(refs(text)).toEqual(expected);
});

test('a text without words asks for nothing', () => {
  expect([refs(''), refs(' - ')]).toEqual([null, null]);
});

test('the other name is told only where it was needed', () => {
  const aliasOf = (text: string) => findIn(deck, text)!.map(({ alias }) => alias);
  expect(aliasOf('coast')).toEqual(['coast brake']);
  expect(aliasOf('rückw bremse')).toEqual(['Bremse für Rückwärts']);
  expect(aliasOf('low reverse brake')).toEqual([null]);
});

describe.each(shippedDecks().map((shipped) => [shipped.id, shipped] as const))('%s', (_, shipped) => {
  test('names only what is in the deck, each thing once', () => {
    const called = calledIn(shipped).map(({ ref }) => ref);
    expect(new Set(called).size).toBe(called.length);
    expect(called.filter((ref) => !refsOf(shipped).has(ref))).toEqual([]);
  });

  test('everything is found by its id, by its name and by each other name', () => {
    for (const { ref, id, name, aliases } of calledIn(shipped))
      for (const text of [id, name, ...aliases])
        expect(
          findIn(shipped, text)?.map((found) => found.ref),
          `${ref} by "${text}"`,
        ).toContain(ref);
  });
});
