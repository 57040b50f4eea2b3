/**
 * Decks that are being written. A draft is kept as the JSON text of the deck as far as it goes, with a few fields to
 * list it by; every keystroke puts the newest in place. Bench notes wait beside them. Part of the store (store.ts).
 */
import type { Database } from './database.ts';
import { readRows } from './read-rows.ts';
import type { Told } from './trouble.ts';
import { z } from './zod.ts';

export interface StoredDraft {
  /** Random; the deck's own id may change while it is written. */
  readonly id: string;
  /** What it is called in the list: the unit, as far as it is named. */
  readonly unit: string;
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
}

export const draftRow: z.ZodType<StoredDraft> = z.strictObject({
  id: z.string().min(1),
  unit: z.string(),
  text: z.string(),
  savedAt: z.int(),
});

/** What somebody wrote down, or photographed, while a unit was taken apart. */
export interface StoredNote {
  readonly id: string;
  /** What the unit was called there. */
  readonly unit: string;
  readonly part: string;
  /** The end of the unit it was seen from; null when that was not said. */
  readonly seenFrom: 'front' | 'rear' | null;
  /** What its face before the eye showed, or anything else, in words. */
  readonly text: string;
  /** As typed; empty when nothing was measured. */
  readonly thickness: { readonly value: string; readonly unit: string };
  /** A shrunk picture as a data URL; null when there is none. */
  readonly photo: string | null;
  /** The draft it went into, and the record there: "seats:T3". Null until then. */
  readonly usedIn: { readonly draft: string; readonly record: string } | null;
  /** Milliseconds since 1970. */
  readonly madeAt: number;
}

/** Letters of the largest photo that is kept: about a megabyte and a half of picture. */
export const LARGEST_PHOTO = 2_000_000;

export const noteRow: z.ZodType<StoredNote> = z.strictObject({
  id: z.string().min(1),
  unit: z.string().max(2000),
  part: z.string().max(2000),
  seenFrom: z.enum(['front', 'rear']).nullable(),
  text: z.string().max(10_000),
  thickness: z.strictObject({ value: z.string().max(40), unit: z.string().max(10) }),
  photo: z
    .string()
    .max(LARGEST_PHOTO)
    .regex(/^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/)
    .nullable(),
  usedIn: z.strictObject({ draft: z.string(), record: z.string() }).nullable(),
  madeAt: z.int(),
});

export interface Workshop {
  /** Adds the draft, or puts its newest state in place. */
  keep(draft: StoredDraft): Told<void>;
  /** Latest saved first. */
  drafts(): Told<StoredDraft[]>;
  draft(id: string): Told<StoredDraft | undefined>;
  remove(id: string): Told<void>;
  /** Adds the bench note, or puts its newest state in place. */
  keepNote(note: StoredNote): Told<void>;
  /** Earliest first, as the unit came apart. */
  notes(): Told<StoredNote[]>;
  removeNote(id: string): Told<void>;
  /** The one who writes here, for "verified by"; empty until somebody is named. */
  writer(): Told<string>;
  nameWriter(name: string): Told<void>;
}

const PREFIX = 'workshop-draft:';
const NOTE = 'bench-note:';
const WRITER = 'workshop-writer';

/** The workshop of a store; `tell` opens the database and makes values of what can go wrong. */
export function workshopOf(db: Database, tell: <T>(act: () => Promise<T>) => Told<T>): Workshop {
  const rows = async () => {
    const settings = await db.settings.where('key').startsWith(PREFIX).toArray();
    return readRows(
      settings.map(({ value }) => value),
      draftRow,
    );
  };
  return {
    keep: (draft) =>
      tell(async () => {
        await db.settings.put({ key: `${PREFIX}${draft.id}`, value: draftRow.parse(draft) });
      }),
    drafts: () =>
      tell(async () => (await rows()).sort((a, b) => b.savedAt - a.savedAt || (a.id < b.id ? -1 : 1))),
    draft: (id) =>
      tell(async () => readRows([(await db.settings.get(`${PREFIX}${id}`))?.value], draftRow)[0]),
    remove: (id) => tell(() => db.settings.delete(`${PREFIX}${id}`)),
    keepNote: (note) =>
      tell(async () => {
        await db.settings.put({ key: `${NOTE}${note.id}`, value: noteRow.parse(note) });
      }),
    notes: () =>
      tell(async () => {
        const settings = await db.settings.where('key').startsWith(NOTE).toArray();
        return readRows(
          settings.map(({ value }) => value),
          noteRow,
        ).sort((a, b) => a.madeAt - b.madeAt || (a.id < b.id ? -1 : 1));
      }),
    removeNote: (id) => tell(() => db.settings.delete(`${NOTE}${id}`)),
    writer: () =>
      tell(async () => {
        const value = (await db.settings.get(WRITER))?.value;
        return typeof value === 'string' ? value : '';
      }),
    nameWriter: (name) =>
      tell(async () => {
        await db.settings.put({ key: WRITER, value: name });
      }),
  };
}
