/**
 * The one door to what is kept on the device: decks, the log of attempts, the drill under way, settings.
 * Verbs give values; expected failures come back as troubles, and nothing is half written. Attempts are only
 * ever added. docs/spec/memory.md M33 to M37.
 */

import { Dexie } from 'dexie';
import type { Correction } from '../core/assign/corrections.ts';
import type { Ledger } from '../core/ledger/ledger.ts';
import type { Attempt, AttemptDraft } from '../core/memory/attempt.ts';
import { type Drill, stepOf } from '../core/memory/drill.ts';
import { WEIGHTS } from '../core/memory/recall.ts';
import { type CheckBook, EMPTY_BOOK } from '../core/self-check/book.ts';
import { AT_HAND, type AtHand, isAtHand } from './at-hand.ts';
import type { Added, Contents } from './backup.ts';
import { addCorrections, type Classroom, classroomOf, putAssignment } from './classroom.ts';
import type { StoredAssignment } from './classroom-rows.ts';
import { Database } from './database.ts';
import { keepLedger, readLedger } from './ledgers.ts';
import { askToKeep, type StorageState, storageState, wasAsked } from './persistence.ts';
import { readRows, readSetting } from './read-rows.ts';
import {
  attemptRow,
  caseValue,
  deckRow,
  drillRow,
  type Practice,
  planValue,
  practiceValue,
  type StoredCase,
  type StoredDeck,
  type StoredPlan,
  textValue,
} from './rows.ts';
import { checkBookValue } from './self-check-rows.ts';
import { tellerOf } from './tell.ts';
import { Elsewhere, type Told } from './trouble.ts';
import { type Workshop, workshopOf } from './workshop.ts';

export interface Log {
  readonly attempts: readonly Attempt[];
  /** Stored rows that are no attempts this program can read; they are left as they are. */
  readonly unreadable: number;
}

/** What taking an assignment puts into the store; null where what is here stays. */
export interface TakenIn {
  readonly deckId: string;
  readonly deck: StoredDeck | null;
  readonly assignment: StoredAssignment | null;
  readonly corrections: readonly Correction[];
  /** Not set either where a later issue is here. */
  readonly practice: Pick<Practice, 'classDate' | 'minutes'> | null;
}

export interface Store {
  /** Adds the deck, or puts its new text in place of the old; attempts stay. */
  saveDeck(deck: StoredDeck): Told<void>;
  /** Latest loaded first. */
  decks(): Told<StoredDeck[]>;
  /** Takes the deck away, and its drill under way. Its attempts stay: they count again when it comes back. */
  removeDeck(id: string): Told<void>;

  /**
   * Numbers and adds the attempt and puts the drill's new state in place, both or neither. An attempt that is
   * there already is given back as it is. "elsewhere" when that question of the drill was answered in another tab.
   */
  recordAttempt(attempt: AttemptDraft, drillAfter: Drill): Told<Attempt>;
  /** In the order of their times. */
  attemptsOf(deck: string): Told<Log>;
  /** Given in one drill, in the order of their times. */
  attemptsIn(drill: string): Told<Attempt[]>;
  /** The deck's log folded; as quick with a long log as with a short one. */
  ledgerOf(deck: string, weights?: readonly number[]): Told<Ledger>;

  /** Begins a drill; another one under way is replaced. */
  beginDrill(drill: Drill): Told<void>;
  /** Saves the drill under way. "elsewhere" when another tab took it further, ended it or began another. */
  saveDraft(drill: Drill): Told<void>;
  currentDrill(): Told<Drill | undefined>;
  /** Keeps the question at hand for the next start; nothing happens when the drill is elsewhere by now. */
  keepAtHand(atHand: AtHand): Told<void>;
  /** Nothing happens when another one is under way by now. */
  endDrill(id: string): Told<void>;

  /** Random id of this browser profile, made on first use. */
  deviceId(): Told<string>;
  practiceOf(deck: string): Told<Practice>;
  setPractice(deck: string, practice: Practice): Told<void>;
  /** What the last plan to a class date left for the next; undefined until there was one. */
  planOf(deck: string): Told<StoredPlan | undefined>;
  keepPlan(deck: string, plan: StoredPlan): Told<void>;
  /** The deck that is practised; undefined until one was chosen. */
  chosenDeck(): Told<string | undefined>;
  chooseDeck(id: string): Told<void>;

  /** Self-checks: the one under way and past scores. What cannot be read counts as none. */
  checkBook(): Told<CheckBook>;
  saveCheckBook(book: CheckBook): Told<void>;
  /** Removes every trace of self-checks from the device. */
  wipeCheckBook(): Told<void>;

  /** The case run under way or last solved. */
  storedCase(): Told<StoredCase | undefined>;
  saveCase(run: StoredCase): Told<void>;

  /** Takes an assignment in: all that comes with it or nothing, and its deck is the one practised from then on. */
  takeIn(taken: TakenIn): Told<void>;

  /** Assignments, reports and what an instructor keeps. */
  readonly classroom: Classroom;

  /** Decks that are being written. */
  readonly workshop: Workshop;

  /** Everything that is kept here, to be taken elsewhere. */
  backup(): Told<Contents>;
  /** Puts checked contents in, all or none; joined with what is here by ids. */
  restore(contents: Contents): Told<Added>;

  /** Asks the browser to promise that it keeps the data; call it after a tap. Once only, unless told to anew. */
  askPersistence(anew?: boolean): Told<void>;
  /** What the browser says about keeping the data. */
  storageState(): Told<StorageState>;
  close(): void;
}

export const DEFAULT_PRACTICE: Practice = { classDate: null, minutes: 10, daysAWeek: 7 };

const DEVICE = 'device';
const CHOSEN = 'chosen-deck';
const CHECKS = 'self-checks';
const CASE = 'case';
const practiceKey = (deck: string) => `practice:${deck}`;
const planKey = (deck: string) => `plan:${deck}`;

async function deviceOf(db: Database): Promise<string> {
  const known = await readSetting(db, DEVICE, textValue);
  if (known) return known;
  const made = crypto.randomUUID();
  await db.settings.put({ key: DEVICE, value: made });
  return made;
}

/** The next number of a device: one above its highest. */
async function nextSequence(db: Database, device: string): Promise<number> {
  const last = await db.attempts
    .where('[device+sequence]')
    .between([device, Dexie.minKey], [device, Dexie.maxKey])
    .last();
  return ((last as { sequence?: number } | undefined)?.sequence ?? 0) + 1;
}

/** A store on the database of this name. It opens with the first verb. */
export function openStore(name = 'detent'): Store {
  const db = new Database(name);
  const tell = tellerOf(db);
  const drillHere = async () => readRows(await db.drills.toArray(), drillRow)[0];
  const putDrill = async (drill: Drill) => {
    await db.drills.where('id').notEqual(drill.id).delete();
    await db.drills.put(drillRow.parse(drill));
  };
  const putDeck = async (deck: StoredDeck) => {
    await db.decks.put(deckRow.parse(deck));
    await db.settings.delete(AT_HAND);
  };
  const practiceHere = async (deck: string) =>
    (await readSetting(db, practiceKey(deck), practiceValue)) ?? DEFAULT_PRACTICE;
  const set = (key: string, value: unknown) => db.settings.put({ key, value });
  return {
    saveDeck: (deck) => tell(() => db.transaction('rw', db.decks, db.settings, () => putDeck(deck))),
    decks: () =>
      tell(async () =>
        readRows(await db.decks.toArray(), deckRow).sort(
          (a, b) => b.loadedAt - a.loadedAt || (a.id < b.id ? -1 : 1),
        ),
      ),
    removeDeck: (id) =>
      tell(() =>
        db.transaction('rw', db.decks, db.drills, db.settings, async () => {
          await db.decks.delete(id);
          await db.drills.filter((row) => (row as { deck?: unknown }).deck === id).delete();
          if ((await readSetting(db, CHOSEN, textValue)) === id) await db.settings.delete(CHOSEN);
        }),
      ),
    recordAttempt: (draft, drillAfter) =>
      tell(() =>
        db.transaction('rw', db.attempts, db.drills, db.settings, async () => {
          const [known] = readRows([await db.attempts.get(draft.id)], attemptRow);
          if (known) return known;
          const here = await drillHere();
          if (here?.id !== drillAfter.id || stepOf(here) >= stepOf(drillAfter))
            throw new Elsewhere('that question was answered in another tab');
          const device = await deviceOf(db);
          const attempt = { ...draft, device, sequence: await nextSequence(db, device) };
          await db.attempts.add(attemptRow.parse(attempt));
          await putDrill(drillAfter);
          return attempt;
        }),
      ),
    attemptsOf: (deck) =>
      tell(async () => {
        const rows = await db.attempts.where('deck').equals(deck).toArray();
        const attempts = readRows(rows, attemptRow).sort((a, b) => a.at - b.at || a.sequence - b.sequence);
        return { attempts, unreadable: rows.length - attempts.length };
      }),
    attemptsIn: (drill) =>
      tell(async () => {
        const rows = await db.attempts.where('drill').equals(drill).toArray();
        return readRows(rows, attemptRow).sort((a, b) => a.at - b.at || a.sequence - b.sequence);
      }),
    ledgerOf: (deck, weights = WEIGHTS) =>
      tell(async () => {
        const { ledger, keep } = await db.transaction(
          'r',
          db.attempts,
          db.corrections,
          db.ledgers,
          db.settings,
          async () => readLedger(db, deck, await readSetting(db, DEVICE, textValue), weights),
        );
        // Without room to keep it the whole log is folded the next time as well.
        if (keep) await keepLedger(db, keep).catch(() => {});
        return ledger;
      }),
    beginDrill: (drill) => tell(() => db.transaction('rw', db.drills, () => putDrill(drill))),
    saveDraft: (drill) =>
      tell(() =>
        db.transaction('rw', db.drills, async () => {
          const here = await drillHere();
          if (here?.id !== drill.id || stepOf(here) > stepOf(drill))
            throw new Elsewhere('the drill went on in another tab');
          await putDrill(drill);
        }),
      ),
    currentDrill: () => tell(drillHere),
    keepAtHand: (atHand) =>
      tell(() =>
        db.transaction('rw', db.drills, db.settings, async () => {
          const here = await drillHere();
          if (here && isAtHand(atHand, here)) await set(AT_HAND, atHand);
        }),
      ),
    endDrill: (id) => tell(() => db.drills.delete(id)),
    deviceId: () => tell(() => db.transaction('rw', db.settings, () => deviceOf(db))),
    practiceOf: (deck) => tell(() => practiceHere(deck)),
    setPractice: (deck, practice) =>
      tell(async () => {
        await set(practiceKey(deck), practiceValue.parse(practice));
      }),
    planOf: (deck) => tell(() => readSetting(db, planKey(deck), planValue)),
    keepPlan: (deck, plan) =>
      tell(async () => {
        await set(planKey(deck), planValue.parse(plan));
      }),
    chosenDeck: () => tell(() => readSetting(db, CHOSEN, textValue)),
    chooseDeck: (id) =>
      tell(async () => {
        await set(CHOSEN, id);
      }),
    checkBook: () => tell(async () => (await readSetting(db, CHECKS, checkBookValue)) ?? EMPTY_BOOK),
    saveCheckBook: (book) =>
      tell(async () => {
        await set(CHECKS, checkBookValue.parse(book));
      }),
    wipeCheckBook: () => tell(() => db.settings.delete(CHECKS)),
    storedCase: () => tell(() => readSetting(db, CASE, caseValue)),
    saveCase: (run) =>
      tell(async () => {
        await set(CASE, caseValue.parse(run));
      }),
    takeIn: ({ deckId, deck, assignment, corrections, practice }) =>
      tell(() =>
        db.transaction('rw', db.decks, db.settings, db.assignments, db.corrections, async () => {
          if (deck) await putDeck(deck);
          const counts = assignment && (await putAssignment(db, assignment));
          await addCorrections(db, corrections);
          await set(CHOSEN, deckId);
          if (practice && counts === assignment)
            await set(
              practiceKey(deckId),
              practiceValue.parse({ ...(await practiceHere(deckId)), ...practice }),
            );
        }),
      ),
    classroom: classroomOf(db, tell),
    workshop: workshopOf(db, tell),
    // Rare: loaded only where it is used.
    backup: () => tell(async () => (await import('./backup.ts')).collect(db)),
    restore: (contents) => tell(async () => (await import('./backup.ts')).putIn(db, contents)),
    askPersistence: (anew = false) =>
      tell(async () => {
        if (anew || !(await wasAsked(db))) await askToKeep(db);
      }),
    storageState: () => tell(() => storageState(db)),
    close: () => db.close(),
  };
}
