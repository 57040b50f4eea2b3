/** What the scan-data families say alike: ranges that speeds can tell apart, speeds drawn for them. */
import type { Random } from '../../random.ts';
import { type Rational, rational } from '../../rational.ts';
import { tooClose } from '../../speeds/actual-range.ts';
import type { Range, Ref, Unit } from '../../unit/unit.ts';
import { speedRefs } from './gear-parts.ts';

/** How far a measured ratio may be from a range's and still be that range: docs/sources.md [RATIO-WINDOW]. */
export const RATIO_TOLERANCE: Rational = rational(3, 100);

export interface Scan {
  /** Every forward range: sensors give no sign, and the car moves forward. */
  readonly forward: readonly Range[];
  /** Those that no other one comes near: windows of RATIO_TOLERANCE round each do not meet. */
  readonly apart: readonly Range[];
  readonly uses: readonly Ref[];
}

/** Undefined when a forward range rests on something unverified, since any of them may be the one seen. */
export function scanOf(unit: Unit): Scan | undefined {
  const forward = unit.ranges.filter((range) => range.ratio.gt(0n));
  const uses = [...new Set(forward.flatMap((range) => speedRefs(unit, range)))];
  if (!uses.every((ref) => unit.sure(ref))) return undefined;
  const near = new Set(tooClose(forward, RATIO_TOLERANCE).flat());
  return { forward, apart: forward.filter(({ id }) => !near.has(id)), uses };
}

/** Forward ranges beside this one, in chart order. */
export const besideIn = (forward: readonly Range[], range: Range): Range[] => {
  const place = forward.indexOf(range);
  return [forward[place - 1], forward[place + 1]].filter((other) => other !== undefined);
};

/** To a whole number, halves up; for values that are not negative. */
export const rounded = (value: Rational): Rational => value.add(rational(1, 2)).floor();

/** An output speed in steps of 50 rpm at which the input turns at 800 to 4500 rpm; undefined when none does. */
export function outputRpmFor(ratio: Rational, random: Random): Rational | undefined {
  const low = Number(rational(800).div(ratio).div(50n).ceil().toFraction());
  const high = Number(rational(4500).div(ratio).div(50n).floor().toFraction());
  const [least, most] = [Math.max(low, 6), Math.min(high, 60)];
  return least > most ? undefined : rational(50n * BigInt(random.int(least, most)));
}
