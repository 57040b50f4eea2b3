/** Which of these turns the output fastest? Rows go by their elements only, so the teeth have to decide. */
import type { Random } from '../../random.ts';
import { type Rational, rational } from '../../rational.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import { distinctLures, rawApplied } from './chart-parts.ts';
import { decimalText, reckonableRanges, speedRefs, speedText, together, wayOf } from './gear-parts.ts';
import { forwardLadder } from './shift-parts.ts';
import { wrongSpeeds } from './wrong-rules.ts';

const FACT = 'skill:ratio-order';
const ITEMS = 4;
/** Outputs closer than this share of the faster one are not put in order. */
const GAP = rational(1, 50);

const outputOf = (range: Range): Rational => range.ratio.inverse();

const faster = (a: Rational, b: Rational) => b.compare(a);

/** Forward ranges that differ in ratio, and the first reverse. */
function askable(unit: Unit): Range[] {
  const reckonable = reckonableRanges(unit);
  const forward = forwardLadder(unit).filter((range) => reckonable.includes(range));
  const reverse = reckonable.filter((range) => range.ratio.compare(0n) < 0).slice(0, 1);
  return forward.length < ITEMS ? [] : [...forward, ...reverse];
}

function drawRanges(unit: Unit, random: Random): Range[] | undefined {
  const drawn = random.sample(askable(unit), ITEMS);
  const speeds = drawn.map(outputOf).sort(faster);
  const apart = speeds.every((speed, place) => {
    const next = speeds[place + 1];
    return (
      !next ||
      speed
        .sub(next)
        .abs()
        .gt(GAP.mul(speed.abs().gt(next.abs()) ? speed.abs() : next.abs()))
    );
  });
  return apart && drawn.length === ITEMS ? drawn : undefined;
}

/** The order this rule gives; undefined where it gives no speed for some row, or the same for two. */
function orderBy(ranges: readonly Range[], rule: (range: Range) => Rational | undefined): Answer | undefined {
  const rows = ranges.map((range) => ({ id: range.id, speed: rule(range) }));
  if (new Set(rows.map(({ speed }) => speed?.toFraction() ?? '')).size < rows.length) return undefined;
  if (rows.some(({ speed }) => !speed)) return undefined;
  return { form: 'order', order: rows.sort((a, b) => faster(a.speed!, b.speed!)).map(({ id }) => id) };
}

export const ratioOrder: Family = {
  id: 'ratio-order',
  level: 'reason',
  form: 'order',
  facts: (unit) => (askable(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const ranges = fact === FACT ? drawRanges(unit, random) : undefined;
    if (!ranges) return undefined;
    const { train } = unit.deck;
    const wrong = new Map(ranges.map((range) => [range.id, wrongSpeeds(train, range.applied, train.output)]));
    const lure = (slipUp: Lure['slipUp'], rule: (range: Range) => Rational | undefined): Lure[] => {
      const answer = orderBy(ranges, rule);
      return answer ? [{ answer, slipUp, fact }] : [];
    };
    const place = (range: Range) => rational(-unit.ranges.findIndex((row) => row.id === range.id));
    const right = ranges.toSorted((a, b) => faster(outputOf(a), outputOf(b)));
    const label = (range: Range) => together(range.applied);
    return {
      facts: [fact],
      uses: [...new Set(ranges.flatMap((range) => speedRefs(unit, range)))],
      prompt: say('ratio-order.prompt'),
      drawing: { kind: 'train', showTeeth: true },
      space: {
        form: 'order',
        items: ranges.map((range) => ({ id: range.id, label: label(range) })),
        first: say('ratio-order.first'),
        last: say('ratio-order.last'),
      },
      answers: [{ form: 'order', order: right.map((range) => range.id) }],
      lures: distinctLures([
        ...lure('inverse-ratio', (range) => range.ratio),
        ...lure('sign-lost', (range) => outputOf(range).abs()),
        ...lure('more-elements-lower', place),
        ...(['sun-ring-swapped', 'carrier-forgotten', 'pinion-pair-missed'] as const).flatMap((slipUp) =>
          lure(slipUp, (range) => wrong.get(range.id)!.find((turn) => turn.slipUp === slipUp)?.speed),
        ),
      ]),
      explanation: {
        row: say('ratio-order.row', { ranges: right.map((range) => thing('range', range.id)) }),
        reason: say('ratio-order.reason', {
          ratios: right.map((range) => decimalText(range.ratio, range.decimals)),
        }),
        more: right.map((range) =>
          say('ratio-order.detail', {
            range: thing('range', range.id),
            elements: together(range.applied),
            speed: speedText(outputOf(range).abs()),
            way: wayOf(range.ratio),
          }),
        ),
        drawing: { kind: 'chart', rows: right.map((range) => range.id), showRatios: true },
      },
      isRight: (answer) => {
        if (answer.form !== 'order') return false;
        const speeds = answer.order.map((id) => floatOutput(train, rawApplied(unit, id)));
        return speeds.every((speed, i) => speeds.slice(i + 1).every((later) => speed! > later!));
      },
    };
  },
};
