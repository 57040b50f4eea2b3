/** The words of this page, in the language of the browser or the one chosen on this device. */
import { browserLanguage, keptLanguage } from './language.ts';
import { openWords } from './load-words.ts';

const usual = openWords(browserLanguage());
// Asking for the choice blocks for a moment: the usual words are on their way meanwhile.
void usual.loadDrill().catch(() => {});
const kept = keptLanguage();

export const words = kept === null || kept === usual.language ? usual : openWords(kept);
