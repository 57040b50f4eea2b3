/**
 * JSON from strangers. Size and depth are looked at before parsing, and keys that reach for an object's prototype
 * are refused. `canonical` writes equal values as equal texts, which is what gets signed (after RFC 8785; numbers
 * as JSON.stringify writes them).
 */
import { fail, pass, type Result } from '../core/result.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';

/** Characters of the largest text that is read. A report of 2,000 answers has some 300,000. */
export const MAX_TEXT = 8_000_000;
export const MAX_DEPTH = 24;

function isTooDeep(text: string): boolean {
  let [depth, inText] = [0, false];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (inText) {
      if (code === 0x5c) at++;
      else if (code === 0x22) inText = false;
    } else if (code === 0x22) inText = true;
    else if (code === 0x7b || code === 0x5b) {
      if (++depth > MAX_DEPTH) return true;
    } else if (code === 0x7d || code === 0x5d) depth--;
  }
  return false;
}

/** `most`: characters at most. */
export function readJson(text: string, most = MAX_TEXT): Result<unknown, ExchangeTrouble> {
  const bare = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (bare.trim() === '') return fail(trouble('empty'));
  if (bare.length > most) return fail(trouble('too-large'));
  if (isTooDeep(bare)) return fail(trouble('wrong-shape'));
  let hostile = false;
  try {
    const value: unknown = JSON.parse(bare, (key, entry: unknown) => {
      if (key === '__proto__') hostile = true;
      return entry;
    });
    return hostile ? fail(trouble('wrong-shape', '__proto__')) : pass(value);
  } catch {
    return fail(trouble('damaged'));
  }
}

/** JSON with sorted keys and no spaces. `undefined` in an object is left out. */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((entry) => canonical(entry ?? null)).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value)
    .filter(([, entry]) => entry !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map(([key, entry]) => `${JSON.stringify(key)}:${canonical(entry)}`);
  return `{${fields.join(',')}}`;
}
