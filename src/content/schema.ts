/**
 * The outer shape of a deck file. Unknown keys are refused: they are usually typing slips. What fields say to
 * each other is checked in rules/. The descriptions go into the JSON Schema that editors use
 * (public/deck.schema.json); docs/deck-format.md is the readable companion.
 */
import { ELEMENT_KINDS, GEARSET_KINDS } from '../core/gears/train.ts';
import { type Deck, PRESSURES, SOLENOID_KINDS } from '../core/unit/deck.ts';
import type { Agreed, DeepReadonly, KeyPath } from './agreement.ts';
import { electrical } from './schema/electrical.ts';
import { DECIMAL, DECK_ID, day, ID, id, ids, language, name, provenance, words } from './schema/fields.ts';
import { fit } from './schema/fits.ts';
import { part, seat } from './schema/seats.ts';
import { sequence } from './schema/sequences.ts';
import { alias, capacity, caution, code, fluid, tightening, weight } from './schema/service.ts';
import { stack } from './schema/stacks.ts';
import { valveBody } from './schema/valve-body.ts';
import { z } from './zod.ts';

/** The format this program reads and writes. */
export const FORMAT = 1;

const teeth = (description: string) => z.int().min(1).max(999).describe(description);

const source = z
  .strictObject({
    id: id('Short id, named by `source` on values.'),
    title: words('What it is: a book and page, a plate, a tear-down sheet.'),
    by: words('Who wrote or measured it.').optional(),
    on: day('Its date: YYYY-MM-DD.').optional(),
  })
  .meta({ id: 'source', description: 'Where values come from.' });

const shaft = z
  .strictObject({ id: id('A shaft used in the train.'), name })
  .meta({ id: 'shaft', description: 'A name for a shaft. Only for showing; shafts exist by being used.' });

const gear = z
  .strictObject({
    shaft: id('The shaft it sits on, or "case" for a gear fixed for good.'),
    teeth: teeth('Tooth count.'),
  })
  .meta({ id: 'gear', description: 'A toothed member.' });

const gearset = z
  .strictObject({
    id: id('Id of the gearset.'),
    name,
    kind: z
      .enum(GEARSET_KINDS)
      .describe('simple: one row of planets. double-pinion: planets in meshing pairs between sun and ring.'),
    sun: gear,
    ring: gear,
    carrier: z
      .strictObject({ shaft: id('The shaft the carrier turns with, or "case".') })
      .describe('The carrier of the planets.'),
    planets: z
      .int()
      .min(1)
      .max(12)
      .describe('Planets (pairs, when double-pinion) on the carrier. Only for the assembly check.')
      .optional(),
    ...provenance,
  })
  .meta({ id: 'gearset', description: 'A planetary gearset: sun, ring and carrier, each on a shaft.' });

const element = z
  .strictObject({
    id: id('Id of the element.'),
    name,
    kind: z
      .enum(ELEMENT_KINDS)
      .describe(
        'brake: shaft to case (a band is a brake). clutch: shaft to shaft. one-way: holds one way only.',
      ),
    between: z
      .tuple([z.string().regex(ID), z.string().regex(ID)])
      .describe('The two shafts it joins; for a brake one of them is "case".'),
    overruns: z
      .enum(['forward', 'backward'])
      .describe(
        'One-ways only. forward (when left out): the first shaft may run ahead of the second and is locked ' +
          'when it would fall behind. backward: the other way round.',
      )
      .optional(),
    capacity: capacity.optional(),
    ...provenance,
  })
  .meta({ id: 'element', description: 'A friction element or one-way.' });

const row = {
  id: id('What the row is called: "1", "R", "N".'),
  name,
  applied: ids('The elements that are on, one-ways that hold included.'),
  unsureCells: ids('Elements of this row whose cell, on or off, is not verified yet.').optional(),
  ...provenance,
};

const range = z
  .strictObject({
    ...row,
    ratio: z
      .string()
      .regex(DECIMAL)
      .describe('Ratio as plate or book states it, as text, with its sign: "3.480", "-1.800".')
      .optional(),
  })
  .meta({ id: 'range', description: 'A row of the apply chart that drives.' });

const neutral = z
  .strictObject(row)
  .meta({ id: 'neutral', description: 'A row of the apply chart that must not drive: neutral, park.' });

const solenoid = z
  .strictObject({
    id: id('Id of the solenoid.'),
    name,
    kind: z
      .enum(SOLENOID_KINDS)
      .describe('on-off, linear (pressure follows current) or pulsed (duty cycle).'),
    feeds: ids('What it feeds: element ids, or "line-pressure", "converter-clutch", "lubrication".'),
    whenUnplugged: z
      .enum(PRESSURES)
      .describe('What it lets through with no current. With full current it gives the other.'),
    ...provenance,
  })
  .meta({ id: 'solenoid', description: 'A solenoid, told by the pressure it gives when unplugged.' });

const position = z
  .strictObject({
    id: id('Where the lever stands: "P", "R", "D".'),
    name,
    rows: ids('Chart rows that can be commanded here.'),
    opens: ids('Manual valve only: elements whose solenoid feed stays open here.').optional(),
    feeds: ids('Manual valve only: elements fed by hand here, with no solenoid between.').optional(),
    ...provenance,
  })
  .meta({ id: 'position', description: 'A position of the lever.' });

const lever = z
  .strictObject({
    valve: z
      .enum(['manual', 'none'])
      .describe(
        'manual: the lever moves a valve that cuts or opens feeds. none: a sensor only tells the controller.',
      ),
    positions: z.array(position).max(20).describe('All positions, in the order of the gate.'),
  })
  .describe('The selector lever.');

const interlock = z
  .strictObject({
    id: id('Id of the interlock.'),
    name,
    whenApplied: ids('It acts while every one of these elements has pressure.').min(1),
    blocks: ids('The elements that then get no pressure.').min(1),
    ...provenance,
  })
  .meta({ id: 'interlock', description: 'A valve that keeps pressure from elements while others have it.' });

const sensor = z
  .strictObject({
    id: id('Id of the sensor.'),
    name,
    reads: id('The shaft it reads.'),
    teeth: teeth('Teeth of its wheel: pulses a turn.'),
    ...provenance,
  })
  .meta({ id: 'sensor', description: 'A speed sensor.' });

export const deckFile = z
  .strictObject({
    $schema: z.string().max(500).describe('For editors: where the JSON Schema is.').optional(),
    detentDeck: z.literal(FORMAT).describe('The deck format. This is format 1.'),
    id: z
      .string()
      .max(60)
      .regex(DECK_ID)
      .describe('Stable id, lower case with hyphens. Changing it makes a different deck.'),
    title: words('Title of the deck.'),
    unit: words('Model name of the unit.'),
    revision: z.int().min(1).max(1_000_000).describe('Counts up by one with every change handed out.'),
    language: language('Language of the deck\'s own words, as a BCP 47 tag: "en", "fr-CA".').optional(),
    variantOf: z
      .strictObject({
        deck: z.string().max(60).regex(DECK_ID).describe('Id of that deck.'),
        revision: z.int().min(1).max(1_000_000).describe('Its revision when it was last compared.'),
      })
      .describe('The deck that this variant was taken from. Every value stands here in full all the same.')
      .optional(),
    sources: z.array(source).max(200).describe('Where the values come from.').optional(),
    train: z
      .strictObject({
        input: id('The shaft that is driven: the turbine.'),
        output: id('The shaft that drives out.'),
        shafts: z.array(shaft).max(60).describe('Names for shafts.').optional(),
        gearsets: z.array(gearset).min(1).max(8).describe('The gearsets.'),
        elements: z.array(element).min(1).max(24).describe('Clutches, brakes and one-ways.'),
      })
      .describe('Gears, shafts and elements. The name "case" is kept for the housing.'),
    chart: z
      .strictObject({
        ranges: z.array(range).min(1).max(40).describe('Rows that drive, in chart order.'),
        neutral: z.array(neutral).max(10).describe('Rows that must not drive: neutral, park.').optional(),
      })
      .describe('The apply chart.'),
    solenoids: z.array(solenoid).max(40).describe('The solenoids.').optional(),
    lever: lever.optional(),
    interlocks: z
      .array(interlock)
      .max(20)
      .describe('Valves that keep elements from coming on together.')
      .optional(),
    sensors: z.array(sensor).max(40).describe('Speed sensors.').optional(),
    shaftLine: z.array(part).max(99).describe('Bodies of the shaft line, from front to rear.').optional(),
    seats: z.array(seat).max(99).describe('Bearings, washers and seals and how they lie.').optional(),
    stacks: z.array(stack).max(40).describe('Plates in order.').optional(),
    fits: z.array(fit).max(60).describe('Measurements with limits and selective parts.').optional(),
    sequences: z.array(sequence).max(40).describe('Work in steps.').optional(),
    electrical: electrical.optional(),
    valveBody: valveBody.optional(),
    fluids: z.array(fluid).max(10).describe('Fluids and fills.').optional(),
    torques: z.array(tightening).max(200).describe('Torques by place.').optional(),
    weights: z.array(weight).max(60).describe('What things weigh.').optional(),
    codes: z.array(code).max(200).describe('Trouble codes.').optional(),
    aliases: z.array(alias).max(400).describe('Other names.').optional(),
    cautions: z.array(caution).max(200).describe('Safety cautions.').optional(),
  })
  .meta({
    title: 'Detent deck, format 1',
    description: "The shop's data about one automatic transmission. It holds no questions.",
  });

export type DeckFile = z.infer<typeof deckFile>;

/** Does not compile when this file and src/core/unit/deck.ts drift apart. */
export type SchemaAgreesWithCore = Agreed<
  [DeckFile] extends [Deck] ? true : 'the schema lets through what core does not take',
  [Deck] extends [DeepReadonly<DeckFile>] ? true : 'core takes what the schema refuses',
  [KeyPath<Deck>] extends [KeyPath<DeckFile>] ? true : 'core has a field that the schema lacks',
  [KeyPath<Omit<DeckFile, '$schema'>>] extends [KeyPath<Deck>]
    ? true
    : 'the schema has a field that core lacks'
>;
