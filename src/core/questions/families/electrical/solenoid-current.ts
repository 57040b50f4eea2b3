/** Current through a solenoid's winding: on for good, or the mean of a switched one. Driver drop, ripple left out. */
import { currentOf, meanCurrentOf } from '../../../electrical/current.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { isNear, numberAnswer, numberLures, shareOf } from '../number-parts.ts';
import { askedWindings, ohmsIn, ohmsText } from './winding-parts.ts';

const FULL_FACT = 'skill:solenoid-current';
const MEAN_FACT = 'skill:mean-current';

/** Battery at rest to alternator at work, in tenths of a volt. */
const TENTHS_OF_VOLT = [115, 120, 126, 132, 138, 140, 144] as const;
const SHARE = rational(1, 50);
const DECIMALS = 2;

export const solenoidCurrent: Family = {
  id: 'solenoid-current',
  level: 'apply',
  form: 'number',
  facts: (unit) => (askedWindings(unit).length > 0 ? [FULL_FACT, MEAN_FACT] : []),
  pose(unit, fact, random) {
    const windings = askedWindings(unit);
    if (windings.length === 0 || (fact !== FULL_FACT && fact !== MEAN_FACT)) return undefined;
    const { winding, band, uses } = random.pick(windings);
    const volts = rational(random.pick(TENTHS_OF_VOLT), 10);
    const ohms = ohmsIn(band, random);
    const percent = 5 * random.int(3, 17);
    const mean = fact === MEAN_FACT;
    const duty = rational(percent, 100);
    const [full, current] = [
      currentOf({ volts, ohms }),
      mean ? meanCurrentOf({ volts, ohms }, duty) : currentOf({ volts, ohms }),
    ];
    if (!full.ok || !current.ok) return undefined;
    const value = current.value;
    const share = (of: Rational) => (mean ? of.mul(duty) : of);
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'ohms-law-turned-round', value: share(ohms.div(volts)) },
      { slipUp: 'ohms-law-multiplied', value: share(volts.mul(ohms)) },
      ...(mean
        ? ([
            { slipUp: 'duty-left-out', value: full.value },
            { slipUp: 'off-time-for-duty', value: full.value.mul(rational(100 - percent, 100)) },
            { slipUp: 'duty-divided', value: full.value.div(duty) },
          ] as const)
        : []),
    ];
    const tolerance = shareOf(value, SHARE, DECIMALS);
    const values = {
      solenoid: thing('solenoid', winding.solenoid),
      volts: makeDecimal(volts, 1),
      ohms: ohmsText(ohms),
      percent,
      tolerance,
    };
    return {
      facts: [fact],
      uses,
      prompt: say(mean ? 'solenoid-current.prompt-mean' : 'solenoid-current.prompt-full', values),
      space: { form: 'number', unit: 'A', tolerance, signed: false, decimals: DECIMALS },
      answers: [numberAnswer(value)],
      lures: numberLures(value, tolerance, fact, wrong),
      explanation: {
        row: say('solenoid-current.row', {
          volts: values.volts,
          ohms: values.ohms,
          amperes: makeDecimal(full.value, DECIMALS),
        }),
        reason: mean
          ? say('solenoid-current.reason-mean', {
              percent,
              full: makeDecimal(full.value, DECIMALS),
              amperes: makeDecimal(value, DECIMALS),
            })
          : say('solenoid-current.reason-full'),
        more: mean ? [say('solenoid-current.holds')] : [],
      },
      isRight: (answer) => {
        const really = (volts.valueOf() / ohms.valueOf()) * (mean ? percent / 100 : 1);
        return isNear(answer, really, tolerance, 1e-9);
      },
    };
  },
};
