/** Dangers, and the cautions that are shown before an answer and in print. */

// biome-ignore format: one line per group reads better
export const HAZARDS = [
  'roll-away', 'moving-test', 'hot-fluid', 'pressure', 'lift', 'handling', 'air', 'stored-energy', 'rotating',
  'electrical', 'high-voltage', 'chemicals', 'heat', 'road-test',
] as const;
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
