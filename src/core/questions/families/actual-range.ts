/**
 * The scan tool gives the commanded range and two speeds: which range is the unit really in? Some of the time
 * it is the commanded one. Only ranges that no other one comes near are asked.
 */

import { relativeDistance } from '../../speeds/actual-range.ts';
import type { Range } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Family, Lure } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import type { SlipUp } from '../slip-ups.ts';
import { rangeOptions, rawApplied } from './chart-parts.ts';
import { decimalText } from './gear-parts.ts';
import { besideIn, outputRpmFor, RATIO_TOLERANCE, rounded, scanOf } from './scan-parts.ts';

const FACT = 'skill:actual-range';
const FEWEST_WRONG = 3;
const MOST_WRONG = 4;
/** One question in this many has the commanded range right. */
const COMMANDED_RIGHT = 5;

export const actualRange: Family = {
  id: 'actual-range',
  level: 'apply',
  form: 'one',
  facts(unit) {
    const scan = scanOf(unit);
    // A commanded range, the actual one and two more wrong ones.
    return scan && scan.apart.length >= FEWEST_WRONG && scan.forward.length > FEWEST_WRONG ? [FACT] : [];
  },
  pose(unit, _, random) {
    const scan = scanOf(unit);
    if (!scan || scan.apart.length < 2) return undefined;
    const { forward, uses } = scan;
    const actual = random.pick(scan.apart);
    const commanded =
      random.int(1, COMMANDED_RIGHT) === 1
        ? actual
        : random.pick(scan.apart.filter((range) => range !== actual));
    const outputRpm = outputRpmFor(actual.ratio, random);
    if (!outputRpm) return undefined;
    const inputRpm = rounded(outputRpm.mul(actual.ratio));
    const seen = inputRpm.div(outputRpm);

    const nearestTo = (ratio: typeof seen): Range =>
      [...forward].sort((a, b) =>
        relativeDistance(ratio, a.ratio).compare(relativeDistance(ratio, b.ratio)),
      )[0]!;
    const before = forward[forward.indexOf(commanded) - 1];
    const wrong: { slipUp: SlipUp; range: Range }[] = [
      { slipUp: 'commanded-not-actual' as const, range: commanded },
      { slipUp: 'inverse-ratio' as const, range: nearestTo(seen.inverse()) },
      ...besideIn(forward, actual).map((range) => ({ slipUp: 'neighbour-range' as const, range })),
      ...(before ? [{ slipUp: 'range-before-assumed' as const, range: before }] : []),
    ].filter(({ range }) => range !== actual);
    const others = random.sample(
      [...new Set(wrong.map(({ range }) => range))].filter((range) => range !== commanded),
      commanded === actual ? MOST_WRONG : MOST_WRONG - 1,
    );
    const shown = [...new Set([actual, commanded, ...others])];
    if (shown.length <= FEWEST_WRONG) return undefined;
    const lures = wrong
      .filter(({ range }) => shown.includes(range))
      .map(({ slipUp, range }): Lure => ({ slipUp, answer: { form: 'one', pick: range.id }, fact: FACT }));

    const [input, output] = [inputRpm, outputRpm].map((rpm) => rpm.toFraction()) as [string, string];
    const ratioOf = (range: Range) => decimalText(range.ratio, range.decimals);
    return {
      facts: [FACT],
      uses,
      prompt: say('actual-range.prompt', { commanded: thing('range', commanded.id), input, output }),
      drawing: { kind: 'chart', litRows: [commanded.id], showRatios: true },
      space: { form: 'one', options: random.shuffle(rangeOptions(shown)) },
      answers: [{ form: 'one', pick: actual.id }],
      lures,
      explanation: {
        row: say('actual-range.row', { input, output, seen: decimalText(seen, actual.decimals) }),
        reason: say(commanded === actual ? 'actual-range.reason-commanded' : 'actual-range.reason', {
          range: thing('range', actual.id),
          ratio: ratioOf(actual),
          commanded: thing('range', commanded.id),
          commandedRatio: ratioOf(commanded),
        }),
        more: shown.map((range) =>
          say('actual-range.line', {
            range: thing('range', range.id),
            ratio: ratioOf(range),
            output,
            expected: rounded(outputRpm.mul(range.ratio)).toFraction(),
          }),
        ),
        drawing: { kind: 'chart', litRows: [actual.id], showRatios: true },
      },
      // By the output speed that the input speed would give in the picked range.
      isRight: (answer) => {
        if (answer.form !== 'one') return false;
        const perTurn = floatOutput(unit.deck.train, rawApplied(unit, answer.pick));
        if (!perTurn) return false;
        const expected = Number(input) * perTurn;
        return Math.abs(expected - Number(output)) <= RATIO_TOLERANCE.valueOf() * expected;
      },
    };
  },
};
