/**
 * Folds the log of attempts into one memory per fact. Pure replay: the same attempts give the same memories in
 * whatever order, copy or merge they come. docs/spec/memory.md M10 to M13.
 */
import type { FactId } from '../questions/question.ts';
import type { Attempt } from './attempt.ts';
import { knownAfter, mixture, UNSEEN_RECALL } from './credit.ts';
import { inOrder, type Placed } from './order.ts';
import { type Calculator, calculatorFor, type MemoryState, outcomesOn, recallOn, WEIGHTS } from './recall.ts';
import { followsExample } from './support.ts';

/** Right first on this many separate days since the last miss, before a fact counts as holding (M15). */
export const HOLDING_DAYS = 2;

export interface FactMemory extends MemoryState {
  /** Local day of the first answer that needed the fact. */
  readonly firstDay: number;
  /** Answers that needed it. */
  readonly asked: number;
  /** Those it was missed in. */
  readonly missed: number;
  /** Separate days, since the last miss, on which the first answer that needed it was right without a full example. */
  readonly rightDays: number;
  /** `rightDays` once reached what holding takes. */
  readonly held: boolean;
}

export type Memory = ReadonlyMap<FactId, FactMemory>;

/** Whether an answer counts as a miss of a fact: named by the slip-up, or by itself more likely than not. */
function isMiss(attempt: Attempt, fact: FactId, known: number): boolean {
  if (attempt.right) return false;
  const named = attempt.missed.filter((missed) => attempt.facts.includes(missed));
  if (named.length > 0) return named.includes(fact);
  return attempt.facts.length === 1 || known < 0.5;
}

function moved(
  before: FactMemory | undefined,
  { attempt, day }: Placed,
  fact: FactId,
  known: number,
  calculator: Calculator,
): FactMemory {
  const state = mixture(outcomesOn(before, day, calculator), known);
  const missed = isMiss(attempt, fact, known);
  const firstOfDay = before === undefined || state.lastDay > before.lastDay;
  const shows = attempt.right && firstOfDay && !followsExample(attempt);
  const rightDays = missed ? 0 : (before?.rightDays ?? 0) + (shows ? 1 : 0);
  return {
    ...state,
    firstDay: before?.firstDay ?? day,
    asked: (before?.asked ?? 0) + 1,
    missed: (before?.missed ?? 0) + (missed ? 1 : 0),
    rightDays,
    held: (before?.held ?? false) || rightDays >= HOLDING_DAYS,
  };
}

/** An attempt as it was foreseen: the memories of its facts before it, and the recall they gave. */
export interface Foreseen {
  readonly attempt: Attempt;
  readonly day: number;
  readonly facts: readonly FactId[];
  readonly before: readonly (FactMemory | undefined)[];
  readonly recalls: readonly number[];
}

export interface Folding {
  /** Other weights than the usual ones. */
  readonly weights?: readonly number[];
  /** Told of every attempt that counts, before it is credited, in the order they count. */
  readonly watch?: (foreseen: Foreseen) => void;
}

/** Credits one attempt after the other to the memories they leave. */
export function foldPlaced(
  memory: Map<FactId, FactMemory>,
  log: Iterable<Placed>,
  { weights = WEIGHTS, watch }: Folding = {},
): void {
  const calculator = calculatorFor(weights);
  for (const placed of log) {
    const { attempt, day } = placed;
    const facts = [...new Set(attempt.facts)];
    const before = facts.map((fact) => memory.get(fact));
    const recalls = before.map((state) => (state ? recallOn(state, day, calculator) : UNSEEN_RECALL));
    watch?.({ attempt, day, facts, before, recalls });
    const missed = facts.flatMap((fact, place) => (attempt.missed.includes(fact) ? [place] : []));
    const known = knownAfter({ recalls, guessRate: attempt.guessRate, right: attempt.right, missed });
    for (const [place, fact] of facts.entries())
      memory.set(fact, moved(before[place], placed, fact, known[place]!, calculator));
  }
}

/** Memory per fact after all attempts but the voided ones (`voids`: attempt ids). Facts never asked are absent. */
export function foldAttempts(
  attempts: Iterable<Attempt>,
  voids: ReadonlySet<string> = new Set(),
  folding: Folding = {},
): Memory {
  const memory = new Map<FactId, FactMemory>();
  const counted = inOrder(attempts).filter(({ attempt }) => !voids.has(attempt.id));
  foldPlaced(memory, counted, folding);
  return memory;
}
