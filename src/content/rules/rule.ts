/** What a rule is: one file, one check across the fields of a deck that has its shape. */
import type { Deck } from '../../core/unit/deck.ts';
import type { Severity, Spot } from '../finding.ts';

export interface Rule {
  /** Lower-kebab, stable; its words are "finding.<id>.found" and "finding.<id>.expected" (or by case). */
  readonly id: string;
  readonly severity: Severity;
  /** Must stand any deck of the right shape, whatever other rules find in it. */
  check(deck: Deck): Spot[];
}
