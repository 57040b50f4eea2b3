/** What strangers hand over is stored whole or not at all: the database is compared before and after. */
import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { cutPacket } from '../../src/exchange/chain.ts';
import { makeLink } from '../../src/exchange/link.ts';
import { sealReport, writeAssignment, writeReport } from '../../src/exchange/message.ts';
import { packText } from '../../src/exchange/packet.ts';
import { makeDeviceKey } from '../../src/exchange/seal.ts';
import { collectReport } from '../../src/screens/group/collect.ts';
import { takeIn } from '../../src/screens/handing/intake.ts';
import type { Services } from '../../src/screens/services.ts';
import { offerOf, takeOffer } from '../../src/screens/take/taking.ts';
import { openStore } from '../../src/storage/store.ts';
import { anAttempt } from '../attempts.ts';
import { changed, changes, edited, edits, expectCleanPrototypes, runs } from '../hostile.ts';
import { aCorrection, aFlag, anAssignment, aReport } from '../reports.ts';
import { shippedDecks } from '../units.ts';

const NAME = 'hostile';
const deck = shippedDecks().find(({ id }) => id === 'plover-4')!;
const deckText = JSON.stringify(deck);
const here = { id: deck.id, revision: deck.revision };

const made = anAssignment({ deck: here });
const handed = anAssignment({ id: 'handed', deck: here, corrections: [aCorrection({ deck: deck.id })] });
const report = aReport({
  assignment: made.id,
  deck: deck.id,
  attempts: [1, 2].map((sequence) => anAttempt({ sequence, deck: deck.id })),
  flags: [aFlag({ deck: deck.id }), aFlag({ deck: deck.id, id: 'flag-2' })],
});
const sealed = await sealReport(report, await makeDeviceKey());
const messages = [
  writeAssignment(handed, deckText),
  writeAssignment({ ...handed, id: 'without' }, null),
  writeReport(sealed),
  writeReport({ report: { ...report, id: 'bare' }, seal: null }),
  deckText,
];

/** The services of a device that made an assignment and has the deck. */
async function device(): Promise<Services> {
  const store = openStore(NAME);
  await store.saveDeck({ ...here, text: deckText, loadedAt: 1 });
  await store.chooseDeck(deck.id);
  const { id, issue, madeAt } = made;
  const text = writeAssignment(made, null);
  await store.classroom.saveAssignment({ id, issue, madeAt, deck: deck.id, role: 'made', text, roster: ['Ada'], savedAt: 1 }); // biome-ignore format: a row
  const at = made.madeAt + 1000;
  // Nothing else of a device is reached by what is tested here.
  return {
    store,
    now: () => ({ at, zone: 'UTC', day: Math.floor(at / 86_400_000) }),
    unitOf: (own: string) => makeUnit(JSON.parse(own)),
  } as Services;
}

/** Every row of every table, as text. */
async function stored(): Promise<string> {
  const db = await new Dexie(NAME).open();
  const tables = await Promise.all(db.tables.map(async (table) => [table.name, await table.toArray()]));
  db.close();
  return JSON.stringify(tables);
}

/** Takes in what is given, the way the screens do; whatever is refused has left nothing behind. */
async function handIn(services: Services, given: string): Promise<string> {
  const before = await stored();
  const unchanged = async (why: string) => {
    expect(await stored()).toBe(before);
    return why;
  };
  const taken = await takeIn(given, null);
  expectCleanPrototypes();
  if (!taken.ok) return unchanged(taken.error.code);
  const { received } = taken.value;
  if (received?.kind === 'assignment') {
    const offer = await offerOf(services, received);
    await unchanged('an offer alone');
    if (!offer.ok) return 'not taken';
    const kept = await takeOffer(services, offer.value);
    expect(kept).toMatchObject({ ok: true });
    const all = await services.store.classroom.assignments();
    expect(all.ok && all.value.some(({ id }) => id === received.assignment.id)).toBe(true);
    return 'assignment';
  }
  if (received?.kind !== 'report') return unchanged(received?.kind ?? 'piece');
  const collected = await collectReport(services, received);
  if (!collected.ok) throw new Error(`${collected.error.code} ${collected.error.detail}`);
  if (collected.value.kind !== 'kept') return unchanged(collected.value.kind);
  const after = await stored();
  for (const { id } of received.sealed.report.flags) expect(after).toContain(JSON.stringify(id));
  return 'kept';
}

test('messages changed at random are stored whole, or nothing of them is', async () => {
  const services = await device();
  const whole = [];
  for (const message of messages) whole.push(await handIn(services, message));
  expect(whole).toEqual(['assignment', 'assignment', 'kept', 'kept', 'deck']);
  const which = fc.nat(messages.length - 1);
  await fc.assert(
    fc.asyncProperty(which, fc.array(changes, { maxLength: 3 }), edits, async (at, list, letters) => {
      const value = changed(JSON.parse(messages[at]!), list);
      await handIn(services, JSON.stringify(value));
      await handIn(services, edited(messages[at]!, letters));
    }),
    runs(20),
  );
}, 600_000);

test('a report changed after it was sealed, and one for another class, leave nothing', async () => {
  const services = await device();
  const { seal: _, ...unsealed } = JSON.parse(messages[2]!);
  const other = { ...report, assignment: 'elsewhere' };
  const forged = messages[2]!.replace('"Ada"', '"Bo"');
  expect(await handIn(services, forged)).toBe('broken');
  expect(await handIn(services, JSON.stringify(unsealed))).toBe('wrong-shape');
  expect(await handIn(services, writeReport({ report: other, seal: null }))).toBe('stranger');
});

test('a part of a chain, and links of any kind, leave nothing', async () => {
  const services = await device();
  const packet = await packText(messages[0]!);
  const pieces = cutPacket(packet);
  if (!pieces.ok) throw new Error('too large');
  for (const piece of pieces.value) expect(await handIn(services, piece)).toBe('piece');
  const link = makeLink('https://shop.example/', await packText(messages[1]!));
  if (!link.ok) throw new Error('too large');
  await fc.assert(
    fc.asyncProperty(edits, async (letters) => {
      const what = await handIn(services, edited(link.value, letters));
      expect(['assignment', 'damaged', 'not-ours', 'newer', 'empty']).toContain(what);
    }),
    runs(20),
  );
});
