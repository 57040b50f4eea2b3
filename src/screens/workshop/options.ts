/** What a field offers to pick from. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import type { Option } from './fields.tsx';

/** Each of these in the words that the key has for it: wordedOptions(say, ENDS, 'workshop.end') says "workshop.end.front". */
export const wordedOptions = (say: Say, values: readonly string[], key: string): Option[] =>
  values.map((value) => ({ value, label: say(phrase(`${key}.${value}`)) }));
