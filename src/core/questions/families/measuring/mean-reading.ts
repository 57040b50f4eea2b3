/** Four readings round the drum: what is their mean? */
import { summarise } from '../../../measure/readings.ts';
import { makeDecimal, type Rational } from '../../../rational.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { floatOf, numberAnswer, numberLures } from '../number-parts.ts';
import { askedFits, exactText, fixed, HAIR } from './fit-parts.ts';
import { drawReadings, floatMean, playWithin, readingsInWords, sumText } from './reading-set-parts.ts';

const FACT = 'skill:mean-reading';
/** Readings this many steps apart tell the wrong rules from the mean. */
const APART = 6;

const fits = (unit: Unit) => askedFits(unit).filter(({ fit }) => fit.method !== 'depths');

export const meanReading: Family = {
  id: 'mean-reading',
  level: 'apply',
  form: 'number',
  facts: (unit) => (fits(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const among = fits(unit);
    if (fact !== FACT || among.length === 0) return undefined;
    const asked = random.pick(among);
    const { fit, ref, unit: length, places, step } = asked;
    const readings = drawReadings(asked, playWithin(asked, random), APART, random);
    const summary = readings && summarise(readings);
    if (!readings || !summary?.ok) return undefined;
    const { mean, lowest, highest } = summary.value;
    const tolerance = makeDecimal(step.div(2n), places + 1);
    const sum = mean.mul(BigInt(readings.length));
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'first-reading-only', value: readings[0]! },
      { slipUp: 'middle-of-extremes', value: lowest.add(highest).div(2n) },
      { slipUp: 'sum-not-divided', value: sum },
      { slipUp: 'highest-reading', value: highest },
      { slipUp: 'lowest-reading', value: lowest },
    ];
    const lures = numberLures(mean, tolerance, FACT, wrong);
    if (lures.length < 3) return undefined;
    return {
      facts: [FACT],
      uses: [ref],
      prompt: say('mean-reading.prompt', {
        fit: thing('fit', fit.id),
        readings: readingsInWords(asked, readings),
        unit: length,
        tolerance,
      }),
      space: { form: 'number', unit: length, tolerance, signed: false, decimals: places + 1 },
      answers: [numberAnswer(mean)],
      lures,
      explanation: {
        row: say('mean-reading.row', {
          sum: sumText(asked, readings),
          total: fixed(asked, sum),
          count: readings.length,
          mean: exactText(asked, mean),
          unit: length,
        }),
        reason: say('mean-reading.reason'),
        more: [],
      },
      isRight: (answer) => {
        const given = floatOf(answer);
        return given !== null && Math.abs(given - floatMean(readings)) <= step.valueOf() / 2 + HAIR;
      },
    };
  },
};
