/** The language of the page: the one chosen on this device, else the first of the browser's that there is, else English. */
import { LANGUAGES, type Language } from '../words/speak.ts';

const KEY = 'detent-language';

const known = (tag: string | null | undefined): Language | undefined =>
  LANGUAGES.find((language) => tag?.toLowerCase().split('-')[0] === language);

/** A browser that keeps nothing gives null. */
function kept(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

export function languageInUse(wanted: readonly string[] = navigator.languages): Language {
  return known(kept()) ?? wanted.map(known).find((language) => language !== undefined) ?? 'en';
}

/** False when the browser keeps nothing: the choice then lasts until the page is closed. */
export function keepLanguage(language: Language): boolean {
  try {
    localStorage.setItem(KEY, language);
    return true;
  } catch {
    return false;
  }
}
