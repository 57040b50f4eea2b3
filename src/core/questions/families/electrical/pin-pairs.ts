/** Two windings on one common wire: what does the meter show between their two pins? */
import { inParallel } from '../../../electrical/current.ts';
import { expectedBetween, GROUND, type Harness } from '../../../electrical/harness.ts';
import type { Rational } from '../../../rational.ts';
import { makeDecimal } from '../../../rational.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { floatOf, numberAnswer, numberLures } from '../number-parts.ts';
import { askedHarnesses, pinInWords } from './harness-parts.ts';
import { ohmsIn, ohmsText } from './winding-parts.ts';

const FACT = 'skill:pin-pairs';
const TOLERANCE = '0.1';

/** Groups whose common wire has a pin: else there is nothing on the connector to tell of it. */
const harnesses = (unit: Unit) => askedHarnesses(unit).filter(({ common }) => common !== GROUND);

export const pinPairs: Family = {
  id: 'pin-pairs',
  level: 'apply',
  form: 'number',
  facts: (unit) => (harnesses(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const among = harnesses(unit);
    if (fact !== FACT || among.length === 0) return undefined;
    const harness = random.pick(among);
    const [one, other] = random.sample(harness.windings, 2);
    if (!one || !other) return undefined;
    const [first, second] = [ohmsIn(one.ohms, random), ohmsIn(other.ohms, random)];
    const measured: Harness = {
      common: harness.common,
      windings: [
        { pin: one.pin, ohms: { low: first, high: first } },
        { pin: other.pin, ohms: { low: second, high: second } },
      ],
    };
    const shown = expectedBetween(measured, null, one.pin, other.pin);
    const parallel = inParallel([first, second]);
    if (shown.shows !== 'ohms' || !parallel.ok) return undefined;
    const value = shown.low;
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'parallel-for-series', value: parallel.value },
      { slipUp: 'one-winding-only', value: first },
      { slipUp: 'one-winding-only', value: second },
      { slipUp: 'difference-for-sum', value: first.sub(second).abs() },
    ];
    const values = {
      one: pinInWords(harness, one.pin),
      other: pinInWords(harness, other.pin),
      first: ohmsText(first),
      second: ohmsText(second),
      common: harness.common,
    };
    return {
      facts: [FACT],
      uses: harness.uses,
      prompt: say('pin-pairs.prompt', { ...values, tolerance: TOLERANCE }),
      drawing: {
        kind: 'connector',
        connector: harness.connector,
        showServes: true,
        probes: [one.pin, other.pin],
        litPins: [harness.common],
      },
      space: { form: 'number', unit: 'Ω', tolerance: TOLERANCE, signed: false, decimals: 1 },
      answers: [numberAnswer(value)],
      lures: numberLures(value, TOLERANCE, FACT, wrong),
      explanation: {
        row: say('pin-pairs.row', { ...values, sum: ohmsText(value) }),
        reason: say('pin-pairs.reason', { common: harness.common }),
        more: [say('pin-pairs.parallel', { parallel: makeDecimal(parallel.value, 2) })],
      },
      isRight: (answer) => {
        const given = floatOf(answer);
        const really = first.valueOf() + second.valueOf();
        return given !== null && Math.abs(given - really) <= Number(TOLERANCE) + 1e-9;
      },
    };
  },
};
