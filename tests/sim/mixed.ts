/**
 * The world with questions as they are: drawn from the shipped decks, some needing several facts, some open to
 * guessing. The scheduler sees right or wrong alone and credits it by the mixture rule; the learner's facts each
 * move by what was really known. A fact already met that day in another question is passed over.
 */
import { knownAfter, mixture, SLIP_RATE, UNSEEN_RECALL } from '../../src/core/memory/credit.ts';
import { type MemoryState, outcomesOn, recallAfter, recallOn } from '../../src/core/memory/recall.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { factsOf } from '../../src/core/questions/facts.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { shippedDecks } from '../units.ts';
import type { Cell } from './cells.ts';
import { chance, type Learner } from './learner.ts';
import type { Policy } from './policies.ts';

/** A question, as the memory sees it: the places of its facts, and its guess rate. */
export interface Needs {
  readonly facts: readonly number[];
  readonly guessRate: number;
}

/** Questions for each fact of all shipped decks, one for each family that can ask it and a few seeds. */
export function questionPool(seeds: number): readonly (readonly Needs[])[] {
  const pool: Needs[][] = [];
  for (const deck of shippedDecks()) {
    const unit = makeUnit(deck);
    const facts = factsOf(unit);
    const start = pool.length;
    const placeOf = new Map(facts.map(({ id }, place) => [id, start + place]));
    for (const fact of facts) {
      const questions: Needs[] = [];
      for (const family of FAMILIES.filter(({ id }) => fact.families.includes(id)))
        for (let seed = 1; seed <= seeds; seed++) {
          const question = ask(unit, family, seed, fact.id);
          const places = question?.facts.flatMap((id) => placeOf.get(id) ?? []) ?? [];
          // A question may rest on a fact that nothing asks by itself (docs/families.md): that one is not planned.
          if (question && places.length > 0) questions.push({ facts: places, guessRate: question.guessRate });
        }
      if (questions.length === 0) throw new Error(`no question for ${fact.id}`);
      pool.push(questions);
    }
  }
  return pool;
}

export type Credit = 'mixture' | 'told';

export interface MixedScore {
  /** Mean true recall at class. */
  readonly raw: number;
  /** Mean believed recall less the true one. */
  readonly bias: number;
}

/** 'told' is the yardstick: the scheduler learns which facts were known, as if every mistake named them. */
export function runMixed(
  cell: Cell,
  learner: Learner,
  policy: Policy,
  pool: readonly (readonly Needs[])[],
  credit: Credit,
  seed: number,
): MixedScore {
  const count = pool.length;
  const beliefs: (MemoryState | null)[] = Array.from({ length: count }, () => null);
  const truths = [...beliefs];
  const scheduler = policy.start();
  for (let day = 0; day < cell.days; day++) {
    let left = cell.minutes * 60;
    const met = new Set<number>();
    for (const fact of scheduler({ cell, model: learner.truth, day, beliefs, seed })) {
      if (left < cell.rightSeconds) break;
      if (met.has(fact)) continue;
      const questions = pool[fact]!;
      const { facts, guessRate } = questions[Math.floor(chance(seed, fact, day) * questions.length)]!;
      left -= cell.rightSeconds;
      const known = facts.map((place) => {
        const truth = truths[place];
        const recall = truth ? recallOn(truth, day) : learner.firstRecall;
        return chance(seed, 10_000 + place, day * 64 + met.size) < recall;
      });
      const luck = chance(seed, 20_000 + fact, day);
      const right = known.every(Boolean) ? luck >= SLIP_RATE : luck < guessRate;
      const recalls = facts.map((place) => {
        const belief = beliefs[place];
        return belief ? recallOn(belief, day) : UNSEEN_RECALL;
      });
      const credited = credit === 'told' ? known.map(Number) : knownAfter({ recalls, guessRate, right });
      for (const [i, place] of facts.entries()) {
        beliefs[place] = mixture(outcomesOn(beliefs[place] ?? undefined, day), credited[i]!);
        const outcomes = outcomesOn(truths[place] ?? undefined, day);
        truths[place] = known[i] ? outcomes.recalled : outcomes.forgotten;
        met.add(place);
      }
    }
  }
  const mean = (states: readonly (MemoryState | null)[]) =>
    states.reduce(
      (sum, state) => sum + (state ? recallAfter(state.stability, cell.days - state.lastDay) : 0),
      0,
    ) / count;
  const raw = mean(truths);
  return { raw, bias: mean(beliefs) - raw };
}
