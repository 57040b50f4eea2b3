/**
 * A piece of work small enough to order by hand, its steps named by letters.
 *   Stripping: a before b and f; b before c and d; c and d before e; f before g; e and g before h.
 *   Assembly: a is left out; measuring, m, comes after g and before f; b before f; d and b have no order any more.
 *   So h before g and e; g before m; e before c and d; c before b; m and b before f.
 */
import type { Deck } from '../../../../src/core/unit/deck.ts';
import type { DeckSequence, DeckStep } from '../../../../src/core/unit/sequences.ts';
import { makeUnit, type Unit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';

const step = (id: string, text: string, after: Readonly<Record<string, string>> = {}): DeckStep => ({
  id,
  text: `${text} off.`,
  turned: `${text} on.`,
  after: Object.entries(after).map(([earlier, reason]) => ({ step: earlier, reason })),
});

export const WORK: DeckSequence = {
  id: 'job',
  name: 'the job',
  steps: [
    step('a', 'Plug'),
    step('b', 'Pan', { a: 'It is full.' }),
    step('c', 'Filter', { b: 'It is inside the pan.' }),
    step('d', 'Wires', { b: 'They end under the pan.' }),
    step('e', 'Valves', { c: 'The filter neck holds them.', d: 'The wires are too short.' }),
    step('f', 'Converter', { a: 'It pours out.' }),
    step('g', 'Pump', { f: 'The converter covers its bolts.' }),
    step('h', 'Drum', { e: 'A pipe runs through it.', g: 'The pump is in front of it.' }),
  ],
  assembly: {
    leftOut: [{ step: 'a', reason: 'There is nothing to drain.' }],
    added: [{ id: 'm', text: 'Measure.', after: [{ step: 'g', reason: 'The pump sets the play.' }] }],
    lifted: [{ earlier: 'd', later: 'b', reason: 'The plug can be reached from outside.' }],
    imposed: [
      { earlier: 'm', later: 'f', reason: 'The converter hides the shaft.' },
      { earlier: 'b', later: 'f', reason: 'The unit has to be turned over.' },
    ],
  },
  checks: [
    { id: 'play', text: 'End play', during: 'strip', needs: ['f'], closedBy: ['g', 'h'] },
    { id: 'either', text: 'Something', during: 'strip', needs: [], closedBy: ['g', 'e'] },
    { id: 'again', text: 'End play anew', during: 'assembly', needs: ['g'], closedBy: ['f'] },
  ],
};

export function workDeck(changes: Partial<DeckSequence> = {}): Deck {
  const train = PUBLISHED.find(({ id }) => id === 'ravigneaux-4-a')!;
  return { ...deckOf(train), sequences: [{ ...WORK, ...changes }] };
}

export const workUnit = (changes: Partial<DeckSequence> = {}): Unit => makeUnit(workDeck(changes));

/** The work with some of its steps changed. */
export const withSteps = (change: (step: DeckStep) => Partial<DeckStep>): Partial<DeckSequence> => ({
  steps: WORK.steps.map((each) => ({ ...each, ...change(each) })),
});
