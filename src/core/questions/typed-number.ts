/**
 * Reads a number as a person types it on a phone: "3,48", "3.48", "-1.8", "7/2", "1 950". One comma or point
 * is the decimal mark; only where whole numbers are asked is a mark before three last digits taken to group
 * thousands. Returns the exact text for an `Answer`, or null when it is not a number.
 */
import { makeRational, parseRational } from '../rational.ts';

export function readTypedNumber(text: string, decimals: number): string | null {
  let plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/(?<=\d)\s(?=\d{3}(\D|$))/g, '')
    .replace(/^([+-])\s+/, '$1');
  if (decimals === 0) plain = plain.replace(/(?<=^[+-]?\d{1,3})[.,](?=\d{3}$)/, '');
  plain = plain
    .replace(',', '.')
    .replace(/^([+-]?)\.(?=\d)/, '$10.')
    .replace(/\.$/, '');
  const value = parseRational(plain);
  return value && makeRational(value);
}
