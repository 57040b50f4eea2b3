/** Loads the words of one language: first what a drill needs, the rest with the first other screen. */
import type { DeckNames } from '../core/questions/names.ts';
import type { Find, Language, Messages, Say, speakerOf } from '../words/speak.ts';

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
  /**
   * A speaker with a deck's names. Before the words of a drill are there it throws their promise, for which React
   * makes the screen wait; when they could not be loaded, what went wrong.
   */
  sayWith(names: DeckNames | null): Say;
  /** All that a drill can say. */
  loadDrill(): Promise<void>;
  loadAll(): Promise<void>;
}

/** Loads once; what failed is tried anew the next time. */
function once(load: () => Promise<void>): () => Promise<void> {
  let loading: Promise<void> | undefined;
  return () => {
    loading ??= load().catch((error: unknown) => {
      loading = undefined;
      throw error;
    });
    return loading;
  };
}

export function openWords(language: Language): Words {
  const { drill, rest } = LANGUAGES[language];
  const loaded: Messages[] = [];
  // Laid together they would be found quicker, but that takes longer than a page's few sentences.
  const find: Find = (key) => loaded.find((messages) => Object.hasOwn(messages, key))?.[key];
  let speaker: typeof speakerOf | undefined;
  let failure: unknown;
  const loadDrill = once(async () => {
    failure = undefined;
    try {
      const [files, speak] = await Promise.all([drill(), import('../words/speak.ts')]);
      loaded.push(...files);
      speaker = speak.speakerOf;
    } catch (error) {
      failure = error;
      throw error;
    }
  });
  const loadRest = once(async () => void loaded.push(...(await rest())));
  return {
    language,
    find,
    sayWith(names) {
      let say: Say | undefined;
      return (phrase) => {
        // React waits for what is thrown, and renders the screen again.
        if (!speaker) throw failure ?? loadDrill();
        say ??= speaker(names, language, find);
        return say(phrase);
      };
    },
    loadDrill,
    async loadAll() {
      await Promise.all([loadDrill(), loadRest()]);
    },
  };
}
