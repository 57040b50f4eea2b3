/** Fits in a deck file. */
import { EFFECTS, METHODS } from '../../core/measure/play.ts';
import { FIT_KINDS, INSTRUMENTS } from '../../core/unit/fits.ts';
import { z } from '../zod.ts';
import { band, id, length, name, play, provenance, words } from './fields.ts';

const selective = z
  .strictObject({ id: id('Code of the part.'), name, thickness: length('Its thickness.'), ...provenance })
  .meta({ id: 'selective', description: 'A part of the list to choose from.' });

const depth = (description: string) =>
  z
    .strictObject({
      reading: play('What the gauge showed.'),
      overBar: z.literal(true).describe('Read over the gauge bar, whose height is in it.').optional(),
    })
    .describe(description);

const reading = z
  .strictObject({
    id: id('Id of the reading within its fit.'),
    play: play('bare, part-fitted: the play read.').optional(),
    fitted: id('part-fitted: the selective part that was in.').optional(),
    seat: depth('depths: from the face down to the seat.').optional(),
    standOff: depth('depths: how far the part above stands off its face.').optional(),
    chosen: id('The selective part chosen.').optional(),
    result: play('The play read with the chosen part in.').optional(),
    ...provenance,
  })
  .meta({ id: 'reading', description: 'What somebody read, and what was chosen on it.' });

export const fit = z
  .strictObject({
    id: id('Id of the fit.'),
    name,
    kind: z.enum(FIT_KINDS).describe('What is measured.'),
    where: words('Where it is measured.'),
    method: z
      .enum(METHODS)
      .describe(
        'bare: with no selective part in. part-fitted: with a known one in. depths: from two depths.',
      ),
    instrument: z.enum(INSTRUMENTS).describe('What it is read with.'),
    limits: band(play, 'The play it may have.'),
    aim: play('The play to aim at, where it is not the middle.').optional(),
    effect: z.enum(EFFECTS).describe('What a thicker selective part does to the play.'),
    spread: length('How far apart repeated readings may lie.').optional(),
    bar: length('depths: height of the gauge bar.').optional(),
    gasket: length('depths: thickness the gasket is pressed down to.').optional(),
    parts: z.array(selective).max(60).describe('The selective parts, thinnest first.'),
    stack: id('The stack it belongs to.').optional(),
    item: id('The plate of that stack that is chosen.').optional(),
    seat: id('The seat whose thickness is chosen.').optional(),
    readings: z.array(reading).max(60).describe('What was read, and chosen on it.').optional(),
    ...provenance,
  })
  .meta({ id: 'fit', description: 'A measurement with limits and selective parts.' });
