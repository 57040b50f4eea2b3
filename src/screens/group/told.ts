/** What the board says of facts, confusions and likelihoods, as phrases. */
import type { Confusion } from '../../core/group/confusions.ts';
import type { AnswerReadiness } from '../../core/group/readiness-by-answers.ts';
import type { Fact } from '../../core/questions/facts.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';

export const percent = (share: number): number => Math.round(share * 100);

/** A fact by the kind of question it is first asked in, and its own id. */
export const factPhrase = (fact: Fact): Phrase =>
  phrase('group.fact', { kind: phrase(`family.${fact.families[0]!}`), fact: fact.id });

export function confusionPhrase({ about, right, given, swapped }: Confusion): Phrase {
  if (swapped) return phrase('group.swapped', { right, given });
  return about
    ? phrase('group.instead-about', { right, given, about })
    : phrase('group.instead', { right, given });
}

/** The number behind a readiness, and its interval. */
export const readinessPhrase = ({ tried, right, of, low, high }: AnswerReadiness): Phrase =>
  phrase('group.readiness', { tried, right, of, low: percent(low), high: percent(high) });
