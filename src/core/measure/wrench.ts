/**
 * What to set a click wrench to when an adapter moves the drive off the fastener, and what the fastener gets.
 * Lever from hand to drive centre, adapter from drive centre to fastener centre (same unit of length), angle 0
 * straight out, 90 square across, 180 folded back. An extension along the drive's axis changes nothing. Exact,
 * but for a cosine that is no fraction (inexact.ts). Source: docs/sources.md [WRENCH-1].
 */
import { cosine } from '../inexact.ts';
import type { Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

export interface Adapter {
  readonly lever: Rational;
  readonly adapter: Rational;
  readonly degrees: Rational;
}

export type WrenchError = {
  readonly code:
    | 'torque-not-positive'
    | 'lever-not-positive'
    | 'adapter-negative'
    | 'angle-out-of-range'
    /** Folded back as far as the hand, or further: nothing is left to pull with. */
    | 'no-lever-left';
};

/** How much more the fastener gets than the wrench shows: (lever + adapter × cos angle) / lever. */
export function gainOf({ lever, adapter, degrees }: Adapter): Result<Rational, WrenchError> {
  if (lever.lte(0n)) return fail({ code: 'lever-not-positive' });
  if (adapter.lt(0n)) return fail({ code: 'adapter-negative' });
  if (degrees.lt(0n) || degrees.gt(180n)) return fail({ code: 'angle-out-of-range' });
  const reach = lever.add(adapter.mul(cosine(degrees)));
  return reach.lte(0n) ? fail({ code: 'no-lever-left' }) : pass(reach.div(lever));
}

/** The setting for a wanted torque, in the torque's own unit: 16 in, 2 in straight out, 50 gives 400/9. */
export function settingFor(torque: Rational, adapter: Adapter): Result<Rational, WrenchError> {
  if (torque.lte(0n)) return fail({ code: 'torque-not-positive' });
  const gain = gainOf(adapter);
  return gain.ok ? pass(torque.div(gain.value)) : gain;
}

/** The torque on the fastener at a setting: what it gets when the adapter was forgotten. */
export function torqueAt(setting: Rational, adapter: Adapter): Result<Rational, WrenchError> {
  if (setting.lte(0n)) return fail({ code: 'torque-not-positive' });
  const gain = gainOf(adapter);
  return gain.ok ? pass(setting.mul(gain.value)) : gain;
}
