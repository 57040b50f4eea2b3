/** The worked example for the question at hand, by the log as it stood when the question came up; none once it is checked. */
import { useMemo } from 'react';
import type { Drill } from '../../core/memory/drill.ts';
import { supportFor, type Worked } from '../../core/memory/support.ts';
import { exampleFor } from '../../core/questions/worked-example.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import type { Asked } from './asked.ts';
import type { ShownExample } from './ExampleView.tsx';

interface Given {
  readonly say: Say;
  /** Undefined while the store is being opened. */
  readonly unit: Unit | undefined;
  readonly worked: Worked | undefined;
}

export function useExample(
  { unit, say, worked }: Given,
  { items, index, verdict }: Drill,
  { family, question }: Asked,
): ShownExample | undefined {
  const { fact } = items[index]!;
  const support = verdict || !worked || !family ? 'alone' : supportFor(worked, family, fact);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a second try put among the items changes no example
  const example = useMemo(() => {
    const coming = items.slice(index).map((item) => item.fact);
    return support === 'alone' || !unit || !family
      ? undefined
      : exampleFor(unit, family, question, say, coming);
  }, [unit, say, question, support]);
  return support !== 'alone' && example ? { support, worked: example } : undefined;
}
