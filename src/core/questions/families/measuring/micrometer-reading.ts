/** A selective part in the micrometer: what does it measure? Sleeve lines uncovered, and the thimble's line. */
import { readingAt } from '../../../measure/instrument.ts';
import { placeIn } from '../../../measure/limits.ts';
import { makeDecimal, type Rational } from '../../../rational.ts';
import { limitsIn } from '../../../unit/record.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { numberAnswer, numberLures } from '../number-parts.ts';
import { askedFits } from './fit-parts.ts';
import { divisionText, drawnScale, instrumentOf, isDistance, lengthSpace, PLACES } from './scale-parts.ts';

const FACT = 'skill:micrometer';

/** Thick enough to uncover some lines, thin enough for a small micrometer: 1 to 24 mm, 0.04 to 0.95 in. */
const SIZES = {
  mm: limitsIn({ low: { value: '1', unit: 'mm' }, high: { value: '24', unit: 'mm' } }, 'mm'),
  in: limitsIn({ low: { value: '0.04', unit: 'in' }, high: { value: '0.95', unit: 'in' } }, 'in'),
};

/** Fits that have a part of such a size, and those parts. */
const fitsWithParts = (unit: Unit) =>
  askedFits(unit)
    .map((asked) => ({
      ...asked,
      parts: asked.parts.filter(({ thickness }) => placeIn(SIZES[asked.unit], thickness) === 'in'),
    }))
    .filter(({ parts }) => parts.length > 0);

/** The sleeve's numbered lines, in its own lines: every millimetre, every tenth of an inch. */
const NUMBERED = { mm: 2, in: 4 } as const;

export const micrometerReading: Family = {
  id: 'micrometer-reading',
  level: 'apply',
  form: 'number',
  facts: (unit) => (fitsWithParts(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const fits = fitsWithParts(unit);
    if (fact !== FACT || fits.length === 0) return undefined;
    const { fit, ref, parts, unit: length } = random.pick(fits);
    const gauge = instrumentOf('micrometer', length);
    const [thinnest, thickest] = [parts[0]!.thickness, parts.at(-1)!.thickness].map((thickness) =>
      Number(thickness.div(gauge.division).floor().toFraction()),
    ) as [number, number];
    const value = gauge.division.mul(BigInt(random.int(thinnest, thickest)));
    const reading = readingAt(gauge, value);
    if (!reading.ok) return undefined;
    const { steps, divisions } = reading.value;
    const line = gauge.division.mul(BigInt(gauge.divisions));
    const sleeve = line.mul(BigInt(steps));
    const fine = value.sub(sleeve);
    const beyond = steps % NUMBERED[length];
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      ...(beyond > 0
        ? [{ slipUp: 'sleeve-line-missed' as const, value: value.sub(line.mul(BigInt(beyond))) }]
        : []),
      { slipUp: 'sleeve-line-too-many', value: value.add(line) },
      { slipUp: 'fine-scale-left-out', value: sleeve },
      { slipUp: 'fine-scale-ten-off', value: sleeve.add(fine.div(10n)) },
      { slipUp: 'fine-scale-ten-off', value: sleeve.add(fine.mul(10n)) },
    ];
    const tolerance = divisionText(gauge);
    const text = (of: Rational) => makeDecimal(of, PLACES[length]);
    return {
      facts: [FACT],
      uses: [ref],
      prompt: say('micrometer-reading.prompt', {
        fit: thing('fit', fit.id),
        unit: length,
        division: tolerance,
        tolerance,
      }),
      drawing: { kind: 'micrometer', scale: drawnScale(gauge), reading: reading.value },
      space: lengthSpace(gauge),
      answers: [numberAnswer(value)],
      lures: numberLures(value, tolerance, FACT, wrong),
      explanation: {
        row: say('micrometer-reading.sleeve', {
          steps,
          line: makeDecimal(line, length === 'mm' ? 1 : 3),
          sleeve: text(sleeve),
          unit: length,
        }),
        reason: say('micrometer-reading.sum', {
          divisions,
          division: tolerance,
          fine: text(fine),
          sleeve: text(sleeve),
          value: text(value),
          unit: length,
        }),
        more: [say(`micrometer-reading.lines-${length}`)],
      },
      isRight: (answer) => isDistance(gauge, answer, reading.value),
    };
  },
};
