/** Loads the words of one language: first what a drill needs, the rest with the first other screen. */
import type { Find, Language, Messages } from '../words/speak.ts';

type Load = () => Promise<readonly Messages[]>;

const LANGUAGES: Readonly<Record<Language, { readonly drill: Load; readonly rest: Load }>> = {
  en: {
    drill: async () => (await import('../words/en/drill.ts')).DRILL,
    rest: async () => (await import('../words/en/rest.ts')).REST,
  },
  de: {
    drill: async () => (await import('../words/de/drill.ts')).DRILL,
    rest: async () => (await import('../words/de/rest.ts')).REST,
  },
  es: {
    drill: async () => (await import('../words/es/drill.ts')).DRILL,
    rest: async () => (await import('../words/es/rest.ts')).REST,
  },
};

export interface Words {
  readonly language: Language;
  /** Finds what is loaded by then. */
  readonly find: Find;
  /** All that a drill can say. */
  loadDrill(): Promise<void>;
  loadAll(): Promise<void>;
}

export function openWords(language: Language): Words {
  const loaded: Messages[] = [];
  const once = (load: Load) => {
    let loading: Promise<void> | undefined;
    return () => {
      loading ??= load().then(
        (files) => void loaded.push(...files),
        (error: unknown) => {
          loading = undefined;
          throw error;
        },
      );
      return loading;
    };
  };
  const loadDrill = once(LANGUAGES[language].drill);
  const loadRest = once(LANGUAGES[language].rest);
  return {
    language,
    // Laid together they would be found quicker, but that takes longer than a page's few sentences.
    find: (key) => loaded.find((messages) => Object.hasOwn(messages, key))?.[key],
    loadDrill,
    async loadAll() {
      await Promise.all([loadDrill(), loadRest()]);
    },
  };
}
