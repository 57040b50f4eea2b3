import type { State } from '../../core/gears/solve.ts';
import type { Deck } from '../../core/unit/deck.ts';
import { drivesHint } from './nearby.ts';
import { rangesOf, solveRow } from './rows.ts';
import type { Rule } from './rule.ts';

/** The fewest of the applied elements that by themselves bring the train into this state. */
function culpritsOf(deck: Deck, applied: readonly string[], state: State): readonly string[] {
  let least = applied;
  for (const id of applied) {
    const without = least.filter((other) => other !== id);
    if (without.length < least.length && solveRow(deck.train, without)?.state === state) least = without;
  }
  return least;
}

/** Each range drives the output with exactly one ratio. */
export const rangeDrives: Rule = {
  id: 'range-drives',
  severity: 'error',
  check: (deck) =>
    rangesOf(deck).flatMap(({ at, row }) => {
      const state = solveRow(deck.train, row.applied)?.state;
      if (state === undefined || state === 'drives') return [];
      const elements = state === 'free' ? row.applied : culpritsOf(deck, row.applied, state);
      return [
        {
          at: [...at, 'applied'],
          case: state,
          values: { elements, count: elements.length, hint: drivesHint(deck, row) },
        },
      ];
    }),
};
