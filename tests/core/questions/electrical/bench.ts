/** Units whose wires are just those of a table. */
import type { DeckSensor } from '../../../../src/core/unit/deck.ts';
import type { DeckElectrical, DeckThermistor } from '../../../../src/core/unit/electrical.ts';
import { makeUnit, type Unit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';

export const ohm = (value: string) => ({ value, unit: 'Ω' as const });
const band = (low: string, high: string) => ({ low: ohm(low), high: ohm(high) });

const bare = deckOf(PUBLISHED.find(({ id }) => id === 'four-range-two-crossed-sets')!);

export const unitWith = (electrical: DeckElectrical, sensors: readonly DeckSensor[] = bare.sensors!): Unit =>
  makeUnit({ ...bare, electrical, sensors });

/** Solenoids S1, S2… with these bands, on one supply, switched low, pins 1, 2… and the common one after them. */
export function windingsOf(...bands: [low: string, high: string][]): DeckElectrical {
  const ids = bands.map((_, index) => `S${index + 1}`);
  return {
    supplies: [{ id: 'main' }],
    windings: bands.map(([low, high], index) => ({
      solenoid: ids[index]!,
      at20: band(low, high),
      supply: 'main',
      switched: 'low',
    })),
    connectors: [
      {
        id: 'plug',
        rows: 1,
        columns: bands.length + 1,
        seenFrom: 'unit',
        pins: [...ids.map((id) => `solenoid:${id}`), 'supply:main'].map((serves, index) => ({
          id: String(index + 1),
          row: 1,
          column: index + 1,
          serves,
        })),
      },
    ],
  };
}

/** A temperature sensor from rows of °C and ohms. */
export const thermistorOf = (
  sense: DeckThermistor['sense'],
  ...rows: [celsius: string, low: string, high: string][]
): DeckElectrical => ({
  thermistors: [
    {
      id: 'oil',
      sense,
      points: rows.map(([celsius, low, high]) => ({
        at: { value: celsius, unit: '°C' },
        ohms: band(low, high),
      })),
    },
  ],
});
