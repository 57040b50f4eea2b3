/**
 * The question at hand of a drill as it was made, kept so that it need not be made again before it is seen. Only a
 * copy: where it does not fit, or is gone, deck, family and seed give the same question. docs/spec/storage.md H1 to H3.
 */
import type { Drill } from '../core/memory/drill.ts';
import type { DeckNames } from '../core/questions/names.ts';
import type { Question } from '../core/questions/question.ts';

export interface AtHand {
  /** Which build of the program made it: another may make it otherwise. */
  readonly build: string;
  /** The language that its sentences are in. */
  readonly language: string;
  readonly drill: string;
  readonly index: number;
  readonly question: Question;
  /** The sentences that stood on the screen, by their phrases as JSON. */
  readonly said: Readonly<Record<string, string>>;
  /** What the deck calls its things, for whatever else is to be said. */
  readonly names: DeckNames;
}

/** Its place among the settings. */
export const AT_HAND = 'question-at-hand';

/** Whether it is the question that this drill has come to. */
export function isAtHand({ drill, index, question }: AtHand, under: Drill): boolean {
  const item = under.items[under.index];
  return (
    drill === under.id &&
    index === under.index &&
    question.deck?.id === under.deck &&
    question.deck.revision === under.revision &&
    question.family === item?.family &&
    question.fact === item.fact &&
    question.seed === item.seed
  );
}
