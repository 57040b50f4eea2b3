/**
 * Links: "https://…/#/take/D1.…". The message stands behind the "#", which browsers send to no server. A piece of
 * a chain can be a link too, so that a phone's own camera opens it.
 */
import { fail, pass, type Result } from '../core/result.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';

/** Letters of the longest link that is offered. Browsers open longer ones; what carries them often does not. */
export const MAX_LINK = 32_000;
/** Up to here a link arrives whole nearly everywhere; longer ones deserve a word of warning. */
export const SURE_LINK = 2000;

const ROUTE = '#/take/';

/** `page` is the address the app is at; what stands behind its "#" is dropped. */
export const linkTo = (page: string, word: string): string => `${page.replace(/#.*$/s, '')}${ROUTE}${word}`;

/** The link, or "too-large" when it would be longer than links that arrive whole. */
export function makeLink(page: string, packet: string): Result<string, ExchangeTrouble> {
  const link = linkTo(page, packet);
  return link.length > MAX_LINK ? fail(trouble('too-large', `${link.length}`)) : pass(link);
}

const WORD = /(?:^|[#/?=\s])(D\d{1,4}P?\.[\w.-]+)/;

/**
 * The packet or piece in a text that was pasted, scanned or opened: a link, the word by itself, or either among
 * other words. Null when there is none.
 */
export function wordIn(text: string): string | null {
  const found = WORD.exec(text)?.[1];
  if (found === undefined) return null;
  // Punctuation of the sentence around it. By hand: an expression for it takes the square of the time on many dots.
  let end = found.length;
  while (found[end - 1] === '.' || found[end - 1] === '-') end--;
  return found.slice(0, end);
}

/** The same for a link that a mail program broke over several lines. */
export const wordAcrossLines = (text: string): string | null => wordIn(text.replace(/\s+/g, ''));
