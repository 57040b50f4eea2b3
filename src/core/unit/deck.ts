/**
 * A deck as core sees it: plain data that already has the right shape (src/content checks that). It is one
 * unit's shop data and holds no questions. docs/deck-format.md says what every field means.
 */
import type { Element, Gear, Gearset, Train } from '../gears/train.ts';
import type { DeckCapacity } from './capacity.ts';
import type { DeckCaution } from './cautions.ts';
import type { DeckElectrical } from './electrical.ts';
import type { DeckFit } from './fits.ts';
import type { Named, Provenance } from './record.ts';
import type { DeckPart, DeckSeat } from './seats.ts';
import type { DeckSequence } from './sequences.ts';
import type { DeckAlias, DeckCode, DeckFluid, DeckTorque, DeckWeight } from './service.ts';
import type { DeckStack } from './stacks.ts';
import type { DeckValveBody } from './valve-body.ts';

export { type DeckCaution, HAZARDS, type Hazard } from './cautions.ts';
export type { Named, Provenance } from './record.ts';

export interface DeckGearset extends Gearset, Named, Provenance {
  readonly carrier: { readonly shaft: string };
  readonly sun: Gear;
  readonly ring: Gear;
  /** How many planets (pairs, in a double-pinion set) the carrier bears; for the assembly check only. */
  readonly planets?: number | undefined;
}

export interface DeckElement extends Element, Named, Provenance {
  /** What its torque capacity is computed from; it has its own provenance. */
  readonly capacity?: DeckCapacity | undefined;
}

export interface DeckTrain extends Train {
  readonly shafts?: readonly Named[] | undefined;
  readonly gearsets: readonly DeckGearset[];
  readonly elements: readonly DeckElement[];
}

export interface DeckRow extends Named, Provenance {
  /** Ids of the elements that are on. */
  readonly applied: readonly string[];
  /** Elements of this row whose cell, on or off, is not yet verified. */
  readonly unsureCells?: readonly string[] | undefined;
}

export interface DeckRange extends DeckRow {
  /** What plate or book states, as text, sign included: "-1.800". Must agree to its last digit. */
  readonly ratio?: string | undefined;
}

export const SOLENOID_KINDS = ['on-off', 'linear', 'pulsed'] as const;
export type SolenoidKind = (typeof SOLENOID_KINDS)[number];

export const PRESSURES = ['none', 'full'] as const;
/** What a solenoid lets through. */
export type Pressure = (typeof PRESSURES)[number];

/** What a solenoid may feed beside elements. */
export const OTHER_FEEDS = ['line-pressure', 'converter-clutch', 'lubrication'] as const;

export interface DeckSolenoid extends Named, Provenance {
  readonly kind: SolenoidKind;
  /** Element ids, or one of OTHER_FEEDS. */
  readonly feeds: readonly string[];
  /** What it gives with no current. With full current it gives the other. */
  readonly whenUnplugged: Pressure;
}

export interface DeckLeverPosition extends Named, Provenance {
  /** Ids of the ranges and neutral rows this position can command. */
  readonly rows: readonly string[];
  /** With a manual valve: the elements whose feed it leaves open here. */
  readonly opens?: readonly string[] | undefined;
  /** With a manual valve: the elements it feeds by hand here, with no solenoid between. */
  readonly feeds?: readonly string[] | undefined;
}

export interface DeckLever {
  /** A manual valve cuts or opens feeds by hand; with none, a position sensor only tells the controller. */
  readonly valve: 'manual' | 'none';
  readonly positions: readonly DeckLeverPosition[];
}

/** A valve that keeps pressure from some elements while others have it. */
export interface DeckInterlock extends Named, Provenance {
  /** It acts while every one of these elements has pressure. */
  readonly whenApplied: readonly string[];
  /** Then none of these has. */
  readonly blocks: readonly string[];
}

export interface DeckSensor extends Named, Provenance {
  readonly reads: string;
  readonly teeth: number;
}

export interface DeckSource {
  readonly id: string;
  readonly title: string;
  readonly by?: string | undefined;
  readonly on?: string | undefined;
}

export interface Deck {
  readonly detentDeck: 1;
  readonly id: string;
  readonly title: string;
  /** The unit's model name. */
  readonly unit: string;
  readonly revision: number;
  /** BCP 47 tag of the deck's own words. */
  readonly language?: string | undefined;
  /** The deck, and its revision, whose facts this variant shares where it says nothing else. */
  readonly variantOf?: { readonly deck: string; readonly revision: number } | undefined;
  readonly sources?: readonly DeckSource[] | undefined;
  readonly train: DeckTrain;
  readonly chart: {
    readonly ranges: readonly DeckRange[];
    /** Rows that must not drive: neutral, park. */
    readonly neutral?: readonly DeckRow[] | undefined;
  };
  readonly solenoids?: readonly DeckSolenoid[] | undefined;
  /** Where the solenoids sit. */
  readonly valveBody?: DeckValveBody | undefined;
  readonly lever?: DeckLever | undefined;
  readonly interlocks?: readonly DeckInterlock[] | undefined;
  readonly sensors?: readonly DeckSensor[] | undefined;
  /** Bodies from front to rear, and what sits between them. */
  readonly shaftLine?: readonly DeckPart[] | undefined;
  readonly seats?: readonly DeckSeat[] | undefined;
  readonly stacks?: readonly DeckStack[] | undefined;
  readonly fits?: readonly DeckFit[] | undefined;
  readonly sequences?: readonly DeckSequence[] | undefined;
  readonly electrical?: DeckElectrical | undefined;
  readonly fluids?: readonly DeckFluid[] | undefined;
  readonly torques?: readonly DeckTorque[] | undefined;
  readonly weights?: readonly DeckWeight[] | undefined;
  readonly codes?: readonly DeckCode[] | undefined;
  readonly aliases?: readonly DeckAlias[] | undefined;
  readonly cautions?: readonly DeckCaution[] | undefined;
}
