/** Fluid, torques, weights, trouble codes, and other names people use. */
import type { Band, Mass, Named, Provenance, Temperature, Torque, Volume } from './record.ts';

export interface DeckFluid extends Named, Provenance {
  /** What it must be, in words: the approval, not a brand. */
  readonly type: string;
  /** Fill after a rebuild, with converter and cooler empty. */
  readonly dryFill?: Volume | undefined;
  /** Fill after draining only. */
  readonly refill?: Volume | undefined;
  /** Temperature of the fluid between which the level is checked. */
  readonly levelAt?: Band<Temperature> | undefined;
}

/** A torque by the place it is used at. */
export interface DeckTorque extends Named, Provenance {
  readonly torque: Torque;
  /** How many bolts or nuts it is for. */
  readonly count?: number | undefined;
}

export interface DeckWeight extends Named, Provenance {
  readonly mass: Mass;
}

export const CODE_KINDS = [
  'circuit',
  'performance',
  'stuck-off',
  'stuck-on',
  'electrical',
  'intermittent',
  'ratio',
] as const;

export interface DeckCode extends Provenance {
  /** The code as it is read out: "P0777". */
  readonly id: string;
  readonly kind: (typeof CODE_KINDS)[number];
  /** The letter that the standard's text gives the part; which part it is, the maker assigns. */
  readonly letter?: string | undefined;
  /** References of what it watches here: "solenoid:SB", "sensor:output-speed", "range:3". */
  readonly watches: readonly string[];
  /** What it means, in the shop's own words. */
  readonly meaning: string;
}

/** Other names of something: the maker's code, shop slang, another language. */
export interface DeckAlias {
  /** Reference of what they name. */
  readonly of: string;
  readonly names: readonly string[];
  /** BCP 47 tag, where it is not the deck's language. */
  readonly language?: string | undefined;
}
