/**
 * The one door for everything that comes in: the text of a file, a link, a pasted message, a scanned code. It says
 * what came, or why nothing was taken; nothing is ever taken in part.
 */
import { fail, pass, type Result } from '../core/result.ts';
import { MAX_BACKUP } from './backup.ts';
import { fromUtf8 } from './bytes.ts';
import { type Piece, readPiece } from './chain.ts';
import { gunzip, isGzip } from './deflate.ts';
import { MAX_TEXT } from './json.ts';
import { wordAcrossLines, wordIn } from './link.ts';
import { type Received, readMessage } from './message.ts';
import { unpackText } from './packet.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';

export type Incoming = Received | { readonly kind: 'piece'; readonly piece: Piece };

async function readWord(word: string): Promise<Result<Incoming, ExchangeTrouble>> {
  if (/^D\d+P\./.test(word)) {
    const piece = readPiece(word);
    return piece.ok ? pass({ kind: 'piece', piece: piece.value }) : piece;
  }
  const text = await unpackText(word);
  return text.ok ? readMessage(text.value) : text;
}

/** What a text holds: a message file, a deck file, a link, a packet, or one piece of a chain. */
export async function readIncoming(text: string): Promise<Result<Incoming, ExchangeTrouble>> {
  if (text.length > MAX_TEXT) return fail(trouble('too-large'));
  if (text.trim() === '') return fail(trouble('empty'));
  if (/^\uFEFF?\s*[{[]/.test(text)) return readMessage(text);
  const word = wordIn(text);
  if (word === null) return fail(trouble('not-ours'));
  const read = await readWord(word);
  if (read.ok || read.error.code !== 'damaged') return read;
  const whole = wordAcrossLines(text);
  if (whole === null || whole === word) return read;
  const again = await readWord(whole);
  return again.ok ? again : read;
}

/** A backup file. It may be longer than other messages. */
async function readPacked(bytes: Uint8Array<ArrayBuffer>): Promise<Result<Incoming, ExchangeTrouble>> {
  const unpacked = await gunzip(bytes, MAX_BACKUP);
  if (!unpacked.ok) return unpacked;
  const text = fromUtf8(unpacked.value);
  return text === null ? fail(trouble('damaged')) : readMessage(text, MAX_BACKUP);
}

/** The same for the bytes of a file. */
export async function readIncomingFile(
  bytes: Uint8Array<ArrayBuffer>,
): Promise<Result<Incoming, ExchangeTrouble>> {
  if (bytes.length > MAX_TEXT) return fail(trouble('too-large'));
  if (isGzip(bytes)) return readPacked(bytes);
  const text = fromUtf8(bytes);
  return text === null ? fail(trouble('not-ours')) : readIncoming(text);
}

/** A message from a packet that was put together from its pieces. */
export async function readPacket(packet: string): Promise<Result<Received, ExchangeTrouble>> {
  const text = await unpackText(packet);
  return text.ok ? readMessage(text.value) : text;
}
