/**
 * Decks with everything a fault can touch: the published trains with made-up capacities and supplies on top of
 * the solenoids, lever and sensors of tests/units.ts.
 */
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit, type Unit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED, type PublishedTrain } from '../../units.ts';

const mm = (value: number) => ({ value: String(value), unit: 'mm' as const });

/** Two supplies, every second solenoid on each; plates, pistons and springs that differ from element to element. */
export function fullDeckOf(train: PublishedTrain): Deck {
  const deck = deckOf(train);
  return {
    ...deck,
    train: {
      ...deck.train,
      elements: deck.train.elements.map((element, index) =>
        element.kind === 'one-way'
          ? element
          : {
              ...element,
              capacity: {
                piston: { outer: mm(150 + 3 * index), inner: mm(110) },
                spring: { value: String(700 + 90 * ((index * 5) % 4)), unit: 'N' },
                frictions: 3 + ((index * 3) % 5),
                lining: { outer: mm(160 - 2 * index), inner: mm(130 - 3 * index) },
                friction: '0.13',
                pressure: { value: '15', unit: 'bar' },
              },
            },
      ),
    },
    electrical: {
      supplies: [{ id: 'main' }, { id: 'spare' }],
      windings: deck.solenoids!.map(({ id }, index) => ({
        solenoid: id,
        at20: { low: { value: '5.0', unit: 'Ω' }, high: { value: '5.6', unit: 'Ω' } },
        supply: index % 2 === 0 ? 'main' : 'spare',
        switched: 'low',
      })),
    },
  };
}

const made = new Map<string, Unit>();

/** The unit on a published train, made once. */
export function fullUnit(id: string): Unit {
  const known = made.get(id) ?? makeUnit(fullDeckOf(PUBLISHED.find((train) => train.id === id)!));
  made.set(id, known);
  return known;
}

export const fullUnits = (): Unit[] => PUBLISHED.map(({ id }) => fullUnit(id));
