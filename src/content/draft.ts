/**
 * Checks a deck that is still being written. What has not the shape of a deck is missing; the rest is held against
 * the rules all the same, so that a contradiction shows as soon as its part is there. Parts without their shape are
 * left out for that, and what a rule then says of names it cannot find is not told: they may be in a part left out.
 */
import type { Deck } from '../core/unit/deck.ts';
import type { DeckDraft } from '../core/workshop/draft.ts';
import { finishDraft } from '../core/workshop/finish.ts';
import type { Finding } from './finding.ts';
import { checkRules } from './rules/index.ts';
import { checkShape } from './shape.ts';

export interface DraftCheck {
  /** Places that have not the shape of a deck yet, in the order of the deck's shape. */
  readonly missing: readonly Finding[];
  /** What the rules find in the parts that are there, errors first, else in the order of the rules. */
  readonly found: readonly Finding[];
  /** The deck as a file would have it, when nothing is missing and no rule finds an error. */
  readonly deck: Deck | null;
}

/** What stands for the name of a deck that has none yet. */
const UNNAMED = { detentDeck: 1, id: 'draft', title: 'draft', unit: 'draft', revision: 1 };

/** Rules about names that lead nowhere, or about things that nothing names. */
const LOOKS_ELSEWHERE = new Set([
  'sources-exist', 'shafts-exist', 'elements-exist', 'rows-exist', 'steps-exist', 'cautions-attached', 'things-exist',
  'records-exist', 'feeds-recorded', 'rows-reached', 'seats-touch', 'hazards-cautioned', 'pins-complete',
  'unplugged-safe',
]); // biome-ignore format: names read across

const partOf = ({ place }: Finding): string => place.pointer.split('/')[1] ?? '';

const errorsFirst = (findings: readonly Finding[]): Finding[] => [
  ...findings.filter(({ severity }) => severity === 'error'),
  ...findings.filter(({ severity }) => severity !== 'error'),
];

export function checkDraft(draft: DeckDraft): DraftCheck {
  const value = finishDraft(draft);
  const shape = checkShape(value);
  if (shape.ok) {
    const found = errorsFirst(checkRules(shape.value));
    return {
      missing: [],
      found,
      deck: found.some(({ severity }) => severity === 'error') ? null : shape.value,
    };
  }
  const missing = shape.error;
  const lacking = new Set(missing.map(partOf));
  const whole = Object.fromEntries(Object.entries(value).filter(([part]) => !lacking.has(part)));
  const rest = checkShape({ ...UNNAMED, ...whole });
  if (!rest.ok) return { missing, found: [], deck: null };
  const found = checkRules(rest.value).filter(({ rule }) => !LOOKS_ELSEWHERE.has(rule));
  return { missing, found: errorsFirst(found), deck: null };
}
