/**
 * A deck as core sees it: plain data that already has the right shape (src/content checks that). It is one
 * unit's shop data and holds no questions. docs/deck-format.md says what every field means.
 */
import type { Element, Gear, Gearset, Train } from '../gears/train.ts';

/** Where a value comes from and whether it may be asked. An `unsure` value is kept and printed, never asked. */
export interface Provenance {
  /** Id of one of the deck's sources. */
  readonly source?: string | undefined;
  readonly measuredBy?: string | undefined;
  readonly unsure?: true | undefined;
  readonly verified?: { readonly by: string /** YYYY-MM-DD */; readonly on: string } | undefined;
  readonly note?: string | undefined;
}

export interface Named {
  readonly id: string;
  /** What the shop calls it; the id is shown where there is none. */
  readonly name?: string | undefined;
}

export interface DeckGearset extends Gearset, Named, Provenance {
  readonly carrier: { readonly shaft: string };
  readonly sun: Gear;
  readonly ring: Gear;
  /** How many planets (pairs, in a double-pinion set) the carrier bears; for the assembly check only. */
  readonly planets?: number | undefined;
}

export interface DeckElement extends Element, Named, Provenance {}

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

export const HAZARDS = [
  'roll-away', 'moving-test', 'hot-fluid', 'pressure', 'lift', 'handling', 'air', 'stored-energy', 'rotating',
  'electrical', 'high-voltage', 'chemicals', 'heat', 'road-test',
] as const; // biome-ignore format: one line per group reads better
export type Hazard = (typeof HAZARDS)[number];

export interface DeckCaution {
  readonly id: string;
  readonly hazard: Hazard;
  /** What to do or keep from, in the shop's words. */
  readonly text: string;
  /** References of what it belongs to: "solenoid:SC1", "element:B1"… */
  readonly attachedTo: readonly string[];
  readonly reviewed?: { readonly by: string; readonly on: string } | undefined;
}

export const TORQUE_UNITS = ['N·m', 'lbf·ft', 'lbf·in'] as const;

export interface DeckStep extends Provenance {
  readonly id: string;
  /** What is done, in the shop's words. */
  readonly text: string;
  /** Steps of the same sequence that must be done before this one, each with the reason. */
  readonly after?: readonly { readonly step: string; readonly reason: string }[] | undefined;
  readonly tool?: string | undefined;
  /** Tightening torque as it is printed: the value as text, in its own unit. */
  readonly torque?: { readonly value: string; readonly unit: (typeof TORQUE_UNITS)[number] } | undefined;
  readonly hazards?: readonly Hazard[] | undefined;
}

/** Steps with must-be-before relations. The order in the file is one way to do it, not the only one. */
export interface DeckSequence extends Named, Provenance {
  readonly steps: readonly DeckStep[];
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
  readonly sources?: readonly DeckSource[] | undefined;
  readonly train: DeckTrain;
  readonly chart: {
    readonly ranges: readonly DeckRange[];
    /** Rows that must not drive: neutral, park. */
    readonly neutral?: readonly DeckRow[] | undefined;
  };
  readonly solenoids?: readonly DeckSolenoid[] | undefined;
  readonly lever?: DeckLever | undefined;
  readonly sensors?: readonly DeckSensor[] | undefined;
  readonly sequences?: readonly DeckSequence[] | undefined;
  readonly cautions?: readonly DeckCaution[] | undefined;
}
