/**
 * What earlier versions handed out, made once by the program of its time and never changed: it reads the same today.
 * A new format adds a sample; the old ones stay.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadDeck } from '../../src/content/index.ts';
import { BACKUP_FORMAT } from '../../src/exchange/backup.ts';
import { addPiece, type Chain, joinChain, readPiece } from '../../src/exchange/chain.ts';
import { FORMAT } from '../../src/exchange/message.ts';
import { readIncoming, readIncomingFile, readPacket } from '../../src/exchange/read.ts';
import { readContents } from '../../src/storage/backup.ts';
import { given } from '../results.ts';

const read = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');
const json = (path: string) => JSON.parse(read(path));

describe('S7 messages of format 1', () => {
  const { assignment, report } = json('./frozen/format-1.json');

  test('an assignment, as a file and as a link, with its deck', async () => {
    for (const text of [assignment.text, assignment.link]) {
      const { kind, ...got } = given(await readIncoming(text)) as {
        kind: string;
        assignment: object;
        deckText: string;
      };
      expect(kind).toBe('assignment');
      expect(got.assignment).toMatchObject(assignment.values);
      expect(JSON.parse(got.deckText)).toEqual({ detentDeck: 1, id: 'kestrel-7' });
    }
  });

  test('a report with every form of answer, as a file and as a chain of codes, its seal still whole', async () => {
    let chain: Chain | null = null;
    for (const code of report.codes as string[]) chain = given(addPiece(chain, given(readPiece(code))));
    const both = [await readIncoming(report.text), await readPacket(given(joinChain(chain!)))];
    for (const got of both)
      expect(given(got)).toMatchObject({ kind: 'report', proof: 'sound', sealed: { report: report.values } });
  });

  test('a backup file', async () => {
    const { madeAt, contents, file } = json('./frozen/backup-1.json');
    const got = given(await readIncomingFile(new Uint8Array(Buffer.from(file, 'base64'))));
    if (got.kind !== 'backup') throw new Error(got.kind);
    expect(got.madeAt).toBe(madeAt);
    // Bench notes came later: a backup from before has none.
    expect(readContents(got.contents)).toEqual({ ok: true, value: { notes: [], ...contents } });
  });

  test('no format is without a sample', () => {
    expect([FORMAT, BACKUP_FORMAT]).toEqual([1, 1]);
  });
});

describe('S7 decks of format 1', () => {
  const folder = new URL('../content/frozen/', import.meta.url);
  test.each(readdirSync(folder))('%s passes every check', (name) => {
    const loaded = loadDeck(readFileSync(new URL(name, folder), 'utf8'));
    expect(loaded.ok).toBe(true);
  });
});
