/**
 * What differs between two revisions of a deck, record by record and field by field, and which references stand
 * for other values than before. Data; src/words/en/deck-merge.ts has the sentences.
 */
import { type Phrase, say } from '../questions/phrase.ts';
import type { Deck } from '../unit/deck.ts';
import { type Ref, refsOf } from '../unit/refs.ts';
import type { Conflict } from './merge.ts';
import {
  type Fields,
  isFields,
  isOrdered,
  isSet,
  isValue,
  isWhole,
  KINDS,
  type Path,
  recordsOf,
  refsAlong,
  same,
} from './records.ts';

export interface Difference {
  readonly kind: 'added' | 'removed' | 'changed' | 'moved';
  readonly path: Path;
  /** Undefined when it was added, or was taken away. */
  readonly before: unknown;
  readonly after: unknown;
  /** Questions can rest on it: not only a name, a note or who verified. */
  readonly value: boolean;
}

const placeOf = (path: Path, difference: Omit<Difference, 'path' | 'value'>): Difference => ({
  ...difference,
  path,
  value: path.every(({ field }) => isValue(field)),
});

function* compare(path: Path, before: unknown, after: unknown): Generator<Difference> {
  const field = path.at(-1)?.field ?? '';
  if (same(field, before, after)) return;
  const [was, is] = [recordsOf(before), recordsOf(after)];
  if ((was && is) || (was && after === undefined) || (before === undefined && is)) {
    yield* compareRecords(path, was ?? new Map(), is ?? new Map());
  } else if (isFields(before) && isFields(after) && !isWhole(before) && !isWhole(after)) {
    for (const key of new Set([...Object.keys(before), ...Object.keys(after)]))
      yield* compare([...path, { field: key }], before[key], after[key]);
  } else {
    const kind = before === undefined ? 'added' : after === undefined ? 'removed' : 'changed';
    yield placeOf(path, { kind, before, after });
  }
}

function* compareRecords(
  path: Path,
  was: ReadonlyMap<string, Fields>,
  is: ReadonlyMap<string, Fields>,
): Generator<Difference> {
  const { field } = path.at(-1)!;
  const at = (key: string): Path => [...path.slice(0, -1), { field, key }];
  for (const [key, record] of was) {
    const now = is.get(key);
    if (now === undefined) yield placeOf(at(key), { kind: 'removed', before: record, after: undefined });
    else
      for (const name of new Set([...Object.keys(record), ...Object.keys(now)]))
        yield* compare([...at(key), { field: name }], record[name], now[name]);
  }
  for (const [key, record] of is)
    if (!was.has(key)) yield placeOf(at(key), { kind: 'added', before: undefined, after: record });
  const [kept, stands] = [
    [...was.keys()].filter((key) => is.has(key)),
    [...is.keys()].filter((key) => was.has(key)),
  ];
  if (isOrdered(field) && kept.some((key, place) => key !== stands[place]))
    yield placeOf(path, { kind: 'moved', before: kept, after: stands });
}

/** Every difference, in the order of the deck; its own revision number is none. */
export function differencesBetween(before: Deck, after: Deck): Difference[] {
  const [{ revision: _was, ...old }, { revision: _is, ...now }] = [before, after];
  return [...compare([], old, now)];
}

/** Fields of the whole deck that every computed value rests on. */
const OF_THE_TRAIN = ['input', 'output'];

function refsTouched({ kind, path, before, after }: Difference, decks: readonly Deck[]): Ref[] {
  const along = refsAlong(path);
  const row = along.find((ref) => ref.startsWith('range:') || ref.startsWith('neutral:'));
  const last = path.at(-1)!;
  if (row && (last.field === 'applied' || kind === 'added' || kind === 'removed')) {
    const appliedIn = (value: unknown): readonly string[] => {
      const list = isFields(value) ? value.applied : value;
      return isSet('applied', list) ? list : [];
    };
    const [was, is] = [appliedIn(before), appliedIn(after)];
    const cells = [...was.filter((id) => !is.includes(id)), ...is.filter((id) => !was.includes(id))];
    return [row, ...cells.map((id): Ref => `cell:${row.slice(row.indexOf(':') + 1)}/${id}`)];
  }
  if (along.length > 0) return along;
  const everything = decks.flatMap((deck) => [...refsOf(deck)]);
  const under = (kinds: readonly string[]) =>
    everything.filter((ref) => kinds.includes(ref.slice(0, ref.indexOf(':'))));
  const [first, second] = path;
  if (first?.field === 'train' && OF_THE_TRAIN.includes(second?.field ?? ''))
    return under(['gearset', 'element', 'range', 'neutral']);
  if (first?.field === 'lever') return under(['position']);
  if (kind === 'moved') {
    if (last.field === 'ranges') return under(['range']);
    if (last.field === 'shaftLine') return under(['part', 'seat']);
  }
  return [];
}

/** References whose value is not what it was, new and removed ones included. Names and notes are no values. */
export function changedRefs(before: Deck, after: Deck): Ref[] {
  const touched = differencesBetween(before, after)
    .filter(({ value }) => value)
    .flatMap((difference) => refsTouched(difference, [before, after]));
  return [...new Set(touched)].sort();
}

/** A place of the deck in words: `range "4", applied`. */
export function placePhrase(path: Path): Phrase {
  const depth = path.findLastIndex(({ field, key }) => key !== undefined && Object.hasOwn(KINDS, field));
  const rest = path
    .slice(depth + 1)
    .map(({ field, key }) => (key === undefined ? field : `${field} ${key}`))
    .join('.');
  if (depth < 0)
    return rest === '' ? say('place.deck') : say('place.field', { record: say('place.deck'), field: rest });
  const holders = path.slice(0, depth + 1).filter(({ key }) => key !== undefined);
  const record = say('place.record', {
    what: say(`place.${KINDS[path[depth]!.field]}`),
    id: holders.map(({ key }) => key).join('/'),
  });
  return rest === '' ? record : say('place.field', { record, field: rest });
}

const LONGEST = 80;

/** A value of a deck in a few words: texts and amounts as they are written, lists joined, records by their fields. */
export function valuePhrase(value: unknown): Phrase {
  const cut = (text: string) => (text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text);
  const written = (text: string) => say('value.written', { text: cut(text) });
  if (value === undefined) return say('value.nothing');
  if (typeof value === 'string' || typeof value === 'number') return written(String(value));
  if (typeof value === 'boolean') return say(`difference.${value ? 'yes' : 'no'}`);
  if (Array.isArray(value) && value.length > 0 && value.every((entry) => typeof entry === 'string'))
    return written(value.join(' '));
  if (Array.isArray(value)) return say('value.list', { count: value.length });
  if (!isFields(value)) return say('value.nothing');
  const { value: figure, unit, low, high, by, on } = value;
  if (typeof figure === 'string' && typeof unit === 'string') return written(`${figure} ${unit}`);
  if (low !== undefined && high !== undefined)
    return say('difference.band', { low: valuePhrase(low), high: valuePhrase(high) });
  if (typeof by === 'string' && typeof on === 'string') return say('difference.vouched', { by: cut(by), on });
  return written(
    Object.entries(value)
      .filter(([, entry]) => typeof entry === 'string' || typeof entry === 'number')
      .map(([field, entry]) => `${field} ${entry}`)
      .join(', '),
  );
}

/** The difference as one sentence. */
export function differencePhrase({ kind, path, before, after }: Difference): Phrase {
  return say(`difference.${kind}`, {
    where: placePhrase(path),
    before: valuePhrase(before),
    after: valuePhrase(after),
  });
}

/** A conflict of a merge as one sentence that says what to choose between. */
export function conflictPhrase({ kind, path, base, mine, theirs }: Conflict): Phrase {
  return say(`conflict.${kind}`, {
    where: placePhrase(path),
    base: valuePhrase(base),
    mine: valuePhrase(mine),
    theirs: valuePhrase(theirs),
  });
}
