/**
 * The outer shape of a deck file. Unknown keys are refused: they are usually typing slips. What fields say to
 * each other is checked in rules/. The descriptions go into the JSON Schema that editors use
 * (public/deck.schema.json); docs/deck-format.md is the readable companion.
 */
import { ELEMENT_KINDS, GEARSET_KINDS } from '../core/gears/train.ts';
import { type Deck, HAZARDS, PRESSURES, SOLENOID_KINDS, TORQUE_UNITS } from '../core/unit/deck.ts';
import type { Agreed, DeepReadonly, KeyPath } from './agreement.ts';
import { z } from './zod.ts';

/** The format this program reads and writes. */
export const FORMAT = 1;

/** Starts with a letter or digit, no spaces, and none of the marks that references use (":" and "/"). */
export const ID = /^[\p{L}\p{N}][\p{L}\p{M}\p{N}._+'′*#&()-]{0,39}$/u;
export const DECK_ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;
export const DECIMAL = /^-?\d{1,6}(\.\d{1,9})?$/;
export const MEASURE = /^\d{1,6}(\.\d{1,6})?$/;
export const REFERENCE = /^[a-z]+:[^\s:]+$/;
export const LANGUAGE = /^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/;
/** At least one mark that can be seen. */
export const WORDS = /\S/;

const id = (description: string) => z.string().regex(ID).describe(description);
const words = (description: string) => z.string().max(2000).regex(WORDS).describe(description);
const ids = (description: string) => z.array(z.string().regex(ID)).max(60).describe(description);
const teeth = (description: string) => z.int().min(1).max(999).describe(description);
const day = (description: string) => z.iso.date().describe(description);

const signature = (description: string) =>
  z.strictObject({ by: words('Who did it.'), on: day('On which day: YYYY-MM-DD.') }).describe(description);

const provenance = {
  source: id('The source this comes from: an id from `sources`.').optional(),
  measuredBy: words('Who measured or counted it.').optional(),
  unsure: z
    .literal(true)
    .describe('Not verified yet: shown and printed with a mark, never asked. Leave out when it is sure.')
    .optional(),
  verified: signature('Who checked it against the source or the unit, and when.').optional(),
  note: words('Anything a colleague should know about this value.').optional(),
};

const name = words('What the shop calls it. Without a name the id is shown.').optional();

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

const sensor = z
  .strictObject({
    id: id('Id of the sensor.'),
    name,
    reads: id('The shaft it reads.'),
    teeth: teeth('Teeth of its wheel: pulses a turn.'),
    ...provenance,
  })
  .meta({ id: 'sensor', description: 'A speed sensor.' });

const step = z
  .strictObject({
    id: id('Id of the step within its sequence.'),
    text: words('What is done, in the words of the shop.'),
    after: z
      .array(
        z.strictObject({
          step: id('A step of this sequence that must be done before.'),
          reason: words('Why it must be done before.'),
        }),
      )
      .max(60)
      .describe('What must be done before this step, and why.')
      .optional(),
    tool: words('Tool the step needs.').optional(),
    torque: z
      .strictObject({
        value: z.string().regex(MEASURE).describe('The figure as printed, as text: "12".'),
        unit: z.enum(TORQUE_UNITS).describe('The unit it is printed in.'),
      })
      .describe('Tightening torque.')
      .optional(),
    hazards: z.array(z.enum(HAZARDS)).max(HAZARDS.length).describe('Dangers of this step.').optional(),
    ...provenance,
  })
  .meta({ id: 'step', description: 'One step of a sequence.' });

const sequence = z
  .strictObject({
    id: id('Id of the sequence.'),
    name,
    steps: z.array(step).max(200).describe('The steps, in one order that works.'),
    ...provenance,
  })
  .meta({ id: 'sequence', description: 'Work in steps, with must-be-before relations.' });

const caution = z
  .strictObject({
    id: id('Id of the caution.'),
    hazard: z.enum(HAZARDS).describe('What kind of danger.'),
    text: words('What to do or keep from. Shown before the answer and in print.'),
    attachedTo: z
      .array(z.string().max(120).regex(REFERENCE))
      .min(1)
      .max(200)
      .describe('What it belongs to: "element:C1", "solenoid:SA", "range:4", "step:strip/pump-off".'),
    reviewed: signature('Who reviewed the caution, and when.').optional(),
  })
  .meta({ id: 'caution', description: 'A safety caution.' });

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
    language: z
      .string()
      .max(40)
      .regex(LANGUAGE)
      .describe('Language of the deck\'s own words, as a BCP 47 tag: "en", "fr-CA".')
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
    sensors: z.array(sensor).max(40).describe('Speed sensors.').optional(),
    sequences: z.array(sequence).max(40).describe('Work in steps.').optional(),
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
