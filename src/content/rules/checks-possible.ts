import { closingSteps } from '../../core/sequence/last-chance.ts';
import { assemblyPrecedenceOf, precedenceOf } from '../../core/unit/sequences.ts';
import type { Rule } from './rule.ts';

/** A check can be made at some point of the work that it belongs to. */
export const checksPossible: Rule = {
  id: 'checks-possible',
  severity: 'error',
  check: (deck) =>
    (deck.sequences ?? []).flatMap((sequence, s) =>
      (sequence.checks ?? []).flatMap((check, index) => {
        const at = ['sequences', s, 'checks', index];
        if (check.during === 'assembly' && !sequence.assembly) return [{ at, case: 'not-turned' }];
        const precedence = check.during === 'strip' ? precedenceOf(sequence) : assemblyPrecedenceOf(sequence);
        const closing = precedence.ok ? closingSteps(precedence.value, check) : null;
        if (!closing || closing.ok || closing.error.code !== 'never-possible') return [];
        return [{ at, case: 'never', values: { step: closing.error.step } }];
      }),
    ),
};
