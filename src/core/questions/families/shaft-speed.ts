/** How fast, and which way, does a shaft turn that is neither input nor output? From tooth counts, in rpm. */
import { CASE, shaftsOf } from '../../gears/train.ts';
import { workOut } from '../../gears/working.ts';
import { type Rational, rational } from '../../rational.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { FactId, Family } from '../question.ts';
import { floatSpeeds } from '../second-route.ts';
import type { SlipUp } from '../slip-ups.ts';
import { elementNames, rawApplied, rowInWords } from './chart-parts.ts';
import { decimalText, reckonableRanges, speedRefs, speedText, wayOf, workingInWords } from './gear-parts.ts';
import { floatOf, numberAnswer, numberLures } from './number-parts.ts';
import { wrongSpeeds } from './wrong-rules.ts';

/** Round input speeds; half a percent of each, what counts as near enough, is whole. */
const INPUT_RPM = [1000, 1600, 2000, 2400, 3000] as const;
const PER_TOLERANCE = 200;

/** A shaft that turns slower than this share of the input, or differs less from it, is not asked. */
const CLEAR = rational(1, 20);

const factOf = (range: Range): FactId => `range:${range.id}/speeds`;

/** Shafts with a speed of their own: settled, and clearly not that of the case, the input or the output. */
function askable(unit: Unit, range: Range): string[] {
  const { train } = unit.deck;
  const { speeds } = range.solution;
  const plain = [rational(0), rational(1), speeds.get(train.output)!];
  return shaftsOf(train).filter((shaft) => {
    const speed = speeds.get(shaft);
    return speed && shaft !== CASE && plain.every((other) => other && speed.sub(other).abs().gt(CLEAR));
  });
}

const askableRanges = (unit: Unit) =>
  reckonableRanges(unit).filter((range) => askable(unit, range).length > 0);

function wrongTurns(unit: Unit, range: Range, shaft: string): { slipUp: SlipUp; speed: Rational }[] {
  const { train } = unit.deck;
  const speed = range.solution.speeds.get(shaft)!;
  return [
    { slipUp: 'assumed-still', speed: rational(0) },
    { slipUp: 'turns-with-input', speed: rational(1) },
    { slipUp: 'output-for-shaft', speed: range.solution.speeds.get(train.output)! },
    { slipUp: 'sign-lost', speed: speed.abs() },
    { slipUp: 'inverse-ratio', speed: speed.inverse() },
    ...wrongSpeeds(train, range.applied, shaft),
  ];
}

export const shaftSpeed: Family = {
  id: 'shaft-speed',
  level: 'reason',
  form: 'number',
  facts: (unit) => askableRanges(unit).map(factOf),
  pose(unit, fact, random) {
    const range = askableRanges(unit).find((candidate) => factOf(candidate) === fact);
    if (!range) return undefined;
    const { train } = unit.deck;
    const shaft = random.pick(askable(unit, range));
    const inputRpm = random.pick(INPUT_RPM);
    const rpmOf = (speed: Rational) => speed.mul(BigInt(inputRpm));
    const working = workOut(train, range.applied, shaft)!;
    const speed = range.solution.speeds.get(shaft)!;
    const tolerance = String(inputRpm / PER_TOLERANCE);
    const wrong = wrongTurns(unit, range, shaft).map((turn) => ({
      slipUp: turn.slipUp,
      value: rpmOf(turn.speed),
    }));
    return {
      facts: [fact],
      uses: speedRefs(unit, range),
      prompt: say('shaft-speed.prompt', {
        range: thing('range', range.id),
        elements: elementNames(range.applied),
        rpm: String(inputRpm),
        shaft: thing('shaft', shaft),
        tolerance,
      }),
      drawing: { kind: 'train', applied: range.applied, litShafts: [shaft], showTeeth: true },
      space: { form: 'number', unit: 'rpm', tolerance, signed: true, decimals: 0 },
      answers: [numberAnswer(rpmOf(speed))],
      lures: numberLures(rpmOf(speed), tolerance, fact, wrong),
      explanation: {
        row: rowInWords(range),
        reason: say('shaft-speed.reason', {
          shaft: thing('shaft', shaft),
          speed: speedText(speed.abs()),
          way: wayOf(speed),
          rpm: decimalText(rpmOf(speed), 0),
        }),
        more: [
          ...workingInWords(unit, range, working),
          say('shaft-speed.scaled', {
            inputRpm: String(inputRpm),
            speed: speed.compare(0n) < 0 ? `(${speedText(speed)})` : speedText(speed),
            rpm: decimalText(rpmOf(speed), 0),
          }),
        ],
        drawing: { kind: 'train', applied: range.applied, litShafts: [shaft], showTeeth: true },
      },
      isRight: (answer) => {
        const given = floatOf(answer);
        const turns = floatSpeeds(train, rawApplied(unit, range.id))?.get(shaft);
        return (
          given !== null &&
          typeof turns === 'number' &&
          Math.abs(given - turns * inputRpm) <= Number(tolerance)
        );
      },
    };
  },
};
