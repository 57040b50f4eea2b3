/** The worked example for the question at hand, by the log as it stood when the question came up. */
import { useMemo } from 'react';
import type { Attempt } from '../../core/memory/attempt.ts';
import type { Drill } from '../../core/memory/drill.ts';
import { supportFor } from '../../core/memory/support.ts';
import { FAMILIES } from '../../core/questions/families/index.ts';
import type { Question } from '../../core/questions/question.ts';
import { exampleFor } from '../../core/questions/worked-example.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import type { ShownExample } from './ExampleView.tsx';

interface Given {
  readonly unit: Unit;
  readonly say: Say;
  /** In order; an attempt may stand twice. */
  readonly log: readonly Attempt[];
}

export function useExample(
  { unit, say, log }: Given,
  { id, items, index, verdict }: Drill,
  question: Question,
): ShownExample | undefined {
  const { family: familyId, fact } = items[index]!;
  const family = FAMILIES.find((candidate) => candidate.id === familyId)!;
  const own = verdict ? log.findLast((attempt) => attempt.drill === id)?.id : undefined;
  const before = new Map(log.map((attempt) => [attempt.id, attempt]));
  if (own !== undefined) before.delete(own);
  const support = supportFor([...before.values()], family, fact);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a second try put among the items changes no example
  const worked = useMemo(() => {
    const coming = items.slice(index).map((item) => item.fact);
    return support === 'alone' ? undefined : exampleFor(unit, family, question, say, coming);
  }, [unit, say, question, support]);
  return support !== 'alone' && worked ? { support, worked } : undefined;
}
