/** Electrical data in a deck file. */
import { SIDES } from '../../core/electrical/driver.ts';
import { HEAT_SENSES } from '../../core/electrical/heat-sense.ts';
import { PICKUP_KINDS } from '../../core/unit/electrical.ts';
import { z } from '../zod.ts';
import { band, count, id, name, provenance, resistance, temperature } from './fields.ts';

const supply = z
  .strictObject({ id: id('Id of the supply.'), name, ...provenance })
  .meta({ id: 'supply', description: 'A feed that several parts share: one fuse, one driver.' });

const winding = z
  .strictObject({
    solenoid: id('The solenoid.'),
    at20: band(resistance, 'Resistance at 20 °C.'),
    supply: id('The supply it hangs on.'),
    switched: z.enum(SIDES).describe('Which side of the winding the controller switches.'),
    ...provenance,
  })
  .meta({ id: 'winding', description: "A solenoid's winding." });

const pickup = z
  .strictObject({
    sensor: id('The speed sensor.'),
    kind: z.enum(PICKUP_KINDS).describe('hall: needs a supply. coil: makes its own voltage.'),
    at20: band(resistance, 'Coils: resistance at 20 °C.').optional(),
    supply: id('Hall sensors: the supply.').optional(),
    ...provenance,
  })
  .meta({ id: 'pickup', description: 'The electrical side of a speed sensor.' });

const thermistor = z
  .strictObject({
    id: id('Id of the temperature sensor.'),
    name,
    sense: z.enum(HEAT_SENSES).describe('What its resistance does as it gets hotter.'),
    points: z
      .array(
        z.strictObject({
          at: temperature('Temperature.'),
          ohms: band(resistance, 'Resistance there.'),
        }),
      )
      .min(1)
      .max(60)
      .describe('Resistances at temperatures, coldest first.'),
    ...provenance,
  })
  .meta({ id: 'thermistor', description: "A sensor of the fluid's temperature." });

export const SERVES = /^(ground|spare|(solenoid|sensor|thermistor|supply):[^\s:]+)$/;

const pin = z
  .strictObject({
    id: id('Its number or letter as moulded.'),
    row: count('Row on the face, from 1.', 20),
    column: count('Column on the face, from 1.', 40),
    serves: z
      .string()
      .max(120)
      .regex(SERVES)
      .describe('"solenoid:S1", "sensor:input-speed", "thermistor:oil", "supply:main", "ground" or "spare".'),
    ...provenance,
  })
  .meta({ id: 'pin', description: 'A pin of a connector.' });

const connector = z
  .strictObject({
    id: id('Id of the connector.'),
    name,
    rows: count('Rows of the face.', 20),
    columns: count('Columns of the face.', 40),
    seenFrom: z.enum(['unit', 'harness']).describe('Which half the face is seen on, looking into it.'),
    pins: z.array(pin).max(200).describe('The pins.'),
    ...provenance,
  })
  .meta({ id: 'connector', description: 'A connector and its pins.' });

export const electrical = z
  .strictObject({
    supplies: z.array(supply).max(40).describe('Feeds.').optional(),
    windings: z.array(winding).max(40).describe('Windings of the solenoids.').optional(),
    pickups: z.array(pickup).max(40).describe('Speed sensors.').optional(),
    thermistors: z.array(thermistor).max(10).describe('Temperature sensors.').optional(),
    connectors: z.array(connector).max(10).describe('Connectors.').optional(),
  })
  .describe('Windings, supplies, sensors, connectors.');
