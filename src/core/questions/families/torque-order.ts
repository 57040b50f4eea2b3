/** Which element carries most torque, in which range, for the same torque on the input? Put in order. */
import type { Random } from '../../random.ts';
import { type Rational, rational } from '../../rational.ts';
import type { Unit } from '../../unit/unit.ts';
import { say } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { distinctLures, rawApplied } from './chart-parts.ts';
import { speedRefs, speedText } from './gear-parts.ts';
import { balanceInWords, type Carried, carriedIn, carriedInWords, torqueByWork } from './torque-parts.ts';

const FACT = 'skill:torque-order';
const ITEMS = 4;
/** Torques closer than this share of the larger are not put in order. */
const GAP = rational(1, 10);

type Rule = (carried: Carried) => Rational;

const idOf = ({ element, range }: Carried) => `${range.id}/${element}`;

const sizeOf: Rule = ({ torque }) => torque.abs();

/** The same by the work that goes in with the output stalled. */
function sizeByWork(unit: Unit, { element, range }: Carried): number {
  const torque = torqueByWork(unit.deck.train, rawApplied(unit, range.id), element);
  return torque === null ? Number.NaN : Math.abs(torque);
}

/** Drawn one by one, each clearly apart from those drawn before. */
function draw(unit: Unit, random: Random): Carried[] {
  const drawn: Carried[] = [];
  for (const carried of random.shuffle(carriedIn(unit))) {
    const size = sizeOf(carried);
    const apart = drawn.every((other) => {
      const [a, b] = [size, sizeOf(other)];
      return a
        .sub(b)
        .abs()
        .gt(GAP.mul(a.gt(b) ? a : b));
    });
    if (apart) drawn.push(carried);
    if (drawn.length === ITEMS) break;
  }
  return drawn;
}

/** Whether draws find enough that are apart. */
const askable = (unit: Unit): boolean => {
  let steps = 0;
  let last = rational(0);
  for (const size of carriedIn(unit)
    .map(sizeOf)
    .sort((a, b) => a.compare(b)))
    if (size.sub(last).gt(GAP.mul(size))) {
      steps++;
      last = size;
    }
  return steps > ITEMS;
};

function orderBy(drawn: readonly Carried[], rule: Rule): Answer | undefined {
  const sizes = drawn.map((carried) => ({ id: idOf(carried), size: rule(carried) }));
  if (new Set(sizes.map(({ size }) => size.toFraction())).size < sizes.length) return undefined;
  return { form: 'order', order: sizes.sort((a, b) => b.size.compare(a.size)).map(({ id }) => id) };
}

export const torqueOrder: Family = {
  id: 'torque-order',
  level: 'reason',
  form: 'order',
  facts: (unit) => (askable(unit) ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || !askable(unit)) return undefined;
    const drawn = draw(unit, random);
    if (drawn.length < ITEMS) return undefined;
    const right = drawn.toSorted((a, b) => sizeOf(b).compare(sizeOf(a)));
    const lure = (slipUp: Lure['slipUp'], rule: Rule): Lure[] => {
      const answer = orderBy(drawn, rule);
      return answer ? [{ answer, slipUp, fact }] : [];
    };
    let checked: ReadonlyMap<string, number> | undefined;
    const place = (carried: Carried) => rational(-carriedIn(unit).indexOf(carried));
    return {
      facts: [fact],
      uses: [...new Set(drawn.flatMap(({ range }) => speedRefs(unit, range)))],
      prompt: say('torque-order.prompt'),
      drawing: { kind: 'train', showTeeth: true },
      space: {
        form: 'order',
        items: drawn.map((carried) => ({ id: idOf(carried), label: carriedInWords(carried) })),
        first: say('torque-order.first'),
        last: say('torque-order.last'),
      },
      answers: [{ form: 'order', order: right.map(idOf) }],
      lures: distinctLures([
        ...lure('output-torque-everywhere', ({ range }) => range.ratio.abs()),
        ...lure('sign-counted', ({ torque }) => torque),
        ...lure('shared-alike', ({ range }) =>
          range.torques.reaction.abs().div(BigInt(range.applied.length)),
        ),
        ...lure('more-elements-lower', place),
        { answer: { form: 'order', order: right.map(idOf).reverse() }, slipUp: 'order-turned-round', fact },
      ]),
      explanation: {
        row: say('torque-order.row', { carried: right.map(carriedInWords) }),
        reason: say('torque-order.reason'),
        more: [
          ...right.map((carried) =>
            say('torque-order.line', { carried: carriedInWords(carried), times: speedText(sizeOf(carried)) }),
          ),
          ...balanceInWords(unit, right[0]!, rational(100)),
        ],
        drawing: { kind: 'train', applied: right[0]!.range.applied, showTeeth: true },
      },
      isRight(answer) {
        checked ??= new Map(drawn.map((carried) => [idOf(carried), sizeByWork(unit, carried)]));
        if (answer.form !== 'order') return false;
        const sizes = answer.order.map((id) => checked!.get(id)!);
        return sizes.every((size, i) => sizes.slice(i + 1).every((later) => size > later));
      },
    };
  },
};
