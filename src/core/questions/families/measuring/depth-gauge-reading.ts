/** A depth gauge with a vernier, on the face or on a gauge bar laid across it: how deep is it below the face? */
import { stepOf } from '../../../measure/instrument.ts';
import { depthOf } from '../../../measure/play.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import { exactIn } from '../../../unit/record.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { numberAnswer, numberLures } from '../number-parts.ts';
import { askedFits } from './fit-parts.ts';
import {
  divisionText,
  drawnScale,
  instrumentOf,
  isDistance,
  lengthSpace,
  PLACES,
  shownOn,
} from './scale-parts.ts';

const FACT = 'skill:depth-gauge';

const fitsWithDepths = (unit: Unit) => askedFits(unit).filter(({ fit }) => fit.instrument === 'depth-gauge');

/** Main lines between which a seat lies below its face: 20 to 70 mm, 1 to 2.5 in. */
const DEEP = { mm: [20, 70], in: [40, 100] } as const;

export const depthGaugeReading: Family = {
  id: 'depth-gauge-reading',
  level: 'apply',
  form: 'number',
  facts: (unit) => (fitsWithDepths(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const fits = fitsWithDepths(unit);
    if (fact !== FACT || fits.length === 0) return undefined;
    const { fit, ref, unit: length } = random.pick(fits);
    const gauge = instrumentOf('depth-gauge', length);
    const bar = fit.bar && random.int(0, 1) === 1 ? exactIn(fit.bar, length) : undefined;
    const [low, high] = DEEP[length];
    const past = bar ? Number(bar.div(stepOf(gauge)).ceil().toFraction()) : 0;
    const reading = {
      steps: past + random.int(low, high),
      divisions: random.int(1, gauge.divisions - 1),
    };
    const shown = shownOn(gauge, reading);
    const depth = depthOf({ reading: shown, bar });
    if (!depth.ok) return undefined;
    const main = stepOf(gauge).mul(BigInt(reading.steps));
    const fine = shown.sub(main);
    const less = (value: Rational) => (bar ? value.sub(bar) : value);
    const hundredths = rational(reading.divisions, 100);
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      ...(bar ? [{ slipUp: 'bar-left-in' as const, value: shown }] : []),
      { slipUp: 'fine-scale-left-out', value: less(main) },
      { slipUp: 'main-line-too-many', value: less(shown.add(stepOf(gauge))) },
      ...(length === 'mm'
        ? [{ slipUp: 'vernier-lines-as-hundredths' as const, value: less(main.add(hundredths)) }]
        : []),
    ];
    const tolerance = divisionText(gauge);
    const text = (of: Rational) => makeDecimal(of, PLACES[length]);
    return {
      facts: [FACT],
      uses: [ref],
      prompt: say('depth-gauge-reading.prompt', {
        fit: thing('fit', fit.id),
        bar: bar ? text(bar) : 'none',
        unit: length,
        division: tolerance,
        tolerance,
      }),
      drawing: { kind: 'depth-gauge', scale: drawnScale(gauge), reading, ...(bar ? { overBar: true } : {}) },
      space: lengthSpace(gauge),
      answers: [numberAnswer(depth.value)],
      lures: numberLures(depth.value, tolerance, FACT, wrong),
      explanation: {
        row: say('depth-gauge-reading.scales', {
          main: text(main),
          divisions: reading.divisions,
          division: tolerance,
          fine: text(fine),
          shown: text(shown),
          unit: length,
        }),
        reason: bar
          ? say('depth-gauge-reading.bar', {
              shown: text(shown),
              bar: text(bar),
              depth: text(depth.value),
              unit: length,
            })
          : say('depth-gauge-reading.no-bar', { depth: text(depth.value), unit: length }),
        more: [say('depth-gauge-reading.vernier', { division: tolerance, unit: length })],
      },
      isRight: (answer) => isDistance(gauge, answer, reading, undefined, bar?.valueOf() ?? 0),
    };
  },
};
