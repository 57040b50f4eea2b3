/** Checks that a value has the shape of a deck; each fault becomes a finding, all of them at once. */
import { say } from '../core/questions/phrase.ts';
import { fail, pass, type Result } from '../core/result.ts';
import type { Deck } from '../core/unit/deck.ts';
import { type Finding, makeFinding, type Path, type Spot, valueAt } from './finding.ts';
import { SERVES } from './schema/electrical.ts';
import {
  DECIMAL,
  DECK_ID,
  FROM_ZERO,
  ID,
  LANGUAGE,
  MEASURE,
  REFERENCE,
  WARMTH,
  WORDS,
} from './schema/fields.ts';
import { deckFile, FORMAT } from './schema.ts';
import { z } from './zod.ts';

type Issue = z.core.$ZodIssue;

const PATTERNS: readonly (readonly [RegExp, string])[] = [
  [ID, 'id'],
  [DECK_ID, 'deck-id'],
  [DECIMAL, 'decimal'],
  [MEASURE, 'measure'],
  [FROM_ZERO, 'from-zero'],
  [SERVES, 'serves'],
  [WARMTH, 'warmth'],
  [REFERENCE, 'reference'],
  [LANGUAGE, 'language'],
  [WORDS, 'words'],
];

/** A value as a few words: short ones as they are written, long ones by what they are. */
function describeValue(value: unknown) {
  if (value === undefined) return say('value.nothing');
  if (Array.isArray(value)) return say('value.list', { count: value.length });
  if (typeof value === 'object' && value !== null) return say('value.object');
  const written = JSON.stringify(value);
  return say('value.written', { text: written.length > 60 ? `${written.slice(0, 57)}…` : written });
}

/** The part of the schema that a path leads to, wrappers taken off. */
function schemaAt(path: Path): z.core.$ZodType | undefined {
  let schema: z.core.$ZodType | undefined = deckFile;
  const unwrap = () => {
    while (schema instanceof z.ZodOptional) schema = schema.unwrap();
  };
  for (const part of path) {
    unwrap();
    if (schema instanceof z.ZodObject) schema = schema.shape[part];
    else if (schema instanceof z.ZodArray) schema = schema.element;
    else if (schema instanceof z.ZodTuple) schema = schema.def.items[Number(part)];
    else return undefined;
  }
  unwrap();
  return schema;
}

function spotsOf(root: unknown, issue: Issue): Spot[] {
  const at = issue.path as Path;
  const value = valueAt(root, at);
  const found = describeValue(value);
  const spot = (kind: string, values: Spot['values'] = {}): Spot[] => [
    { at, case: kind, values: { found, ...values } },
  ];
  switch (issue.code) {
    case 'unrecognized_keys': {
      const schema = schemaAt(at);
      const known = schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
      return issue.keys.map((key) => ({
        at: [...at, key],
        case: 'unknown-key',
        values: { key: key.slice(0, 60), known },
      }));
    }
    case 'invalid_type':
      return spot('type', { type: say(`type.${issue.expected}`) });
    case 'invalid_value':
      return spot('choice', {
        count: issue.values.length,
        choices: issue.values.map((choice) => JSON.stringify(choice)),
      });
    case 'invalid_format': {
      if (issue.format === 'date') return spot('date');
      const known = PATTERNS.find(([pattern]) => String(pattern) === issue.pattern);
      return spot(known?.[1] ?? 'other');
    }
    case 'too_small':
      return issue.origin === 'array'
        ? spot('too-few', { least: Number(issue.minimum) })
        : spot('too-small', { least: Number(issue.minimum) });
    case 'too_big':
      return issue.origin === 'array'
        ? spot('too-many', { most: Number(issue.maximum) })
        : issue.origin === 'string'
          ? spot('too-long', { length: String(value).length, most: Number(issue.maximum) })
          : spot('too-big', { most: Number(issue.maximum) });
    default:
      return spot('other');
  }
}

/** A deck of this format, or every way in which the value is not one. A newer format is the only finding. */
export function checkShape(root: unknown): Result<Deck, Finding[]> {
  const format = valueAt(root, ['detentDeck']);
  if (typeof format === 'number' && format > FORMAT)
    return fail([
      makeFinding('format', 'error', root, {
        at: ['detentDeck'],
        values: { format: String(format), known: FORMAT },
      }),
    ]);
  const parsed = deckFile.safeParse(root);
  if (parsed.success) {
    const { $schema: _, ...deck } = parsed.data;
    return pass(deck);
  }
  const spots = parsed.error.issues.flatMap((issue) => spotsOf(root, issue));
  return fail(spots.map((spot) => makeFinding('shape', 'error', root, spot)));
}
