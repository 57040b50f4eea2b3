/** What can be wrong with something handed over, as values; src/words/en/exchange.ts has the sentence for each. */
import { type Phrase, say } from '../core/questions/phrase.ts';

export const EXCHANGE_TROUBLES = [
  'empty',
  'not-ours',
  'damaged',
  'too-large',
  'newer',
  'wrong-shape',
  'part-of-another',
  'parts-missing',
  'no-code-seen',
] as const;
/**
 * empty: nothing there. not-ours: no file, link or code of Detent. damaged: cut off or changed on the way.
 * too-large: beyond what is read. newer: made by a newer Detent. wrong-shape: readable, but not what it says it is.
 * part-of-another: a code of another chain. parts-missing: the chain is not complete. no-code-seen: no QR code found.
 */
export type ExchangeTroubleCode = (typeof EXCHANGE_TROUBLES)[number];

export interface ExchangeTrouble {
  readonly code: ExchangeTroubleCode;
  /** Where in the file, or which parts are missing; empty where there is nothing to say. */
  readonly detail: string;
}

export const trouble = (code: ExchangeTroubleCode, detail = ''): ExchangeTrouble => ({ code, detail });

/** The trouble as a sentence; a wrong shape is told with the place where it was found. */
export const troublePhrase = ({ code, detail }: ExchangeTrouble): Phrase =>
  say(code === 'wrong-shape' && detail !== '' ? 'exchange.wrong-shape.at' : `exchange.${code}`, { detail });
