/** What comes of leaving a step out? The sheet's own notes, each of one step only. */
import type { DeckStep } from '../../../unit/sequences.ts';
import { say } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import { reasonLine, stepRef, stepText, stripWorks, type Work } from './work-parts.ts';

const FEWEST = 4;
const MOST_OTHERS = 4;

interface Noted {
  readonly work: Work;
  readonly step: DeckStep;
}

const factOf = ({ work, step }: Noted): FactId => `step:${work.sequence.id}/${step.id}/skipped`;

const plain = (text: string | undefined) => text?.trim().toLowerCase();

const noted = perUnit((unit): Noted[] =>
  stripWorks(unit).flatMap((work) => {
    const steps = work.askable;
    const all = work.sequence.steps.filter(({ ifSkipped }) => ifSkipped);
    const own = all
      .filter(({ id }) => steps.includes(id))
      .filter((step) => all.filter((other) => plain(other.ifSkipped) === plain(step.ifSkipped)).length === 1)
      .map((step) => ({ work, step }));
    return own.length < FEWEST ? [] : own;
  }),
);

export const stepSkipped: Family = {
  id: 'step-skipped',
  level: 'read',
  form: 'one',
  facts: (unit) => noted(unit).map(factOf),
  pose(unit, fact, random) {
    const asked = noted(unit).find((each) => factOf(each) === fact);
    if (!asked) return undefined;
    const { work, step } = asked;
    const others = random.sample(
      noted(unit).filter((each) => each.work === work && each !== asked),
      MOST_OTHERS,
    );
    const pick = (each: Noted) => ({ form: 'one' as const, pick: each.step.id });
    const outcome = (each: Noted) => say('text', { text: each.step.ifSkipped! });
    const line = (each: Noted) =>
      say('step-skipped.line', { step: stepText(work, each.step.id), outcome: outcome(each) });
    const needed = work.sequence.steps.filter(({ after = [] }) =>
      after.some((each) => each.step === step.id),
    );
    return {
      facts: [fact],
      uses: [`sequence:${work.sequence.id}`, stepRef(work, step.id)],
      prompt: say('step-skipped.prompt', { step: stepText(work, step.id) }),
      space: {
        form: 'one',
        options: random
          .shuffle([asked, ...others])
          .map((each) => ({ id: each.step.id, label: outcome(each) })),
      },
      answers: [pick(asked)],
      lures: others.map((each): Lure => ({ answer: pick(each), slipUp: 'outcome-of-another-step', fact })),
      explanation: {
        row: line(asked),
        reason: say('step-skipped.reason'),
        more: [
          ...needed
            .filter(({ id }) => unit.sure(stepRef(work, id)))
            .map(({ id }) => reasonLine(work, step.id, id)),
          ...others.map(line),
        ],
      },
      isRight: (answer) => {
        const told = (id: string) =>
          plain(
            unit.deck
              .sequences!.find(({ id: own }) => own === work.sequence.id)!
              .steps.find((each) => each.id === id)?.ifSkipped,
          );
        return answer.form === 'one' && told(answer.pick) === told(step.id);
      },
    };
  },
};
