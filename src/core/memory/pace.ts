/** How long answers take, by form: the learner's own median where there is enough of it, else a first guess. */
import type { Form } from '../questions/question.ts';
import type { Attempt } from './attempt.ts';

export type SecondsPerForm = Readonly<Partial<Record<Form, number>>>;

/** First guesses until own answers are there; assumptions, no source. */
export const FIRST_GUESS_SECONDS: Readonly<Record<Form, number>> = {
  one: 12,
  place: 12,
  set: 15,
  pair: 25,
  order: 25,
  fill: 30,
  number: 35,
};

/** Reading the result before going on; an assumption, no source. */
export const READING_SECONDS = 6;

/** Fewer answers than this make no median. */
const ENOUGH = 5;

/** Quicker than this was a tap by accident. */
const ACCIDENT_BELOW_SECONDS = 0.8;

/** Own median answering time for each form with at least five usable answers; interrupted ones are left out (M9). */
export function paceOf(attempts: Iterable<Attempt>): SecondsPerForm {
  const times = new Map<Form, number[]>();
  for (const { form, seconds, interrupted } of attempts) {
    if (interrupted || seconds < ACCIDENT_BELOW_SECONDS) continue;
    const own = times.get(form);
    if (own) own.push(seconds);
    else times.set(form, [seconds]);
  }
  const median = (values: readonly number[]) => {
    const sorted = values.toSorted((a, b) => a - b);
    return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
  };
  return Object.fromEntries(
    [...times]
      .filter(([, values]) => values.length >= ENOUGH)
      .map(([form, values]) => [form, median(values)]),
  );
}

/** Seconds one question of a form is expected to take, its result included. */
export function secondsFor(form: Form, own: SecondsPerForm = {}): number {
  return (own[form] ?? FIRST_GUESS_SECONDS[form]) + READING_SECONDS;
}

/** Seconds practised on a local day, results included; an interrupted answer counts as a usual one. */
export function secondsOn(day: number, attempts: Iterable<Attempt>): number {
  let sum = 0;
  for (const attempt of attempts)
    if (attempt.day === day)
      sum += attempt.interrupted ? secondsFor(attempt.form) : attempt.seconds + READING_SECONDS;
  return sum;
}
