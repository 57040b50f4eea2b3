/**
 * What a finished self-check shows: right of asked by area with an interval, the slip-ups and their evidence,
 * and the answers that were sure and wrong. An answer left open counts as not right.
 */
import { finishDraft } from '../questions/draft.ts';
import { judge, type Verdict } from '../questions/judge.ts';
import type { Question } from '../questions/question.ts';
import type { SlipUp } from '../questions/slip-ups.ts';
import type { Unit } from '../unit/unit.ts';
import { AREAS, type Area } from './areas.ts';
import type { SelfCheck } from './check.ts';
import { type Interval, LEAST_ANSWERS, type Score, wilson } from './interval.ts';
import { chanceToReach } from './outlook.ts';

export interface Answered {
  readonly index: number;
  readonly area: Area;
  readonly question: Question;
  readonly unit: Unit;
  /** Null when it was left open. */
  readonly verdict: Verdict | null;
  readonly sure: boolean | null;
}

export interface AreaOutcome extends Score {
  readonly area: Area;
  readonly interval: Interval;
  /** False under ten answers: then the figures stand without a verdict. */
  readonly enough: boolean;
}

export interface Outcome extends Score {
  readonly interval: Interval;
  readonly areas: readonly AreaOutcome[];
  /** Probability to reach the person's threshold on another check of the same make. */
  readonly chance: number;
  readonly answered: readonly Answered[];
  readonly slipUps: readonly { readonly slipUp: SlipUp; readonly evidence: readonly Answered[] }[];
  readonly sureAndWrong: readonly Answered[];
}

const isRight = ({ verdict }: Answered) => verdict?.right === true;

/** Judges every item; `open` makes its question again. Items that cannot be made again are left out. */
export function outcomeOf(
  check: SelfCheck,
  open: (index: number) => { readonly question: Question; readonly unit: Unit } | undefined,
): Outcome {
  const answered = check.items.flatMap((item, index): Answered[] => {
    const opened = open(index);
    if (!opened) return [];
    const draft = check.drafts[index];
    const answer = draft && finishDraft(opened.question.space, draft);
    const verdict = answer ? judge(opened.question, answer) : null;
    return [{ index, area: item.area, ...opened, verdict, sure: check.sure[index] ?? null }];
  });
  const scoreOf = (some: readonly Answered[]): Score => ({
    right: some.filter(isRight).length,
    asked: some.length,
  });
  const areas = AREAS.flatMap((area): AreaOutcome[] => {
    const score = scoreOf(answered.filter((one) => one.area === area));
    if (score.asked === 0) return [];
    return [
      { area, ...score, interval: wilson(score.right, score.asked), enough: score.asked >= LEAST_ANSWERS },
    ];
  });
  const evidence = new Map<SlipUp, Answered[]>();
  for (const one of answered)
    for (const slipUp of one.verdict?.slipUps ?? [])
      evidence.set(slipUp, [...(evidence.get(slipUp) ?? []), one]);
  const whole = scoreOf(answered);
  return {
    ...whole,
    interval: wilson(whole.right, whole.asked),
    areas,
    chance: chanceToReach(areas, check.blueprint.threshold),
    answered,
    slipUps: [...evidence]
      .map(([slipUp, found]) => ({ slipUp, evidence: found }))
      .sort((a, b) => b.evidence.length - a.evidence.length || (a.slipUp < b.slipUp ? -1 : 1)),
    sureAndWrong: answered.filter((one) => one.sure === true && !isRight(one)),
  };
}
