import { createPublicKey, createVerify } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import type { Assignment } from '../../src/core/assign/assignment.ts';
import { makeReport, type Report } from '../../src/core/assign/report.ts';
import { fromBase64Url } from '../../src/exchange/bytes.ts';
import { PIECE_LENGTH } from '../../src/exchange/chain.ts';
import { canonical } from '../../src/exchange/json.ts';
import {
  type Received,
  readMessage,
  readReport,
  sealReport,
  writeAssignment,
  writeReport,
} from '../../src/exchange/message.ts';
import { packText } from '../../src/exchange/packet.ts';
import { readIncoming, readIncomingFile } from '../../src/exchange/read.ts';
import { checkSeal, fingerprint, makeDeviceKey, publicKeyText, sealText } from '../../src/exchange/seal.ts';
import { EXCHANGE_TROUBLES, trouble, troublePhrase } from '../../src/exchange/trouble.ts';
import { makeSay } from '../../src/words/words.ts';
import { anAttempt } from '../attempts.ts';
import { aCorrection, aFlag, anAssignment, aReport } from '../reports.ts';
import { shippedDecks } from '../units.ts';

const must = <T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
type Kind<K extends Received['kind']> = Extract<Received, { kind: K }>;
const deckText = JSON.stringify(shippedDecks()[0]);
const key = (await makeDeviceKey())!;

/** One of everything an assignment and a report can hold. */
const full: Assignment = anAssignment({
  issue: 3,
  scope: { kind: 'areas', areas: ['hydraulics', 'measuring'] },
  counting: { hydraulics: 'double', measuring: 'half' },
  note: 'Bring gloves. 変速機 ✓',
  corrections: [aCorrection()],
});
const report: Report = aReport({
  attempts: [
    anAttempt({ sequence: 1 }),
    anAttempt({ sequence: 2, form: 'one', answer: { form: 'one', pick: '4' }, right: false, slipUps: ['neighbour-range'], missed: ['range:1/elements'] }),
    anAttempt({ sequence: 3, form: 'order', answer: { form: 'order', order: ['b', 'a'] }, facts: ['x', 'y', 'x:z'] }),
    anAttempt({ sequence: 4, form: 'number', answer: { form: 'number', value: '87/25' }, guessRate: 0.0625, seconds: 12.345, interrupted: true }),
    anAttempt({ sequence: 5, form: 'pair', answer: { form: 'pair', pairs: { B1: 'on', constructor: 'off' } }, day: 19_990, zone: 'Europe/Berlin' }),
    anAttempt({ sequence: 6, form: 'fill', answer: { form: 'fill', cells: { '1/B1': 'x' } }, device: 'tablet' }),
    anAttempt({ sequence: 7, form: 'place', answer: { form: 'place', spot: 'T5' }, seed: -2_147_483_648 }),
  ],
  flags: [aFlag()],
  corrections: ['correction-1'],
}); // biome-ignore format: one attempt a line

describe('assignments', () => {
  test('E2 go through file, packet and link as they were, with and without the deck', async () => {
    for (const deck of [deckText, null]) {
      const text = writeAssignment(full, deck);
      const packet = await packText(text);
      for (const form of [text, `\uFEFF${text}`, packet, `see https://shop.example/#/take/${packet} !`])
        expect(must(await readIncoming(form))).toEqual({
          kind: 'assignment',
          assignment: full,
          deckText: deck,
        });
      const file = new TextEncoder().encode(text);
      expect(must(await readIncomingFile(file))).toMatchObject({ kind: 'assignment' });
    }
  });

  test.each([
    ['issue 0', { issue: 0 }],
    ['a date that is none', { classAt: { date: '2026-02-30', time: '08:00', zone: 'Europe/Berlin' } }],
    ['a zone that is none', { classAt: { date: '2026-02-28', time: '08:00', zone: 'Europe/Nowhere' } }],
    ['a day of 3000 minutes', { minutes: 3000 }],
    ['a threshold above all', { threshold: { share: 1.2, cautioned: true } }],
    ['a scope of nothing', { scope: { kind: 'facts', facts: [] } }],
    ['an area nobody knows', { scope: { kind: 'areas', areas: ['cooking'] } }],
    ['an unknown key', { colour: 'red' }],
    ['a note as long as a book', { note: 'x'.repeat(2001) }],
    ['a number that is none', { madeAt: null }],
  ])('E6 %s is refused whole, with the place', async (_, changes) => {
    const read = await readMessage(writeAssignment({ ...full, ...changes } as Assignment, null));
    expect(read).toMatchObject({ ok: false, error: { code: 'wrong-shape' } });
    if (!read.ok) expect(read.error.detail).toMatch(/^assignment/);
  });
});

describe('what counts more or less', () => {
  const withCounting = (counting: unknown) => {
    const { counting: _, ...others } = full;
    const assignment = counting === undefined ? others : { ...others, counting };
    return JSON.stringify({ detentMessage: 1, kind: 'assignment', assignment, deck: null });
  };

  test('E2 an assignment from before there was such a field is read as it was', async () => {
    const read = must(await readMessage(withCounting(undefined)));
    expect(read.kind === 'assignment' && 'counting' in read.assignment).toBe(false);
    expect(read).toMatchObject({ kind: 'assignment', assignment: { issue: 3 } });
  });

  test('E2 other words, numbers and areas are refused', async () => {
    for (const counting of [{ hydraulics: 'triple' }, { hydraulics: 1000 }, { cooking: 'half' }, [], null])
      expect((await readMessage(withCounting(counting))).ok).toBe(false);
  });
});

describe('reports', () => {
  test('E2 go through as they were, sealed or not, every form of answer', async () => {
    const sealed = await sealReport(report, key);
    const read = must(await readMessage(writeReport(sealed))) as Kind<'report'>;
    expect(read.sealed).toEqual(sealed);
    expect(read).toMatchObject({ kind: 'report', proof: 'sound', count: 7 });
    const bare = must(await readMessage(writeReport({ report, seal: null }))) as Kind<'report'>;
    expect(bare).toMatchObject({ proof: 'none', sealed: { report, seal: null } });
  });

  test('E8 a stored report is read and its seal checked again', async () => {
    const sealed = await sealReport(report, key);
    const { text } = must(await readMessage(writeReport(sealed))) as Kind<'report'>;
    expect(must(await readReport(text, sealed.seal))).toMatchObject({ proof: 'sound', sealed });
    expect(await readReport(text.replace('Ada', 'Bo'), sealed.seal)).toMatchObject({
      value: { proof: 'broken' },
    });
  });

  test('E8 spaces and the order of keys do not break a seal; any other change does', async () => {
    const sealed = await sealReport(report, key);
    const value = JSON.parse(writeReport(sealed));
    const turned = { seal: value.seal, report: Object.fromEntries(Object.entries(value.report).reverse()), kind: 'report', detentMessage: 1 };
    expect(must(await readMessage(JSON.stringify(turned, null, 2)))).toMatchObject({ proof: 'sound' });
    const changes: ((wire: typeof value.report) => void)[] = [
      (wire) => (wire.learner.name = 'Bo'),
      (wire) => (wire.attempts.right[1] = 1),
      (wire) => (wire.attempts.day[0] += 1),
      (wire) => (wire.madeAt += 1),
      (wire) => wire.flags.pop(),
    ];
    for (const change of changes) {
      const copy = structuredClone(value);
      change(copy.report);
      expect(must(await readMessage(JSON.stringify(copy)))).toMatchObject({ proof: 'broken' });
    }
  }); // biome-ignore format: a message by hand

  test('E6 columns of different lengths, or words that are not there, are refused', async () => {
    const value = JSON.parse(writeReport({ report, seal: null }));
    for (const change of [
      (wire: typeof value.report.attempts) => wire.day.pop(),
      (wire: typeof value.report.attempts) => (wire.family[0] = 9999),
      (wire: typeof value.report.attempts) => (wire.answer[0] = { form: 'set' }),
      (wire: typeof value.report.attempts) => (wire.answer[0] = null),
      (wire: typeof value.report.attempts) => (wire.at[0] = -1),
    ]) {
      const copy = structuredClone(value);
      change(copy.report.attempts);
      expect(await readMessage(JSON.stringify(copy))).toMatchObject({ error: { code: 'wrong-shape' } });
    }
  });

  test('E9 a slip-up of a newer Detent is left out, the attempt counts', async () => {
    const newer = { ...anAttempt({ right: false }), slipUps: ['neighbour-range', 'not-yet-known'] } as never;
    const text = writeReport({ report: aReport({ attempts: [newer] }), seal: null });
    const read = must(await readMessage(text)) as Kind<'report'>;
    expect(read.sealed.report.attempts[0]!.slipUps).toEqual(['neighbour-range']);
  });

  test('two hundred answers fit fourteen codes or one link, two thousand a packet of 80 kB', async () => {
    const many = (count: number) =>
      makeReport({
        id: 'r', assignment: anAssignment(), facts: new Set(['f']), learner: { id: 'l', name: 'Ada' }, flags: [], corrections: [], madeAt: 5,
        attempts: Array.from({ length: count }, (_, index) =>
          anAttempt({ id: crypto.randomUUID(), sequence: index + 1, fact: 'f', seed: index * 7919, seconds: 3 + (index % 17), right: index % 5 > 0 }),
        ),
      }); // biome-ignore format: short fields
    const size = async (count: number) =>
      (await packText(writeReport(await sealReport(many(count), key)))).length;
    expect(await size(200)).toBeLessThan(14 * PIECE_LENGTH);
    expect(await size(2000)).toBeLessThan(80_000);
  });
});

describe('seals', () => {
  test('E8 another program checks the signature from the public key and the canonical text', async () => {
    const { report: own, seal } = await sealReport(report, key);
    const text = canonical(JSON.parse(writeReport({ report: own, seal })).report);
    const point = Buffer.from(fromBase64Url(seal!.key)!);
    const jwk = { kty: 'EC', crv: 'P-256', x: point.subarray(0, 32).toString('base64url'), y: point.subarray(32).toString('base64url') };
    const verify = (said: string) =>
      createVerify('sha256').update(said).verify(
        { key: createPublicKey({ key: jwk, format: 'jwk' }), dsaEncoding: 'ieee-p1363' },
        Buffer.from(seal!.signature, 'base64url'),
      );
    expect([verify(text), verify(`${text} `)]).toEqual([true, false]);
  }); // biome-ignore format: calls of another library

  test('E8 the private half cannot be taken out', async () => {
    expect(key.privateKey.extractable).toBe(false);
    await expect(crypto.subtle.exportKey('jwk', key.privateKey)).rejects.toThrow();
    await expect(crypto.subtle.exportKey('pkcs8', key.privateKey)).rejects.toThrow();
  });

  test('E8 another device’s seal does not fit, and keys that are none break nothing', async () => {
    const other = (await makeDeviceKey())!;
    const seal = await sealText('text', key);
    expect(await checkSeal('text', seal)).toBe('sound');
    expect(await checkSeal('text', { ...seal, key: await publicKeyText(other) })).toBe('broken');
    for (const wrong of ['', 'A', 'A'.repeat(86), '!'.repeat(86)]) {
      expect(await checkSeal('text', { ...seal, key: wrong })).toBe('broken');
      expect(await checkSeal('text', { ...seal, signature: wrong })).toBe('broken');
    }
  });

  test('E8 a key’s fingerprint can be read out, and differs from another’s', async () => {
    const [one, two] = [await publicKeyText(key), await publicKeyText((await makeDeviceKey())!)];
    expect(await fingerprint(one)).toMatch(/^[0-9A-F]{4} [0-9A-F]{4}$/);
    expect(await fingerprint(one)).not.toBe(await fingerprint(two));
  });
});

describe('what is no message', () => {
  test.each([
    ['', 'empty'],
    ['  \n ', 'empty'],
    ['hello there', 'not-ours'],
    ['{}', 'not-ours'],
    ['[]', 'not-ours'],
    ['{"a":', 'damaged'],
    ['{"detentMessage":2,"kind":"assignment","assignment":{}}', 'newer'],
    ['{"detentMessage":1,"kind":"poem"}', 'wrong-shape'],
    ['{"detentMessage":1,"kind":"report"}', 'wrong-shape'],
    ['{"detentMessage":1,"kind":"report","__proto__":{}}', 'wrong-shape'],
    ['D9.abc.00000000', 'newer'],
    ['D9P.abc.00000000', 'newer'],
    ['https://shop.example/#/take/D1.abc.00000000', 'damaged'],
  ])('E3 "%s" is refused as %s', async (text, code) => {
    expect(await readIncoming(text)).toMatchObject({ ok: false, error: { code } });
  });

  test('a deck file is known as one, and left to whoever checks decks', async () => {
    expect(must(await readIncoming(deckText))).toEqual({ kind: 'deck', deckText });
  });

  test('a link broken over lines by a mail program is read', async () => {
    const link = `https://shop.example/#/take/${await packText(writeAssignment(full, null))}`;
    const broken = link.match(/.{1,60}/g)!.join('\r\n');
    expect(must(await readIncoming(broken))).toMatchObject({ kind: 'assignment', assignment: full });
  });

  test('every trouble has a sentence that says what to do or what is safe', () => {
    const say = makeSay(null);
    for (const code of EXCHANGE_TROUBLES)
      expect(say(troublePhrase(trouble(code, '3'))).length).toBeGreaterThan(20);
  });
});
