import type { DeckSequence } from '../../core/unit/sequences.ts';
import type { Path, Spot } from '../finding.ts';
import { missing, type Reference } from './references.ts';
import type { Rule } from './rule.ts';

const befores = (at: Path, { after = [] }: DeckSequence['steps'][number]): Reference[] =>
  after.map(({ step: id }, entry) => ({ at: [...at, 'after', entry, 'step'], id }));

function findings({ steps, assembly, checks = [] }: DeckSequence, s: number): Spot[] {
  const at = ['sequences', s];
  const stripped = steps.map(({ id }) => id);
  const { leftOut = [], added = [], lifted = [], imposed = [] } = assembly ?? {};
  const assembled = [...stripped, ...added.map(({ id }) => id)].filter(
    (id) => !leftOut.some(({ step }) => step === id),
  );
  const ends = (list: typeof imposed, field: string): Reference[] =>
    list.flatMap(({ earlier, later }, index) => [
      { at: [...at, 'assembly', field, index, 'earlier'], id: earlier },
      { at: [...at, 'assembly', field, index, 'later'], id: later },
    ]);
  const named = (during: 'strip' | 'assembly'): Reference[] =>
    checks.flatMap((check, index) =>
      check.during !== during
        ? []
        : (['needs', 'closedBy'] as const).flatMap((field) =>
            check[field].map((id, entry) => ({ at: [...at, 'checks', index, field, entry], id })),
          ),
    );
  return [
    ...missing(
      [
        ...steps.flatMap((step, index) => befores([...at, 'steps', index], step)),
        ...leftOut.map(({ step: id }, index) => ({ at: [...at, 'assembly', 'leftOut', index, 'step'], id })),
        ...ends(lifted, 'lifted'),
        ...named('strip'),
      ],
      stripped,
    ),
    ...missing(
      [
        ...added.flatMap((step, index) => befores([...at, 'assembly', 'added', index], step)),
        ...ends(imposed, 'imposed'),
        ...named('assembly'),
      ],
      assembled,
    ),
  ];
}

/** Steps, exceptions of the assembly and checks name steps of their own sequence. */
export const stepsExist: Rule = {
  id: 'steps-exist',
  severity: 'error',
  check: (deck) => (deck.sequences ?? []).flatMap(findings),
};
