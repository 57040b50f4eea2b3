/** How the one-ways stand in a range with the input driving. */
import { holdOf, overrunOf } from '../../core/gears/one-way.ts';
import { solveTorques } from '../../core/gears/torque.ts';
import type { Deck } from '../../core/unit/deck.ts';
import type { Path } from '../finding.ts';
import { rangesOf, solveRow } from './rows.ts';

/** holds, or is indeterminate beside another element; pushed the way it runs free; carries nothing. */
export type Charted = 'holds' | 'pushed-free' | 'idle';

export interface OneWayInRange {
  /** Path of the range. */
  readonly at: Path;
  readonly id: string;
  /** How it bears load, when the row lists it; null when it does not. */
  readonly charted: Charted | null;
  /** Not listed, but turned the way it cannot turn. */
  readonly binds: boolean;
}

/** Each one-way in each range that drives. */
export function oneWaysInRanges(deck: Deck): OneWayInRange[] {
  const oneWays = deck.train.elements.filter((element) => element.kind === 'one-way');
  return rangesOf(deck).flatMap(({ at, row }) => {
    const solution = solveRow(deck.train, row.applied);
    if (solution?.state !== 'drives') return [];
    const torques = solveTorques(deck.train, row.applied);
    return oneWays.map((oneWay): OneWayInRange => {
      if (row.applied.includes(oneWay.id)) {
        const hold = holdOf(oneWay, torques?.elements.get(oneWay.id) ?? null, 'drive');
        const charted = hold?.n === 0n ? 'idle' : hold && hold.s < 0n ? 'pushed-free' : 'holds';
        return { at, id: oneWay.id, charted, binds: false };
      }
      const slip = overrunOf(oneWay, solution);
      return { at, id: oneWay.id, charted: null, binds: slip !== null && slip.n !== 0n && slip.s < 0n };
    });
  });
}
