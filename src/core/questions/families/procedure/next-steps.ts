/**
 * Some steps are done, with all that had to come before them: which of these may be done next? All that may, not
 * the one that the sheet happens to list.
 */
import { type Random, randomFrom, seedOf } from '../../../random.ts';
import { beforeOf } from '../../../sequence/precedence.ts';
import { say } from '../../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import {
  beforeFact,
  doneWith,
  pathBetween,
  reasonLine,
  stepRef,
  stepText,
  stripWorks,
  type Work,
  workName,
} from './work-parts.ts';

/** Four are guessed once in 16. */
const FEWEST_OPTIONS = 4;
const MOST_OPTIONS = 6;
/** Steps ticked on the sheet. */
const MOST_TICKED = 4;
/** States drawn until one gives a question. */
const DRAWS = 16;

interface Asked {
  readonly work: Work;
  readonly step: string;
}

interface State {
  readonly ticked: readonly string[];
  readonly shown: readonly string[];
  /** Of those shown, the ones that may be done, in the order of the sheet. */
  readonly right: readonly string[];
  /** Of those shown, the ones that lack something. */
  readonly early: readonly string[];
}

const factOf = ({ work, step }: Asked): FactId => beforeFact(work, step);

const inSheetOrder = ({ sequence }: Work, ids: readonly string[]): string[] =>
  sequence.steps.map(({ id }) => id).filter((id) => ids.includes(id));

const needsOf = ({ full }: Work, id: string): string[] => [...full.direct.get(id)!];

/**
 * Steps to tick: what the asked one needs, all of it or all but one, and others that neither need it nor bring in
 * what is missing.
 */
function drawTicked({ work, step }: Asked, steps: readonly string[], random: Random): string[] {
  const { full } = work;
  const needs = random.shuffle(needsOf(work, step));
  const missing = random.unit() < 0.5 ? needs[0]! : null;
  const keepsOut = (id: string) =>
    id !== step &&
    !beforeOf(full, id).has(step) &&
    (missing === null || (id !== missing && !beforeOf(full, id).has(missing)));
  const own = needs.filter((id) => id !== missing && keepsOut(id));
  const more = random.sample(steps.filter(keepsOut), random.int(0, 2));
  const all = [...new Set([...own, ...more])];
  // Those that others of them bring along need no tick.
  return all.filter((id) => !all.some((other) => beforeOf(full, other).has(id)));
}

function drawState(asked: Asked, random: Random): State | undefined {
  const { work, step } = asked;
  const steps = work.askable;
  const ticked = drawTicked(asked, steps, random);
  if (ticked.length === 0 || ticked.length > MOST_TICKED) return undefined;
  if (!ticked.every((id) => steps.includes(id))) return undefined;
  const [surely, perhaps] = [doneWith(work.known, ticked), doneWith(work.full, ticked)];
  const open = steps.filter((id) => !perhaps.has(id));
  const lacks = (id: string) => needsOf(work, id).filter((need) => !perhaps.has(need)).length;
  const may = open.filter((id) => needsOf(work, id).every((need) => surely.has(need)));
  const mayNot = open.filter((id) => lacks(id) > 0).sort((a, b) => lacks(a) - lacks(b));
  if (![...may, ...mayNot].includes(step)) return undefined;
  const rest = (ids: readonly string[]) => ids.filter((id) => id !== step);
  const mayShown = random.sample(rest(may), random.int(1, 3));
  // Those that lack least are the likeliest to be taken for possible.
  const notShown = random.sample(rest(mayNot).slice(0, MOST_OPTIONS), MOST_OPTIONS - 1 - mayShown.length);
  const shown = [step, ...mayShown, ...notShown];
  const right = inSheetOrder(
    work,
    shown.filter((id) => may.includes(id)),
  );
  const early = shown.filter((id) => mayNot.includes(id));
  const isFair = shown.length >= FEWEST_OPTIONS && right.length > 0 && early.length > 0;
  return isFair ? { ticked, shown, right, early } : undefined;
}

function firstState(asked: Asked, random: Random): State | undefined {
  for (let draw = 0; draw < DRAWS; draw++) {
    const state = drawState(asked, random);
    if (state) return state;
  }
  return undefined;
}

/** Verified steps that need something, each in some state that makes a question. */
const askable = perUnit((unit): Asked[] =>
  stripWorks(unit).flatMap((work) =>
    work.askable
      .filter((step) => work.known.direct.get(step)!.size > 0)
      .map((step) => ({ work, step }))
      .filter((asked) => firstState(asked, randomFrom(seedOf('next-steps', factOf(asked))))),
  ),
);

export const nextSteps: Family = {
  id: 'next-steps',
  level: 'apply',
  form: 'set',
  facts: (unit) => askable(unit).map(factOf),
  pose(unit, fact, random) {
    const asked = askable(unit).find((each) => factOf(each) === fact);
    const state = asked && firstState(asked, random);
    if (!state) return undefined;
    const { work, step } = asked;
    const { known, full, sequence } = work;
    const { ticked, shown, right, early } = state;
    const done = doneWith(full, ticked);
    const lacking = (id: string) => needsOf(work, id).find((need) => !done.has(need))!;
    const answer = (picks: readonly string[]): Answer => ({ form: 'set', picks });
    const facts = askable(unit).map(factOf);
    const lures: Lure[] = [
      ...early.map(
        (id): Lure => ({
          answer: answer([...right, id]),
          slipUp: 'step-too-early',
          fact: beforeFact(work, id),
        }),
      ),
      ...(right.length > 1 ? [{ answer: answer(right.slice(0, 1)), slipUp: 'one-order-only' as const }] : []),
    ];
    const trails = right.flatMap((id) =>
      needsOf(work, id).flatMap((need) => {
        const from = ticked.find((each) => each === need || beforeOf(known, each).has(need))!;
        return pathBetween(work, need, from);
      }),
    );
    const told = early.includes(step) ? step : early[0]!;
    return {
      facts: [
        fact,
        ...shown
          .map((id) => beforeFact(work, id))
          .filter((id) => id !== fact && (facts.includes(id) || lures.some((lure) => lure.fact === id))),
      ],
      uses: [
        `sequence:${sequence.id}`,
        ...[...new Set([...shown, ...ticked, ...trails])].map((id) => stepRef(work, id)),
      ],
      prompt: say('next-steps.prompt', { work: workName(work) }),
      drawing: {
        kind: 'steps',
        sequence: sequence.id,
        work: 'strip',
        steps: inSheetOrder(work, ticked),
        done: ticked,
      },
      space: {
        form: 'set',
        options: random.shuffle(shown).map((id) => ({ id, label: stepText(work, id) })),
      },
      answers: [answer(right)],
      lures,
      explanation: {
        row: say('next-steps.row', {
          steps: right.map((id) => say('step.quoted', { step: stepText(work, id) })),
        }),
        reason: reasonLine(work, lacking(told), told),
        more: shown.map((id) =>
          right.includes(id)
            ? say('next-steps.now', { step: stepText(work, id) })
            : reasonLine(work, lacking(id), id),
        ),
      },
      isRight: (given) => {
        if (given.form !== 'set') return false;
        const recorded = (id: string) => sequence.steps.find((each) => each.id === id)?.after ?? [];
        const finished = new Set<string>();
        const tick = (id: string) => {
          if (finished.has(id)) return;
          finished.add(id);
          for (const need of recorded(id)) tick(need.step);
        };
        ticked.forEach(tick);
        return shown.every(
          (id) => given.picks.includes(id) === recorded(id).every((need) => finished.has(need.step)),
        );
      },
    };
  },
};
