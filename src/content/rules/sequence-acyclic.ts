import type { DeckSequence } from '../../core/unit/sequences.ts';
import type { Rule } from './rule.ts';

/** Circles of steps that each wait for the next; every circle once, from its first step in the file. */
function circlesOf({ steps }: DeckSequence): string[][] {
  const waitsFor = new Map(steps.map((step) => [step.id, (step.after ?? []).map(({ step: id }) => id)]));
  const done = new Set<string>();
  const circles: string[][] = [];
  const visit = (id: string, trail: string[]): void => {
    const start = trail.indexOf(id);
    if (start >= 0) circles.push(trail.slice(start));
    if (start >= 0 || done.has(id)) return;
    for (const next of waitsFor.get(id) ?? []) visit(next, [...trail, id]);
    done.add(id);
  };
  for (const step of steps) visit(step.id, []);
  return circles;
}

/** Must-be-before relations do not run in a circle, so that some order works. */
export const sequenceAcyclic: Rule = {
  id: 'sequence-acyclic',
  severity: 'error',
  check: (deck) =>
    (deck.sequences ?? []).flatMap((sequence, index) =>
      circlesOf(sequence).map((circle) => ({
        at: ['sequences', index, 'steps', sequence.steps.findIndex((step) => step.id === circle[0]), 'after'],
        values: { circle: [...circle, circle[0]!].join(' → ') },
      })),
    ),
};
