/**
 * A shift that leaves ranges out, as a kickdown does: what does each element do? The rows left out are shown,
 * the first and the last are not, so that they have to be remembered and set against each other.
 */
import type { Random } from '../../random.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import {
  distinctLures,
  elementNames,
  elementOptions,
  neighboursOf,
  rangeFact,
  rawApplied,
  rowInWords,
} from './chart-parts.ts';
import { perUnit } from './per-unit.ts';
import {
  CHANGES,
  type Change,
  changeOf,
  elementsAsked,
  elementsThat,
  forwardLadder,
  type Shift,
} from './shift-parts.ts';

const FACT = 'skill:skip-shift';
/** Downshifts by several ranges are what a driver asks for. */
const DOWN_OF_THREE = 2;

interface Skip extends Shift {
  /** From the first range to the last, those left out between them. */
  readonly path: readonly Range[];
}

/** Shifts up that leave out at least one range, every row on the way verified. */
const skips = perUnit((unit: Unit): Skip[] => {
  const ladder = forwardLadder(unit);
  return ladder
    .flatMap((from, place) =>
      ladder.slice(place + 2).map((to) => ({ from, to, path: ladder.slice(place, ladder.indexOf(to) + 1) })),
    )
    .filter(({ path }) => path.every((range) => unit.sure(range.ref)));
});

function draw(unit: Unit, random: Random): Skip {
  const { from, to, path } = random.pick(skips(unit));
  return random.int(1, 3) <= DOWN_OF_THREE
    ? { from: to, to: from, path: path.toReversed() }
    : { from, to, path };
}

/** What the element does last on its way through every range between. */
function lastChange(element: string, { path }: Skip): Change {
  const changes = path.slice(1).map((to, place) => changeOf(element, { from: path[place]!, to }));
  return (
    changes.findLast((change) => change === 'comes-on' || change === 'goes-off') ??
    changeOf(element, { from: path[0]!, to: path[0]! })
  );
}

export const skipShift: Family = {
  id: 'skip-shift',
  level: 'apply',
  form: 'pair',
  facts: (unit) => (skips(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || skips(unit).length === 0) return undefined;
    const shift = draw(unit, random);
    const { from, to, path } = shift;
    const elements = elementsAsked(unit, shift, random);
    const told = (rule: (element: string) => Change): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(elements.map((id) => [id, rule(id)])),
    });
    const read = (id: string) => changeOf(id, shift);
    const lures: Lure[] = [
      { answer: told((id) => lastChange(id, shift)), slipUp: 'steps-added', fact },
      { answer: told((id) => changeOf(id, { from: to, to: from })), slipUp: 'release-apply-swapped', fact },
      {
        answer: told((id) => changeOf(id, { from: path.at(-2)!, to })),
        slipUp: 'last-step-only',
        fact,
      },
      {
        answer: told((id) => changeOf(id, { from, to: path[1]! })),
        slipUp: 'first-step-only',
        fact,
      },
      {
        answer: told((id) => (read(id) === 'stays-on' ? 'comes-on' : read(id))),
        slipUp: 'held-through-counted',
      },
      ...neighboursOf(unit, to).map(
        (row): Lure => ({
          answer: told((id) => changeOf(id, { from, to: row })),
          slipUp: 'neighbour-range',
          fact: rangeFact(to.id),
        }),
      ),
    ];
    const list = (change: Change) => elementsThat(unit, change, shift);
    const named = (change: Change) => ({ count: list(change).length, elements: elementNames(list(change)) });
    const [rawFrom, rawTo] = [rawApplied(unit, from.id), rawApplied(unit, to.id)];
    const between = path.slice(1, -1);
    return {
      facts: [fact, rangeFact(from.id), rangeFact(to.id)],
      uses: path.map((range) => range.ref),
      prompt: say('skip-shift.prompt', { from: thing('range', from.id), to: thing('range', to.id) }),
      drawing: {
        kind: 'chart',
        rows: path.map(({ id }) => id),
        hiddenRows: [from.id, to.id],
      },
      space: {
        form: 'pair',
        left: elementOptions(unit).filter((option) => elements.includes(option.id)),
        right: CHANGES.map((id) => ({ id, label: say(`change.${id}`) })),
      },
      answers: [told(read)],
      lures: distinctLures(lures),
      explanation: {
        row: say('shift-changes.row', {
          off: say('shift.off', named('goes-off')),
          on: say('shift.on', named('comes-on')),
        }),
        reason: say('skip-shift.reason', {
          count: between.length,
          ranges: between.map(({ id }) => thing('range', id)),
        }),
        more: [
          rowInWords(from),
          rowInWords(to),
          list('stays-on').length > 0
            ? say('shift-changes.held', named('stays-on'))
            : say('shift-changes.none-held'),
        ],
        drawing: { kind: 'chart', rows: path.map(({ id }) => id), litRows: [from.id, to.id] },
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        elements.every((id) => {
          const on = answer.pairs[id] === 'comes-on' || answer.pairs[id] === 'stays-on';
          const was = answer.pairs[id] === 'goes-off' || answer.pairs[id] === 'stays-on';
          return rawTo.includes(id) === on && rawFrom.includes(id) === was;
        }),
    };
  },
};
