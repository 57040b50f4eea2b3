/**
 * How two decks are held against each other: which lists hold records and what names one, which lists are sets,
 * which values only make sense whole, and which reference (src/core/unit/refs.ts) a place belongs to. Works on the
 * deck as plain data, so that a field added to the deck format is compared with no word here.
 */
import { REF_KINDS, type Ref } from '../unit/refs.ts';

/** One step into a deck: a field, and in a list of records which record. */
export interface Step {
  readonly field: string;
  readonly key?: string;
}
export type Path = readonly Step[];

export type Fields = Readonly<Record<string, unknown>>;

export const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** "train/elements:C1/capacity/spring": stable, so that a choice can be kept beside it. */
export const writePath = (path: Path): string =>
  path.map(({ field, key }) => (key === undefined ? field : `${field}:${key}`)).join('/');

/** Lists of texts whose order says nothing. */
const SETS = new Set([
  'applied',
  'unsureCells',
  'feeds',
  'opens',
  'rows',
  'belongsTo',
  'hazards',
  'needs',
  'closedBy',
  'watches',
  'names',
  'attachedTo',
]);

/** Sets that may be joined entry by entry; the others are one value (a chart row is no sum of two rows). */
const JOINED = new Set(['unsureCells', 'belongsTo', 'hazards', 'watches', 'names', 'attachedTo']);

/** Lists of records whose order is part of what the deck says. */
const ORDERED = new Set(['ranges', 'positions', 'shaftLine', 'items']);

/** Fields that tell of a value without being one. */
const ABOUT = new Set(['source', 'measuredBy', 'verified', 'unsure', 'unsureCells', 'note', 'reviewed']);

/** Fields and lists that name things, or warn, and hold no value that is asked. */
const NAMES = new Set([
  'name',
  'title',
  'unit',
  'language',
  'variantOf',
  'sources',
  'shafts',
  'aliases',
  'cautions',
]);

/** Fields that say somebody stands in for a value, or that nobody does yet. */
export const VOUCHING = ['verified', 'unsure', 'unsureCells', 'reviewed'] as const;

export const isSet = (field: string, value: unknown): value is readonly string[] =>
  SETS.has(field) && Array.isArray(value) && value.every((entry) => typeof entry === 'string');

export const isJoined = (field: string): boolean => JOINED.has(field);
export const isOrdered = (field: string): boolean => ORDERED.has(field);

/** Whether a field holds a value that questions can rest on. */
export const isValue = (field: string): boolean => !ABOUT.has(field) && !NAMES.has(field);

/** An object that is one value: an amount with its unit, a band, who verified. Half of one means nothing. */
export function isWhole(value: Fields): boolean {
  const keys = Object.keys(value).sort().join(' ');
  return ['unit value', 'high low', 'by on', 'feature towards', 'at diameter', 'at ohms'].includes(keys);
}

/** What names a record in its list; undefined when it is none. */
export function keyOf(record: unknown): string | undefined {
  if (!isFields(record)) return undefined;
  const { id, solenoid, sensor, step, earlier, later, of, language } = record;
  if (typeof of === 'string') return typeof language === 'string' ? `${of} ${language}` : of;
  if (typeof earlier === 'string' && typeof later === 'string') return `${earlier} ${later}`;
  return [id, solenoid, sensor, step].find((value): value is string => typeof value === 'string');
}

/** The records of a list by key; undefined when it is no list of records, each with its own key. */
export function recordsOf(value: unknown): ReadonlyMap<string, Fields> | undefined {
  if (!Array.isArray(value)) return undefined;
  const records = new Map<string, Fields>();
  for (const record of value) {
    const key = keyOf(record);
    if (key === undefined || records.has(key)) return undefined;
    records.set(key, record as Fields);
  }
  return records;
}

/** Whether two values of a field say the same: the order of keys, and of sets, says nothing. */
export function same(field: string, a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (isSet(field, a) && isSet(field, b)) {
    const held = new Set(a);
    return held.size === new Set(b).size && b.every((entry) => held.has(entry));
  }
  if (Array.isArray(a) && Array.isArray(b))
    return a.length === b.length && a.every((entry, place) => same('', entry, b[place]));
  if (!isFields(a) || !isFields(b)) return false;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => same(key, a[key], b[key]));
}

/** Lists of records, and what one of them is called; most of these kinds have references too. */
export const KINDS: Readonly<Record<string, string>> = {
  sources: 'source',
  shafts: 'shaft',
  gearsets: 'gearset',
  elements: 'element',
  ranges: 'range',
  neutral: 'neutral',
  solenoids: 'solenoid',
  positions: 'position',
  sensors: 'sensor',
  shaftLine: 'part',
  seats: 'seat',
  stacks: 'stack',
  items: 'plate',
  fits: 'fit',
  parts: 'selective',
  readings: 'reading',
  sequences: 'sequence',
  steps: 'step',
  added: 'step',
  checks: 'check',
  supplies: 'supply',
  windings: 'winding',
  pickups: 'pickup',
  thermistors: 'thermistor',
  connectors: 'connector',
  pins: 'pin',
  fluids: 'fluid',
  torques: 'torque',
  weights: 'weight',
  codes: 'code',
  aliases: 'alias',
  cautions: 'caution',
};

/** Kinds named together with what holds them: "plate:C1/steel-2". */
const WITHIN: readonly string[] = ['plate', 'reading', 'step', 'check', 'pin'];

/** The references of everything a path leads through, outermost first: a plate's also are its stack's. */
export function refsAlong(path: Path): Ref[] {
  const refs: Ref[] = [];
  let holder: string | undefined;
  for (const { field, key } of path) {
    const kind = REF_KINDS.find((known) => Object.hasOwn(KINDS, field) && known === KINDS[field]);
    if (kind !== undefined && key !== undefined) {
      const within = WITHIN.includes(kind);
      if (within && holder === undefined) continue;
      refs.push(within ? `${kind}:${holder}/${key}` : `${kind}:${key}`);
      if (!within) holder = key;
    } else if (field === 'capacity' && holder !== undefined)
      refs.splice(0, refs.length, `capacity:${holder}`);
  }
  return refs;
}
