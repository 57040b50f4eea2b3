/** The question at hand in a drill, with the family that makes it: only that one is loaded. */
import type { Drill } from '../../core/memory/drill.ts';
import { ask } from '../../core/questions/ask.ts';
import type { Family, Question } from '../../core/questions/question.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Services } from '../services.ts';
import { loadDrawings } from './DrawingLater.tsx';

export interface Asked {
  readonly question: Question;
  /** What made it; left out where the question was kept and its family is still to be loaded. */
  readonly family?: Family;
}

/** The drill at its next item that this version of the program can ask, and that question; null when none is left. */
export async function askedIn(
  { familyOf }: Pick<Services, 'familyOf'>,
  unit: Unit,
  drill: Drill,
): Promise<{ readonly drill: Drill; readonly asked: Asked | null }> {
  const item = drill.items[drill.index];
  if (!item) return { drill, asked: null };
  const family = await familyOf(item.family);
  const question = family && ask(unit, family, item.seed, item.fact);
  if (question?.drawing) await loadDrawings();
  if (question) return { drill, asked: { family, question } };
  return askedIn({ familyOf }, unit, { ...drill, items: drill.items.toSpliced(drill.index, 1) });
}
