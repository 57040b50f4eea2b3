/** `deck ask`: whole questions, with the answer, the wrong rules' answers and the explanation. */
import { ask } from '../core/questions/ask.ts';
import { FAMILIES } from '../core/questions/families/index.ts';
import type { Family, Question } from '../core/questions/question.ts';
import type { Unit } from '../core/unit/unit.ts';
import { Failure } from './failure.ts';

export interface Asked {
  readonly family?: string | undefined;
  readonly fact?: string | undefined;
  readonly seed: number;
  readonly count: number;
}

/** Seeds tried for each question asked for; a seed may have nothing fair to ask. */
const TRIES = 20;

function familiesFor(unit: Unit, { family: id, fact }: Asked): Family[] {
  const named = FAMILIES.filter((family) => id === undefined || family.id === id);
  if (id !== undefined && named.length === 0)
    throw new Failure(2, 'cli.ask.no-family', { family: id, known: FAMILIES.map((family) => family.id) });
  const able = named.filter((family) => family.facts(unit).length > 0);
  if (able.length === 0) throw new Failure(1, 'cli.ask.nothing', { family: id ?? 'all' });
  if (fact === undefined) return able;
  const about = able.filter((family) => family.facts(unit).includes(fact));
  const facts = [...new Set(able.flatMap((family) => family.facts(unit)))];
  if (about.length === 0)
    throw new Failure(2, 'cli.ask.no-fact', {
      fact,
      known: facts.slice(0, 40),
      more: facts.length > 40 ? 1 : 0,
    });
  return about;
}

/**
 * `count` questions from seed on. Without a family they take turns. Family, fact and seed of each question
 * bring it back.
 */
export function askQuestions(unit: Unit, asked: Asked): Question[] {
  const families = familiesFor(unit, asked);
  const questions: Question[] = [];
  for (let step = 0; step < asked.count * TRIES && questions.length < asked.count; step++) {
    const family = families[step % families.length]!;
    const question = ask(unit, family, asked.seed + step, asked.fact);
    if (question) questions.push(question);
  }
  if (questions.length === 0) throw new Failure(1, 'cli.ask.nothing', { family: asked.family ?? 'all' });
  return questions;
}
