/** Why must one step be done before another? The sheet's own reasons, each of one pair of steps only. */
import { say } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import { beforeFact, stepRef, stepText, stripWorks, type Work } from './work-parts.ts';

const FEWEST_OTHERS = 3;
const MOST_OTHERS = 4;

interface Reasoned {
  readonly work: Work;
  readonly earlier: string;
  readonly later: string;
  readonly reason: string;
}

const factOf = ({ work, later }: Reasoned): FactId => beforeFact(work, later);

const plain = (text: string) => text.trim().toLowerCase();

/** Relations of verified steps with a reason that no other relation of the work gives: what fits all tells nothing. */
const reasoned = perUnit((unit): Reasoned[] =>
  stripWorks(unit).flatMap((work) => {
    const steps = work.askable;
    const all = work.sequence.steps.flatMap(({ id, after = [] }) =>
      after.map(({ step, reason }) => ({ work, earlier: step, later: id, reason })),
    );
    return all.filter(
      (each) =>
        steps.includes(each.earlier) &&
        steps.includes(each.later) &&
        all.filter((other) => plain(other.reason) === plain(each.reason)).length === 1,
    );
  }),
);

/** Reasons of steps that have nothing to do with these two. */
const others = (all: readonly Reasoned[], own: Reasoned): Reasoned[] =>
  all.filter(
    (each) =>
      each.work === own.work &&
      ![each.earlier, each.later].some((id) => id === own.earlier || id === own.later),
  );

const askable = perUnit((unit) =>
  reasoned(unit).filter((each) => others(reasoned(unit), each).length >= FEWEST_OTHERS),
);

export const stepReason: Family = {
  id: 'step-reason',
  level: 'read',
  form: 'one',
  facts: (unit) => [...new Set(askable(unit).map(factOf))],
  pose(unit, fact, random) {
    const own = askable(unit).filter((each) => factOf(each) === fact);
    if (own.length === 0) return undefined;
    const asked = random.pick(own);
    const { work, earlier, later } = asked;
    const wrong = random.sample(others(reasoned(unit), asked), MOST_OTHERS);
    const idOf = (each: Reasoned) => `${each.earlier}>${each.later}`;
    const pick = (each: Reasoned) => ({ form: 'one' as const, pick: idOf(each) });
    const reason = (each: Reasoned) => say('text', { text: each.reason });
    const line = (each: Reasoned) =>
      say('step.because', {
        earlier: stepText(work, each.earlier),
        later: stepText(work, each.later),
        reason: reason(each),
      });
    return {
      facts: [fact],
      uses: [`sequence:${work.sequence.id}`, stepRef(work, earlier), stepRef(work, later)],
      prompt: say('step-reason.prompt', {
        earlier: stepText(work, earlier),
        later: stepText(work, later),
      }),
      space: {
        form: 'one',
        options: random.shuffle([asked, ...wrong]).map((each) => ({ id: idOf(each), label: reason(each) })),
      },
      answers: [pick(asked)],
      lures: wrong.map((each): Lure => ({ answer: pick(each), slipUp: 'reason-of-another-step', fact })),
      explanation: {
        row: line(asked),
        reason: say('step-reason.reason'),
        more: wrong.map(line),
      },
      isRight: (answer) => {
        if (answer.form !== 'one') return false;
        const [from, to] = answer.pick.split('>');
        const told = (id: string | undefined, before: string | undefined) =>
          work.sequence.steps.find((step) => step.id === id)?.after?.find(({ step }) => step === before)
            ?.reason;
        return told(to, from) === told(later, earlier);
      },
    };
  },
};
