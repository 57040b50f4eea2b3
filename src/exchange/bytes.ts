/** Bytes as text: UTF-8, base64url (RFC 4648, without padding) and the CRC-32 that goes with each piece. */

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES = new Map([...ALPHABET].map((letter, value) => [letter, value]));

export const utf8 = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

/** Null for what is no UTF-8. */
export function fromUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes);
  } catch {
    return null;
  }
}

export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const bits = (bytes[at]! << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    const letters = Math.min(4, bytes.length - at + 1);
    for (let letter = 0; letter < letters; letter++) text += ALPHABET[(bits >> (18 - 6 * letter)) & 63];
  }
  return text;
}

/** Null for any letter that is not base64url, and for a length or last letter no encoder makes. */
export function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | null {
  const rest = text.length % 4;
  if (rest === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let [bits, held, at] = [0, 0, 0];
  for (const letter of text) {
    const value = VALUES.get(letter);
    if (value === undefined) return null;
    bits = ((bits << 6) | value) & 0xffff;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes[at++] = (bits >> held) & 255;
  }
  return (bits & ((1 << held) - 1)) === 0 ? bytes : null;
}

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  return crc;
});

/** CRC-32 as zip and PNG use it, as eight hexadecimal digits: crc32(utf8('123456789')) → 'cbf43926'. */
export function crc32(bytes: Uint8Array): string {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = TABLE[(crc ^ byte) & 255]! ^ (crc >>> 8);
  return ((crc ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}
