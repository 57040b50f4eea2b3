/** Every rule, in the order of a deck's parts. Adding one: a file, its words, a line here, a row in the test. */
import type { Deck } from '../../core/unit/deck.ts';
import { type Finding, makeFinding } from '../finding.ts';
import type { Rule } from './rule.ts';

export const RULES: readonly Rule[] = [];

/** All that the rules find, by rule. */
export function checkRules(deck: Deck): Finding[] {
  return RULES.flatMap((rule) =>
    rule.check(deck).map((spot) => makeFinding(rule.id, rule.severity, deck, spot)),
  );
}
