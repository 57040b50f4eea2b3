import { assemblyPrecedenceOf, type DeckSequence, precedenceOf } from '../../core/unit/sequences.ts';
import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

function findings(sequence: DeckSequence, index: number): Spot[] {
  if (!sequence.assembly || !precedenceOf(sequence).ok) return [];
  const assembly = assemblyPrecedenceOf(sequence);
  if (assembly.ok) return [];
  const at = ['sequences', index, 'assembly'];
  const { error } = assembly;
  if (error.code === 'circle')
    return [{ at, case: 'circle', values: { circle: [...error.circle, error.circle[0]!].join(' → ') } }];
  if (error.code !== 'lifted-unknown' && error.code !== 'lifted-still-implied') return [];
  const { earlier, later } = error.relation;
  const entry = sequence.assembly.lifted!.findIndex(
    (relation) => relation.earlier === earlier && relation.later === later,
  );
  return [{ at: [...at, 'lifted', entry], case: error.code, values: { earlier, later } }];
}

/** Turned round, with its exceptions, the sequence can be done. */
export const assemblyWorks: Rule = {
  id: 'assembly-works',
  severity: 'error',
  check: (deck) => (deck.sequences ?? []).flatMap(findings),
};
