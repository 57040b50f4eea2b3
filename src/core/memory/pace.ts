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

/** Of so many of the latest answers by form: a learner gets quicker, and old times say little. */
const LATEST = 99;

/** Usable answering times by form, the latest ones. */
export type Times = ReadonlyMap<Form, readonly number[]>;

/** The times with those of further answers, in order; interrupted ones and accidents are left out (M9). */
export function addTimes(before: Times, attempts: Iterable<Attempt>): Times {
  const times = new Map([...before].map(([form, own]) => [form, [...own]]));
  for (const { form, seconds, interrupted } of attempts) {
    if (interrupted || seconds < ACCIDENT_BELOW_SECONDS) continue;
    const own = times.get(form);
    if (own) own.push(seconds);
    else times.set(form, [seconds]);
  }
  return new Map([...times].map(([form, own]) => [form, own.slice(-LATEST)]));
}

const median = (values: readonly number[]) => {
  const sorted = values.toSorted((a, b) => a - b);
  return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
};

/** Own median answering time for each form with at least five usable answers. */
export const paceOfTimes = (times: Times): SecondsPerForm =>
  Object.fromEntries(
    [...times]
      .filter(([, values]) => values.length >= ENOUGH)
      .map(([form, values]) => [form, median(values)]),
  );

/** The same from answers in order. */
export const paceOf = (attempts: Iterable<Attempt>): SecondsPerForm =>
  paceOfTimes(addTimes(new Map(), attempts));

/** Seconds one question of a form is expected to take, its result included. */
export function secondsFor(form: Form, own: SecondsPerForm = {}): number {
  return (own[form] ?? FIRST_GUESS_SECONDS[form]) + READING_SECONDS;
}

/** Seconds an answer took, its result included; an interrupted one counts as a usual one. */
export const secondsTaken = ({ interrupted, form, seconds }: Attempt): number =>
  interrupted ? secondsFor(form) : seconds + READING_SECONDS;
