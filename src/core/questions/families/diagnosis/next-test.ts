/**
 * Some suspects are left, and what four tests would show with each is in view: in which order do the tests tell
 * most for their effort? By suspects struck out on average for each point. Tests that come near each other are
 * not asked.
 */
import { type Choice, weigh } from '../../../diagnosis/choose.ts';
import { symptomPhrase, testPhrase } from '../../../diagnosis/say.ts';
import { suspectsThatFit } from '../../../diagnosis/table.ts';
import { sameTest, testId } from '../../../diagnosis/test.ts';
import type { Fault } from '../../../faults/fault.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { perDeck } from '../per-unit.ts';
import { seenAgain } from './seen-again.ts';
import {
  benchOf,
  benchRefs,
  drawFault,
  inOrder,
  showing,
  suspectsTable,
  symptomsOf,
} from './suspect-parts.ts';

const FACT = 'skill:next-test';
const SUSPECTS = 6;
const TESTS = 4;
/** As good as each other when the lesser is above this share of the better. */
const TOO_NEAR = rational(9, 10);

const struckOf = ({ remaining }: Choice): Rational => rational(SUSPECTS).sub(remaining);
const gainOf = (choice: Choice): Rational => struckOf(choice).div(rational(choice.cost));

const causes = perDeck((unit: Unit): Fault[] => {
  const bench = benchOf(unit);
  return bench
    ? showing(unit, bench).filter((fault) =>
        symptomsOf(unit, bench, fault).some((seen) => suspectsThatFit(bench, [seen]).length >= SUSPECTS),
      )
    : [];
});

const orderAnswer = (choices: readonly Choice[]): Answer => ({
  form: 'order',
  order: choices.map(({ test }) => testId(test)),
});

/** The order by a rule; null where the rule leaves two as good, since it then gives no one order. */
function byRule(choices: readonly Choice[], rule: (choice: Choice) => Rational): Choice[] | null {
  const sorted = [...choices].sort((a, b) => rule(b).compare(rule(a)));
  const tied = sorted.some((choice, place) => place > 0 && rule(choice).equals(rule(sorted[place - 1]!)));
  return tied ? null : sorted;
}

export const nextTest: Family = {
  id: 'next-test',
  level: 'reason',
  form: 'order',
  facts: (unit) => (causes(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const bench = benchOf(unit);
    if (!bench || fact !== FACT || causes(unit).length === 0) return undefined;
    const cause = drawFault(causes(unit), random);
    const told = random.pick(
      symptomsOf(unit, bench, cause).filter((seen) => suspectsThatFit(bench, [seen]).length >= SUSPECTS),
    );
    const rivals = suspectsThatFit(bench, [told]).filter((fault) => fault !== cause);
    const suspects = inOrder(bench, [cause, ...random.sample(rivals, SUSPECTS - 1)]);
    const chosen: Choice[] = [];
    for (const test of random.shuffle(bench.tests)) {
      const choice = sameTest(test, told.test) ? null : weigh(bench, test, suspects);
      if (!choice || chosen.length === TESTS) continue;
      const apart = chosen.every((other) => {
        const [low, high] = [gainOf(choice), gainOf(other)].sort((a, b) => a.compare(b));
        return low!.lt(high!.mul(TOO_NEAR));
      });
      if (apart) chosen.push(choice);
    }
    if (chosen.length < TESTS) return undefined;
    const right = byRule(chosen, gainOf)!;
    const lure = (slipUp: SlipUp, order: readonly Choice[] | null): Lure[] =>
      order ? [{ answer: orderAnswer(order), slipUp, fact }] : [];
    const cheapest = [...right].sort((a, b) => a.cost - b.cost);
    const items = random.shuffle(chosen);
    const tests = items.map(({ test }) => test);
    let checked: readonly string[] | undefined;
    return {
      facts: [fact],
      uses: benchRefs(unit, suspects, [told.test, ...tests]),
      prompt: say('next-test.prompt', { symptom: symptomPhrase(unit, told) }),
      drawing: suspectsTable(unit, bench, suspects, tests),
      space: {
        form: 'order',
        items: items.map(({ test, cost }) => ({
          id: testId(test),
          label: say('next-test.item', { test: testPhrase(unit, test), cost }),
        })),
        first: say('next-test.first'),
        last: say('next-test.last'),
      },
      answers: [orderAnswer(right)],
      lures: [
        ...lure('cost-left-out', byRule(chosen, struckOf)),
        ...lure('cheapest-first', cheapest),
        ...lure('order-turned-round', right.toReversed()),
        ...lure(
          'counts-on-luck',
          byRule(chosen, ({ branches }) =>
            rational(-Math.min(...[...branches.values()].map(({ length }) => length))),
          ),
        ),
      ],
      explanation: {
        row: say('next-test.row', { test: testPhrase(unit, right[0]!.test) }),
        reason: say('next-test.reason', { count: SUSPECTS }),
        more: right.map((choice) =>
          say('next-test.line', {
            test: testPhrase(unit, choice.test),
            heaps: [...choice.branches.values()].map(({ length }) => String(length)),
            struck: makeDecimal(struckOf(choice), 2),
            cost: choice.cost,
            gain: makeDecimal(gainOf(choice), 2),
          }),
        ),
        drawing: suspectsTable(
          unit,
          bench,
          suspects,
          right.map(({ test }) => test),
        ),
      },
      // By pairs: a test strikes out, on average, as many as it tells a suspect apart from.
      isRight(answer) {
        checked ??= items
          .map(({ test, cost }) => {
            const seen = suspects.map((fault) => seenAgain(unit, fault, test));
            const apart = seen.flatMap((one) => seen.filter((other) => other !== one)).length;
            return { id: testId(test), gain: apart / suspects.length / cost };
          })
          .sort((x, y) => y.gain - x.gain)
          .map(({ id }) => id);
        return answer.form === 'order' && answer.order.every((id, place) => id === checked![place]);
      },
    };
  },
};
