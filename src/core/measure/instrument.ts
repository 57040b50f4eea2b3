/**
 * Instruments whose reading is in two parts: whole coarse steps, and fine divisions within one. On a dial
 * indicator the coarse steps are turns of the hand, on a micrometer the lines uncovered on the sleeve, on a
 * depth gauge the main scale up to the zero of the vernier. Scales as usually made; docs/sources.md [SCALE-1].
 */
import { parseRational, type Rational, rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import type { UnitSymbol } from '../units/units.ts';

export const INSTRUMENTS = ['dial', 'micrometer', 'depth-gauge'] as const;

export interface Instrument {
  readonly kind: (typeof INSTRUMENTS)[number];
  readonly unit: Extract<UnitSymbol, 'mm' | 'in'>;
  /** Value of one fine division. */
  readonly division: Rational;
  /** Fine divisions that make one coarse step. */
  readonly divisions: number;
  /** Coarse steps to the end of the scale. */
  readonly steps: number;
}

const scale = (
  kind: Instrument['kind'],
  unit: Instrument['unit'],
  division: string,
  divisions: number,
  steps: number,
): Instrument => ({ kind, unit, division: parseRational(division)!, divisions, steps });

export const DIAL_MM = scale('dial', 'mm', '0.01', 100, 10);
export const DIAL_INCH = scale('dial', 'in', '0.001', 100, 10);
/** 0 to 25 mm; a sleeve line every half millimetre. */
export const MICROMETER_MM = scale('micrometer', 'mm', '0.01', 50, 50);
/** 0 to 1 in; a sleeve line every 0.025 in. */
export const MICROMETER_INCH = scale('micrometer', 'in', '0.001', 25, 40);
/** 0 to 200 mm; 50 vernier lines on a millimetre. */
export const DEPTH_GAUGE_MM = scale('depth-gauge', 'mm', '0.02', 50, 200);
/** 0 to 8 in; 25 vernier lines on 0.025 in. */
export const DEPTH_GAUGE_INCH = scale('depth-gauge', 'in', '0.001', 25, 320);

/** Whole coarse steps, and fine divisions beyond them. */
export interface ScaleReading {
  readonly steps: number;
  readonly divisions: number;
}

export type ScaleError = {
  readonly code:
    | 'steps-off-scale'
    | 'divisions-off-scale'
    /** The value lies beyond either end. */
    | 'value-off-scale'
    /** The value lies between two divisions. */
    | 'between-divisions';
};

/** One coarse step: a turn of the hand, a sleeve line, a main line. */
export const stepOf = ({ division, divisions }: Instrument): Rational => division.mul(BigInt(divisions));

/** The last value of the scale. */
export const reachOf = (instrument: Instrument): Rational => stepOf(instrument).mul(BigInt(instrument.steps));

/** One turn and 12 divisions of a metric dial are 1.12 mm. Divisions must stay below a full step. */
export function valueShown(instrument: Instrument, reading: ScaleReading): Result<Rational, ScaleError> {
  const { steps, divisions } = reading;
  const whole = (count: number) => Number.isInteger(count) && count >= 0;
  if (!whole(divisions) || divisions >= instrument.divisions) return fail({ code: 'divisions-off-scale' });
  if (!whole(steps) || steps > instrument.steps || (steps === instrument.steps && divisions > 0))
    return fail({ code: 'steps-off-scale' });
  return pass(
    stepOf(instrument)
      .mul(BigInt(steps))
      .add(instrument.division.mul(BigInt(divisions))),
  );
}

/** The reading that shows a value: the inverse of `valueShown`. */
export function readingAt(instrument: Instrument, value: Rational): Result<ScaleReading, ScaleError> {
  if (value.lt(0n) || value.gt(reachOf(instrument))) return fail({ code: 'value-off-scale' });
  const total = value.div(instrument.division);
  if (total.d !== 1n) return fail({ code: 'between-divisions' });
  const divisions = Number(total.n);
  return pass({
    steps: Math.floor(divisions / instrument.divisions),
    divisions: divisions % instrument.divisions,
  });
}

/** The division nearest to a value, a half up: for drawing what a person would read. */
export function nearestDivision({ division }: Instrument, value: Rational): Rational {
  return value.div(division).add(rational(1, 2)).floor().mul(division);
}

/** Travel of an instrument that was not zeroed: the later reading less the earlier. */
export function travelBetween(
  instrument: Instrument,
  from: ScaleReading,
  to: ScaleReading,
): Result<Rational, ScaleError> {
  const start = valueShown(instrument, from);
  if (!start.ok) return start;
  const end = valueShown(instrument, to);
  return end.ok ? pass(end.value.sub(start.value)) : end;
}
