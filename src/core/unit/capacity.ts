/** What the torque capacity of an element is computed from (src/core/capacity). All widths are diameters. */
import { type Clutch, facesOf, type Model } from '../capacity/clutch.ts';
import { type Piston, ringAreaMm2 } from '../capacity/piston.ts';
import { parseRational, ZERO } from '../rational.ts';
import { exactIn, type Force, type GaugePressure, type Length, type Provenance } from './record.ts';

export interface DeckCapacity extends Provenance {
  /** Ring-shaped apply piston; inner left out for a full disc. */
  readonly piston: { readonly outer: Length; readonly inner?: Length | undefined };
  /** Force of the return spring where the plates touch. */
  readonly spring: Force;
  /** Friction plates; each has two faces. */
  readonly frictions: number;
  /** Diameters, not radii. */
  readonly lining: { readonly outer: Length; readonly inner: Length };
  /** Coefficient of friction as text: "0.13". */
  readonly friction: string;
  /** Greatest apply pressure. */
  readonly pressure: GaugePressure;
}

/** The plates as src/core/capacity takes them: radii, and two faces a friction. */
export const clutchOf = ({ lining, frictions, friction }: DeckCapacity, model: Model): Clutch => ({
  model,
  face: {
    outerMm: exactIn(lining.outer, 'mm').div(2n),
    innerMm: exactIn(lining.inner, 'mm').div(2n),
  },
  faces: facesOf(frictions),
  friction: parseRational(friction)!,
});

/** The piston without spinning oil. Diameters that are inside out are a mistake of ours and throw. */
export function pistonOf({ piston, spring }: DeckCapacity): Piston {
  const inner = piston.inner ? exactIn(piston.inner, 'mm') : ZERO;
  const area = ringAreaMm2(exactIn(piston.outer, 'mm'), inner);
  if (!area.ok) throw new Error(`piston: ${area.error.code}`);
  return { areaMm2: area.value, springN: exactIn(spring, 'N') };
}
