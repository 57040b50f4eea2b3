/** The language of the page: the one chosen on this device, else the first of the browser's that there is, else English. */
import { LANGUAGES, type Language } from '../words/figures.ts';

const KEY = 'detent-language';

const known = (tag: string | null): Language | null =>
  LANGUAGES.find((language) => tag?.toLowerCase().split('-')[0] === language) ?? null;

export const browserLanguage = (wanted: readonly string[] = navigator.languages): Language =>
  wanted.map(known).find((language) => language !== null) ?? 'en';

/** Null where none was chosen, or the browser keeps nothing. */
export function keptLanguage(): Language | null {
  try {
    return known(localStorage.getItem(KEY));
  } catch {
    return null;
  }
}

/** False when the browser keeps nothing. */
export function keepLanguage(language: Language): boolean {
  try {
    localStorage.setItem(KEY, language);
    return true;
  } catch {
    return false;
  }
}
