/** What does each element do in a shift to the next range, up or down? From memory: no row is shown. */
import { say, thing } from '../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../question.ts';
import {
  distinctLures,
  elementNames,
  elementOptions,
  neighboursOf,
  rangeFact,
  rawApplied,
  rowInWords,
} from './chart-parts.ts';
import {
  CHANGES,
  type Change,
  changeOf,
  elementsAsked,
  elementsThat,
  nextShifts,
  type Shift,
} from './shift-parts.ts';

const factOf = ({ from, to }: Shift): FactId => `shift:${from.id}>${to.id}`;

export const shiftChanges: Family = {
  id: 'shift-changes',
  level: 'apply',
  form: 'pair',
  facts: (unit) => nextShifts(unit).map(factOf),
  pose(unit, fact, random) {
    const up = nextShifts(unit).find((candidate) => factOf(candidate) === fact);
    if (!up) return undefined;
    const shift: Shift = random.int(0, 1) === 0 ? up : { from: up.to, to: up.from };
    const { from, to } = shift;
    const elements = elementsAsked(unit, shift, random);
    const told = (rule: (element: string) => Change): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(elements.map((id) => [id, rule(id)])),
    });
    const swap: Record<Change, Change> = {
      'comes-on': 'goes-off',
      'goes-off': 'comes-on',
      'stays-on': 'stays-on',
      'stays-off': 'stays-off',
    };
    const read = (id: string): Change => changeOf(id, shift);
    const lures: Lure[] = [
      { answer: told((id) => swap[read(id)]), slipUp: 'release-apply-swapped', fact },
      {
        answer: told((id) => (read(id) === 'stays-on' ? 'comes-on' : read(id))),
        slipUp: 'held-through-counted',
        fact,
      },
      {
        answer: told((id) => (read(id) === 'goes-off' ? 'stays-on' : read(id))),
        slipUp: 'applied-only',
        fact,
      },
      ...neighboursOf(unit, to)
        .filter((row) => row.id !== from.id)
        .map((row): Lure => {
          const answer = told((id) => changeOf(id, { from, to: row }));
          return { answer, slipUp: 'neighbour-range', fact: rangeFact(to.id) };
        }),
    ];
    const list = (change: Change) => elementsThat(unit, change, shift);
    const said = (change: Change, key: string) =>
      list(change).length > 0 ? [say(key, { elements: elementNames(list(change)) })] : [];
    const [rawFrom, rawTo] = [rawApplied(unit, from.id), rawApplied(unit, to.id)];
    return {
      facts: [fact, rangeFact(from.id), rangeFact(to.id)],
      uses: [from.ref, to.ref],
      prompt: say('shift-changes.prompt', { from: thing('range', from.id), to: thing('range', to.id) }),
      drawing: { kind: 'chart', rows: [from.id, to.id], hiddenRows: [from.id, to.id] },
      space: {
        form: 'pair',
        left: elementOptions(unit).filter((option) => elements.includes(option.id)),
        right: CHANGES.map((id) => ({ id, label: say(`change.${id}`) })),
      },
      answers: [told(read)],
      lures: distinctLures(lures),
      explanation: {
        row: say('shift-changes.row', {
          off: say('shift.off', { count: list('goes-off').length, elements: elementNames(list('goes-off')) }),
          on: say('shift.on', { count: list('comes-on').length, elements: elementNames(list('comes-on')) }),
        }),
        reason:
          list('stays-on').length > 0
            ? say('shift-changes.held', {
                count: list('stays-on').length,
                elements: elementNames(list('stays-on')),
              })
            : say('shift-changes.none-held'),
        more: [
          rowInWords(from),
          rowInWords(to),
          ...said('stays-off', 'shift-changes.idle'),
          say('shift-changes.ratios', {
            before: from.ratio.compare(to.ratio) > 0 ? 'higher' : 'lower',
            from: thing('range', from.id),
            to: thing('range', to.id),
          }),
        ],
        drawing: { kind: 'chart', rows: [from.id, to.id], litRows: [to.id], showRatios: true },
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
