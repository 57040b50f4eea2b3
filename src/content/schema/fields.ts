/** Fields that many records of a deck file share. The descriptions go into the JSON Schema. */
import {
  ENDS,
  FORCE_UNITS,
  LENGTH_UNITS,
  MASS_UNITS,
  PRESSURE_UNITS,
  RESISTANCE_UNITS,
  TEMPERATURE_UNITS,
  TORQUE_UNITS,
  VOLUME_UNITS,
} from '../../core/unit/record.ts';
import { z } from '../zod.ts';

/** Starts with a letter or digit, no spaces, and none of the marks that references use (":" and "/"). */
export const ID = /^[\p{L}\p{N}][\p{L}\p{M}\p{N}._+'′*#&()-]{0,39}$/u;
export const DECK_ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;
export const DECIMAL = /^-?\d{1,6}(\.\d{1,9})?$/;
/** Above zero. */
export const MEASURE = /^(?=[\d.]*[1-9])\d{1,6}(\.\d{1,6})?$/;
/** Zero or above. */
export const FROM_ZERO = /^\d{1,6}(\.\d{1,6})?$/;
/** A temperature that can be, in °C as in °F. */
export const WARMTH = /^(-1?\d{1,2}|\d{1,4})(\.\d{1,3})?$/;
export const REFERENCE = /^[a-z]+:[^\s:]+$/;
export const LANGUAGE = /^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/;
/** At least one mark that can be seen. */
export const WORDS = /\S/;

export const id = (description: string) => z.string().regex(ID).describe(description);
export const words = (description: string) => z.string().max(2000).regex(WORDS).describe(description);
export const ids = (description: string) => z.array(z.string().regex(ID)).max(60).describe(description);
export const day = (description: string) => z.iso.date().describe(description);
export const count = (description: string, most: number) => z.int().min(1).max(most).describe(description);
export const reference = (description: string) => z.string().max(120).regex(REFERENCE).describe(description);
export const language = (description: string) => z.string().max(40).regex(LANGUAGE).describe(description);
export const end = (description: string) => z.enum(ENDS).describe(description);

export const signature = (description: string) =>
  z.strictObject({ by: words('Who did it.'), on: day('On which day: YYYY-MM-DD.') }).describe(description);

export const provenance = {
  source: id('The source this comes from: an id from `sources`.').optional(),
  measuredBy: words('Who measured or counted it.').optional(),
  unsure: z
    .literal(true)
    .describe('Not verified yet: shown and printed with a mark, never asked. Leave out when it is sure.')
    .optional(),
  verified: signature('Who checked it against the source or the unit, and when.').optional(),
  note: words('Anything a colleague should know about this value.').optional(),
};

export const name = words('What the shop calls it. Without a name the id is shown.').optional();

/** An amount as it was entered: the figure as text and its unit. */
const amount =
  <const U extends readonly [string, ...string[]]>(units: U, figure = MEASURE) =>
  (description: string) =>
    z
      .strictObject({
        value: z.string().regex(figure).describe('The figure as it was written, as text: "1.78".'),
        unit: z.enum(units).describe('The unit it was written in.'),
      })
      .describe(description);

export const length = amount(LENGTH_UNITS);
/** A length that may be nothing: a limit, a play. */
export const play = amount(LENGTH_UNITS, FROM_ZERO);
export const torque = amount(TORQUE_UNITS);
export const gaugePressure = amount(PRESSURE_UNITS);
/** A force that may be nothing. */
export const force = amount(FORCE_UNITS, FROM_ZERO);
export const volume = amount(VOLUME_UNITS);
export const mass = amount(MASS_UNITS);
export const temperature = amount(TEMPERATURE_UNITS, WARMTH);
export const resistance = amount(RESISTANCE_UNITS);

/** A printed band of such amounts. */
export const band = <T extends z.ZodType>(of: (description: string) => T, description: string) =>
  z.strictObject({ low: of('Lower end, included.'), high: of('Upper end, included.') }).describe(description);
