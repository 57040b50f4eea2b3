import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../src/core/memory/attempt.ts';
import { backupFile, MAX_BACKUP, readBackup, writeBackup } from '../../src/exchange/backup.ts';
import { utf8 } from '../../src/exchange/bytes.ts';
import { addPiece, type Chain, cutPacket, joinChain, readPiece } from '../../src/exchange/chain.ts';
import { gzip } from '../../src/exchange/deflate.ts';
import { packText } from '../../src/exchange/packet.ts';
import { readIncoming, readIncomingFile, readPacket } from '../../src/exchange/read.ts';
import { anAttempt } from '../attempts.ts';
import { given, refusal } from '../results.ts';

const MADE = 1_795_000_000_000;
const attempts: Attempt[] = Array.from({ length: 40 }, (_, i) =>
  anAttempt({
    sequence: i + 1,
    id: `4b0f6c1e-9f1d-4a55-8d0e-00000000${1000 + i}`,
    deck: i % 3 ? 'kestrel-7' : 'sparrow-4',
    fact: `range:${i % 7}/elements`,
    day: 20_000 + (i >> 3),
    right: i % 4 > 0,
  }),
);
const contents = { attempts, writer: 'Ada', decks: [{ id: 'kestrel-7', text: '{"ö":1}' }] };
const text = writeBackup(contents, MADE);

const inOrder = (log: readonly Attempt[]) => log.toSorted((a, b) => (a.id < b.id ? -1 : 1));
function expectWhole(read: unknown) {
  expect(read).toMatchObject({
    kind: 'backup',
    madeAt: MADE,
    contents: { writer: 'Ada', decks: contents.decks },
  });
  expect(inOrder((read as { contents: { attempts: Attempt[] } }).contents.attempts)).toEqual(
    inOrder(attempts),
  );
}

describe('B5 a backup goes and comes whole', () => {
  test('as a packed file, as the JSON in it, as a packet, as a chain of codes in any order', async () => {
    expectWhole(given(await readIncomingFile(await backupFile(text))));
    expectWhole(given(await readIncomingFile(utf8(text))));
    const packet = await packText(text);
    expectWhole(given(await readIncoming(packet)));
    let chain: Chain | null = null;
    const words = given(cutPacket(packet, 100));
    expect(words.length).toBeGreaterThan(5);
    for (const word of words.toReversed()) chain = given(addPiece(chain, given(readPiece(word))));
    expectWhole(given(await readPacket(given(joinChain(chain!)))));
  });

  test('two hundred answers by themselves are few enough for codes, 100,000 are not', async () => {
    const random = (i: number) => crypto.randomUUID().replace(/^.{8}/, String(10_000_000 + i));
    const log = (count: number) =>
      Array.from({ length: count }, (_, i) => ({
        ...attempts[i % 40]!,
        id: random(i),
        at: MADE + i * 9137,
        sequence: i + 1,
      }));
    const words = given(cutPacket(await packText(writeBackup({ attempts: log(200) }, MADE))));
    expect(words.length).toBeLessThan(25);
    expect(refusal(cutPacket(await packText(writeBackup({ attempts: log(5000) }, MADE))))).toBe('too-large');
  });

  test('more answers about one deck than one set of columns takes come in parts', () => {
    const many = Array.from({ length: 50_001 }, (_, i) => ({
      ...attempts[0]!,
      id: `n${i}`,
      sequence: i + 1,
      at: MADE + i,
    }));
    const wire = JSON.parse(writeBackup({ attempts: many }, MADE)) as {
      answers: { attempts: { id: string[] } }[];
    };
    expect(wire.answers.map(({ attempts: { id } }) => id.length)).toEqual([50_000, 1]);
    const read = given(readBackup(wire));
    expect((read.contents.attempts as Attempt[]).at(-1)).toEqual(many.at(-1));
  });
});

describe('B6 a backup that was damaged or made to harm is refused as a whole', () => {
  test('cut off anywhere', async () => {
    const file = await backupFile(text);
    for (let length = 2; length < file.length; length += 7)
      expect(refusal(await readIncomingFile(file.slice(0, length))), `${length}`).toBe('damaged');
  });

  test('one bit changed anywhere past the head of the file', async () => {
    const file = await backupFile(text);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 10, max: file.length - 1 }), fc.nat(7), async (at, bit) => {
        const changed = file.slice();
        changed[at]! ^= 1 << bit;
        const read = await readIncomingFile(changed);
        // Bits that only fill up the last byte before the eight of length and checksum say nothing: all is there.
        if (read.ok && at === file.length - 9) expectWhole(read.value);
        else expect(refusal(read)).toBe('damaged');
      }),
      { numRuns: 60, examples: Array.from({ length: 8 }, (_, bit) => [file.length - 9, bit] as const) },
    );
  });

  test('something else behind it', async () => {
    const file = await backupFile(text);
    expect(refusal(await readIncomingFile(new Uint8Array([...file, 1, 2, 3])))).toBe('damaged');
  });

  test('a few bytes that unpack into more than is read', async () => {
    const bomb = await gzip(new Uint8Array(MAX_BACKUP + 1));
    expect(bomb.length).toBeLessThan(100_000);
    expect(refusal(await readIncomingFile(bomb))).toBe('too-large');
  });

  const parsed = () => JSON.parse(text) as Record<string, unknown> & { answers: { attempts: object }[] };
  test.each<[string, () => string, string]>([
    ['made by a newer Detent', () => JSON.stringify({ ...parsed(), detentBackup: 2 }), 'newer'],
    ['no format', () => JSON.stringify({ ...parsed(), detentBackup: 'one' }), 'wrong-shape'],
    ['a key too many', () => JSON.stringify({ ...parsed(), more: 1 }), 'wrong-shape'],
    ['a key that reaches for the prototype', () => text.replace('"writer"', '"__proto__":{"admin":true},"writer"'), 'wrong-shape'],
    ['columns of unequal length', () => {
      const { answers, ...rest } = parsed();
      return JSON.stringify({ ...rest, answers: [{ ...answers[0], attempts: { ...answers[0]!.attempts, day: [] } }] });
    }, 'wrong-shape'],
    ['an answer that is none', () => text.replace('"form":"set"', '"form":"sort"'), 'wrong-shape'],
    ['too deep', () => text.replace('"Ada"', `${'['.repeat(60)}${']'.repeat(60)}`), 'wrong-shape'],
  ])('%s', async (_, make, code) => {
    expect(refusal(await readIncomingFile(utf8(make())))).toBe(code);
    expect(refusal(await readIncomingFile(await gzip(utf8(make()))))).toBe(code);
  }); // biome-ignore format: a table reads across
});
