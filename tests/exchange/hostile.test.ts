/** Whatever is handed over by whomever: it is taken whole or not at all, nothing throws, and nothing takes for ever. */
import { deflateRawSync, deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crc32, toBase64Url, utf8 } from '../../src/exchange/bytes.ts';
import { type Chain, cutPacket, missingPieces } from '../../src/exchange/chain.ts';
import { MAX_ATTEMPTS } from '../../src/exchange/columns.ts';
import { readChart, writeChart } from '../../src/exchange/csv/chart.ts';
import { readFits, writeFits } from '../../src/exchange/csv/fits.ts';
import { MAX_PROBLEMS, problemPhrase } from '../../src/exchange/csv/records.ts';
import { readSequences, writeSequences } from '../../src/exchange/csv/sequences.ts';
import { readStacks, writeStacks } from '../../src/exchange/csv/stacks.ts';
import { MAX_CELLS, MAX_COLUMNS, MAX_LINES, readTable } from '../../src/exchange/csv/table.ts';
import { deflate, inflate } from '../../src/exchange/deflate.ts';
import { MAX_DEPTH, MAX_TEXT } from '../../src/exchange/json.ts';
import { wordIn } from '../../src/exchange/link.ts';
import { readMessage, sealReport, writeAssignment, writeReport } from '../../src/exchange/message.ts';
import { MAX_PACKET, packText } from '../../src/exchange/packet.ts';
import { MOST_PIXELS, pixelsIn } from '../../src/exchange/picture-size.ts';
import { makeCode, type Pixels, readCode } from '../../src/exchange/qr.ts';
import { type Incoming, readIncoming, readIncomingFile } from '../../src/exchange/read.ts';
import { checkSeal, makeDeviceKey, sealText } from '../../src/exchange/seal.ts';
import { EXCHANGE_TROUBLES } from '../../src/exchange/trouble.ts';
import { takeIn } from '../../src/screens/handing/intake.ts';
import { makeSay } from '../../src/words/words.ts';
import { anAttempt } from '../attempts.ts';
import {
  byteEdits,
  changed,
  changes,
  edited,
  editedBytes,
  edits,
  expectCleanPrototypes,
  runs,
} from '../hostile.ts';
import { aCorrection, aFlag, anAssignment, aReport } from '../reports.ts';
import { shippedDecks } from '../units.ts';

const key = (await makeDeviceKey())!;
const deck = shippedDecks().find(({ id }) => id === 'plover-4')!;
const assignment = anAssignment({
  scope: { kind: 'areas', areas: ['hydraulics'] },
  note: 'Bring gloves. 変速機',
  corrections: [aCorrection()],
});
const report = aReport({
  attempts: [
    anAttempt({ sequence: 1 }),
    anAttempt({ sequence: 2, form: 'one', answer: { form: 'one', pick: '4' }, right: false, slipUps: ['neighbour-range'] }),
    anAttempt({ sequence: 3, form: 'pair', answer: { form: 'pair', pairs: { B1: 'on' } } }),
    anAttempt({ sequence: 4, form: 'order', answer: { form: 'order', order: ['b', 'a'] } }),
  ],
  flags: [aFlag()],
  corrections: ['correction-1'],
}); // biome-ignore format: one attempt a line

/** The messages as values, and as everything they travel as. */
const messages = [
  writeAssignment(assignment, JSON.stringify(deck)),
  writeAssignment(assignment, null),
  writeReport(await sealReport(report, key)),
];
const packets = await Promise.all(messages.map(packText));
const texts = [...messages, ...packets, `see https://shop.example/#/take/${packets[1]} !`];

/** Taken whole or refused by name; true when it was taken. */
async function expectWhole(read: Awaited<ReturnType<typeof readIncoming>>): Promise<boolean> {
  expectCleanPrototypes();
  if (!read.ok) {
    expect(EXCHANGE_TROUBLES).toContain(read.error.code);
    expect(read.error.detail.length).toBeLessThanOrEqual(100);
    return false;
  }
  const { value }: { value: Incoming } = read;
  // What was taken is a whole message: written again, it reads the same.
  if (value.kind === 'assignment')
    expect(await readIncoming(writeAssignment(value.assignment, value.deckText))).toEqual(read);
  if (value.kind === 'report')
    expect(await readIncoming(writeReport(value.sealed))).toMatchObject({ value: { sealed: value.sealed } });
  return true;
}

describe('messages, packets and links', () => {
  test('E6 texts changed anywhere', async () => {
    let [refused, taken] = [0, 0];
    await fc.assert(
      fc.asyncProperty(fc.nat(texts.length - 1), edits, async (which, list) => {
        if (await expectWhole(await readIncoming(edited(texts[which]!, list)))) taken++;
        else refused++;
      }),
      runs(250),
    );
    expect(refused).toBeGreaterThan(100);
    expect(taken).toBeGreaterThan(0);
  });

  test('E6 values exchanged, keys put in, in a packet whose checksum is right', async () => {
    let taken = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.nat(messages.length - 1),
        fc.array(changes, { minLength: 1, maxLength: 5 }),
        async (which, list) => {
          const text = JSON.stringify(changed(JSON.parse(messages[which]!), list));
          if (await expectWhole(await readIncoming(await packText(text)))) taken++;
        },
      ),
      runs(250),
    );
    expect(taken).toBeGreaterThan(0);
  });

  test('E6 columns of a report exchanged', async () => {
    const value = JSON.parse(messages[2]!);
    await fc.assert(
      fc.asyncProperty(fc.array(changes, { minLength: 1, maxLength: 3 }), async (list) => {
        const attempts = changed(value.report.attempts, list);
        const text = JSON.stringify({ ...value, report: { ...value.report, attempts } });
        await expectWhole(await readIncoming(text));
      }),
      runs(250),
    );
  });

  test('E6 any JSON at any field that a message has', async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue(), fc.constantFrom('assignment', 'report'), async (value, kind) => {
        for (const made of [
          { detentMessage: 1, kind, [kind]: value, deck: value, seal: value },
          { ...JSON.parse(messages[kind === 'report' ? 2 : 0]!), deck: value, seal: value },
        ])
          expect(await expectWhole(await readIncoming(JSON.stringify(made)))).toBe(false);
      }),
      runs(100),
    );
  });

  test('E6 bytes of files, of any kind and of messages changed', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string({ unit: 'binary', maxLength: 100 }),
        fc.uint8Array({ maxLength: 200 }),
        fc.nat(texts.length - 1),
        byteEdits,
        async (text, bytes, which, list) => {
          expect(await expectWhole(await readIncoming(text))).toBe(false);
          expect(await expectWhole(await readIncoming(`D1.${text}`))).toBe(false);
          expect(await expectWhole(await readIncomingFile(bytes))).toBe(false);
          await expectWhole(await readIncomingFile(editedBytes(utf8(texts[which]!), list)));
        },
      ),
      runs(80),
    );
  });

  test('E4 compressed bytes changed under a right checksum', async () => {
    const packed = await Promise.all(messages.map((message) => deflate(utf8(message))));
    await fc.assert(
      fc.asyncProperty(fc.nat(packed.length - 1), byteEdits, async (which, list) => {
        const bytes = editedBytes(packed[which]!, list);
        await expectWhole(await readIncoming(`D1.${toBase64Url(bytes)}.${crc32(bytes)}`));
      }),
      runs(150),
    );
  });

  test('E8 seals of any text are broken, and break nothing', async () => {
    const sound = await sealText('text', key);
    await fc.assert(
      fc.asyncProperty(edits, edits, async (one, other) => {
        const seal = { key: edited(sound.key, one), signature: edited(sound.signature, other) };
        const same = seal.key === sound.key && seal.signature === sound.signature;
        expect(await checkSeal('text', seal)).toBe(same ? 'sound' : 'broken');
      }),
      runs(150),
    );
  });
});

/** Pieces of some chains, dealt in any order, as often as they like, some of them changed. */
const noise = Array.from({ length: 900 }, (_, index) => crc32(utf8(`${index}`))).join('');
const chains = await Promise.all(
  ['Ada', 'Bo', 'Cy'].map(async (name) => {
    const text = writeAssignment({ ...assignment, group: name, note: noise.slice(0, 1900) }, null);
    const cut = cutPacket(await packText(text), 300);
    if (!cut.ok) throw new Error('too large');
    return { name, pieces: cut.value };
  }),
);

describe('chains of codes', () => {
  test('E7 out of order, doubled, of other chains, damaged: the chain is read when its last piece is, and never another', async () => {
    let whole = 0;
    const dealt = fc.array(
      fc.oneof(
        { arbitrary: fc.record({ from: fc.constant(0), piece: fc.nat(), list: fc.constant([] as const) }), weight: 30 },
        { arbitrary: fc.record({ from: fc.nat(2), piece: fc.nat(), list: fc.constant([] as const) }), weight: 2 },
        { arbitrary: fc.record({ from: fc.nat(2), piece: fc.nat(), list: edits }), weight: 2 },
      ),
      { minLength: 10, maxLength: 60 },
    ); // biome-ignore format: kinds of pieces
    await fc.assert(
      fc.asyncProperty(dealt, async (pieces) => {
        let chain: Chain | null = null;
        for (const { from, piece, list } of pieces) {
          const { name, pieces: own } = chains[from]!;
          const before: Chain | null = chain;
          const text = edited(own[piece % own.length]!, list);
          const taken = await takeIn(text, chain);
          expectCleanPrototypes();
          if (!taken.ok) {
            expect(EXCHANGE_TROUBLES).toContain(taken.error.code);
            expect(chain).toEqual(before);
            continue;
          }
          chain = taken.value.chain;
          if (taken.value.received?.kind === 'assignment' && list.length === 0) {
            whole++;
            expect(before && missingPieces(before).length).toBe(1);
            expect(taken.value.received.assignment.group).toBe(name);
          }
        }
      }),
      runs(60),
    );
    expect(chains[0]!.pieces.length).toBeGreaterThan(4);
    expect(whole).toBeGreaterThan(0);
  });

  test('E7 pixels of any kind, and of a code changed, are read or not', async () => {
    const { size } = await makeCode('D1.test.00000000');
    const side = size * 2;
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: -1, max: 40 }),
        fc.integer({ min: -1, max: 40 }),
        fc.uint8Array({ minLength: 64, maxLength: 64 }),
        fc.nat(4 * side * side),
        async (width, height, pattern, length) => {
          const fill = (wanted: number) =>
            Uint8ClampedArray.from({ length: Math.max(0, wanted) }, (_, at) => pattern[(at * 7) % 64]!);
          const pictures: Pixels[] = [
            { data: fill(4 * width * height), width, height },
            { data: fill(length), width: side, height: side },
            { data: fill(4 * side * side), width: side, height: side },
            { data: fill(16), width: Number.NaN, height: 1e9 },
          ];
          for (const picture of pictures) {
            const read = await readCode(picture);
            if (!read.ok) expect(['no-code-seen', 'too-large']).toContain(read.error.code);
          }
        },
      ),
      runs(20),
    );
  });
});

/** A PNG of so many pixels, all black: one bit each before it is compressed (PNG 1.2, chunks IHDR and IDAT). */
function blackPng(width: number, height: number): Uint8Array {
  const chunk = (name: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
    const length = Buffer.alloc(4);
    length.writeUInt32BE(data.length);
    return Buffer.concat([length, body, Buffer.from(crc32(body), 'hex')]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 1;
  const rows = deflateSync(Buffer.alloc((1 + Math.ceil(width / 8)) * height));
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Uint8Array.from(
    Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', rows), chunk('IEND', Buffer.alloc(0))]),
  );
}

describe('pictures', () => {
  test('E5 a small file that unpacks into hundreds of megabytes is known by its size', async () => {
    const bomb = blackPng(20_000, 20_000);
    expect(bomb.length).toBeLessThan(100_000);
    expect(await pixelsIn(bomb)).toBe(400_000_000);
    expect(400_000_000).toBeGreaterThan(MOST_PIXELS);
    expect(await pixelsIn(blackPng(30, 20))).toBe(600);
  });

  test('E6 bytes of any kind, and heads of pictures changed, have a size or none', async () => {
    const text = (letters: string) => [...Buffer.from(letters, 'latin1')];
    const heads = [
      [...blackPng(8, 8)],
      [
        0xff, 0xd8, 0xff, 0xe0, 0, 4, 0, 0, 0xff, 0xc0, 0, 17, 8, 0, 16, 0, 16, 3, 1, 0x22, 0, 2, 0x11, 1, 3,
        0x11, 1,
      ],
      [...text('GIF89a'), 16, 0, 16, 0, 0, 0, 0],
      [...text('RIFF'), 40, 0, 0, 0, ...text('WEBPVP8X'), 10, 0, 0, 0, 0, 0, 0, 0, 15, 0, 0, 15, 0, 0],
      [
        0,
        0,
        0,
        24,
        ...text('ftypavif'),
        0,
        0,
        0,
        0,
        ...text('avifmif1'),
        0,
        0,
        0,
        40,
        ...text('meta'),
        ...Array(60).fill(0),
      ],
      [...text('BM'), ...Array(60).fill(1)],
    ].map((bytes) => Uint8Array.from(bytes));
    await fc.assert(
      fc.asyncProperty(fc.nat(heads.length - 1), byteEdits, fc.uint8Array({ maxLength: 80 }), async (which, list, any) => {
        for (const head of [editedBytes(heads[which]!, list), any, Uint8Array.from([...heads[which]!.slice(0, 12), ...any])]) {
          const size = await pixelsIn(head);
          expect(size === null || size > 0).toBe(true);
        }
      }),
      runs(300),
    ); // biome-ignore format: kinds of heads
  });
});

describe('tables', () => {
  const rich = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
  const say = makeSay(null);
  const known = { elements: rich.train.elements.map(({ id }) => id), ranges: ['1', '2'] };
  const readers = [
    { name: 'charts', read: (text: string) => readChart(text, known), text: writeChart(rich) },
    { name: 'stacks', read: (text: string) => readStacks(text, rich.stacks), text: writeStacks(rich.stacks!) },
    { name: 'sequences', read: (text: string) => readSequences(text, rich.sequences), text: writeSequences(rich.sequences!) },
    { name: 'fits', read: (text: string) => readFits(text, rich.fits), text: writeFits(rich.fits!) },
  ]; // biome-ignore format: a table

  test.each(readers)('T3 $name changed anywhere are read, or told what is wrong', ({ read, text }) => {
    let [right, wrong] = [0, 0];
    const expectTold = (given: string) => {
      const result = read(given);
      expectCleanPrototypes();
      if (result.ok) return right++;
      expect(result.error.length).toBeGreaterThan(0);
      expect(result.error.length).toBeLessThanOrEqual(MAX_PROBLEMS);
      for (const problem of result.error.slice(0, 3)) {
        expect(say(problemPhrase(problem))).not.toContain('undefined');
        expect(problem.line).toBeGreaterThan(0);
        expect(problem.column).toBeGreaterThan(0);
      }
      return wrong++;
    };
    expectTold(text);
    expect(right).toBe(1);
    const lines = text.split('\r\n');
    fc.assert(
      fc.property(edits, fc.array(fc.nat(), { maxLength: 6 }), fc.string({ unit: 'binary' }), (list, picked, any) => {
        expectTold(edited(text, list));
        // The header, and lines in any order and number.
        const some = picked.map((at) => lines[1 + (at % (lines.length - 1))]!);
        expectTold(edited([lines[0], ...some].join('\n'), list.slice(0, 1)));
        expectTold([lines[0], any].join('\n'));
      }),
      runs(60),
    ); // biome-ignore format: one line each
    expect(wrong).toBeGreaterThan(10);
  });

  test('T3 as long, as wide and as full as may be, and one more', () => {
    const table = (lines: number, columns: number, cell = 'x') =>
      Array.from({ length: lines }, () => Array(columns).fill(cell).join('\t')).join('\n');
    expect(readTable(table(MAX_LINES, 2)).ok).toBe(true);
    expect(readTable(table(2, MAX_COLUMNS)).ok).toBe(true);
    for (const [lines, columns] of [
      [MAX_LINES + 1, 2],
      [2, MAX_COLUMNS + 1],
      [MAX_CELLS / 400 + 1, 400],
      [200_000, 1],
    ] as const)
      expect(readTable(table(lines, columns))).toMatchObject({ ok: false, error: { code: 'too-large' } });
  });

  test('T3 a table in which everything is wrong is told of some hundred times at most', () => {
    const wide = Array.from({ length: 400 }, (_, index) => `E${index % 7}`).join('\t');
    const wrong = readChart(`r\t${wide}\n${Array.from({ length: 200 }, () => `1\t${wide}`).join('\n')}`);
    expect(!wrong.ok && wrong.error.length).toBe(MAX_PROBLEMS);
    const names = Array.from({ length: 60_000 }, (_, index) => `n${index}`).join(' ');
    const steps = readSequences(`sequence\ttext\tafter\ns\tx\t${names}`);
    expect(!steps.ok && steps.error.length).toBe(MAX_PROBLEMS);
  });
});

describe('what is made to take for ever, or to fill the memory', () => {
  const head = '{"detentMessage":1,"kind":"report","seal":null,"report":{"id":"a","attempts":';
  const many = (one: string, count: number) => `[${`${one},`.repeat(count)}${one}]`;
  const inAssignment = (field: string) =>
    messages[1]!.replace(/"corrections":\[.*\],"madeAt"/, `"corrections":${field},"madeAt"`);
  const correction = `{"id":"c","deck":"d","revision":1,"note":"","at":1,"refs":${many('0', 1999)},"facts":${many('0', 4999)}}`;

  test.each([
    ['a link of dots', `D1.a${'.'.repeat(1_000_000)}x`],
    ['a link of hyphens', `https://x/#/take/D1.${'-'.repeat(1_000_000)}x-`],
    ['many links', 'D1. '.repeat(1_000_000)],
    ['a line break after each letter', `D1.${'a\n'.repeat(1_000_000)}`],
    ['a piece of dots', `D1P.00000000.1.2.${'.'.repeat(1_000_000)}.00000000`],
    ['spaces', ' '.repeat(MAX_TEXT)],
    ['brackets', '['.repeat(MAX_TEXT)],
    ['brackets within texts', '["[\\"[",'.repeat(100_000)],
    ['columns of a million', `${head}{"id":${many('0', 1_000_000)}}}}`],
    ['columns of wrong entries', `${head}${many('{}', 500_000)}}}`],
    ['a hundred corrections of seven thousand wrong entries', inAssignment(many(correction, 100))],
    ['a million empty corrections', inAssignment(many('{}', 1_000_000))],
    ['a thousand thousand keys', `{${Array.from({ length: 300_000 }, (_, index) => `"k${index}":0`).join(',')}}`],
    ['the same key for ever', `{"detentMessage":1${',"kind":"report"'.repeat(300_000)}}`],
  ])('E6 %s is refused', async (_, text) => {
    expect((await readIncoming(text)).ok).toBe(false);
  }); // biome-ignore format: a table

  test('E6 texts beyond the limits are refused unread', async () => {
    for (const text of [`{"a":"${'x'.repeat(MAX_TEXT)}"}`, `D1.${'A'.repeat(MAX_PACKET)}.00000000`])
      expect(await readIncoming(text)).toMatchObject({ error: { code: 'too-large' } });
    const nested = (depth: number) => `${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`;
    expect(await readMessage(nested(MAX_DEPTH))).toMatchObject({ error: { code: 'not-ours' } });
    expect(await readMessage(nested(MAX_DEPTH + 1))).toMatchObject({ error: { code: 'wrong-shape' } });
  });

  test('E6 of a report with everything wrong the first wrong place is told, and no other looked for', async () => {
    const value = JSON.parse(messages[2]!);
    const { attempts } = value.report;
    const wrong = Object.fromEntries(
      Object.entries(attempts as Record<string, unknown[]>).map(([field, list]) => [
        field,
        field === 'words' ? list : Array(MAX_ATTEMPTS).fill(list[0]),
      ]),
    );
    wrong.guessRate = Array(MAX_ATTEMPTS).fill(2);
    const text = JSON.stringify({ ...value, report: { ...value.report, attempts: wrong } });
    expect(await readMessage(text)).toEqual({
      ok: false,
      error: { code: 'wrong-shape', detail: '0.guessRate' },
    });
  });

  test('E5 bombs: no more is unpacked than may be read, however much there is', async () => {
    // A thousandfold: 64 MB of blanks, and a packet of packets.
    const bomb = deflateRawSync(Buffer.alloc(64_000_000, ' '));
    expect(bomb.length).toBeLessThan(100_000);
    let out = 0;
    const own = globalThis.DecompressionStream;
    class Counted extends own {
      override get readable() {
        const count = new TransformStream<Uint8Array, Uint8Array>({
          transform(chunk, controller) {
            out += chunk.length;
            controller.enqueue(chunk);
          },
        });
        return super.readable.pipeThrough(count) as ReturnType<typeof Reflect.get>;
      }
    }
    globalThis.DecompressionStream = Counted;
    try {
      const packet = `D1.${toBase64Url(bomb)}.${crc32(bomb)}`;
      expect(await readIncoming(packet)).toMatchObject({ error: { code: 'too-large' } });
      expect(out).toBeGreaterThan(MAX_TEXT);
      expect(out).toBeLessThan(1.1 * MAX_TEXT);
    } finally {
      globalThis.DecompressionStream = own;
    }
    const within = await packText(`{"a":"${await packText(' '.repeat(MAX_TEXT - 100))}"}`);
    expect(await readIncoming(within)).toMatchObject({ error: { code: 'not-ours' } });
    expect(await inflate(new Uint8Array(deflateRawSync(Buffer.alloc(1000))), 999)).toMatchObject({
      ok: false,
    });
    expect(await inflate(new Uint8Array(deflateRawSync(Buffer.alloc(1000))), 1000)).toMatchObject({
      ok: true,
    });
  });

  test('the word of a text keeps what belongs to it', () => {
    expect(wordIn('read D1.ab-c_.00000000...--. and go')).toBe('D1.ab-c_.00000000');
    expect(wordIn('D1.-.-')).toBe('D1');
  });
});
