/**
 * Looks for the drill under way without the database's library and without schemas, so that its question can be
 * shown before either is loaded. It only reads. What it gives up on (no database, another version's, a row that is
 * not just so, an answer already checked) is left to the store.
 */
import type { Drill, DrillItem } from '../core/memory/drill.ts';
import type { Draft } from '../core/questions/draft.ts';
import { AT_HAND, type AtHand, isAtHand } from './at-hand.ts';

type Guards<T> = { readonly [K in keyof T]-?: (value: unknown) => boolean };

const isText = (value: unknown) => typeof value === 'string';
const isTexts = (value: unknown) => Array.isArray(value) && value.every(isText);
const isWhole = (value: unknown) => Number.isSafeInteger(value);
const isCount = (value: unknown) => isWhole(value) && (value as number) >= 0;
const isTime = (value: unknown) =>
  typeof value === 'number' && value >= 0 && value < Number.POSITIVE_INFINITY;
const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const orNull = (is: (value: unknown) => boolean) => (value: unknown) => value === null || is(value);

/** Every field as it should be, and no other. */
const fits = <T>(guards: Guards<T>, value: unknown): value is T =>
  isMap(value) &&
  Object.keys(value).length === Object.keys(guards).length &&
  Object.entries<(value: unknown) => boolean>(guards).every(([name, is]) => name in value && is(value[name]));

const isRecord = (value: unknown) => isMap(value) && Object.values(value).every(isText);

const DRAFTS: { readonly [F in Draft['form']]: (draft: unknown) => boolean } = {
  set: (draft) => fits({ form: isText, picks: isTexts }, draft),
  one: (draft) => fits({ form: isText, pick: orNull(isText) }, draft),
  order: (draft) => fits({ form: isText, order: isTexts }, draft),
  number: (draft) => fits({ form: isText, text: isText }, draft),
  pair: (draft) => fits({ form: isText, pairs: isRecord }, draft),
  fill: (draft) => fits({ form: isText, cells: isRecord }, draft),
  place: (draft) => fits({ form: isText, spot: orNull(isText) }, draft),
};

const isDraft = (value: unknown): boolean =>
  isMap(value) &&
  typeof value.form === 'string' &&
  Object.hasOwn(DRAFTS, value.form) &&
  DRAFTS[value.form as Draft['form']](value);

const ITEM: Guards<DrillItem> = { fact: isText, family: isText, seed: isWhole };

const DRILL: Guards<Drill> = {
  id: (value) => isText(value) && value !== '',
  deck: isText,
  revision: isWhole,
  day: isWhole,
  minutes: (value) => isTime(value) && value !== 0,
  startedAt: isWhole,
  items: (value) => Array.isArray(value) && value.every((item) => fits(ITEM, item)),
  index: isCount,
  draft: orNull(isDraft),
  verdict: (value) => value === null,
  spentMs: isTime,
  shownAt: orNull(isWhole),
  answered: isCount,
  right: isCount,
};

/** A drill as the store would read it (tests hold the two together), its answer not checked yet. */
export const isOpenDrill = (row: unknown): row is Drill => fits(DRILL, row) && row.index < row.items.length;

export interface Peeked {
  readonly drill: Drill;
  /** Its question, where this build has kept it in this language. */
  readonly atHand: AtHand | undefined;
  /** The deck it is of, as stored; left out where the question can be shown without it. */
  readonly deckText: string | undefined;
}

const result = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** Opens what is there; a database that is not there is not made. */
function openAsItIs(name: string): Promise<IDBDatabase> {
  const request = indexedDB.open(name);
  request.onupgradeneeded = () => request.transaction?.abort();
  return result(request);
}

export interface Reader {
  readonly build: string;
  readonly language: string;
}

/** Of what this build kept only the outline is looked at: nobody else writes it. */
const isFor = ({ build, language }: Reader, kept: unknown): kept is AtHand =>
  isMap(kept) &&
  kept.build === build &&
  kept.language === language &&
  isRecord(kept.said) &&
  isMap(kept.names) &&
  isMap(kept.question) &&
  isMap(kept.question.space);

/** The drill under way on the chosen deck; undefined where the store has to say. */
export async function peekDrill(reader: Reader, name = 'detent'): Promise<Peeked | undefined> {
  let db: IDBDatabase | undefined;
  try {
    db = await openAsItIs(name);
    const reading = db.transaction(['drills', 'settings', 'decks']);
    const settings = reading.objectStore('settings');
    const [drills, chosen, kept] = await Promise.all([
      result(reading.objectStore('drills').getAll(null, 2)),
      result(settings.get('chosen-deck')),
      result(settings.get(AT_HAND)),
    ]);
    const [drill, another] = drills;
    if (another !== undefined || !isOpenDrill(drill) || chosen?.value !== drill.deck) return undefined;
    const atHand = isFor(reader, kept?.value) && isAtHand(kept.value, drill) ? kept.value : undefined;
    // A drawing is made from the deck.
    if (atHand && !atHand.question.drawing) return { drill, atHand, deckText: undefined };
    const deck = await result(reading.objectStore('decks').get(drill.deck));
    return isText(deck?.text) ? { drill, atHand, deckText: deck.text } : undefined;
  } catch {
    return undefined;
  } finally {
    db?.close();
  }
}
