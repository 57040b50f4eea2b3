/**
 * Readiness told from answers alone: of the assigned facts, how many were right the last time a day began with
 * them. It is called likely readiness, and comes with the number of facts behind it: what was never asked is not
 * known, so it widens the interval all the way. Wilson's interval for the facts that were tried (docs/sources.md
 * [I1]). No memory model is in it, so it says how things stood at the last answers, not at the class date; what
 * the model expects under a plan (src/core/plan/readiness.ts) takes a plan solved for each person.
 */

import type { Threshold } from '../assign/assignment.ts';
import { UNSEEN_RECALL } from '../memory/credit.ts';
import type { Fact } from '../questions/facts.ts';
import { type Interval, wilson } from '../self-check/interval.ts';
import { type LearnerDigest, TRIES } from './digest.ts';

export interface AnswerReadiness extends Interval {
  /** Share of the assigned facts expected to be known; a fact never asked counts 0.3. */
  readonly share: number;
  /** Assigned facts that were asked for, and those right at the latest first try. */
  readonly tried: number;
  readonly right: number;
  readonly of: number;
  /** Facts with a caution: right at the latest first try, and how many are assigned. */
  readonly cautionedRight: number;
  readonly cautionedOf: number;
}

/** likely: ready by every reading of the interval. unlikely: by none. open: too few answers to say. */
export type Likely = 'likely' | 'unlikely' | 'open';

/** Where each assigned fact stands in a digest; −1 for one never needed. */
export function placesOf(digest: LearnerDigest, facts: readonly Fact[]): number[] {
  const places = new Map(digest.facts.map((fact, place) => [fact, place]));
  return facts.map(({ id }) => places.get(id) ?? -1);
}

/** Readiness for the assigned facts. With none assigned the share is 0 of 0, and nothing is known. */
export function readinessByAnswers(
  digest: LearnerDigest,
  facts: readonly Fact[],
  places: readonly number[] = placesOf(digest, facts),
): AnswerReadiness {
  const { latest } = digest.columns;
  let [tried, right, cautionedRight, cautionedOf] = [0, 0, 0, 0];
  for (const [index, place] of places.entries()) {
    const outcome = place < 0 ? TRIES.none : latest[place]!;
    const cautioned = facts[index]!.cautioned;
    if (cautioned) cautionedOf++;
    if (outcome === TRIES.none) continue;
    tried++;
    if (outcome !== TRIES.right) continue;
    right++;
    if (cautioned) cautionedRight++;
  }
  const of = facts.length;
  const untried = of - tried;
  const { low, high } = wilson(right, tried);
  const share = (part: number) => (of === 0 ? 0 : part / of);
  return {
    share: share(right + UNSEEN_RECALL * untried),
    low: share(low * tried),
    high: of === 0 ? 1 : share(high * tried + untried),
    tried,
    right,
    of,
    cautionedRight,
    cautionedOf,
  };
}

/** Whether somebody is likely ready; a cautioned fact missed the last time rules it out where the threshold says so. */
export function likelyReady(readiness: AnswerReadiness, { share, cautioned }: Threshold): Likely {
  if (readiness.high < share) return 'unlikely';
  const safe = !cautioned || readiness.cautionedRight === readiness.cautionedOf;
  return readiness.low >= share && safe ? 'likely' : 'open';
}
