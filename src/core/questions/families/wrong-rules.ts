/** Wrong ways to make an equation of a gearset. Each is put in the right one's place and the train reckoned anew. */
import { type Train, willis } from '../../gears/train.ts';
import { type Coefficients, workOut } from '../../gears/working.ts';
import type { Rational } from '../../rational.ts';
import type { SlipUp } from '../slip-ups.ts';

const sunRingSwapped: Coefficients = (set) =>
  willis({
    ...set,
    sun: { ...set.sun, teeth: set.ring.teeth },
    ring: { ...set.ring, teeth: set.sun.teeth },
  });

/** Ring over sun where it should be ring and sun over sun: the carrier counts as the ring alone. */
const carrierForgotten: Coefficients = (set) => {
  const right = willis(set);
  return { ...right, carrier: -right.ring };
};

const pinionPairMissed: Coefficients = (set) => willis({ ...set, kind: 'simple' });

const RULES: readonly (readonly [SlipUp, Coefficients])[] = [
  ['sun-ring-swapped', sunRingSwapped],
  ['carrier-forgotten', carrierForgotten],
  ['pinion-pair-missed', pinionPairMissed],
];

/** What each wrong rule makes of a shaft's speed, per turn of the input; left out where it gives none. */
export function wrongSpeeds(
  train: Train,
  applied: readonly string[],
  shaft: string,
): { readonly slipUp: SlipUp; readonly speed: Rational }[] {
  return RULES.flatMap(([slipUp, rule]) => {
    const speed = workOut(train, applied, shaft, rule)?.speed;
    return speed ? [{ slipUp, speed }] : [];
  });
}
