/** Opens a question again from what a drill or an attempt keeps of it. */
import type { Unit } from '../unit/unit.ts';
import { ask } from './ask.ts';
import { FAMILIES } from './families/index.ts';
import type { FactId, Question } from './question.ts';

/** The same question as before; undefined when the deck or the program has changed so that it cannot be asked. */
export function questionOf(
  unit: Unit,
  item: { readonly family: string; readonly fact: FactId; readonly seed: number },
): Question | undefined {
  const family = FAMILIES.find(({ id }) => id === item.family);
  return family && ask(unit, family, item.seed, item.fact);
}
