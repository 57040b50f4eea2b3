/**
 * A message as one word that a link or a code can carry: "D1.<data>.<checksum>", where data is raw DEFLATE in
 * base64url and the checksum is the CRC-32 of the compressed bytes. The number is the packet format.
 */
import { fail, pass, type Result } from '../core/result.ts';
import { crc32, fromBase64Url, fromUtf8, toBase64Url, utf8 } from './bytes.ts';
import { deflate, inflate } from './deflate.ts';
import { MAX_TEXT } from './json.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';

export const PACKET_FORMAT = 1;

/** Letters of the longest packet that is read. */
export const MAX_PACKET = 4_000_000;

export async function packText(text: string): Promise<string> {
  const bytes = await deflate(utf8(text));
  return `D${PACKET_FORMAT}.${toBase64Url(bytes)}.${crc32(bytes)}`;
}

export async function unpackText(packet: string): Promise<Result<string, ExchangeTrouble>> {
  if (packet.length > MAX_PACKET) return fail(trouble('too-large'));
  const match = /^D(\d{1,4})\.(.*)$/.exec(packet);
  if (!match) return fail(trouble('not-ours'));
  if (Number(match[1]) > PACKET_FORMAT) return fail(trouble('newer'));
  const [data, sum, ...more] = match[2]!.split('.');
  const bytes = fromBase64Url(data ?? '');
  if (!bytes || sum === undefined || more.length > 0 || crc32(bytes) !== sum) return fail(trouble('damaged'));
  const unpacked = await inflate(bytes, MAX_TEXT);
  if (!unpacked.ok) return unpacked;
  const text = fromUtf8(unpacked.value);
  return text === null ? fail(trouble('damaged')) : pass(text);
}
