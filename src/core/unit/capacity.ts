/** What the torque capacity of an element is computed from (src/core/capacity). All widths are diameters. */
import type { Force, GaugePressure, Length, Provenance } from './record.ts';

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
