/** Stacks in a deck file. */
import { WAVES } from '../../core/measure/stack.ts';
import { FEATURES, STACK_KINDS, TOWARDS } from '../../core/unit/stacks.ts';
import { z } from '../zod.ts';
import { end, id, length, name, provenance, words } from './fields.ts';

const item = z
  .strictObject({
    id: id('Id of the plate within its stack.'),
    name,
    kind: z
      .enum(STACK_KINDS)
      .describe('What it is. Piston, return-spring and separator take no room in the pack.'),
    thickness: length('Thickness; of waved and dished plates pressed flat.').optional(),
    free: length('Waved and dished plates: height with no load on it.').optional(),
    looks: z
      .strictObject({
        feature: z.enum(FEATURES).describe('What is one-sided about it.'),
        towards: z.enum(TOWARDS).describe('Whether that looks to the floor or to the opening.'),
      })
      .describe('Which way it lies, where that matters.')
      .optional(),
    identical: id('A word shared by the items of this stack that may change places.').optional(),
    ...provenance,
  })
  .meta({ id: 'plate', description: 'One item of a stack.' });

export const stack = z
  .strictObject({
    id: id('Id of the stack.'),
    name,
    element: id('The element it is the pack of.').optional(),
    floor: words('What counting starts from: "drum floor".'),
    floorAt: end('The end of the unit that the floor is at.'),
    items: z.array(item).min(1).max(60).describe('In order from the floor up.'),
    room: length("From the piston's stop to the far face of the snap-ring groove.").optional(),
    waves: z
      .enum(WAVES)
      .describe('How waved and dished plates count when the clearance is measured: pressed flat, or free.')
      .optional(),
    ...provenance,
  })
  .meta({ id: 'stack', description: 'Plates in order.' });
