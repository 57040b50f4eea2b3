/** Where the solenoids sit, in a deck file. */
import { z } from '../zod.ts';
import { id, provenance, words } from './fields.ts';

const place = (description: string) => z.int().min(1).max(12).describe(description);

export const valveBody = z
  .strictObject({
    rows: place('Rows of the grid.'),
    columns: place('Columns of the grid.'),
    seenFrom: words('How it lies before the eye: from below, front to the left.'),
    solenoids: z
      .array(
        z.strictObject({
          solenoid: id('The solenoid.'),
          row: place('Row, from 1 at the top.'),
          column: place('Column, from 1 at the left.'),
        }),
      )
      .max(40)
      .describe('The solenoids by place.'),
    ...provenance,
  })
  .meta({ id: 'valveBody', description: 'The face of the valve body.' });
