import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { openWords, type Words } from '../../src/app/load-words.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { namesOf } from '../../src/core/questions/names.ts';
import type { Phrase } from '../../src/core/questions/phrase.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { DE } from '../../src/words/de/index.ts';
import { EN } from '../../src/words/en/index.ts';
import { ES } from '../../src/words/es/index.ts';
import { LANGUAGES, speakerOf } from '../../src/words/speak.ts';
import { shippedDecks } from '../units.ts';

const src = fileURLToPath(new URL('../../src/', import.meta.url));

/** Loaded with all words: what facts are called is told by lists only, names by devices that have some. */
const OTHERS = new Set(['fact-name.ts', 'SharedDevice.tsx']);

/** Source files in these folders, those beneath included. */
const sourcesIn = (...folders: readonly string[]) =>
  folders.flatMap((folder) =>
    readdirSync(`${src}${folder}`, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name) && !OTHERS.has(name))
      .map((name) => readFileSync(`${src}${folder}/${name}`, 'utf8')),
  );

/** Keys that a source names, and all that begin as a key it puts together begins. */
function keysNamed(source: string): string[] {
  const whole = [...source.matchAll(/'([a-z0-9.-]+)'/g)].flatMap(([, key]) => (key! in EN ? [key!] : []));
  const begun = [...source.matchAll(/`([a-z0-9-]+\.[a-z0-9.-]*)\$\{/g)].flatMap(([, start]) =>
    Object.keys(EN).filter((key) => key.startsWith(start!)),
  );
  return [...whole, ...begun];
}

function* phrasesIn(value: unknown): Generator<Phrase> {
  if (typeof value !== 'object' || value === null) return;
  if (typeof (value as Partial<Phrase>).key === 'string') yield value as Phrase;
  else for (const inner of Object.values(value)) yield* phrasesIn(inner);
}

const KEYS = Object.keys(EN);
const found = (words: Words) => KEYS.filter((key) => words.find(key) !== undefined);

test.each([
  ['en', EN],
  ['de', DE],
  ['es', ES],
] as const)('all words of %s are those of the catalogue', async (language, catalogue) => {
  const words = openWords(language);
  expect(found(words)).toEqual([]);
  await words.loadAll();
  await words.loadAll();
  expect(Object.fromEntries(KEYS.map((key) => [key, words.find(key)]))).toEqual(catalogue);
  for (const key of ['no-such-key', '__proto__', 'constructor']) expect(words.find(key)).toBeUndefined();
});

test('every language keeps the same words for later', async () => {
  const drills = await Promise.all(
    LANGUAGES.map(async (language) => {
      const words = openWords(language);
      await words.loadDrill();
      return found(words);
    }),
  );
  for (const drill of drills) expect(drill).toEqual(drills[0]);
});

describe('a drill says all it can say with its own words', () => {
  const words = openWords('en');
  beforeAll(() => words.loadDrill());
  const missing = (keys: readonly string[]) =>
    [...new Set(keys)].filter((key) => words.find(key) === undefined);

  test('and they are not all words', () => {
    expect(found(words).length).toBeLessThan(0.7 * KEYS.length);
  });

  test('whatever a family asks, explains and calls a slip-up', () => {
    let asked = 0;
    for (const unit of shippedDecks().map(makeUnit)) {
      const say = speakerOf(namesOf(unit.deck), 'en', words.find);
      for (const family of FAMILIES) {
        const question = ask(unit, family, 1);
        if (!question) continue;
        asked++;
        for (const phrase of phrasesIn(question)) expect(say(phrase)).toBeTruthy();
        for (const { slipUp } of question.lures) expect(say({ key: `slip-up.${slipUp}` })).toBeTruthy();
      }
    }
    expect(asked).toBeGreaterThan(FAMILIES.length);
  });

  test.each([
    ['questions', sourcesIn('core/questions')],
    ['answer forms', sourcesIn('ui/answers')],
    ['drawings', sourcesIn('ui/drawings')],
    ['the drill', sourcesIn('screens/drill')],
    ['what stands before any screen', sourcesIn('app')],
  ])('whatever key the code of %s names', (_, sources) => {
    const keys = sources.flatMap(keysNamed);
    expect(keys.length).toBeGreaterThan(0);
    expect(missing(keys)).toEqual([]);
  });
});
