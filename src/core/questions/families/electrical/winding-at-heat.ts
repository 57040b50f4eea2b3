/** A copper winding warm or cold: what does it measure there, or what would it measure at 20 °C? */
import { COPPER_AT_20, resistanceAt, resistanceAt20 } from '../../../electrical/winding.ts';
import { makeDecimal, ONE, type Rational, rational } from '../../../rational.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { decimalText } from '../gear-parts.ts';
import { isNear, numberAnswer, numberLures, shareOf } from '../number-parts.ts';
import { askedWindings, ohmsIn, ohmsText, toTenths } from './winding-parts.ts';

const WARM_FACT = 'skill:winding-heat';
const BACK_FACT = 'skill:winding-at-20';

/** From a frosty yard to a hard-worked unit; never near 20, where nothing is to be reckoned. */
const CELSIUS = [-20, 0, 60, 70, 80, 90, 100, 110, 120] as const;
/** The one place that a slide of the thumb or a rounded factor may cost. */
const SHARE = rational(1, 200);
const DECIMALS = 2;

export const windingAtHeat: Family = {
  id: 'winding-at-heat',
  level: 'apply',
  form: 'number',
  facts: (unit) => (askedWindings(unit).length > 0 ? [WARM_FACT, BACK_FACT] : []),
  pose(unit, fact, random) {
    const windings = askedWindings(unit);
    if (windings.length === 0 || (fact !== WARM_FACT && fact !== BACK_FACT)) return undefined;
    const { winding, band, uses } = random.pick(windings);
    const degrees = random.pick(CELSIUS);
    const celsius = rational(degrees);
    const factor = ONE.add(COPPER_AT_20.mul(celsius.sub(20n)));
    const fromZero = ONE.add(COPPER_AT_20.mul(celsius));
    const turned = ONE.add(ONE).sub(factor);
    const drawn = ohmsIn(band, random);
    const back = fact === BACK_FACT;
    const hot = resistanceAt(drawn, celsius);
    if (!hot.ok) return undefined;
    const given = back ? toTenths(hot.value) : drawn;
    const answer = back ? resistanceAt20(given, celsius) : hot;
    if (!answer.ok) return undefined;
    const value = answer.value;
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'hot-as-cold', value: given },
      ...(back
        ? ([
            { slipUp: 'heat-turned-round', value: given.mul(factor) },
            { slipUp: 'percent-of-hot', value: given.mul(turned) },
            { slipUp: 'heat-from-zero', value: given.div(fromZero) },
          ] as const)
        : ([
            { slipUp: 'heat-turned-round', value: given.mul(turned) },
            { slipUp: 'heat-from-zero', value: given.mul(fromZero) },
          ] as const)),
    ];
    const tolerance = shareOf(value, SHARE, DECIMALS);
    const values = {
      solenoid: thing('solenoid', winding.solenoid),
      celsius: decimalText(celsius, 0),
      ohms: ohmsText(given),
      tolerance,
    };
    const percent = decimalText(factor.sub(ONE).mul(100n), 1);
    return {
      facts: [fact],
      uses,
      prompt: say(back ? 'winding-at-heat.prompt-back' : 'winding-at-heat.prompt-warm', values),
      space: { form: 'number', unit: 'Ω', tolerance, signed: false, decimals: DECIMALS },
      answers: [numberAnswer(value)],
      lures: numberLures(value, tolerance, fact, wrong),
      explanation: {
        row: say('winding-at-heat.factor', {
          celsius: values.celsius,
          over: decimalText(celsius.sub(20n), 0),
          factor: makeDecimal(factor, 4),
        }),
        reason: say(back ? 'winding-at-heat.reason-back' : 'winding-at-heat.reason-warm', {
          ohms: values.ohms,
          factor: makeDecimal(factor, 4),
          value: makeDecimal(value, DECIMALS),
        }),
        more: [
          say('winding-at-heat.percent', { percent, celsius: values.celsius }),
          say('winding-at-heat.copper'),
        ],
      },
      isRight: (answer) => {
        const growth = 1 + 0.00393 * (degrees - 20);
        const really = back ? given.valueOf() / growth : given.valueOf() * growth;
        return isNear(answer, really, tolerance, 1e-9);
      },
    };
  },
};
