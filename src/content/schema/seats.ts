/** Shaft line and seats in a deck file. */
import { PILOTS, SEAT_KINDS, SIDES } from '../../core/unit/seats.ts';
import { z } from '../zod.ts';
import { count, end, id, length, name, provenance, reference, words } from './fields.ts';

export const part = z
  .strictObject({
    id: id('Id of the body.'),
    name,
    belongsTo: z
      .array(reference('"gearset:P1", "element:C1"'))
      .max(20)
      .describe('References of what it belongs to.')
      .optional(),
    ...provenance,
  })
  .meta({ id: 'part', description: 'A body on the shaft line: pump, drum, hub, carrier.' });

const face = z
  .strictObject({
    touches: id('The part, or other seat, that this face lies against.'),
    mark: words('What tells this face from the other. Leave it out on both where they are alike.').optional(),
    pilot: z
      .strictObject({
        at: z.enum(PILOTS).describe('Whether it is centred at its inner or its outer rim.'),
        diameter: length('Diameter of the shoulder or pocket that centres it.'),
      })
      .describe('How the part on this side centres it, where it does.')
      .optional(),
  })
  .meta({ id: 'face', description: 'One face of a part.' });

export const seat = z
  .strictObject({
    id: id('Id of the seat, as it is numbered in the shop: "T5".'),
    name,
    kind: z.enum(SEAT_KINDS).describe('What sits there.'),
    place: count('Number along the shaft line, counted from the front.', 99),
    faces: z
      .strictObject({ A: face, B: face })
      .describe('Its two faces. Which way they look follows from what they touch.'),
    race: z.enum(SIDES).describe('Thrust bearings: the face with the closed race.').optional(),
    lip: z.enum(SIDES).describe('Lip seals: the face that the lip looks out of.').optional(),
    pressure: z.enum(SIDES).describe('Lip seals: the face that pressure comes from.').optional(),
    viewedFrom: end('The end of the unit from which the note was taken.'),
    turned: z
      .strictObject({
        goesIn: z.boolean().describe('Whether it can be put in turned round.'),
        effect: words('What happens then.'),
      })
      .describe('The part turned round.')
      .optional(),
    size: z
      .strictObject({
        inner: length('Inner diameter.'),
        outer: length('Outer diameter.'),
        thickness: length('Thickness.'),
      })
      .describe('What it measures.')
      .optional(),
    ...provenance,
  })
  .meta({ id: 'seat', description: 'Where a bearing, washer or seal sits and which way it faces.' });
