/**
 * What is kept for assignments: those made and taken in, the reports of learners, corrections, flags, revisions of
 * decks, and the key that seals this device's reports. Part of the store (store.ts). Reports, corrections and
 * revisions are only ever added; they go with their assignment, their learner, or not at all.
 */
import { Dexie } from 'dexie';
import { type Correction, joinCorrections } from '../core/assign/corrections.ts';
import type { Flag, Learner } from '../core/assign/report.ts';
import {
  assignmentRow,
  chainValue,
  correctionRow,
  digestRow,
  flagRow,
  keyRow,
  learnerValue,
  reportRow,
  revisionRow,
  type StoredAssignment,
  type StoredChain,
  type StoredDigest,
  type StoredReport,
  type StoredRevision,
  type StoredSheet,
  sheetValue,
} from './classroom-rows.ts';
import type { Database } from './database.ts';
import { readRows, readSetting } from './read-rows.ts';
import type { Told } from './trouble.ts';

export interface ReportPile {
  readonly reports: readonly StoredReport[];
  /** Rows that cannot be read; they are left as they are. */
  readonly unreadable: number;
}

export interface Classroom {
  /** Keeps it unless a later issue of the same assignment is there; gives back the one that counts. */
  saveAssignment(assignment: StoredAssignment): Told<StoredAssignment>;
  /** Latest saved first. */
  assignments(): Told<StoredAssignment[]>;
  /** Takes an assignment away, with its reports and digests. Decks, attempts and corrections stay. */
  removeAssignment(id: string): Told<void>;

  /** False when the very same report was there already. */
  keepReport(report: StoredReport): Told<boolean>;
  /** All of one assignment, or of one learner in it, in the order they came. */
  reportsOf(assignment: string, learner?: string): Told<ReportPile>;
  /** How many reports are kept of each learner, by learner. */
  reportCounts(assignment: string): Told<ReadonlyMap<string, number>>;
  /** Takes away every report and digest of a learner, in all assignments. */
  removeLearner(learner: string): Told<void>;

  saveDigest(digest: StoredDigest): Told<void>;
  digestsOf(assignment: string): Told<StoredDigest[]>;

  /** Adds the sheet, or puts its new state in place. */
  keepSheet(sheet: StoredSheet): Told<void>;
  /** Printed for learners in this assignment, latest first. They go with the assignment and with the learner. */
  sheetsOf(assignment: string): Told<StoredSheet[]>;

  keepCorrections(corrections: readonly Correction[]): Told<void>;
  /** In the order of their revisions. */
  correctionsOf(deck: string): Told<Correction[]>;

  /** One that is there already stays as it is: another report cannot write over it. */
  raiseFlag(flag: Flag): Told<void>;
  /** Earliest first. */
  flagsOf(deck: string): Told<Flag[]>;
  takeFlagBack(id: string): Told<void>;

  /** Keeps a revision for good. False when that number already stands for another text, which stays. */
  keepRevision(revision: StoredRevision): Told<boolean>;
  /** Latest first. */
  revisionsOf(deck: string): Told<StoredRevision[]>;

  /** The chain of codes that is being read, by the page or by the phone's own camera; undefined when none is. */
  pendingChain(): Told<StoredChain | undefined>;
  /** Null ends it. */
  keepChain(chain: StoredChain | null): Told<void>;

  /** This person, as his reports name him; undefined until he gave a name. */
  learner(): Told<Learner | undefined>;
  /** The id stays when the name changes. */
  nameLearner(name: string): Told<Learner>;
  /** The key pair of this device, made by `make` on first use; null when it can make none. */
  deviceKey(make: () => Promise<CryptoKeyPair | null>): Told<CryptoKeyPair | null>;
}

const LEARNER = 'learner';
const CHAIN = 'chain';
const DEVICE_KEY = 'device';

const SHEET = 'sheet:';
const sheetKey = (assignment: string, id = '') => `${SHEET}${assignment}/${id}`;

type Tell = <T>(act: () => Promise<T>) => Told<T>;

export const isLater = (a: StoredAssignment, b: StoredAssignment) =>
  a.issue - b.issue || a.madeAt - b.madeAt || (a.text > b.text ? 1 : -1);

/** Puts an assignment in; of two issues the later one counts, and is given back. Within a transaction. */
export async function putAssignment(db: Database, assignment: StoredAssignment): Promise<StoredAssignment> {
  const [known] = readRows([await db.assignments.get(assignment.id)], assignmentRow);
  if (known && known.text !== assignment.text && isLater(known, assignment) > 0) return known;
  await db.assignments.put(assignmentRow.parse(assignment));
  return assignment;
}

/** Adds those that are not there yet. Within a transaction. */
export async function addCorrections(db: Database, corrections: readonly Correction[]): Promise<void> {
  for (const correction of corrections)
    if (!(await db.corrections.get(correction.id))) await db.corrections.add(correctionRow.parse(correction));
}

/** The classroom of a store; `tell` opens the database and makes values of what can go wrong. */
export function classroomOf(db: Database, tell: Tell): Classroom {
  return {
    saveAssignment: (assignment) =>
      tell(() => db.transaction('rw', db.assignments, () => putAssignment(db, assignment))),
    assignments: () =>
      tell(async () =>
        readRows(await db.assignments.toArray(), assignmentRow).sort(
          (a, b) => b.savedAt - a.savedAt || (a.id < b.id ? -1 : 1),
        ),
      ),
    removeAssignment: (id) =>
      tell(() =>
        db.transaction('rw', db.assignments, db.reports, db.digests, db.settings, async () => {
          await db.settings.where('key').startsWith(sheetKey(id)).delete();
          await db.assignments.delete(id);
          await db.reports.where('assignment').equals(id).delete();
          await db.digests.where('assignment').equals(id).delete();
        }),
      ),

    keepReport: (report) =>
      tell(() =>
        db.transaction('rw', db.reports, async () => {
          const row = reportRow.parse(report);
          const known = readRows(await db.reports.where('id').equals(row.id).toArray(), reportRow);
          const isSame = (other: StoredReport) =>
            other.text === row.text && other.seal?.signature === row.seal?.signature;
          if (known.some(isSame)) return false;
          await db.reports.add(row);
          return true;
        }),
      ),
    reportsOf: (assignment, learner) =>
      tell(async () => {
        const rows = await (learner === undefined
          ? db.reports.where('assignment').equals(assignment)
          : db.reports.where('[assignment+learner]').equals([assignment, learner])
        ).sortBy('place');
        const reports = readRows(rows, reportRow);
        return { reports, unreadable: rows.length - reports.length };
      }),
    reportCounts: (assignment) =>
      tell(async () => {
        const counts = new Map<string, number>();
        await db.reports
          .where('[assignment+learner]')
          .between([assignment, Dexie.minKey], [assignment, Dexie.maxKey])
          .eachKey((key) => {
            const [, learner] = key as unknown as [string, string];
            counts.set(learner, (counts.get(learner) ?? 0) + 1);
          });
        return counts;
      }),
    removeLearner: (learner) =>
      tell(() =>
        db.transaction('rw', db.reports, db.digests, db.settings, async () => {
          for (const { key, value } of await db.settings.where('key').startsWith(SHEET).toArray())
            if (readRows([value], sheetValue)[0]?.learner === learner) await db.settings.delete(key);
          await db.reports.where('learner').equals(learner).delete();
          await db.digests.where('learner').equals(learner).delete();
        }),
      ),

    saveDigest: (digest) =>
      tell(async () => {
        await db.digests.put(digestRow.parse(digest));
      }),
    digestsOf: (assignment) =>
      tell(async () =>
        readRows(await db.digests.where('assignment').equals(assignment).toArray(), digestRow),
      ),

    keepSheet: (sheet) =>
      tell(async () => {
        await db.settings.put({ key: sheetKey(sheet.assignment, sheet.id), value: sheetValue.parse(sheet) });
      }),
    sheetsOf: (assignment) =>
      tell(async () => {
        const rows = await db.settings.where('key').startsWith(sheetKey(assignment)).toArray();
        return readRows(
          rows.map(({ value }) => value),
          sheetValue,
        ).sort((a, b) => b.madeAt - a.madeAt || (a.id < b.id ? -1 : 1));
      }),

    keepCorrections: (corrections) =>
      tell(() => db.transaction('rw', db.corrections, () => addCorrections(db, corrections))),
    correctionsOf: (deck) =>
      tell(async () =>
        joinCorrections(readRows(await db.corrections.where('deck').equals(deck).toArray(), correctionRow)),
      ),

    raiseFlag: (flag) =>
      tell(() =>
        db.transaction('rw', db.flags, async () => {
          if (!(await db.flags.get(flag.id))) await db.flags.add(flagRow.parse(flag));
        }),
      ),
    flagsOf: (deck) =>
      tell(async () =>
        readRows(await db.flags.where('deck').equals(deck).toArray(), flagRow).sort((a, b) => a.at - b.at),
      ),
    takeFlagBack: (id) => tell(() => db.flags.delete(id)),

    keepRevision: (revision) =>
      tell(() =>
        db.transaction('rw', db.revisions, async () => {
          const row = revisionRow.parse(revision);
          const known = (await db.revisions.get([row.deck, row.revision])) as { text?: unknown } | undefined;
          if (known) return known.text === row.text;
          await db.revisions.add(row);
          return true;
        }),
      ),
    revisionsOf: (deck) =>
      tell(async () =>
        readRows(await db.revisions.where('deck').equals(deck).toArray(), revisionRow).sort(
          (a, b) => b.revision - a.revision,
        ),
      ),

    pendingChain: () => tell(() => readSetting(db, CHAIN, chainValue)),
    keepChain: (chain) =>
      tell(async () => {
        if (chain === null) await db.settings.delete(CHAIN);
        else await db.settings.put({ key: CHAIN, value: chainValue.parse(chain) });
      }),

    learner: () => tell(() => readSetting(db, LEARNER, learnerValue)),
    nameLearner: (name) =>
      tell(() =>
        db.transaction('rw', db.settings, async () => {
          const known = await readSetting(db, LEARNER, learnerValue);
          const learner = { id: known?.id ?? crypto.randomUUID(), name };
          await db.settings.put({ key: LEARNER, value: learnerValue.parse(learner) });
          return learner;
        }),
      ),
    deviceKey: (make) =>
      tell(async () => {
        const read = async () => readRows([await db.keys.get(DEVICE_KEY)], keyRow)[0]?.pair;
        const known = await read();
        if (known) return known;
        // Made outside the transaction, which would not wait for it; two tabs at once keep the first.
        const made = await make();
        if (made === null) return null;
        return db.transaction('rw', db.keys, async () => {
          const first = await read();
          if (!first) await db.keys.put({ id: DEVICE_KEY, pair: made });
          return first ?? made;
        });
      }),
  };
}
