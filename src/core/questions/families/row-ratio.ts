/** What ratio does a range drive at? Worked out from the tooth counts; its elements are told and drawn. */
import { workOut } from '../../gears/working.ts';
import type { Rational } from '../../rational.ts';
import { parseRational } from '../../rational.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { FactId, Family } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import type { SlipUp } from '../slip-ups.ts';
import { elementNames, neighboursOf, rawApplied, rowInWords } from './chart-parts.ts';
import { decimalText, reckonableRanges, speedRefs, speedText, wayOf, workingInWords } from './gear-parts.ts';
import { floatOf, numberAnswer, numberLures } from './number-parts.ts';
import { wrongSpeeds } from './wrong-rules.ts';

const DECIMALS = 2;

/** Wide enough for speeds rounded on the way, narrow against the step to the next range. */
const toleranceFor = (ratio: Rational) => (ratio.abs().lt(2n) ? '0.01' : '0.02');

const factOf = (range: Range): FactId => `range:${range.id}/ratio`;

function wrongRatios(unit: Unit, range: Range): { slipUp: SlipUp; value: Rational }[] {
  const { train } = unit.deck;
  const turned = (speed: Rational) => (speed.n === 0n ? [] : [speed.inverse()]);
  const numbers = workOut(train, range.applied, train.output)!.steps.flatMap((step) =>
    step.kind === 'solves' && step.result.terms.size === 0 ? [step.result.constant] : [],
  );
  return [
    { slipUp: 'inverse-ratio', value: range.ratio.inverse() },
    { slipUp: 'sign-lost', value: range.ratio.abs() },
    ...wrongSpeeds(train, range.applied, train.output).flatMap(({ slipUp, speed }) =>
      turned(speed).map((value) => ({ slipUp, value })),
    ),
    ...numbers
      .slice(0, 1)
      .flatMap(turned)
      .map((value) => ({ slipUp: 'first-set-only' as const, value })),
    ...neighboursOf(unit, range).map((row) => ({ slipUp: 'neighbour-range' as const, value: row.ratio })),
  ];
}

export const rowRatio: Family = {
  id: 'row-ratio',
  level: 'reason',
  form: 'number',
  facts: (unit) => reckonableRanges(unit).map(factOf),
  pose(unit, fact) {
    const range = reckonableRanges(unit).find((candidate) => factOf(candidate) === fact);
    if (!range) return undefined;
    const { train } = unit.deck;
    const tolerance = toleranceFor(range.ratio);
    const working = workOut(train, range.applied, train.output)!;
    return {
      facts: [fact],
      uses: speedRefs(unit, range),
      prompt: say('row-ratio.prompt', {
        range: thing('range', range.id),
        elements: elementNames(range.applied),
        tolerance,
      }),
      drawing: { kind: 'train', applied: range.applied, showTeeth: true },
      space: { form: 'number', unit: null, tolerance, signed: true, decimals: DECIMALS },
      answers: [numberAnswer(range.ratio)],
      lures: numberLures(range.ratio, tolerance, fact, wrongRatios(unit, range)),
      explanation: {
        row: rowInWords(range),
        reason: say('row-ratio.reason', {
          output: thing('shaft', train.output),
          speed: speedText(working.speed.abs()),
          way: wayOf(working.speed),
          ratio: decimalText(range.ratio, range.decimals),
        }),
        more: workingInWords(unit, range, working),
        drawing: { kind: 'train', applied: range.applied, litShafts: [train.output], showTeeth: true },
      },
      isRight: (answer) => {
        const [given, output] = [floatOf(answer), floatOutput(train, rawApplied(unit, range.id))];
        return (
          given !== null && !!output && Math.abs(given - 1 / output) <= parseRational(tolerance)!.valueOf()
        );
      },
    };
  },
};
