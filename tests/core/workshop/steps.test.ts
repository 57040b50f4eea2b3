import { describe, expect, test } from 'vitest';
import { assemblyOrder } from '../../../src/core/sequence/assembly.ts';
import { assemblyPrecedenceOf } from '../../../src/core/unit/sequences.ts';
import {
  assemblyOfDraft,
  type DraftSequence,
  stepIdFrom,
  stepsFromLines,
} from '../../../src/core/workshop/steps.ts';
import { shippedDecks } from '../../units.ts';

describe('steps from lines', () => {
  test('a line a step, numbered or not; after a slash what is done when it goes together', () => {
    const lines =
      '1. Drain the fluid.\n\n2) Take the pan off. / Set the pan on.\n- Take the pan off the bench\n';
    expect(stepsFromLines(lines, [])).toEqual([
      { id: 'drain-the-fluid', text: 'Drain the fluid.' },
      { id: 'take-the-pan-off', text: 'Take the pan off.', turned: 'Set the pan on.' },
      { id: 'take-the-pan-off-2', text: 'Take the pan off the bench' },
    ]);
  });

  test.each([
    ['Ölwanne abnehmen!', 'ölwanne-abnehmen'],
    ['Undo the four M8 bolts', 'undo-the-four-m8'],
    ['???', 'step'],
    ['10 mm', '10-mm'],
    ['油を抜く', '油を抜く'],
  ])('an id from %j: %j', (words, id) => {
    expect(stepIdFrom(words, [])).toBe(id);
  });
});

const step = (id: string, ...after: string[]) => ({
  id,
  text: id,
  after: after.map((before) => ({ step: before, reason: 'r' })),
});
const strip: DraftSequence = { steps: [step('drain'), step('pan', 'drain'), step('filter', 'pan')] };
const order = (sequence: DraftSequence) => {
  const made = assemblyOfDraft(sequence);
  return made.ok ? made.value : made.error.code;
};

describe('the assembly that follows', () => {
  test.each<[string, DraftSequence, unknown]>([
    ['turned round', strip, ['filter', 'pan', 'drain']],
    ['a step done only when stripping', { ...strip, assembly: { leftOut: [{ step: 'drain' }] } }, ['filter', 'pan']],
    ['a step done only when assembling', { ...strip, assembly: { added: [step('magnet', 'filter')], imposed: [{ earlier: 'magnet', later: 'pan' }] } }, ['filter', 'magnet', 'pan', 'drain']],
    ['relations half told bind nothing', { ...strip, assembly: { imposed: [{ earlier: 'drain' }], leftOut: [{}] } }, ['filter', 'pan', 'drain']],
    ['steps typed in an order that cannot work', { steps: [step('pan', 'drain'), step('drain')] }, 'too-early'],
    ['a circle', { steps: [step('a', 'b'), step('b', 'a')] }, 'circle'],
    ['before a step that is not there', { steps: [step('a', 'x')] }, 'step-unknown'],
    ['nothing yet', {}, []],
  ])('%s', (_, sequence, expected) => {
    expect(order(sequence)).toEqual(expected);
  }); // biome-ignore format: a table reads across

  test('of the shipped sequences it is what the questions take', () => {
    for (const { sequences } of shippedDecks())
      for (const sequence of sequences ?? []) {
        const precedence = assemblyPrecedenceOf(sequence);
        if (!precedence.ok) continue;
        expect(order(sequence as DraftSequence)).toEqual(assemblyOrder(precedence.value, sequence.steps.map(({ id }) => id)));
      } // biome-ignore format: an expectation reads across
  });
});
