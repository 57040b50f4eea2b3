/** Capacity, fluid, torques, weights, codes, aliases and cautions in a deck file. */
import { HAZARDS } from '../../core/unit/cautions.ts';
import { CODE_KINDS } from '../../core/unit/service.ts';
import { z } from '../zod.ts';
import {
  band,
  count,
  force,
  gaugePressure,
  id,
  language,
  length,
  MEASURE,
  mass,
  name,
  provenance,
  reference,
  signature,
  temperature,
  torque,
  volume,
  words,
} from './fields.ts';

export const capacity = z
  .strictObject({
    piston: z
      .strictObject({
        outer: length('Outer diameter.'),
        inner: length('Inner diameter; left out for a full disc.').optional(),
      })
      .describe('The apply piston.'),
    spring: force('Force of the return spring where the plates touch.'),
    frictions: count('Friction plates; each has two faces.', 40),
    lining: z
      .strictObject({ outer: length('Outer diameter.'), inner: length('Inner diameter.') })
      .describe('The lining, as diameters.'),
    friction: z.string().regex(MEASURE).describe('Coefficient of friction, as text: "0.13".'),
    pressure: gaugePressure('Greatest apply pressure.'),
    ...provenance,
  })
  .meta({ id: 'capacity', description: 'What the torque capacity of an element is computed from.' });

export const fluid = z
  .strictObject({
    id: id('Id of the fluid.'),
    name,
    type: words('What it must be: the approval, not a brand.'),
    dryFill: volume('Fill after a rebuild, converter and cooler empty.').optional(),
    refill: volume('Fill after draining only.').optional(),
    levelAt: band(temperature, 'Temperature of the fluid while its level is checked.').optional(),
    ...provenance,
  })
  .meta({ id: 'fluid', description: 'A fluid and how much of it.' });

export const tightening = z
  .strictObject({
    id: id('Id of the place.'),
    name,
    torque: torque('Tightening torque.'),
    count: count('How many bolts or nuts.', 200).optional(),
    ...provenance,
  })
  .meta({ id: 'tightening', description: 'A torque by the place it is used at.' });

export const weight = z
  .strictObject({ id: id('Id of what is weighed.'), name, mass: mass('What it weighs.'), ...provenance })
  .meta({ id: 'weight', description: 'What something weighs.' });

export const code = z
  .strictObject({
    id: id('The code as it is read out: "P0777".'),
    kind: z.enum(CODE_KINDS).describe('What kind of fault it stands for.'),
    letter: id('The letter its standard text gives the part, where it gives one.').optional(),
    watches: z.array(reference('"solenoid:SB"')).min(1).max(40).describe('What it watches in this unit.'),
    meaning: words('What it means, in own words.'),
    ...provenance,
  })
  .meta({ id: 'code', description: 'A trouble code.' });

export const alias = z
  .strictObject({
    of: reference('What the names are for: "element:C1".'),
    names: z.array(words('A name.')).min(1).max(20).describe("Other names: the maker's code, shop slang."),
    language: language("BCP 47 tag, where it is not the deck's language.").optional(),
  })
  .meta({ id: 'alias', description: 'Other names of something.' });

export const caution = z
  .strictObject({
    id: id('Id of the caution.'),
    hazard: z.enum(HAZARDS).describe('What kind of danger.'),
    text: words('What to do or keep from. Shown before the answer and in print.'),
    attachedTo: z
      .array(reference('"element:C1"'))
      .min(1)
      .max(200)
      .describe('What it belongs to: "element:C1", "solenoid:SA", "range:4", "step:strip/pump-off".'),
    reviewed: signature('Who reviewed the caution, and when.').optional(),
  })
  .meta({ id: 'caution', description: 'A safety caution.' });
