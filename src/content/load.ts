/**
 * The door for decks: text in, a solved unit out, or every finding at once. Shape is checked before the
 * rules, because rules read a deck that has its shape; both tell all they find.
 */
import { fail, pass, type Result } from '../core/result.ts';
import type { Deck } from '../core/unit/deck.ts';
import { makeUnit, type Unit } from '../core/unit/unit.ts';
import { type Finding, makeFinding } from './finding.ts';
import { readJson } from './json.ts';
import { checkRules } from './rules/index.ts';
import { checkShape } from './shape.ts';

export interface Loaded {
  readonly deck: Deck;
  readonly unit: Unit;
  readonly warnings: readonly Finding[];
}

/** A deck with the right shape and what its rules say of it. */
export interface Parsed {
  readonly deck: Deck;
  readonly findings: readonly Finding[];
}

/** Findings told one by one; of more, how many there are. Nobody reads them, and a hostile deck has thousands. */
export const MAX_FINDINGS = 500;

const isError = (finding: Finding) => finding.severity === 'error';

function told(findings: readonly Finding[], root: unknown): readonly Finding[] {
  const rest = findings.slice(MAX_FINDINGS);
  if (rest.length === 0) return findings;
  const more = makeFinding('more', rest.some(isError) ? 'error' : 'warning', root, {
    at: [],
    values: { count: rest.length },
  });
  return [...findings.slice(0, MAX_FINDINGS), more];
}

/** Reads a deck and runs its rules. Fails only when the text has not the shape of a deck. */
export function parseDeck(text: string): Result<Parsed, readonly Finding[]> {
  const json = readJson(text);
  if (!json.ok) return fail([json.error]);
  const { value, repeatedKeys, locate } = json.value;
  const repeated = repeatedKeys.map((at) =>
    makeFinding('repeated-key', 'error', value, { at, values: { key: String(at.at(-1)) } }),
  );
  const shape = checkShape(value);
  if (!shape.ok) return fail(locate(told([...repeated, ...shape.error], value)));
  return pass({
    deck: shape.value,
    findings: locate(told([...repeated, ...checkRules(shape.value)], value)),
  });
}

/** Reads a deck for use: fails with every finding when one of them is an error. */
export function loadDeck(text: string): Result<Loaded, readonly Finding[]> {
  const parsed = parseDeck(text);
  if (!parsed.ok) return parsed;
  const { deck, findings } = parsed.value;
  if (findings.some(isError)) return fail(findings);
  return pass({ deck, unit: makeUnit(deck), warnings: findings });
}
