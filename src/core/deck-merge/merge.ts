/**
 * Brings together two decks that were edited apart from one they have in common. What only one side changed is
 * taken; what both changed differently is a conflict, left as in `mine` until somebody chooses. A chart row is one
 * value: it is never put together from halves of two. Where one side changed a value and the other vouched for
 * the old one, the value comes unsure, since nobody has checked it. The merged deck still has to pass
 * the checks of src/content: two right edits may not go together.
 */
import type { Deck } from '../unit/deck.ts';
import type { Ref } from '../unit/refs.ts';
import {
  type Fields,
  isFields,
  isJoined,
  isOrdered,
  isSet,
  isValue,
  isWhole,
  type Path,
  recordsOf,
  refsAlong,
  same,
  VOUCHING,
  writePath,
} from './records.ts';

/**
 * changed: both sides changed it. removed: one side took away what the other changed. added: both added it, not
 * alike. order: both put the list in another order. vouched: one changed the value, the other verified the old one.
 */
export const CONFLICT_KINDS = ['changed', 'removed', 'added', 'order', 'vouched'] as const;
export type ConflictKind = (typeof CONFLICT_KINDS)[number];

export type MergeSide = 'mine' | 'theirs';

export interface Conflict {
  /** The place as text: the same conflict has the same id when merged again. */
  readonly id: string;
  readonly kind: ConflictKind;
  readonly path: Path;
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
  readonly refs: readonly Ref[];
}

export interface Merged {
  /** With the choices made so far; its revision is one above both. */
  readonly deck: Deck;
  readonly conflicts: readonly Conflict[];
}

/** What somebody chose, by the conflict's id. */
export type Choices = ReadonlyMap<string, MergeSide>;

interface Work {
  readonly conflicts: Conflict[];
  readonly choices: Choices;
}

interface Three {
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
}

function settle(work: Work, path: Path, kind: ConflictKind, three: Three): unknown {
  const id = writePath(path);
  work.conflicts.push({ id, kind, path, ...three, refs: refsAlong(path) });
  return work.choices.get(id) === 'theirs' ? three.theirs : three.mine;
}

function mergeValue(work: Work, path: Path, three: Three): unknown {
  const { base, mine, theirs } = three;
  const field = path.at(-1)?.field ?? '';
  if (same(field, mine, theirs)) return mine;
  if (same(field, base, mine)) return theirs;
  if (same(field, base, theirs)) return mine;
  const lists = [base ?? [], mine, theirs].map(recordsOf);
  const [a, b, c] = lists;
  if (a && b && c && Array.isArray(mine) && Array.isArray(theirs)) return mergeRecords(work, path, a, b, c);
  if (isJoined(field) && isSet(field, mine) && isSet(field, theirs))
    return joinSets(isSet(field, base) ? base : [], mine, theirs);
  if (isFields(mine) && isFields(theirs) && !isWhole(mine) && !isWhole(theirs))
    return mergeFields(work, path, isFields(base) ? base : {}, mine, theirs);
  const kind =
    mine === undefined || theirs === undefined ? 'removed' : base === undefined ? 'added' : 'changed';
  return settle(work, path, kind, three);
}

/** Entries that nobody took away, and those that somebody added. */
function joinSets(base: readonly string[], mine: readonly string[], theirs: readonly string[]): string[] {
  const kept = (entry: string) => !base.includes(entry) || (mine.includes(entry) && theirs.includes(entry));
  return [...new Set([...mine, ...theirs])].filter(kept);
}

const touched = (before: Fields, after: Fields, of: (field: string) => boolean) =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])].some(
    (field) => of(field) && !same(field, before[field], after[field]),
  );

const vouches = (field: string) => (VOUCHING as readonly string[]).includes(field);

/**
 * Whether the vouching of the two sides speaks of other values than the merged ones: one side changed a value and
 * the other vouched for the old one, or both changed values and somebody vouched for one of the two states.
 */
function vouchingCrossed(base: Fields, mine: Fields, theirs: Fields): boolean {
  const [ours, others] = [touched(base, mine, isValue), touched(base, theirs, isValue)];
  if (ours && others)
    return touched(mine, theirs, isValue) && [mine, theirs].some((side) => Object.keys(side).some(vouches));
  return ours ? touched(base, theirs, vouches) : others && touched(base, mine, vouches);
}

function mergeFields(work: Work, path: Path, base: Fields, mine: Fields, theirs: Fields): Fields {
  const crossed = vouchingCrossed(base, mine, theirs);
  const merged: Record<string, unknown> = {};
  for (const key of new Set([...Object.keys(mine), ...Object.keys(theirs)])) {
    if (crossed && vouches(key)) continue;
    const value = mergeValue(work, [...path, { field: key }], {
      base: base[key],
      mine: mine[key],
      theirs: theirs[key],
    });
    if (value !== undefined) merged[key] = value;
  }
  if (!crossed) return merged;
  const id = writePath([...path, { field: 'verified' }]);
  work.conflicts.push({ id, kind: 'vouched', path, base, mine, theirs, refs: refsAlong(path) });
  const choice = work.choices.get(id);
  if (choice === undefined) return { ...merged, unsure: true };
  const chosen = choice === 'mine' ? mine : theirs;
  // Choosing the side that left the value alone takes the value back that it vouched for.
  return touched(base, chosen, isValue) ? { ...merged, ...only(chosen, vouches) } : chosen;
}

const only = (fields: Fields, wanted: (field: string) => boolean): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([field]) => wanted(field)));

type Records = ReadonlyMap<string, Fields>;

function mergeRecords(work: Work, path: Path, base: Records, mine: Records, theirs: Records): Fields[] {
  const { field } = path.at(-1)!;
  const merged = new Map<string, Fields>();
  for (const key of new Set([...mine.keys(), ...theirs.keys()])) {
    const three = { base: base.get(key), mine: mine.get(key), theirs: theirs.get(key) };
    const value = mergeValue(work, [...path.slice(0, -1), { field, key }], three);
    if (value !== undefined) merged.set(key, value as Fields);
  }
  return orderOf(work, path, base, mine, theirs)
    .filter((key) => merged.has(key))
    .map((key) => merged.get(key)!);
}

/** Keys of both sides: the order of the side that changed it, with what the other added after its neighbour there. */
function orderOf(work: Work, path: Path, base: Records, mine: Records, theirs: Records): string[] {
  const orders = [base, mine, theirs].map((records) =>
    [...records.keys()].filter((key) => base.has(key) && mine.has(key) && theirs.has(key)),
  );
  const [was, ours, others] = orders.map((keys) => keys.join('\n')) as [string, string, string];
  let lead: MergeSide = was === ours ? 'theirs' : 'mine';
  if (was !== ours && was !== others && ours !== others && isOrdered(path.at(-1)!.field)) {
    const [baseOrder, mineOrder, theirOrder] = orders;
    const chosen = settle(work, path, 'order', { base: baseOrder, mine: mineOrder, theirs: theirOrder });
    lead = chosen === theirOrder ? 'theirs' : 'mine';
  }
  const [first, second] = lead === 'mine' ? [mine, theirs] : [theirs, mine];
  const keys = [...first.keys()];
  let before: string | undefined;
  for (const key of second.keys()) {
    if (!first.has(key)) keys.splice(before === undefined ? 0 : keys.indexOf(before) + 1, 0, key);
    before = key;
  }
  return keys;
}

/**
 * Three-way merge. Deterministic; with the sides swapped the same conflicts come, with their values swapped.
 * Throws RangeError when the decks are not of one id: they have nothing in common to merge.
 */
export function mergeDecks(base: Deck, mine: Deck, theirs: Deck, choices: Choices = new Map()): Merged {
  if (base.id !== mine.id || base.id !== theirs.id)
    throw new RangeError(`decks "${base.id}", "${mine.id}" and "${theirs.id}" are not one deck`);
  const work: Work = { conflicts: [], choices };
  const sides = [base, mine, theirs].map(({ revision: _, ...rest }) => rest);
  const fields = mergeValue(work, [], { base: sides[0], mine: sides[1], theirs: sides[2] }) as Fields;
  const revision = Math.max(mine.revision, theirs.revision) + 1;
  return { deck: { ...fields, revision } as unknown as Deck, conflicts: work.conflicts };
}
