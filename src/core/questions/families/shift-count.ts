/** How many elements change in each of several shifts, to the next range and further? The chart is shown. */
import type { Random } from '../../random.ts';
import type { Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { distinctLures, elementNames, rawApplied } from './chart-parts.ts';
import { elementsThat, everyShift, forwardLadder, type Shift } from './shift-parts.ts';

const FACT = 'skill:shift-count';
const SHIFTS = 4;
/** More numbers than this to choose from are a nuisance on a phone. */
const MOST_COUNTS = 6;

type Rule = (shift: Shift) => number;

const idOf = ({ from, to }: Shift) => `${from.id}>${to.id}`;

const changedIn = (unit: Unit, shift: Shift): string[] => [
  ...elementsThat(unit, 'goes-off', shift),
  ...elementsThat(unit, 'comes-on', shift),
];

/** Shifts up and down with different counts among them; undefined when the draw has one count only. */
function drawShifts(unit: Unit, random: Random): Shift[] | undefined {
  const all = everyShift(unit);
  const [first] = random.sample(all, 1);
  if (!first) return undefined;
  const count: Rule = (shift) => changedIn(unit, shift).length;
  const [other] = random.sample(
    all.filter((shift) => count(shift) !== count(first)),
    1,
  );
  if (!other) return undefined;
  const rest = random.sample(
    all.filter((shift) => shift !== first && shift !== other),
    SHIFTS - 2,
  );
  const drawn = [first, other, ...rest];
  if (drawn.length < SHIFTS) return undefined;
  return all
    .filter((shift) => drawn.includes(shift))
    .map(({ from, to }) => (random.int(0, 1) === 0 ? { from, to } : { from: to, to: from }));
}

export const shiftCount: Family = {
  id: 'shift-count',
  level: 'apply',
  form: 'pair',
  facts: (unit) => {
    const all = everyShift(unit);
    return all.length >= SHIFTS && new Set(all.map((shift) => changedIn(unit, shift).length)).size > 1
      ? [FACT]
      : [];
  },
  pose(unit, fact, random) {
    const shifts = fact === FACT ? drawShifts(unit, random) : undefined;
    if (!shifts) return undefined;
    const ladder = forwardLadder(unit);
    const right: Rule = (shift) => changedIn(unit, shift).length;
    const comingOn: Rule = (shift) => elementsThat(unit, 'comes-on', shift).length;
    const touched: Rule = (shift) => right(shift) + elementsThat(unit, 'stays-on', shift).length;
    const stepByStep: Rule = ({ from, to }) => {
      const [a, b] = [ladder.indexOf(from), ladder.indexOf(to)];
      const path = ladder.slice(Math.min(a, b), Math.max(a, b) + 1);
      return path.slice(1).reduce((sum, row, place) => sum + right({ from: path[place]!, to: row }), 0);
    };
    const counted = (rule: Rule): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(shifts.map((shift) => [idOf(shift), String(rule(shift))])),
    });
    const rules: (readonly [Rule, Lure['slipUp']])[] = [
      [comingOn, 'applied-only'],
      [touched, 'held-through-counted'],
      ...(ladder.every((range) => unit.sure(range.ref)) ? [[stepByStep, 'steps-added'] as const] : []),
    ];
    const numbersOf = (some: readonly Rule[]) => [...new Set(some.flatMap((rule) => shifts.map(rule)))];
    const kept = rules.filter(
      (_, place) =>
        numbersOf([right, ...rules.slice(0, place + 1).map(([rule]) => rule)]).length <= MOST_COUNTS,
    );
    const numbers = numbersOf([right, ...kept.map(([rule]) => rule)]).sort((a, b) => a - b);
    return {
      facts: [fact],
      uses: [...new Set(shifts.flatMap(({ from, to }) => [from.ref, to.ref]))],
      prompt: say(
        unit.deck.train.elements.some((element) => element.kind === 'one-way')
          ? 'shift-count.prompt-with-one-ways'
          : 'shift-count.prompt',
      ),
      drawing: { kind: 'chart' },
      space: {
        form: 'pair',
        left: shifts.map((shift) => ({
          id: idOf(shift),
          label: say('shift.named', { from: thing('range', shift.from.id), to: thing('range', shift.to.id) }),
        })),
        right: numbers.map((count) => ({ id: String(count), label: say('shift.changes', { count }) })),
      },
      answers: [counted(right)],
      lures: distinctLures(kept.map(([rule, slipUp]): Lure => ({ answer: counted(rule), slipUp, fact }))),
      explanation: {
        row: say('shift-count.row', { counts: shifts.map((shift) => String(right(shift))) }),
        reason: say('shift-count.reason'),
        more: shifts.map((shift) => {
          const [off, on] = [elementsThat(unit, 'goes-off', shift), elementsThat(unit, 'comes-on', shift)];
          return say('shift-count.detail', {
            from: thing('range', shift.from.id),
            to: thing('range', shift.to.id),
            off: say('shift.off', { count: off.length, elements: elementNames(off) }),
            on: say('shift.on', { count: on.length, elements: elementNames(on) }),
          });
        }),
        drawing: { kind: 'chart' },
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        shifts.every(({ from, to }) => {
          const [before, after] = [rawApplied(unit, from.id), rawApplied(unit, to.id)];
          const either = new Set([...before, ...after]);
          const both = before.filter((id) => after.includes(id));
          return answer.pairs[`${from.id}>${to.id}`] === String(either.size - both.length);
        }),
    };
  },
};
