/** A finding: what is wrong with a deck, where, what was found and what was expected. Data; src/words speaks. */
import { type Phrase, type PhraseValue, say } from '../core/questions/phrase.ts';

/** A deck with errors is not used. A warning asks for a second look. */
export type Severity = 'error' | 'warning';

/** A way into the file: object keys and list positions. */
export type Path = readonly (string | number)[];

/** Lists of records that can be named in a place, and what one record is. */
export const RECORDS = {
  sources: 'source',
  shafts: 'shaft',
  gearsets: 'gearset',
  elements: 'element',
  ranges: 'range',
  neutral: 'neutral',
  solenoids: 'solenoid',
  positions: 'position',
  interlocks: 'interlock',
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
} as const;
/** Records that are named together with the one they stand in: "strip/drain". */
const WITHIN: readonly Place['kind'][] = ['step', 'check', 'plate', 'selective', 'reading', 'pin'];
/** Fields that name a record, the first that it has. */
const NAMING = ['id', 'solenoid', 'sensor', 'of'];
export type RecordKind = (typeof RECORDS)[keyof typeof RECORDS];

export interface Place {
  /** JSON Pointer (RFC 6901) into the file. */
  readonly pointer: string;
  /** The nearest record around it; "deck" when there is none. */
  readonly kind: RecordKind | 'deck';
  /** That record's id, or null when it has none that can be read. */
  readonly id: string | null;
  /** Its number in its list, from 1. */
  readonly number: number | null;
  /** The field within the record, dots between: "sun.teeth". Empty for the record itself. */
  readonly field: string;
  /** In a list field: which entry, from 1. */
  readonly entry: number | null;
  /** Where in the text, from 1; null when the deck did not come from text. */
  readonly line: number | null;
  readonly column: number | null;
}

export interface Finding {
  readonly severity: Severity;
  /** Id of the rule, lower-kebab and stable: "ratio-agrees". */
  readonly rule: string;
  readonly place: Place;
  readonly found: Phrase;
  readonly expected: Phrase;
}

/** What a rule reports: a place and the values that its two messages are filled with. */
export interface Spot {
  readonly at: Path;
  /** Which of the rule's messages, when it has several. */
  readonly case?: string;
  readonly values?: Readonly<Record<string, PhraseValue>>;
}

export function makePointer(path: Path): string {
  return path.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const own = (value: unknown, key: string | number): unknown =>
  isRecord(value) && Object.hasOwn(value, key) ? value[key] : undefined;

/** The value a path leads to; undefined when it leads nowhere. */
export function valueAt(root: unknown, path: Path): unknown {
  return path.reduce(own, root);
}

/** Names a place by the record it is in, as far as the data can be read. */
export function placeOf(root: unknown, path: Path): Place {
  let [kind, id, number, rest]: [Place['kind'], string | null, number | null, Path] = [
    'deck',
    null,
    null,
    path,
  ];
  for (const [depth, part] of path.entries()) {
    const list = path[depth - 1];
    if (typeof part !== 'number' || typeof list !== 'string' || !Object.hasOwn(RECORDS, list)) continue;
    const record = valueAt(root, path.slice(0, depth + 1));
    const found = NAMING.map((field) => own(record, field)).find((value) => value !== undefined);
    const text = typeof found === 'string' && found.trim() !== '' ? found.slice(0, 60) : null;
    kind = RECORDS[list as keyof typeof RECORDS];
    id = WITHIN.includes(kind) && id !== null && text !== null ? `${id}/${text}` : text;
    number = part + 1;
    rest = path.slice(depth + 1);
  }
  const last = rest.at(-1);
  return {
    pointer: makePointer(path),
    kind,
    id,
    number,
    field: rest.filter((part) => typeof part === 'string').join('.'),
    entry: typeof last === 'number' ? last + 1 : null,
    line: null,
    column: null,
  };
}

/** A finding of a rule: its two messages are "finding.<rule>[.<case>].found" and "….expected". */
export function makeFinding(rule: string, severity: Severity, root: unknown, spot: Spot): Finding {
  const key = spot.case === undefined ? `finding.${rule}` : `finding.${rule}.${spot.case}`;
  return {
    severity,
    rule,
    place: placeOf(root, spot.at),
    found: say(`${key}.found`, spot.values),
    expected: say(`${key}.expected`, spot.values),
  };
}

/** Where a finding is, as a phrase: `range "4", ratio`. */
export function whereOf({ kind, id, number, field, entry }: Place): Phrase {
  const what = say(`place.${kind}`);
  const record =
    kind === 'deck'
      ? what
      : id !== null
        ? say('place.record', { what, id })
        : say('place.numbered', { what, number: number ?? 0 });
  if (field === '') return record;
  return entry === null
    ? say('place.field', { record, field })
    : say('place.entry', { record, field, entry });
}

/** The whole finding as one sentence. */
export const sentenceOf = ({ place, found, expected }: Finding): Phrase =>
  say('finding.sentence', { where: whereOf(place), found, expected });
