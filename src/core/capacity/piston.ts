/**
 * Force of a ring-shaped apply piston: pressure × area, less the return spring, plus what the spinning oil adds
 * where no balance side takes it off again. kPa, mm, mm², N, rpm, kg/m³; exact but for pi (inexact.ts). Entered
 * in other units, convert first (src/core/units): 1 kPa on 1 mm² is a thousandth of a newton.
 * Source: docs/sources.md [PISTON-1].
 */
import { PI } from '../inexact.ts';
import { type Rational, ZERO } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import { type CapacityError, negative, notPositive } from './figures.ts';

/** π/4 × (outer² - inner²), from diameters; inner 0 is a full disc. */
export function ringAreaMm2(outerMm: Rational, innerMm: Rational): Result<Rational, CapacityError> {
  const wrong = notPositive({ diameter: outerMm }) ?? negative({ diameter: innerMm });
  if (wrong) return fail(wrong);
  if (innerMm.gte(outerMm)) return fail({ code: 'inside-out' });
  return pass(PI.div(4n).mul(outerMm.mul(outerMm).sub(innerMm.mul(innerMm))));
}

/** A drum of oil that turns with the piston. Radii: where the oil begins, inner and outer edge of the piston. */
export interface SpinningOil {
  readonly densityKgM3: Rational;
  readonly rpm: Rational;
  readonly surfaceMm: Rational;
  readonly innerMm: Rational;
  readonly outerMm: Rational;
}

/** ρω²/2 in Pa/mm². */
function pull({ densityKgM3, rpm }: SpinningOil): Rational {
  const omega = PI.mul(2n).mul(rpm).div(60n);
  return densityKgM3.mul(omega).mul(omega).div(2n).div(1_000_000n);
}

function checkOil(oil: SpinningOil): CapacityError | null {
  const { densityKgM3, rpm, surfaceMm, innerMm, outerMm } = oil;
  const wrong =
    notPositive({ density: densityKgM3, radius: outerMm }) ??
    negative({ speed: rpm, radius: surfaceMm }) ??
    negative({ radius: innerMm });
  if (wrong) return wrong;
  return innerMm.gte(outerMm) || surfaceMm.gte(outerMm) ? { code: 'inside-out' } : null;
}

/** Pressure of the spinning oil at the piston's outer edge: ρω²/2 × (r² - surface²). */
export function spinPressureKpa(oil: SpinningOil): Result<Rational, CapacityError> {
  const wrong = checkOil(oil);
  if (wrong) return fail(wrong);
  const { surfaceMm, outerMm } = oil;
  return pass(
    pull(oil)
      .mul(outerMm.mul(outerMm).sub(surfaceMm.mul(surfaceMm)))
      .div(1000n),
  );
}

/**
 * Force of the spinning oil on the piston: πρω²/4 × [(r2⁴ - r1⁴) - 2 r0² (r2² - r1²)]. Inside its surface there
 * is no oil, so a piston that reaches further in counts from the surface only.
 */
export function spinForceN(oil: SpinningOil): Result<Rational, CapacityError> {
  const wrong = checkOil(oil);
  if (wrong) return fail(wrong);
  const { surfaceMm, innerMm, outerMm } = oil;
  const square = (value: Rational) => value.mul(value);
  const from = square(innerMm.lt(surfaceMm) ? surfaceMm : innerMm);
  const [to, surface] = [square(outerMm), square(surfaceMm)];
  const moment = square(to)
    .sub(square(from))
    .sub(surface.mul(2n).mul(to.sub(from)));
  return pass(pull(oil).mul(PI).div(2n).mul(moment).div(1_000_000n));
}

export interface Piston {
  readonly areaMm2: Rational;
  /** Return spring at the clutch's touch point. */
  readonly springN: Rational;
  /** From `spinForceN`; 0 when left out, and where a balance side cancels it. */
  readonly spinN?: Rational | undefined;
}

function checkPiston({ areaMm2, springN, spinN = ZERO }: Piston): CapacityError | null {
  return notPositive({ area: areaMm2 }) ?? negative({ spring: springN, force: spinN });
}

/** What presses the plates: never below zero, as a spring that wins only holds the piston back. */
export function pistonForceN(piston: Piston, pressureKpa: Rational): Result<Rational, CapacityError> {
  const wrong = checkPiston(piston) ?? negative({ pressure: pressureKpa });
  if (wrong) return fail(wrong);
  const { areaMm2, springN, spinN = ZERO } = piston;
  const force = pressureKpa.mul(areaMm2).div(1000n).add(spinN).sub(springN);
  return pass(force.lt(0n) ? ZERO : force);
}

/** The pressure that gives this force; 0 where the spinning oil alone gives more. */
export function pressureForKpa(piston: Piston, forceN: Rational): Result<Rational, CapacityError> {
  const wrong = checkPiston(piston) ?? negative({ force: forceN });
  if (wrong) return fail(wrong);
  const { areaMm2, springN, spinN = ZERO } = piston;
  const pressure = forceN.add(springN).sub(spinN).mul(1000n).div(areaMm2);
  return pass(pressure.lt(0n) ? ZERO : pressure);
}
