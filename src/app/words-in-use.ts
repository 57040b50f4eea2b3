/** The words of this page, in the language chosen on this device or else of the browser. */
import { browserLanguage, keptLanguage } from './language.ts';
import { openWords } from './load-words.ts';

export const words = openWords(keptLanguage() ?? browserLanguage());
