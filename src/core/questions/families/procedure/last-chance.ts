/** Something can be measured only for a part of the work: which step takes the last chance away? */
import { closingSteps } from '../../../sequence/last-chance.ts';
import { mustPrecede } from '../../../sequence/precedence.ts';
import type { DeckCheck } from '../../../unit/sequences.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import {
  assemblyWorks,
  doneWith,
  rawBefore,
  reasonLine,
  stepRef,
  stepText,
  stripWorks,
  type Work,
  workName,
} from './work-parts.ts';

const FEWEST_WRONG = 3;
const MOST_WRONG = 5;

interface Asked {
  readonly work: Work;
  readonly check: DeckCheck;
  readonly closing: string;
  readonly wrong: readonly { readonly step: string; readonly slipUp: Lure['slipUp'] }[];
}

const factOf = ({ work, check }: Pick<Asked, 'work' | 'check'>): FactId =>
  `check:${work.sequence.id}/${check.id}/closes`;

/** The one step that closes it in every order; undefined where several can be the first to, or steps are not verified. */
function closingOf(unit: Unit, work: Work, check: DeckCheck): string | undefined {
  const [known, full] = [closingSteps(work.known, check), closingSteps(work.full, check)];
  if (!known.ok || !full.ok || known.value.length !== 1 || full.value[0] !== known.value[0]) return undefined;
  const touched = [...check.needs, ...check.closedBy];
  return touched.every((id) => unit.sure(stepRef(work, id))) ? known.value[0] : undefined;
}

const asked = perUnit((unit): Asked[] =>
  [...stripWorks(unit), ...assemblyWorks(unit)].flatMap((work) =>
    (work.sequence.checks ?? []).flatMap((check): Asked[] => {
      if (check.during !== work.during || !unit.sure(`check:${work.sequence.id}/${check.id}`)) return [];
      const closing = closingOf(unit, work, check);
      const steps = work.askable;
      if (closing === undefined || !steps.includes(closing)) return [];
      const early = doneWith(work.known, check.needs);
      const wrong = steps
        .filter((step) => step !== closing)
        .map((step) => ({
          step,
          slipUp: mustPrecede(work.known, closing, step)
            ? ('chance-missed' as const)
            : early.has(step)
              ? ('not-yet-possible' as const)
              : ('harmless-step-blamed' as const),
        }))
        // One that closes it too, with no fixed order to the first, would be right as well.
        .filter(({ step, slipUp }) => slipUp === 'chance-missed' || !check.closedBy.includes(step));
      return wrong.length < FEWEST_WRONG ? [] : [{ work, check, closing, wrong }];
    }),
  ),
);

export const lastChance: Family = {
  id: 'last-chance',
  level: 'apply',
  form: 'one',
  facts: (unit) => asked(unit).map(factOf),
  pose(unit, fact, random) {
    const own = asked(unit).find((each) => factOf(each) === fact);
    if (!own) return undefined;
    const { work, check, closing } = own;
    // One of each wrong rule first, so that none can be struck out by its kind.
    const kinds = random.shuffle([...new Set(own.wrong.map(({ slipUp }) => slipUp))]);
    const first = kinds.map((kind) => random.pick(own.wrong.filter(({ slipUp }) => slipUp === kind)));
    const rest = own.wrong.filter((each) => !first.includes(each));
    const wrong = [...first, ...random.sample(rest, MOST_WRONG - first.length)];
    const pick = (id: string) => ({ form: 'one' as const, pick: id });
    const shown = random.shuffle([closing, ...wrong.map(({ step }) => step)]);
    return {
      facts: [fact],
      uses: [
        `sequence:${work.sequence.id}`,
        `check:${work.sequence.id}/${check.id}`,
        ...[...new Set([...shown, ...check.needs, ...check.closedBy])].map((id) => stepRef(work, id)),
      ],
      prompt: say('last-chance.prompt', {
        work: workName(work),
        check: say('text', { text: check.text }),
      }),
      space: { form: 'one', options: shown.map((id) => ({ id, label: stepText(work, id) })) },
      answers: [pick(closing)],
      lures: wrong.map(({ step, slipUp }): Lure => ({ answer: pick(step), slipUp, fact })),
      explanation: {
        row: say('last-chance.row', {
          check: say('text', { text: check.text }),
          closing: stepText(work, closing),
        }),
        reason: say('last-chance.needs', {
          count: check.needs.length,
          needs: check.needs.map((id) => say('step.quoted', { step: stepText(work, id) })),
        }),
        more: wrong
          .filter(({ slipUp }) => slipUp === 'chance-missed')
          .map(({ step }) => reasonLine(work, closing, step)),
      },
      // A step closes it when the record says so, and no other such step is sure to come before.
      isRight: (answer) => {
        if (answer.form !== 'one' || !check.closedBy.includes(answer.pick)) return false;
        const before = (earlier: string, later: string) =>
          work.during === 'strip'
            ? rawBefore(work.sequence, earlier, later)
            : work.full.before.get(later)!.has(earlier);
        return !check.closedBy.some((other) => before(other, answer.pick));
      },
    };
  },
};
