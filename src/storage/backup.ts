/**
 * Everything of one person's store as one value, and the way back in. A value from outside is checked as a whole
 * before anything is written, and put in with one transaction: all of it or none. What is here and what comes in
 * are joined by their ids; where both have a say about one thing, what is here stays, unless nothing was answered
 * here yet (a new phone). docs/spec/storage.md B1 to B6.
 *
 * Not in it: the device's id and key, since a new device is another one, and what is made anew from the rest
 * (ledgers, digests of reports, plans under way).
 */
import type { Table } from 'dexie';
import { fail, pass, type Result } from '../core/result.ts';
import { joinBooks } from '../core/self-check/book.ts';
import { AT_HAND } from './at-hand.ts';
import { isLater } from './classroom.ts';
import {
  assignmentRow,
  correctionRow,
  flagRow,
  learnerValue,
  reportRow,
  revisionRow,
  sheetValue,
} from './classroom-rows.ts';
import type { Database } from './database.ts';
import { noteLogChange } from './ledgers.ts';
import { readRows, readSetting } from './read-rows.ts';
import { attemptRow, caseValue, deckRow, drillRow, planValue, practiceValue, textValue } from './rows.ts';
import { checkBookValue } from './self-check-rows.ts';
import { draftRow, noteRow } from './workshop.ts';
import { z } from './zod.ts';

const byDeck = <T>(value: z.ZodType<T>) => z.array(z.strictObject({ deck: z.string().min(1), value }));

const contents = z.strictObject({
  decks: z.array(deckRow),
  attempts: z.array(attemptRow),
  drill: drillRow.nullable(),
  learner: learnerValue.nullable(),
  chosenDeck: textValue.nullable(),
  practices: byDeck(practiceValue),
  plans: byDeck(planValue),
  checks: checkBookValue.nullable(),
  case: caseValue.nullable(),
  assignments: z.array(assignmentRow),
  reports: z.array(reportRow),
  corrections: z.array(correctionRow),
  flags: z.array(flagRow),
  revisions: z.array(revisionRow),
  sheets: z.array(sheetValue),
  drafts: z.array(draftRow),
  notes: z.array(noteRow).default([]),
  writer: z.string(),
});

export type Contents = Readonly<z.infer<typeof contents>>;

/** Values besides the answers, lists and objects included; a shop's whole store has some thousands. */
const MAX_VALUES = 200_000;

/** How many values there are, counted no further than the limit. */
function countValues(value: unknown, most: number): number {
  let count = 1;
  if (typeof value !== 'object' || value === null) return count;
  for (const key in value) {
    count += countValues((value as Record<string, unknown>)[key], most - count);
    if (count > most) break;
  }
  return count;
}

/** The contents, or the first place where they are not what they should be: "attempts.3.day". */
export function readContents(value: unknown): Result<Contents, { readonly where: string }> {
  const rest = typeof value === 'object' && value !== null ? { ...value, attempts: null } : value;
  if (countValues(rest, MAX_VALUES) > MAX_VALUES) return fail({ where: 'contents' });
  try {
    const read = contents.safeParse(value);
    return read.success
      ? pass(read.data)
      : fail({ where: (read.error.issues[0]?.path ?? []).map(String).join('.').slice(0, 100) });
  } catch (error) {
    // More faults in one list than a call can have arguments, which is how zod hands them on.
    if (error instanceof RangeError) return fail({ where: 'contents' });
    throw error;
  }
}

const KEYS = {
  learner: 'learner',
  chosenDeck: 'chosen-deck',
  checks: 'self-checks',
  case: 'case',
  writer: 'workshop-writer',
  practices: 'practice:',
  plans: 'plan:',
  sheets: 'sheet:',
  drafts: 'workshop-draft:',
  notes: 'bench-note:',
} as const;

const tablesOf = (db: Database) =>
  [
    db.decks, db.attempts, db.drills, db.settings, db.assignments, db.reports, db.corrections, db.flags, db.revisions,
  ] as const; // biome-ignore format: a list

const settingsFrom = (db: Database, prefix: string) => db.settings.where('key').startsWith(prefix).toArray();

async function valuesByDeck<T>(db: Database, prefix: string, value: z.ZodType<T>) {
  const rows = await settingsFrom(db, prefix);
  return rows.flatMap((row) => {
    const [read] = readRows([row.value], value);
    return read === undefined ? [] : [{ deck: row.key.slice(prefix.length), value: read }];
  });
}

const valuesOf = async <T>(db: Database, prefix: string, value: z.ZodType<T>) =>
  readRows(
    (await settingsFrom(db, prefix)).map((row) => row.value),
    value,
  );

/** What the store holds; rows that cannot be read are left out. */
export async function collect(db: Database): Promise<Contents> {
  return db.transaction('r', [...tablesOf(db)], async () => ({
    decks: readRows(await db.decks.toArray(), deckRow),
    attempts: readRows(await db.attempts.toArray(), attemptRow),
    drill: readRows(await db.drills.toArray(), drillRow)[0] ?? null,
    learner: (await readSetting(db, KEYS.learner, learnerValue)) ?? null,
    chosenDeck: (await readSetting(db, KEYS.chosenDeck, textValue)) ?? null,
    practices: await valuesByDeck(db, KEYS.practices, practiceValue),
    plans: await valuesByDeck(db, KEYS.plans, planValue),
    checks: (await readSetting(db, KEYS.checks, checkBookValue)) ?? null,
    case: (await readSetting(db, KEYS.case, caseValue)) ?? null,
    assignments: readRows(await db.assignments.toArray(), assignmentRow),
    reports: readRows(await db.reports.toArray(), reportRow),
    corrections: readRows(await db.corrections.toArray(), correctionRow),
    flags: readRows(await db.flags.toArray(), flagRow),
    revisions: readRows(await db.revisions.toArray(), revisionRow),
    sheets: await valuesOf(db, KEYS.sheets, sheetValue),
    drafts: await valuesOf(db, KEYS.drafts, draftRow),
    notes: await valuesOf(db, KEYS.notes, noteRow),
    writer: (await readSetting(db, KEYS.writer, z.string())) ?? '',
  }));
}

export interface Added {
  /** Answers that were not here before. */
  readonly answers: number;
  /** Answers that were here already. */
  readonly known: number;
  readonly decks: number;
}

/** Puts the rows in whose key is not here yet; how many those were. */
async function addFresh<T, K>(
  table: Table<unknown, K>,
  rows: readonly T[],
  keyOf: (row: T) => K,
): Promise<number> {
  const once = [...new Map(rows.map((row) => [JSON.stringify(keyOf(row)), row])).values()];
  const here = await table.bulkGet(once.map(keyOf));
  const fresh = once.filter((_, index) => here[index] === undefined);
  await table.bulkAdd(fresh);
  return fresh.length;
}

async function putDecks(db: Database, decks: Contents['decks']): Promise<number> {
  let put = 0;
  for (const deck of decks) {
    const [here] = readRows([await db.decks.get(deck.id)], deckRow);
    if (here && here.revision >= deck.revision) continue;
    await db.decks.put(deck);
    put++;
  }
  if (put > 0) await db.settings.delete(AT_HAND);
  return put;
}

async function putClassroom(db: Database, given: Contents): Promise<void> {
  for (const assignment of given.assignments) {
    const [here] = readRows([await db.assignments.get(assignment.id)], assignmentRow);
    // Whoever made it here keeps it as his own, names and all.
    const mayReplace = here?.role !== 'made' || assignment.role === 'made';
    if (!here || (mayReplace && isLater(assignment, here) > 0)) await db.assignments.put(assignment);
  }
  for (const report of given.reports) {
    const here = readRows(await db.reports.where('id').equals(report.id).toArray(), reportRow);
    const same = here.some(
      ({ text, seal }) => text === report.text && seal?.signature === report.seal?.signature,
    );
    // A copy: the database writes the row’s place into it.
    if (!same) await db.reports.add({ ...report });
  }
  await addFresh(db.corrections, given.corrections, ({ id }) => id);
  await addFresh(db.flags, given.flags, ({ id }) => id);
  await addFresh(db.revisions, given.revisions, ({ deck, revision }): [string, number] => [deck, revision]);
  for (const sheet of given.sheets) {
    const key = `${KEYS.sheets}${sheet.assignment}/${sheet.id}`;
    const here = await readSetting(db, key, sheetValue);
    if (!here || (here.markedAt === null && sheet.markedAt !== null))
      await db.settings.put({ key, value: sheet });
  }
  for (const draft of given.drafts) {
    const key = `${KEYS.drafts}${draft.id}`;
    const here = await readSetting(db, key, draftRow);
    if (!here || here.savedAt < draft.savedAt) await db.settings.put({ key, value: draft });
  }
  for (const note of given.notes) {
    const key = `${KEYS.notes}${note.id}`;
    if (!(await db.settings.get(key))) await db.settings.put({ key, value: note });
  }
}

/** Settings that one person has one of: what is here stays, unless nothing was answered here yet. */
async function putSettings(db: Database, given: Contents, isNew: boolean): Promise<void> {
  const put = async (key: string, value: unknown) => {
    if (value !== null && value !== '' && (isNew || !(await db.settings.get(key))))
      await db.settings.put({ key, value });
  };
  await put(KEYS.learner, given.learner);
  await put(KEYS.chosenDeck, given.chosenDeck);
  await put(KEYS.case, given.case);
  await put(KEYS.writer, given.writer);
  for (const { deck, value } of given.practices) await put(`${KEYS.practices}${deck}`, value);
  for (const { deck, value } of given.plans) await put(`${KEYS.plans}${deck}`, value);
  if (given.checks) {
    const here = await readSetting(db, KEYS.checks, checkBookValue);
    const checks = here ? joinBooks(here, given.checks) : given.checks;
    await db.settings.put({ key: KEYS.checks, value: checks });
  }
}

/** Puts contents in, all or none. */
export async function putIn(db: Database, given: Contents): Promise<Added> {
  return db.transaction('rw', [...tablesOf(db)], async () => {
    const isNew = (await db.attempts.count()) === 0;
    const answers = await addFresh(db.attempts, given.attempts, ({ id }) => id);
    if (answers > 0) await noteLogChange(db);
    const decks = await putDecks(db, given.decks);
    await putClassroom(db, given);
    await putSettings(db, given, isNew);
    if (given.drill && (await db.drills.count()) === 0) await db.drills.put(given.drill);
    return { answers, known: given.attempts.length - answers, decks };
  });
}
