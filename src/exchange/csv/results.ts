/** Results as tables: a line an answer, or a line a person. */
import type { LearnerLog } from '../../core/assign/merge-reports.ts';
import type { Board } from '../../core/group/board.ts';
import { dateOfDay } from '../../core/memory/day.ts';
import type { Answer } from '../../core/questions/question.ts';
import { freeText, writeTable } from './table.ts';

/** An answer in one cell, by the ids of the question: "B1 C1", "B1=on C1=off". */
export function answerText(answer: Answer): string {
  switch (answer.form) {
    case 'one':
      return answer.pick;
    case 'place':
      return answer.spot;
    case 'number':
      return answer.value;
    case 'set':
      return [...answer.picks].sort().join(' ');
    case 'order':
      return answer.order.join(' ');
    case 'pair':
      return pairsText(answer.pairs);
    case 'fill':
      return pairsText(answer.cells);
  }
}

const pairsText = (pairs: Readonly<Record<string, string>>) =>
  Object.entries(pairs)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([left, right]) => `${left}=${right}`)
    .join(' ');

const isoTime = (at: number) => new Date(at).toISOString();

/** A line an answer, voided ones marked. Times are UTC (RFC 3339), days those of the learner's own calendar. */
export function writeAnswers(logs: readonly LearnerLog[], voids: ReadonlySet<string>): string {
  return writeTable(
    [
      'learner',
      'name',
      'time',
      'day',
      'deck',
      'revision',
      'family',
      'fact',
      'seed',
      'answer',
      'right',
      'slipUps',
      'seconds',
      'interrupted',
      'voided',
      'attempt',
    ],
    logs.flatMap(({ learner, name, attempts }) =>
      [...attempts]
        .sort((a, b) => a.at - b.at || a.sequence - b.sequence)
        .map((attempt) => [
          freeText(learner),
          freeText(name),
          isoTime(attempt.at),
          dateOfDay(attempt.day),
          freeText(attempt.deck),
          attempt.revision,
          freeText(attempt.family),
          freeText(attempt.fact),
          attempt.seed,
          attempt.answer.form === 'number' ? attempt.answer.value : freeText(answerText(attempt.answer)),
          attempt.right,
          attempt.slipUps.join(' '),
          attempt.seconds,
          attempt.interrupted,
          voids.has(attempt.id),
          freeText(attempt.id),
        ]),
    ),
  );
}

const rounded = (share: number) => Math.round(share * 1000) / 1000;

/** A line a person, as the board has it: likely readiness with its interval and the facts behind it. */
export function writeBoard({ people }: Board): string {
  return writeTable(
    [
      'learner',
      'name',
      'answers',
      'voided',
      'days',
      'lastDay',
      'tried',
      'right',
      'facts',
      'readiness',
      'low',
      'high',
      'likely',
      'makeUp',
      'slipUps',
    ],
    people.map(({ learner, name, answers, voided, days, lastDay, readiness, likely, makeUp, slipUps }) => [
      freeText(learner),
      freeText(name),
      answers,
      voided,
      days,
      lastDay === null ? null : dateOfDay(lastDay),
      readiness.tried,
      readiness.right,
      readiness.of,
      rounded(readiness.share),
      rounded(readiness.low),
      rounded(readiness.high),
      likely,
      makeUp?.reason ?? null,
      slipUps.map(({ slipUp, times }) => `${slipUp}:${times}`).join(' '),
    ]),
  );
}
