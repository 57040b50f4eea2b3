/** The cells of the simulation: how much there is to learn, in how many days, with how many minutes. */
export interface Cell {
  readonly minutes: number;
  readonly days: number;
  readonly facts: number;
  /** Chance that a day takes place. */
  readonly attendance: number;
  readonly rightSeconds: number;
  readonly wrongSeconds: number;
  /** Whether the scheduler knows the learner's numbers. */
  readonly known: boolean;
}

export const MINUTES = [5, 10, 20] as const;
export const DAYS = [7, 21, 60] as const;
export const FACTS = [150, 300, 2000] as const;

export function aCell(changes: Partial<Cell>): Cell {
  return {
    minutes: 10,
    days: 21,
    facts: 300,
    attendance: 1,
    rightSeconds: 12,
    wrongSeconds: 12,
    known: true,
    ...changes,
  };
}
