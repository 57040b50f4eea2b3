/** Every word of the project at once, for the command line and for tests; the page loads its own (src/app). */
import type { Deck } from '../core/unit/deck.ts';
import { EN } from './en/index.ts';
import { type Language, type Messages, type Say, speakerOf } from './speak.ts';

export { nameOf, type Say } from './speak.ts';

const CATALOGUES: Partial<Record<Language, Messages>> = { en: EN };

/** A speaker for one language; what that does not have is said in English. */
export function makeSay(deck: Deck | null, language: Language = 'en'): Say {
  return speakerOf(deck, language, { ...EN, ...CATALOGUES[language] });
}
