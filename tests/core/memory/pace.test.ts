import { expect, test } from 'vitest';
import { paceOf, READING_SECONDS, secondsFor } from '../../../src/core/memory/pace.ts';
import { anAttempt } from '../../attempts.ts';

const times = (form: 'one' | 'set', ...seconds: number[]) =>
  seconds.map((value, i) => anAttempt({ id: `${form}${i}`, form, seconds: value, interrupted: value > 60 }));

test('M26 the median of five answers or more, by form', () => {
  expect(paceOf([...times('set', 9, 4, 30, 6, 5), ...times('one', 1, 2, 3, 4)])).toEqual({ set: 6 });
  expect(paceOf(times('one', 1, 2, 3, 4, 5, 6))).toEqual({ one: 3.5 });
});

test('M26 only the latest 99 answers of a form count: who gets quicker is asked more', () => {
  expect(paceOf(times('one', ...Array(200).fill(40), ...Array(99).fill(10)))).toEqual({ one: 10 });
  expect(paceOf(times('one', ...Array(50).fill(40), ...Array(49).fill(10)))).toEqual({ one: 40 });
});

test('M9 interrupted answers and accidental taps are no answering times', () => {
  expect(paceOf(times('set', 4, 5, 6, 7, 600))).toEqual({});
  expect(paceOf(times('set', 4, 5, 6, 7, 8, 600, 0.3, 0.2, 0.1))).toEqual({ set: 6 });
});

test('M26 a question takes its answering time and the reading of its result', () => {
  expect(secondsFor('set', { set: 6 })).toBe(6 + READING_SECONDS);
  expect(secondsFor('number', { set: 6 })).toBeGreaterThan(READING_SECONDS);
});
