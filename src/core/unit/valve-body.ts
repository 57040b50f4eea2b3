/** Where the solenoids sit on the face of the valve body, as a grid that somebody looking at it can count. */
import type { Provenance } from './record.ts';

export interface DeckValveBody extends Provenance {
  readonly rows: number;
  readonly columns: number;
  /** How it lies before the eye, in the shop's words: "from below, pan off, front to the left". */
  readonly seenFrom: string;
  readonly solenoids: readonly {
    /** Id of the solenoid. */
    readonly solenoid: string;
    /** From 1, row by row from the top left. */
    readonly row: number;
    readonly column: number;
  }[];
}
