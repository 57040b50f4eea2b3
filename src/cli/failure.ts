/** What stops a command: one line for stderr that names the remedy, and the exit code. */
import { type Phrase, say } from '../core/questions/phrase.ts';

/** 1: the deck is at fault, or there is nothing to ask. 2: the command or the file could not be used. */
export class Failure extends Error {
  readonly phrase: Phrase;
  readonly code: 1 | 2;

  constructor(code: 1 | 2, key: string, values?: Phrase['values']) {
    super(key);
    this.phrase = say(key, values);
    this.code = code;
  }
}
