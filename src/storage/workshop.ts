/**
 * Decks that are being written. A draft is kept as the JSON text of the deck as far as it goes, with a few fields to
 * list it by; every keystroke puts the newest in place. Part of the store (store.ts).
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

export interface Workshop {
  /** Adds the draft, or puts its newest state in place. */
  keep(draft: StoredDraft): Told<void>;
  /** Latest saved first. */
  drafts(): Told<StoredDraft[]>;
  draft(id: string): Told<StoredDraft | undefined>;
  remove(id: string): Told<void>;
  /** The one who writes here, for "verified by"; empty until somebody is named. */
  writer(): Told<string>;
  nameWriter(name: string): Told<void>;
}

const PREFIX = 'workshop-draft:';
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
