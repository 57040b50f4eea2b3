/** A speaker that notes what it says of one question, so that the question can be kept with its sentences. */
import { useMemo } from 'react';
import type { Question } from '../../core/questions/question.ts';
import type { Say } from '../../words/words.ts';

export interface Noted {
  readonly say: Say;
  /** Sentences by their phrases as JSON. */
  readonly said: Readonly<Record<string, string>>;
}

export function useNoted(say: Say, question: Question): Noted {
  // biome-ignore lint/correctness/useExhaustiveDependencies: another question is noted anew
  return useMemo(() => {
    const said: Record<string, string> = {};
    return {
      said,
      say: (phrase) => {
        const key = JSON.stringify(phrase);
        said[key] ??= say(phrase);
        return said[key];
      },
    };
  }, [say, question]);
}
