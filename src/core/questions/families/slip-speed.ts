/**
 * The scan tool gives two speeds in a commanded range: how much does the unit slip, in rpm or as a share of
 * the input speed? The ratio is shown. Slip near another range's ratio is never asked: it could be that range.
 */
import { makeDecimal, parseRational, type Rational, rational } from '../../rational.ts';
import { relativeDistance } from '../../speeds/actual-range.ts';
import { slipOf } from '../../speeds/slip.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Family } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import type { SlipUp } from '../slip-ups.ts';
import { rawApplied } from './chart-parts.ts';
import { decimalText } from './gear-parts.ts';
import { floatOf, numberAnswer, numberLures } from './number-parts.ts';
import { besideIn, outputRpmFor, RATIO_TOLERANCE, rounded, scanOf } from './scan-parts.ts';

const SPEED_FACT = 'skill:slip-speed';
const SHARE_FACT = 'skill:slip-share';

const HUNDRED = rational(100);

/** Wide enough for the ratio as shown, rounded: half its last digit times the output, and half a step more. */
function toleranceFor(range: Range, outputRpm: Rational, inputRpm: Rational, share: boolean): string {
  const rpm = outputRpm.div(2n * 10n ** BigInt(range.decimals));
  const half = rational(1, 2);
  return share
    ? makeDecimal(rpm.div(inputRpm).mul(1000n).add(half).ceil().div(10n), 1)
    : rpm.add(half).ceil().toFraction();
}

/** A slip of 40 to 300 rpm in steps of 10, or of 5 to 14 % of the input, where the share tells more. */
function drawSlip(
  ratio: Rational,
  outputRpm: Rational,
  share: boolean,
  int: (a: number, b: number) => number,
) {
  const expected = outputRpm.mul(ratio);
  if (!share) return rounded(expected.add(rational(10 * int(4, 30))));
  return rounded(expected.div(rational(100 - int(5, 14), 100)));
}

export const slipSpeed: Family = {
  id: 'slip-speed',
  level: 'apply',
  form: 'number',
  facts: (unit: Unit) => (scanOf(unit)?.forward.length ? [SPEED_FACT, SHARE_FACT] : []),
  pose(unit, fact, random) {
    const scan = scanOf(unit);
    if (!scan) return undefined;
    const { forward, uses } = scan;
    const share = fact === SHARE_FACT;
    const range = random.pick(forward);
    const outputRpm = outputRpmFor(range.ratio, random);
    if (!outputRpm) return undefined;
    const inputRpm = drawSlip(range.ratio, outputRpm, share, random.int);
    const seen = inputRpm.div(outputRpm);
    const likeAnother = forward.some(
      (other) => !other.ratio.equals(range.ratio) && relativeDistance(seen, other.ratio).lte(RATIO_TOLERANCE),
    );
    const slip = slipOf({ inputRpm, outputRpm }, range.ratio);
    if (likeAnother || !slip.ok) return undefined;

    const value = share ? slip.value.ofInput.mul(HUNDRED) : slip.value.slipRpm;
    const asAsked = (rpm: Rational) => (share ? rpm.abs().div(inputRpm).mul(HUNDRED) : rpm.abs());
    const tolerance = toleranceFor(range, outputRpm, inputRpm, share);
    if (value.lt(parseRational(tolerance)!.mul(3n))) return undefined;
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'output-times-nothing', value: asAsked(inputRpm.sub(outputRpm)) },
      { slipUp: 'inverse-ratio', value: asAsked(inputRpm.sub(outputRpm.div(range.ratio))) },
      ...besideIn(forward, range).map((other) => ({
        slipUp: 'neighbour-range' as const,
        value: asAsked(inputRpm.sub(outputRpm.mul(other.ratio))),
      })),
      ...(share
        ? [{ slipUp: 'slip-over-expected' as const, value: slip.value.ofExpected.mul(HUNDRED) }]
        : []),
    ];
    const [input, output] = [inputRpm, outputRpm].map((rpm) => rpm.toFraction()) as [string, string];
    const ratio = decimalText(range.ratio, range.decimals);
    const shown = (rpm: Rational) => makeDecimal(rpm, 0);
    return {
      facts: [fact],
      uses,
      prompt: say(`slip-speed.prompt-${share ? 'share' : 'rpm'}`, {
        range: thing('range', range.id),
        ratio,
        input,
        output,
        tolerance,
      }),
      drawing: { kind: 'chart', rows: [range.id], litRows: [range.id], showRatios: true },
      space: {
        form: 'number',
        unit: share ? '%' : 'rpm',
        tolerance,
        signed: false,
        decimals: share ? 1 : 0,
      },
      answers: [numberAnswer(value)],
      lures: numberLures(value, tolerance, fact, wrong),
      explanation: {
        row: say('slip-speed.row', { output, ratio, expected: shown(slip.value.expectedRpm) }),
        reason: say('slip-speed.reason', {
          input,
          expected: shown(slip.value.expectedRpm),
          slip: shown(slip.value.slipRpm),
        }),
        more: [
          say('slip-speed.share', {
            slip: shown(slip.value.slipRpm),
            input,
            share: makeDecimal(slip.value.ofInput.mul(HUNDRED), 1),
          }),
          say('slip-speed.not-another', { input, output, seen: decimalText(seen, range.decimals) }),
        ],
      },
      isRight: (answer) => {
        const [given, perTurn] = [floatOf(answer), floatOutput(unit.deck.train, rawApplied(unit, range.id))];
        if (given === null || !perTurn) return false;
        const really = Number(input) - Number(output) / perTurn;
        const asked = share ? (really / Number(input)) * 100 : really;
        return Math.abs(given - asked) <= parseRational(tolerance)!.valueOf();
      },
    };
  },
};
