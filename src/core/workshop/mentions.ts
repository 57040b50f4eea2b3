/**
 * Where a draft names things by their ids, so that a thing can be called otherwise, or taken away, and nothing is
 * left pointing at what it was. Which fields name which kind follows docs/deck-format.md; references ("element:C1",
 * "cell:4/C1") are src/core/unit/refs.ts. Steps and plates keep the ids that they were given.
 */
import type { DeckDraft } from './draft.ts';

export const MENTIONED_KINDS = [
  'source', 'shaft', 'gearset', 'element', 'row', 'solenoid', 'position', 'sensor', 'part', 'seat', 'stack', 'fit',
  'sequence', 'supply', 'thermistor', 'connector', 'fluid', 'torque', 'weight', 'code',
] as const; // biome-ignore format: names read across
export type MentionedKind = (typeof MENTIONED_KINDS)[number];

/** Fields that hold a bare id of the kind, or a list of them. */
const FIELDS: Readonly<Record<MentionedKind, readonly string[]>> = {
  source: ['source'],
  shaft: ['shaft', 'between', 'reads', 'input', 'output'],
  gearset: [],
  element: ['applied', 'unsureCells', 'feeds', 'opens', 'whenApplied', 'blocks', 'element'],
  row: ['rows'],
  solenoid: ['solenoid'],
  sensor: ['sensor'],
  part: ['touches'],
  seat: ['touches', 'seat'],
  stack: ['stack'],
  fit: ['fit'],
  position: [],
  sequence: [],
  supply: ['supply'],
  thermistor: [],
  connector: [],
  fluid: [],
  torque: ['tightens'],
  weight: [],
  code: [],
};

/** Kinds of references whose id is the thing's own, and those in which it stands before or after the slash. */
const REFS: Readonly<Record<MentionedKind, { own?: string[]; before?: string[]; after?: string[] }>> = {
  source: {},
  shaft: {},
  gearset: { own: ['gearset'] },
  element: { own: ['element', 'capacity'], after: ['cell'] },
  row: { own: ['range', 'neutral'], before: ['cell'] },
  solenoid: { own: ['solenoid', 'winding'] },
  sensor: { own: ['sensor', 'pickup'] },
  part: { own: ['part'] },
  seat: { own: ['seat'] },
  stack: { own: ['stack'], before: ['plate'] },
  fit: { own: ['fit'], before: ['reading'] },
  position: { own: ['position'] },
  sequence: { own: ['sequence'], before: ['step', 'check'] },
  supply: { own: ['supply'] },
  thermistor: { own: ['thermistor'] },
  connector: { own: ['connector'], before: ['pin'] },
  fluid: { own: ['fluid'] },
  torque: { own: ['torque'] },
  weight: { own: ['weight'] },
  code: { own: ['code'] },
};

const REF_FIELDS = ['belongsTo', 'attachedTo', 'watches', 'of', 'serves'];

/** Fields that name their record: without them there is none. */
const NAMING = ['of', 'solenoid', 'sensor'];

interface Mentions {
  readonly kind: MentionedKind;
  readonly id: string;
  /** Undefined: whatever names it goes. */
  readonly to: string | undefined;
}

/** A reference that names the thing, with its new id; undefined when it goes; itself when it names another. */
function refTo({ kind, id, to }: Mentions, text: string): string | undefined {
  const { own = [], before = [], after = [] } = REFS[kind];
  const match = /^([a-z-]+):([^/]*)(?:\/(.*))?$/.exec(text);
  if (!match) return text;
  const [, of = '', first = '', second] = match;
  if (own.includes(of) && second === undefined && first === id) return to && `${of}:${to}`;
  if (before.includes(of) && first === id) return to && `${of}:${to}/${second}`;
  if (after.includes(of) && second === id) return to && `${of}:${first}/${to}`;
  return text;
}

function through(mentions: Mentions, field: string, value: unknown): unknown {
  if (typeof value === 'string') {
    if (FIELDS[mentions.kind].includes(field)) return value === mentions.id ? mentions.to : value;
    return REF_FIELDS.includes(field) ? refTo(mentions, value) : value;
  }
  if (Array.isArray(value)) {
    const list = value.map((entry) => through(mentions, field, entry));
    if (list.every((entry, index) => entry === value[index])) return value;
    // A clutch keeps its two sides.
    return field === 'between'
      ? list.map((entry) => entry ?? '')
      : list.filter((entry) => entry !== undefined);
  }
  if (typeof value !== 'object' || value === null) return value;
  const was = Object.entries(value);
  const is = was.map(([key, entry]) => [key, through(mentions, key, entry)] as const);
  if (is.every(([, entry], index) => entry === was[index]![1])) return value;
  const lost = is.some(([key, entry]) => entry === undefined && NAMING.includes(key));
  return lost ? undefined : Object.fromEntries(is.filter(([, entry]) => entry !== undefined));
}

/** Every mention of the thing under its new id. The record's own `id` is an edit like any other. */
export const renameMentions = (draft: DeckDraft, kind: MentionedKind, id: string, to: string): DeckDraft =>
  id === '' ? draft : (through({ kind, id, to }, '', draft) as DeckDraft);

/** Without any mention of the thing. What is only about it (its winding, its other names) goes too. */
export const dropMentions = (draft: DeckDraft, kind: MentionedKind, id: string): DeckDraft =>
  id === '' ? draft : (through({ kind, id, to: undefined }, '', draft) as DeckDraft);
