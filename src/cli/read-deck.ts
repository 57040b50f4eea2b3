/** Reads deck files from disk. */
import { readFileSync, statSync } from 'node:fs';
import { type Parsed, parseDeck } from '../content/load.ts';
import { Failure } from './failure.ts';

const MOST_BYTES = 64_000_000;

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EACCES: 'forbidden',
  EPERM: 'forbidden',
};

/** The text of a file; a file that cannot be read or is not text fails with what to do. */
export function readText(file: string): string {
  let bytes: Uint8Array;
  try {
    const found = statSync(file);
    if (found.isDirectory()) throw new Failure(2, 'cli.file-folder', { file });
    // a pipe may stand for a file; a device such as /dev/zero never ends
    if (!found.isFile() && !found.isFIFO()) throw new Failure(2, 'cli.file-device', { file });
    if (found.size > MOST_BYTES) throw new Failure(2, 'cli.file-large', { file, size: found.size });
    bytes = readFileSync(file);
  } catch (error) {
    if (error instanceof Failure) throw error;
    const code = (error as NodeJS.ErrnoException).code ?? '';
    throw new Failure(2, `cli.file-${REASONS[code] ?? 'unread'}`, { file, code });
  }
  if (bytes.includes(0)) throw new Failure(2, 'cli.file-binary', { file });
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new Failure(2, 'cli.file-binary', { file });
  }
}

/** The one deck of `solve` and `ask`; its shape must be right, its findings may be anything. */
export function readDeck(file: string): Parsed {
  const parsed = parseDeck(readText(file));
  if (!parsed.ok) {
    const [first] = parsed.error;
    if (first?.rule === 'json')
      throw new Failure(1, 'cli.not-json', {
        file,
        line: first.place.line ?? 1,
        column: first.place.column ?? 1,
      });
    throw new Failure(1, 'cli.not-a-deck', { file, count: parsed.error.length });
  }
  return parsed.value;
}

/** The only file a command takes. */
export function onlyFile(command: string, files: readonly string[]): string {
  const [file, ...more] = files;
  if (file === undefined) throw new Failure(2, 'cli.no-file', { command });
  if (more.length > 0) throw new Failure(2, 'cli.one-file', { command, extra: more[0]! });
  return file;
}
