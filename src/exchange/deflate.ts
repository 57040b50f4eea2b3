/**
 * Compression with what every browser has: raw DEFLATE (RFC 1951), and gzip (RFC 1952) for files. Unpacking stops
 * as soon as more comes out than is allowed: a few bytes can be made to unpack into gigabytes.
 */
import { fail, pass, type Result } from '../core/result.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';

async function* chunksOf(stream: ReadableStream<Uint8Array>): AsyncGenerator<Uint8Array> {
  const reader = stream.getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
  } finally {
    // Ends the work behind the stream as well when the rest is not wanted.
    await reader.cancel().catch(() => {});
  }
}

function joined(chunks: readonly Uint8Array[], length: number): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

const through = (bytes: Uint8Array<ArrayBuffer>, by: ReadableWritablePair<Uint8Array, BufferSource>) =>
  new Blob([bytes]).stream().pipeThrough(by);

async function pack(
  bytes: Uint8Array<ArrayBuffer>,
  form: CompressionFormat,
): Promise<Uint8Array<ArrayBuffer>> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of chunksOf(through(bytes, new CompressionStream(form)))) {
    chunks.push(chunk);
    length += chunk.length;
  }
  return joined(chunks, length);
}

async function unpack(
  bytes: Uint8Array<ArrayBuffer>,
  most: number,
  form: CompressionFormat,
): Promise<Result<Uint8Array<ArrayBuffer>, ExchangeTrouble>> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  try {
    for await (const chunk of chunksOf(through(bytes, new DecompressionStream(form)))) {
      length += chunk.length;
      if (length > most) return fail(trouble('too-large'));
      chunks.push(chunk);
    }
  } catch {
    return fail(trouble('damaged'));
  }
  return pass(joined(chunks, length));
}

export const deflate = (bytes: Uint8Array<ArrayBuffer>) => pack(bytes, 'deflate-raw');

/** At most `most` bytes; "too-large" beyond, "damaged" for what is no DEFLATE data or is cut off. */
export const inflate = (bytes: Uint8Array<ArrayBuffer>, most: number) => unpack(bytes, most, 'deflate-raw');

export const gzip = (bytes: Uint8Array<ArrayBuffer>) => pack(bytes, 'gzip');

/** The same; gzip carries length and CRC-32 of what is in it, so any change of it on the way is "damaged". */
export const gunzip = (bytes: Uint8Array<ArrayBuffer>, most: number) => unpack(bytes, most, 'gzip');

export const isGzip = (bytes: Uint8Array): boolean => bytes[0] === 0x1f && bytes[1] === 0x8b;
