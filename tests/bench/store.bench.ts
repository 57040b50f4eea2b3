/**
 * Opening, up to the planned drill, and taking the next answer, with 100,000 answers in the log beside 100. The
 * database is an in-memory one, whose cost of finding a row hardly depends on how many there are, like a browser's.
 */
import 'fake-indexeddb/auto';
import type { AttemptDraft } from '../../src/core/memory/attempt.ts';
import { paceOfTimes } from '../../src/core/memory/pace.ts';
import { planDrill } from '../../src/core/memory/plan-drill.ts';
import { factsOf } from '../../src/core/questions/facts.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { Database } from '../../src/storage/database.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import { aDrill, anAttempt } from '../attempts.ts';
import { shippedDecks } from '../units.ts';
import type { Suite } from './suite.ts';

const unit = makeUnit(shippedDecks().find(({ id }) => id === 'kestrel-7')!);
const facts = factsOf(unit);
const deck = unit.deck.id;
const DAY_MS = 86_400_000;
const FIRST_DAY = 19_000;
/** 60 answers a day. */
const A_DAY = 60;

interface Opened {
  readonly store: Store;
  next(): AttemptDraft;
}

async function opened(answers: number): Promise<Opened> {
  const name = `bench-${answers}`;
  const store = openStore(name);
  const device = await store.deviceId();
  if (!device.ok) throw new Error(device.error.code);
  const db = new Database(name);
  const at = (i: number) => {
    const day = FIRST_DAY + Math.floor(i / A_DAY);
    return {
      day,
      at: day * DAY_MS + (i % A_DAY) * 60_000,
      fact: facts[(i * 7) % facts.length]!.id,
      sequence: i + 1,
    };
  };
  const log = Array.from({ length: answers }, (_, i) =>
    anAttempt({ id: `answer-${i}`, deck, device: device.value, right: i % 5 > 0, ...at(i) }),
  );
  await db.attempts.bulkAdd(log);
  db.close();
  // The first opening folds the whole log and keeps the ledger; every other begins from it.
  await store.ledgerOf(deck);
  let count = answers;
  return {
    store,
    next() {
      const { device: _, sequence: __, ...rest } = anAttempt({ id: `next-${count}`, deck, ...at(count) });
      count++;
      return rest;
    },
  };
}

const [short, long] = [await opened(100), await opened(100_000)];

/** What a page does before the drill can be started. */
async function open({ store }: Opened) {
  const [decks, chosen, drill, ledger, practice] = await Promise.all([
    store.decks(),
    store.chosenDeck(),
    store.currentDrill(),
    store.ledgerOf(deck),
    store.practiceOf(deck),
  ]);
  if (!decks.ok || !chosen.ok || !drill.ok || !ledger.ok || !practice.ok) throw new Error('not opened');
  const { memory, times, latest, answers } = ledger.value;
  return planDrill({
    unit,
    facts,
    memory,
    day: latest!.day + 1,
    classDay: null,
    minutes: practice.value.minutes,
    seed: answers,
    secondsPerForm: paceOfTimes(times),
  });
}

async function answer({ store, next }: Opened) {
  const attempt = next();
  const drill = aDrill({ id: attempt.drill, deck });
  await store.beginDrill(drill);
  return store.recordAttempt(attempt, { ...drill, index: 1 });
}

/** As quick as with 100: at most 1.3 times as long. */
const atLeast = 1 / 1.3;

export const store: readonly Suite[] = [
  {
    title: 'Opening with 100,000 answers, up to the planned drill',
    count: 1,
    unit: 'opening',
    subject: { name: 'from its kept ledger', run: () => open(long) },
    baselines: [{ name: 'with 100 answers', run: () => open(short), atLeast }],
    agree() {},
  },
  {
    title: 'The next answer into a log of 100,000',
    count: 1,
    unit: 'answer',
    subject: { name: 'stored with its drill', run: () => answer(long) },
    baselines: [{ name: 'into a log of 100 answers', run: () => answer(short), atLeast }],
    agree() {},
  },
];
