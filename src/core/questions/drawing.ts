/**
 * What is drawn above an answer: plain JSON that src/ui/drawings draws from the unit and drawing-words puts into
 * words. Ids are the deck's own. `places` are what can be tapped in a question of the form place, by the ids of
 * its options; they are numbered in that order. What is covered is neither drawn nor said.
 */
import type { ScaleReading } from '../measure/instrument.ts';
import type { End } from '../unit/record.ts';
import type { Phrase } from './phrase.ts';

export interface ChartDrawing {
  readonly kind: 'chart';
  /** Rows whose cells are covered, as "?". */
  readonly hiddenRows?: readonly string[];
  readonly hiddenColumns?: readonly string[];
  readonly litRows?: readonly string[];
  readonly litColumns?: readonly string[];
  /** Only these rows, in this order; all when left out. */
  readonly rows?: readonly string[];
  readonly showRatios?: boolean;
}

export interface TrainDrawing {
  readonly kind: 'train';
  /** Elements drawn as applied. */
  readonly applied?: readonly string[];
  readonly litShafts?: readonly string[];
  readonly showTeeth?: boolean;
}

export interface TableDrawing {
  readonly kind: 'table';
  readonly columns: readonly Phrase[];
  readonly rows: readonly {
    readonly head: Phrase;
    readonly cells: readonly Phrase[];
    readonly lit?: boolean;
  }[];
}

/** Cross-section of a pack, thickness to scale, floor at the bottom. */
export interface StackDrawing {
  readonly kind: 'stack';
  /** Id of the stack. */
  readonly stack: string;
  /**
   * From the floor up: ids of its items, or "stack/item" for one of another stack; as in the deck when left out.
   * The same id may stand twice.
   */
  readonly items?: readonly string[];
  /** Items drawn as an empty outline with "?", their thickness and kind not shown. */
  readonly covered?: readonly string[];
  /** One-sided items drawn the other way round. */
  readonly turned?: readonly string[];
  readonly lit?: readonly string[];
  /** Item ids. With places, plates are told by number only. */
  readonly places?: readonly string[];
  readonly showThickness?: boolean;
  /** Leaves out which kind each plate is, in words; hatching and shape stay. */
  readonly hideNames?: boolean;
}

/** Where the front of the unit lies on the page. */
export type FrontAt = 'left' | 'right' | 'up' | 'down';

/** A bearing, washer or seal in its pocket: half section, and the face that is seen from one end. */
export interface SeatDrawing {
  readonly kind: 'seat';
  readonly seat: string;
  /** Left when left out. */
  readonly front?: FrontAt;
  /** Drawn as put in the wrong way round. */
  readonly turned?: boolean;
  /** The part is drawn as a plain outline with "?". */
  readonly covered?: boolean;
  /** Adds the face that is seen from this end of the unit. */
  readonly seenFrom?: End;
  /** The neighbours' names left out. */
  readonly hideNames?: boolean;
  /** "front", "rear": the sides of the pocket. */
  readonly places?: readonly End[];
}

/** The shaft line pulled apart: bodies, and the seats between them. */
export interface ShaftLineDrawing {
  readonly kind: 'shaft-line';
  /** First and last body shown; the whole line when left out. */
  readonly from?: string;
  readonly to?: string;
  /** The front is up unless the unit is turned round. */
  readonly front?: 'up' | 'down';
  /** Seats drawn as a plain outline with "?". */
  readonly covered?: readonly string[];
  /** Seats drawn as put in the wrong way round. */
  readonly turned?: readonly string[];
  readonly lit?: readonly string[];
  /** Seat ids, ids of bodies, or one side of a seat: "T4/front", "T4/rear". */
  readonly places?: readonly string[];
  /** Names of the seats left out; bodies keep theirs. */
  readonly hideSeatNames?: boolean;
}

/** The face of the valve body with its solenoids where they sit. */
export interface ValveBodyDrawing {
  readonly kind: 'valve-body';
  /** Current of each solenoid, by id; none is told of one left out. */
  readonly currents?: Readonly<Record<string, 'on' | 'off'>>;
  /** Solenoids whose plug is off. */
  readonly unplugged?: readonly string[];
  /** Solenoid ids. */
  readonly places?: readonly string[];
  readonly lit?: readonly string[];
  readonly hideNames?: boolean;
}

export interface ConnectorDrawing {
  readonly kind: 'connector';
  readonly connector: string;
  /** What each pin serves is listed beside the face. */
  readonly showServes?: boolean;
  readonly litPins?: readonly string[];
  /** Pins that a meter's two leads are on. */
  readonly probes?: readonly [string, string];
  /** Seen from the other side than the deck's, so mirrored. */
  readonly mirrored?: boolean;
  /** Pin ids. */
  readonly places?: readonly string[];
}

/** One winding between supply and ground, the controller's switch on one side of it. */
export interface CircuitDrawing {
  readonly kind: 'circuit';
  readonly solenoid: string;
  readonly switched: 'high' | 'low';
  readonly driver?: 'on' | 'off';
  readonly circuit?: 'sound' | 'open' | 'short-to-ground' | 'short-to-supply';
}

/** The scale of an instrument: divisions make one coarse step (a turn, a sleeve line, a main line). */
export interface Scale {
  readonly unit: 'mm' | 'in';
  /** Value of one division, a decimal text: "0.01". */
  readonly division: string;
  readonly divisions: number;
}

/** An instrument showing a reading; `start` adds the face as it stood before the move. */
export interface DialDrawing {
  readonly kind: 'dial';
  readonly scale: Scale;
  readonly reading: ScaleReading;
  readonly start?: ScaleReading;
}

export interface MicrometerDrawing {
  readonly kind: 'micrometer';
  readonly scale: Scale;
  readonly reading: ScaleReading;
}

export interface DepthGaugeDrawing {
  readonly kind: 'depth-gauge';
  readonly scale: Scale;
  readonly reading: ScaleReading;
  /** The gauge stands on a bar laid across the face. */
  readonly overBar?: boolean;
}

/** Speeds of all members in one range: levers on one scale, the input turning at 1. */
export interface SpeedsDrawing {
  readonly kind: 'speeds';
  readonly range: string;
  /** Shafts whose speed is not written. */
  readonly covered?: readonly string[];
  readonly lit?: readonly string[];
  /** Speeds in rpm at this input speed; in turns of the input when left out. */
  readonly inputRpm?: number;
}

/** Steps of a sequence as they stand on a job sheet. */
export interface StepsDrawing {
  readonly kind: 'steps';
  readonly sequence: string;
  readonly work: 'strip' | 'assembly';
  /** Step ids in this order. */
  readonly steps: readonly string[];
  /** Steps ticked off. */
  readonly done?: readonly string[];
  readonly lit?: readonly string[];
}

/** A band of limits on a line, with values marked on it: listed parts, or the plays they leave. */
export interface WindowDrawing {
  readonly kind: 'window';
  /** Decimal texts, all in `unit`. */
  readonly low: string;
  readonly high: string;
  readonly aim?: string;
  readonly unit: string;
  readonly parts: readonly { readonly label: Phrase; readonly at: string; readonly lit?: boolean }[];
}

export type Drawing =
  | ChartDrawing
  | TrainDrawing
  | TableDrawing
  | StackDrawing
  | SeatDrawing
  | ShaftLineDrawing
  | ValveBodyDrawing
  | ConnectorDrawing
  | CircuitDrawing
  | DialDrawing
  | MicrometerDrawing
  | DepthGaugeDrawing
  | SpeedsDrawing
  | StepsDrawing
  | WindowDrawing;
