/** A question's reference: what a person can read out or send so that another opens the very same question. */
import type { FactId, Question } from './question.ts';

export interface Reference {
  readonly deck: string;
  readonly revision: number;
  readonly family: string;
  readonly fact: FactId;
  readonly seed: number;
}

/** "kestrel-7 r3 row-ratio range:4/ratio 17" */
export function makeReference({ deck, family, fact, seed }: Question): string {
  return `${deck.id} r${deck.revision} ${family} ${fact} ${seed}`;
}

/** The inverse of `makeReference`; null for any other text. */
export function parseReference(text: string): Reference | null {
  const match = /^(\S+) r(\d{1,9}) (\S+) (\S+) (-?\d{1,10})$/.exec(text.trim());
  if (!match) return null;
  const [, deck, revision, family, fact, seed] = match;
  return { deck: deck!, revision: Number(revision), family: family!, fact: fact!, seed: Number(seed) };
}
