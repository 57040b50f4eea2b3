/**
 * How fast does the output turn for an input speed in a range, and how fast does the vehicle go? The ratio is
 * told; final drive and tyre are told too, since they belong to the vehicle and not to the unit.
 */
import { makeDecimal, parseRational, type Rational, rational } from '../../rational.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { FactId, Family, Posed } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import type { SlipUp } from '../slip-ups.ts';
import { neighboursOf, rawApplied } from './chart-parts.ts';
import { decimalText, reckonableRanges, speedRefs } from './gear-parts.ts';
import { floatOf, numberAnswer, numberLures } from './number-parts.ts';

const OUTPUT_FACT = 'skill:output-speed';
const ROAD_FACT = 'skill:road-speed';

/** Final drive ratios and metres a tyre rolls in a turn, round and made up. */
const FINAL_DRIVES = ['3.20', '3.50', '3.80', '4.10'] as const;
const TYRES = ['1.90', '2.00', '2.10', '2.20'] as const;
/** Metres a minute to kilometres an hour. */
const KMH = rational(60, 1000);
/** Within half a percent and half the last digit shown. */
const NEAR = rational(1, 200);

interface Wrong {
  readonly slipUp: SlipUp;
  readonly value: Rational;
}

/** Half a percent up to the next step of the last decimal. */
function toleranceOf(value: Rational, decimals: number): string {
  const scale = 10n ** BigInt(decimals);
  const steps = value.abs().mul(NEAR).mul(scale).add(rational(1, 2)).ceil();
  return makeDecimal(steps.div(scale), decimals);
}

/** Output speeds for other ratios than the right one, by slip-up. */
const wrongOutputs = (unit: Unit, range: Range, inputRpm: Rational): Wrong[] => [
  { slipUp: 'inverse-ratio', value: inputRpm.mul(range.ratio) },
  ...neighboursOf(unit, range).map(
    (row): Wrong => ({ slipUp: 'neighbour-range', value: inputRpm.div(row.ratio) }),
  ),
];

function poseOutput(unit: Unit, range: Range, inputRpm: Rational, fact: FactId): Posed {
  const { train } = unit.deck;
  const value = inputRpm.div(range.ratio);
  const tolerance = toleranceOf(value, 0);
  const names = {
    range: thing('range', range.id),
    ratio: decimalText(range.ratio, range.decimals),
    input: inputRpm.toFraction(),
    output: decimalText(value, 0),
  };
  return {
    facts: [fact],
    uses: speedRefs(unit, range),
    prompt: say('output-speed.prompt', { ...names, tolerance }),
    space: { form: 'number', unit: 'rpm', tolerance, signed: true, decimals: 0 },
    answers: [numberAnswer(value)],
    lures: numberLures(value, tolerance, fact, [
      ...wrongOutputs(unit, range, inputRpm),
      { slipUp: 'sign-lost', value: value.abs() },
      { slipUp: 'turns-with-input', value: inputRpm },
    ]),
    explanation: {
      row: say('output-speed.row', names),
      reason: say('output-speed.reason'),
      more: [],
      drawing: {
        kind: 'train',
        applied: range.applied,
        litShafts: [train.input, train.output],
        showTeeth: true,
      },
    },
    isRight: (answer) => {
      const [given, output] = [floatOf(answer), floatOutput(train, rawApplied(unit, range.id))];
      if (given === null || output === null) return false;
      return Math.abs(given - Number(names.input) * output) <= Number(tolerance);
    },
  };
}

function poseRoad(
  unit: Unit,
  range: Range,
  inputRpm: Rational,
  [final, tyre]: readonly [string, string],
): Posed {
  const [drive, roll] = [parseRational(final)!, parseRational(tyre)!];
  const speedFor = (outputRpm: Rational) => outputRpm.div(drive).mul(roll).mul(KMH);
  const outputRpm = inputRpm.div(range.ratio);
  const value = speedFor(outputRpm);
  const tolerance = toleranceOf(value, 1);
  const names = {
    range: thing('range', range.id),
    ratio: decimalText(range.ratio, range.decimals),
    input: inputRpm.toFraction(),
    final,
    tyre,
    output: decimalText(outputRpm, 0),
    wheels: decimalText(outputRpm.div(drive), 0),
    speed: makeDecimal(value, 1),
  };
  return {
    facts: [ROAD_FACT],
    uses: speedRefs(unit, range),
    prompt: say('output-speed.prompt-road', { ...names, tolerance }),
    space: { form: 'number', unit: 'km/h', tolerance, signed: false, decimals: 1 },
    answers: [numberAnswer(value)],
    lures: numberLures(value, tolerance, ROAD_FACT, [
      ...wrongOutputs(unit, range, inputRpm)
        .filter((wrong) => wrong.value.gt(0n))
        .map((wrong) => ({ ...wrong, value: speedFor(wrong.value) })),
      { slipUp: 'final-drive-left-out', value: value.mul(drive) },
      { slipUp: 'final-drive-multiplied', value: value.mul(drive).mul(drive) },
      { slipUp: 'minutes-for-hours', value: value.div(60n) },
    ]),
    explanation: {
      row: say('output-speed.row', names),
      reason: say('output-speed.reason-road', names),
      more: [say('output-speed.wheels', names), say('output-speed.road', names)],
    },
    isRight: (answer) => {
      const [given, output] = [floatOf(answer), floatOutput(unit.deck.train, rawApplied(unit, range.id))];
      if (given === null || output === null) return false;
      const metresAMinute = (Number(names.input) * output * Number(tyre)) / Number(final);
      return Math.abs(given - (metresAMinute * 60) / 1000) <= Number(tolerance);
    },
  };
}

export const outputSpeed: Family = {
  id: 'output-speed',
  level: 'apply',
  form: 'number',
  facts: (unit) => (asked(unit).length > 0 ? [OUTPUT_FACT, ROAD_FACT] : []),
  pose(unit, fact, random) {
    if (asked(unit).length === 0) return undefined;
    const road = fact === ROAD_FACT;
    const ranges = asked(unit).filter((range) => !road || range.ratio.gt(0n));
    const range = random.pick(ranges);
    const inputRpm = rational(100 * random.int(10, 40));
    return road
      ? poseRoad(unit, range, inputRpm, [random.pick(FINAL_DRIVES), random.pick(TYRES)])
      : poseOutput(unit, range, inputRpm, fact);
  },
};

/** Ranges with another ratio than 1, where there is something to reckon; a forward one among them. */
function asked(unit: Unit): Range[] {
  const ranges = reckonableRanges(unit).filter((range) => !range.ratio.equals(1n));
  return ranges.some((range) => range.ratio.gt(0n)) ? ranges : [];
}
