/** The calculator stays behind recall.ts: its name, its grades and its states reach no other file and no screen. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Attempt } from '../../../src/core/memory/attempt.ts';
import { EN } from '../../../src/words/en/index.ts';
import { aDrill, anAttempt } from '../../attempts.ts';

const SOURCE = new URL('../../../src/', import.meta.url);
const HOME = 'core/memory/recall.ts';

const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name))
  .map((name) => ({
    name: name.replaceAll('\\', '/'),
    text: readFileSync(new URL(name, SOURCE), 'utf8'),
  }));

const GRADES_AND_STATES = ['again', 'hard', 'good', 'easy', 'manual', 'learning', 'relearning', 'review'];

test('only recall.ts imports the calculator', () => {
  const importing = files.filter(({ text }) => /from 'ts-fsrs'|import\('ts-fsrs'\)/.test(text));
  expect(importing.map(({ name }) => name)).toEqual([HOME]);
});

test('outside core/memory no grade or state of it is written as a value', () => {
  const quoted = new RegExp(
    `(['"\`])(${GRADES_AND_STATES.filter((word) => word !== 'manual').join('|')})\\1`,
    'i',
  );
  const found = files
    .filter(({ name }) => !name.startsWith('core/memory/'))
    .flatMap(({ name, text }) => text.match(quoted)?.map((match) => `${name}: ${match}`) ?? []);
  expect(found).toEqual([]);
});

test('no message is such a word, and none speaks of rating or grading oneself', () => {
  const told = Object.entries(EN).filter(
    ([, message]) =>
      GRADES_AND_STATES.includes(message.trim().toLowerCase()) ||
      /\b(rate|rating|grade|grading)\b/i.test(message.replace(/\{\w+/g, '')),
  );
  expect(told).toEqual([]);
});

test('what is stored names neither', () => {
  const attempt: Attempt = anAttempt();
  const keys = [...Object.keys(attempt), ...Object.keys(aDrill())];
  for (const word of ['rating', 'grade', 'state', 'due', 'reps', 'lapses', 'stability'])
    expect(keys).not.toContain(word);
});
