/**
 * Torque a plate clutch or plate brake holds: faces × friction × force × mean radius. The mean radius depends on
 * the model, uniform wear or uniform pressure, and so does the number of plates a torque asks for: a question
 * must name its model. Radii in mm (not diameters), N, N·m, kPa; a friction plate has two faces. Exact but for
 * pi. Source: docs/sources.md [CLUTCH-1].
 */
import { PI } from '../inexact.ts';
import { type Rational, rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import { type CapacityError, notPositive } from './figures.ts';

export const MODELS = ['uniform-wear', 'uniform-pressure'] as const;
/** How pressure lies on a face: falling outward as worn plates have it, or even as new ones have it. */
export type Model = (typeof MODELS)[number];

/** Inner and outer radius of the lining. */
export interface Face {
  readonly outerMm: Rational;
  readonly innerMm: Rational;
}

function checkFace({ outerMm, innerMm }: Face): CapacityError | null {
  const wrong = notPositive({ radius: outerMm }) ?? notPositive({ radius: innerMm });
  return wrong ?? (innerMm.gte(outerMm) ? { code: 'inside-out' } : null);
}

/** Where the friction of a face acts: (ro + ri) / 2, or 2/3 × (ro³ - ri³) / (ro² - ri²). */
export function meanRadiusMm(model: Model, face: Face): Result<Rational, CapacityError> {
  const wrong = checkFace(face);
  if (wrong) return fail(wrong);
  const { outerMm, innerMm } = face;
  const sum = outerMm.add(innerMm);
  if (model === 'uniform-wear') return pass(sum.div(2n));
  const [outer, inner] = [outerMm.mul(outerMm), innerMm.mul(innerMm)];
  return pass(outer.mul(outerMm).sub(inner.mul(innerMm)).mul(2n).div(outer.sub(inner).mul(3n)));
}

export interface Clutch {
  readonly model: Model;
  readonly face: Face;
  /** Sliding faces: twice the friction plates between plates that react. */
  readonly faces: number;
  /** Coefficient of friction. */
  readonly friction: Rational;
}

/** facesOf(5) is 10. */
export const facesOf = (frictionPlates: number): number => 2 * frictionPlates;

/** N·m held for each newton of force. */
function torquePerForce({ model, face, faces, friction }: Clutch): Result<Rational, CapacityError> {
  if (!Number.isInteger(faces) || faces < 1) return fail({ code: 'not-whole', of: 'faces' });
  const wrong = notPositive({ friction });
  if (wrong) return fail(wrong);
  const radius = meanRadiusMm(model, face);
  return radius.ok ? pass(friction.mul(radius.value).mul(BigInt(faces)).div(1000n)) : radius;
}

/** Torque it holds at this force. */
export function torqueCapacityNm(clutch: Clutch, forceN: Rational): Result<Rational, CapacityError> {
  if (forceN.lt(0n)) return fail({ code: 'negative', of: 'force' });
  const each = torquePerForce(clutch);
  return each.ok ? pass(each.value.mul(forceN)) : each;
}

/** Force it needs to hold this torque. */
export function forceForN(clutch: Clutch, torqueNm: Rational): Result<Rational, CapacityError> {
  if (torqueNm.lt(0n)) return fail({ code: 'negative', of: 'torque' });
  const each = torquePerForce(clutch);
  return each.ok ? pass(torqueNm.div(each.value)) : each;
}

/** mm² that, times the greatest pressure on a face, give the force: 2π ri (ro - ri), or π (ro² - ri²). */
function loadedArea(model: Model, { outerMm, innerMm }: Face): Rational {
  const width = outerMm.sub(innerMm);
  return PI.mul(width).mul(model === 'uniform-wear' ? innerMm.mul(2n) : outerMm.add(innerMm));
}

/** The greatest pressure on a face: at the inner edge with uniform wear, everywhere with uniform pressure. */
export function facePressureKpa(model: Model, face: Face, forceN: Rational): Result<Rational, CapacityError> {
  const wrong = checkFace(face) ?? notPositive({ force: forceN });
  return wrong ? fail(wrong) : pass(forceN.mul(1000n).div(loadedArea(model, face)));
}

/** The force at which a face reaches this pressure. */
export function forceLimitN(
  model: Model,
  face: Face,
  pressureKpa: Rational,
): Result<Rational, CapacityError> {
  const wrong = checkFace(face) ?? notPositive({ pressure: pressureKpa });
  return wrong ? fail(wrong) : pass(pressureKpa.mul(loadedArea(model, face)).div(1000n));
}

/** Faces it takes to hold a torque without passing this pressure on any; exact before it is rounded up. */
export function facesFor(
  { model, face, friction }: Omit<Clutch, 'faces'>,
  pressureKpa: Rational,
  torqueNm: Rational,
): Result<{ readonly exact: Rational; readonly faces: number }, CapacityError> {
  const wrong = notPositive({ torque: torqueNm });
  if (wrong) return fail(wrong);
  const force = forceLimitN(model, face, pressureKpa);
  if (!force.ok) return force;
  const each = torqueCapacityNm({ model, face, friction, faces: 1 }, force.value);
  if (!each.ok) return each;
  const exact = torqueNm.div(each.value);
  return pass({ exact, faces: Number(exact.ceil().n) });
}

/** Capacity over what is asked of it: below 1 it slips. */
export function marginOf(capacityNm: Rational, neededNm: Rational): Result<Rational, CapacityError> {
  if (capacityNm.lt(0n)) return fail({ code: 'negative', of: 'torque' });
  const wrong = notPositive({ torque: neededNm });
  return wrong ? fail(wrong) : pass(capacityNm.div(neededNm));
}

/** Share of capacity left when friction plates are left out: one of five leaves 4/5. */
export function shareLeft(frictionPlates: number, leftOut: number): Result<Rational, CapacityError> {
  const whole = [frictionPlates, leftOut].every((count) => Number.isInteger(count) && count >= 0);
  if (!whole || frictionPlates === 0 || leftOut > frictionPlates)
    return fail({ code: 'not-whole', of: 'faces' });
  return pass(rational(frictionPlates - leftOut, frictionPlates));
}
