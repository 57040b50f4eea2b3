/**
 * Pressure sinks everywhere by the same share while the engine pulls as hard as ever: in which order do four
 * elements, each in a range, begin to slip? By what each holds over what it has to hold. Near ones are not asked.
 */
import { fullLoadNm } from '../../../faults/slip.ts';
import { makeDecimal, type Rational } from '../../../rational.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { perUnit } from '../per-unit.ts';
import { capacityRefs, floatSlipsAt, type Loaded, loadedIn } from './capacity-parts.ts';

const FACT = 'skill:slips-first';
const ITEMS = 4;
const APART = 1.1;
const PRESSURE_APART = 0.02;

interface Item extends Loaded {
  readonly id: string;
  readonly asksNm: Rational;
  readonly margin: Rational;
  /** The margin again, and the share of full pressure at which it begins to slip, both in plain numbers. */
  readonly near: number;
  readonly slipsAt: number;
}

/** Full load is reckoned from every range, so all of them are rested on. */
const rangeRefs = (unit: Unit) => unit.ranges.map(({ ref }) => ref);

const items = perUnit((unit: Unit): Item[] => {
  if (!rangeRefs(unit).every((ref) => unit.sure(ref))) return [];
  return loadedIn(unit).map((loaded) => {
    const asksNm = loaded.share.mul(fullLoadNm(unit)!);
    const margin = loaded.holdsNm.div(asksNm);
    const slipsAt = floatSlipsAt(loaded.element, asksNm.valueOf());
    const id = `${loaded.element.id}/${loaded.range.id}`;
    return { ...loaded, id, asksNm, margin, near: margin.valueOf(), slipsAt };
  });
});

/** Items apart enough to be told one from another, by margin and by the pressure they slip at. */
function apart(list: readonly Item[]): Item[] {
  const taken: Item[] = [];
  for (const item of list) {
    const near = taken.some((other) => {
      const [low, high] = [item, other].sort((a, b) => a.near - b.near) as [Item, Item];
      return high.near < low.near * APART || low.slipsAt - high.slipsAt < PRESSURE_APART;
    });
    if (!near && taken.length < ITEMS) taken.push(item);
  }
  return taken;
}

const byMargin = (list: readonly Item[]) => [...list].sort((a, b) => a.margin.compare(b.margin));
const orderAnswer = (list: readonly Item[]): Answer => ({ form: 'order', order: list.map(({ id }) => id) });

/** The order by a figure; null where two have the same. */
function ordered(list: readonly Item[], figure: (item: Item) => Rational): Item[] | null {
  const sorted = [...list].sort((a, b) => figure(a).compare(figure(b)));
  return sorted.some((item, place) => place > 0 && figure(item).equals(figure(sorted[place - 1]!)))
    ? null
    : sorted;
}

export const slipsFirst: Family = {
  id: 'slips-first',
  level: 'reason',
  form: 'order',
  facts: (unit) => (apart(byMargin(items(unit))).length === ITEMS ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT) return undefined;
    const drawn = [random.shuffle(items(unit)), byMargin(items(unit))]
      .map(apart)
      .find((list) => list.length === ITEMS);
    if (!drawn) return undefined;
    const right = byMargin(drawn);
    const shown = random.shuffle(drawn);
    const lure = (slipUp: SlipUp, order: readonly Item[] | null): Lure[] =>
      order ? [{ answer: orderAnswer(order), slipUp, fact }] : [];
    const names = ({ element, range }: Item) => ({
      element: thing('element', element.id),
      range: thing('range', range.id),
    });
    const nm = (value: Rational) => makeDecimal(value, 0);
    return {
      facts: [fact],
      uses: [...capacityRefs(unit), ...rangeRefs(unit)],
      prompt: say('slips-first.prompt'),
      drawing: {
        kind: 'table',
        columns: [say('slips-first.holds'), say('slips-first.asks')],
        rows: shown.map((item) => ({
          head: say('slips-first.item', names(item)),
          cells: [item.holdsNm, item.asksNm].map((value) => say('slips-first.torque', { torque: nm(value) })),
        })),
      },
      space: {
        form: 'order',
        items: shown.map((item) => ({ id: item.id, label: say('slips-first.item', names(item)) })),
        first: say('slips-first.first'),
        last: say('slips-first.last'),
      },
      answers: [orderAnswer(right)],
      lures: [
        ...lure('order-turned-round', right.toReversed()),
        ...lure(
          'held-torque-alone',
          ordered(drawn, ({ holdsNm }) => holdsNm),
        ),
        ...lure(
          'asked-torque-alone',
          ordered(drawn, ({ asksNm }) => asksNm.neg()),
        ),
        ...lure(
          'torques-subtracted',
          ordered(drawn, ({ holdsNm, asksNm }) => holdsNm.sub(asksNm)),
        ),
      ],
      explanation: {
        row: say('slips-first.row', names(right[0]!)),
        reason: say('slips-first.reason'),
        more: right.map((item) =>
          say('slips-first.line', {
            ...names(item),
            holds: nm(item.holdsNm),
            asks: nm(item.asksNm),
            margin: makeDecimal(item.margin, 2),
          }),
        ),
      },
      // By the pressure at which each begins to slip, springs and all.
      isRight: (answer) => {
        if (answer.form !== 'order') return false;
        const at = answer.order.map((id) => drawn.find((item) => item.id === id)!.slipsAt);
        return at.every((share, place) => place === 0 || share < at[place - 1]!);
      },
    };
  },
};
