/**
 * In the ranges that have an element on, is each other one on in all of them, in some, or in none? From memory:
 * no chart is shown. One-ways are left out: whether a chart marks them beside a brake is custom.
 */
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../question.ts';
import { distinctLures, elementNames, elementOptions, frictionIds, rangeOptions } from './chart-parts.ts';

const FEWEST_RANGES = 2;
const FEWEST_OTHERS = 3;
const MOST_OTHERS = 6;

const SHARES = ['all', 'some', 'none'] as const;
type Share = (typeof SHARES)[number];

const factOf = (element: string): FactId => `element:${element}/company`;

function shareOf(other: string, ranges: readonly Range[]): Share {
  const count = ranges.filter((range) => range.applied.includes(other)).length;
  return count === 0 ? 'none' : count === ranges.length ? 'all' : 'some';
}

const withOn = (unit: Unit, element: string): Range[] =>
  unit.ranges.filter((range) => range.applied.includes(element));

/** Verified brakes and clutches that are on in several ranges, the whole chart verified. */
function askable(unit: Unit): string[] {
  const friction = frictionIds(unit);
  if (unit.ranges.some((range) => !unit.sure(range.ref)) || friction.length <= FEWEST_OTHERS) return [];
  return friction.filter((id) => unit.sure(`element:${id}`) && withOn(unit, id).length >= FEWEST_RANGES);
}

export const elementCompany: Family = {
  id: 'element-company',
  level: 'apply',
  form: 'pair',
  facts: (unit) => askable(unit).map(factOf),
  pose(unit, fact, random) {
    const element = askable(unit).find((id) => factOf(id) === fact);
    if (element === undefined) return undefined;
    const ranges = withOn(unit, element);
    const all = frictionIds(unit).filter((id) => id !== element && unit.sure(`element:${id}`));
    const drawn = random.sample(all, MOST_OTHERS);
    const others = all.filter((id) => drawn.includes(id));
    const told = (rule: (other: string) => Share): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(others.map((id) => [id, rule(id)])),
    });
    const forward = ranges.filter((range) => range.ratio.gt(0n));
    const lures: Lure[] = [
      ...ranges.map(
        (range): Lure => ({
          answer: told((other) => shareOf(other, [range])),
          slipUp: 'one-range-for-all',
          fact,
        }),
      ),
      {
        answer: told((other) => {
          const users = withOn(unit, other);
          return users.length === 0 ? 'none' : shareOf(element, users);
        }),
        slipUp: 'asked-the-other-way',
      },
      ...(forward.length > 0
        ? [
            {
              answer: told((other) => shareOf(other, forward)),
              slipUp: 'reverse-left-out' as const,
              fact,
            },
          ]
        : []),
    ];
    const listed = (share: Share) => others.filter((other) => shareOf(other, ranges) === share);
    const [always, never] = [listed('all'), listed('none')];
    return {
      facts: [fact],
      uses: [
        ...[element, ...others].map((id) => `element:${id}` as const),
        ...unit.ranges.map((range) => range.ref),
      ],
      prompt: say('element-company.prompt', { element: thing('element', element) }),
      drawing: { kind: 'train', applied: [element] },
      space: {
        form: 'pair',
        left: elementOptions(unit).filter((option) => others.includes(option.id)),
        right: SHARES.map((id) => ({ id, label: say(`element-company.${id}`) })),
      },
      answers: [told((other) => shareOf(other, ranges))],
      lures: distinctLures(lures),
      explanation: {
        row: say('element-company.row', {
          element: thing('element', element),
          ranges: rangeOptions(ranges).map(({ label }) => label),
        }),
        reason: say('element-company.reason', {
          alwaysCount: always.length,
          always: elementNames(always),
          neverCount: never.length,
          never: elementNames(never),
        }),
        more: others.map((other) => {
          const shared = ranges.filter((range) => range.applied.includes(other));
          return say('element-company.line', {
            other: thing('element', other),
            count: shared.length,
            ranges: shared.map(({ id }) => thing('range', id)),
          });
        }),
        drawing: { kind: 'chart', litColumns: [element], litRows: ranges.map(({ id }) => id) },
      },
      // By what is seen together: an element misses none of these rows, misses some, or is met in none.
      isRight: (answer) => {
        if (answer.form !== 'pair') return false;
        const rows = unit.deck.chart.ranges.filter((row) => row.applied.includes(element));
        const met = new Set(rows.flatMap((row) => row.applied));
        const missed = new Set(others.filter((id) => rows.some((row) => !row.applied.includes(id))));
        return others.every((id) => {
          const given = answer.pairs[id];
          if (!met.has(id)) return given === 'none';
          return given === (missed.has(id) ? 'some' : 'all');
        });
      },
    };
  },
};
