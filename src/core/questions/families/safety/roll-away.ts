/** What holds the vehicle, and which single action leaves nothing holding it? Sets, worked out, never a story. */
import type { Ref, Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Family, Lure } from '../../question.ts';
import { setAnswer } from '../chart-parts.ts';

const FACT = 'skill:roll-away';

/** The pawl holds through the unit and the shafts; the other two hold at the wheels. */
const MEANS = ['pawl', 'brake', 'chocks'] as const;
type Means = (typeof MEANS)[number];

/** What each action takes away. The last two take nothing away. */
const ACTIONS: Readonly<Record<string, Means | null>> = {
  'draw-shaft': 'pawl',
  'lever-out-of-park': 'pawl',
  'unit-down': 'pawl',
  'brake-off': 'brake',
  'chocks-away': 'chocks',
  'drain-fluid': null,
  'pan-off': null,
};

/** What takes the pawl's way to the wheels away. */
const THROUGH_SHAFTS = ['draw-shaft', 'unit-down'];

/** Neutral and park rows that carry a caution: without one to show first, the question is not asked. */
function standingRefs({ deck }: Unit): Ref[] {
  const cautioned = new Set((deck.cautions ?? []).flatMap(({ attachedTo }) => attachedTo));
  return (deck.chart.neutral ?? []).map(({ id }): Ref => `neutral:${id}`).filter((ref) => cautioned.has(ref));
}

export const rollAway: Family = {
  id: 'roll-away',
  level: 'reason',
  form: 'set',
  facts: (unit) => (standingRefs(unit).some((ref) => unit.sure(ref)) ? [FACT] : []),
  pose(unit, fact, random) {
    const uses = standingRefs(unit).filter((ref) => unit.sure(ref));
    const holding = random.pick<readonly Means[]>([['pawl'], ['brake'], ['chocks']]);
    const actions = random.shuffle(Object.keys(ACTIONS));
    const leavesNothing = (action: string) =>
      holding.filter((means) => means !== ACTIONS[action]).length === 0;
    const right = actions.filter(leavesNothing);
    const takesAway = (...means: readonly Means[]) =>
      actions.filter((action) => means.includes(ACTIONS[action] as Means));
    const lures: Lure[] = [
      { answer: setAnswer(takesAway('brake', 'chocks')), slipUp: 'park-always-holds' },
      { answer: setAnswer(takesAway(...MEANS)), slipUp: 'counts-what-is-not-on' },
      {
        answer: setAnswer(right.filter((action) => !THROUGH_SHAFTS.includes(action))),
        slipUp: 'pawl-without-shafts',
      },
    ];
    return {
      facts: [fact],
      uses,
      prompt: say('roll-away.prompt', {
        holding: holding.map((means) => say(`roll-away.holds-${means}`)),
        missing: MEANS.filter((means) => !holding.includes(means)).map((means) =>
          say(`roll-away.not-${means}`),
        ),
      }),
      space: {
        form: 'set',
        options: actions.map((id) => ({ id, label: say(`roll-away.action-${id}`) })),
      },
      answers: [setAnswer(right)],
      lures: lures.filter(({ answer }) => answer.form === 'set' && answer.picks.length > 0),
      explanation: {
        row: say('roll-away.row', { holding: holding.map((means) => say(`roll-away.holds-${means}`)) }),
        reason: say(`roll-away.reason-${holding[0]!}`),
        more: [say('roll-away.pawl'), say('roll-away.two-means')],
      },
      isRight(answer) {
        if (answer.form !== 'set') return false;
        // By what is left, means by means: an action is right when each thing that holds is the one it takes.
        return actions.every((action) => {
          const left = new Set<string>(holding);
          left.delete(ACTIONS[action] ?? '');
          return (left.size === 0) === answer.picks.includes(action);
        });
      },
    };
  },
};
