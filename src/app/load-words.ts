/**
 * Loads the words of one language: first what a drill needs, the rest with the first other screen. A file that a
 * language does not have is taken from English.
 */
import type { Language, Messages } from '../words/speak.ts';
import { DRILL_WORDS } from './drill-words.ts';

type File = Readonly<Record<string, Messages>>;
type Files = Readonly<Record<string, () => Promise<File>>>;

const FILES: Readonly<Record<Language, Files>> = {
  en: import.meta.glob<File>(['../words/en/*.ts', '!../words/en/index.ts']),
  de: import.meta.glob<File>(['../words/de/*.ts', '!../words/de/index.ts']),
  es: import.meta.glob<File>(['../words/es/*.ts', '!../words/es/index.ts']),
};

const subjectOf = (path: string) => path.slice(path.lastIndexOf('/') + 1, -'.ts'.length);

export interface Words {
  readonly language: Language;
  /** Filled as files come in. */
  readonly messages: Messages;
  /** All that a drill can say. */
  loadDrill(): Promise<void>;
  loadAll(): Promise<void>;
}

export function openWords(language: Language, files: Readonly<Record<Language, Files>> = FILES): Words {
  const messages: Record<string, string> = {};
  const load = async (wanted: (subject: string) => boolean) => {
    const own = new Map(Object.entries(files[language]).map(([path, file]) => [subjectOf(path), file]));
    const loading = Object.entries(files.en)
      .map(([path, english]) => [subjectOf(path), english] as const)
      .filter(([subject]) => wanted(subject))
      .map(([subject, english]) => (own.get(subject) ?? english)());
    for (const file of await Promise.all(loading)) Object.assign(messages, ...Object.values(file));
  };
  let drill: Promise<void> | undefined;
  let all: Promise<void> | undefined;
  const loadDrill = () => {
    drill ??= load((subject) => DRILL_WORDS.has(subject));
    return drill;
  };
  return {
    language,
    messages,
    loadDrill,
    async loadAll() {
      all ??= load((subject) => !DRILL_WORDS.has(subject));
      await Promise.all([loadDrill(), all]);
    },
  };
}
