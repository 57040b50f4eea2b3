/** Every word of the project at once, for the command line and for tests; the page loads its own (src/app). */
import { namesOf } from '../core/questions/names.ts';
import type { Deck } from '../core/unit/deck.ts';
import { DE } from './de/index.ts';
import { EN } from './en/index.ts';
import { ES } from './es/index.ts';
import { type Language, type Messages, type Say, speakerOf } from './speak.ts';

export type { Say } from './speak.ts';

const CATALOGUES: Readonly<Record<Language, Messages>> = { en: EN, de: DE, es: ES };

/** A speaker for one language. */
export function makeSay(deck: Deck | null, language: Language = 'en'): Say {
  const messages = CATALOGUES[language];
  return speakerOf(deck && namesOf(deck), language, (key) => messages[key]);
}
