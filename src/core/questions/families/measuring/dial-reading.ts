/** A dial indicator with its turns: what is the travel? Zeroed before the part was moved, or only read. */
import { type ScaleReading, stepOf, travelBetween } from '../../../measure/instrument.ts';
import type { Random } from '../../../random.ts';
import type { Rational } from '../../../rational.ts';
import { makeDecimal } from '../../../rational.ts';
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

const FACT = 'skill:dial';

const fitsWithDial = (unit: Unit) => askedFits(unit).filter(({ fit }) => fit.instrument === 'dial');

const MOST_TURNS = 3;
/** One face in three was not zeroed. */
const NOT_ZEROED = 1 / 3;

/** Where the hands stood and where they came to; a zeroed face started at 0. */
function drawTravel(random: Random): { start: ScaleReading; end: ScaleReading } {
  const end = { steps: random.int(0, MOST_TURNS), divisions: random.int(3, 97) };
  if (random.unit() >= NOT_ZEROED) return { start: { steps: 0, divisions: 0 }, end };
  const start = { steps: random.int(0, 1), divisions: random.int(4, 40) };
  return { start, end: { ...end, steps: end.steps + start.steps + 1 } };
}

export const dialReading: Family = {
  id: 'dial-reading',
  level: 'apply',
  form: 'number',
  facts: (unit) => (fitsWithDial(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const fits = fitsWithDial(unit);
    if (fact !== FACT || fits.length === 0) return undefined;
    const { fit, ref, unit: length } = random.pick(fits);
    const dial = instrumentOf('dial', length);
    const { start, end } = drawTravel(random);
    const zeroed = start.steps === 0 && start.divisions === 0;
    const travel = travelBetween(dial, start, end);
    if (!travel.ok) return undefined;
    const value = travel.value;
    const [turn, tolerance] = [stepOf(dial), divisionText(dial)];
    const [from, to] = [shownOn(dial, start), shownOn(dial, end)];
    const handOnly = dial.division.mul(
      BigInt((end.divisions - start.divisions + dial.divisions) % dial.divisions),
    );
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'turn-missed', value: handOnly },
      { slipUp: 'turn-too-many', value: value.add(turn) },
      { slipUp: 'division-ten-off', value: value.mul(10n) },
      { slipUp: 'division-ten-off', value: value.div(10n) },
      ...(zeroed
        ? [
            {
              slipUp: 'scale-backward' as const,
              value: turn
                .mul(BigInt(end.steps))
                .add(dial.division.mul(BigInt(dial.divisions - end.divisions))),
            },
          ]
        : [
            { slipUp: 'start-left-out' as const, value: to },
            { slipUp: 'start-added' as const, value: to.add(from) },
          ]),
    ];
    const text = (of: Rational) => makeDecimal(of, PLACES[length]);
    const face = ({ steps, divisions }: ScaleReading, shown: Rational) =>
      say('dial-reading.face', {
        steps,
        turn: text(turn),
        divisions,
        division: tolerance,
        shown: text(shown),
        unit: length,
      });
    return {
      facts: [FACT],
      uses: [ref],
      prompt: say(zeroed ? 'dial-reading.prompt-zeroed' : 'dial-reading.prompt-moved', {
        fit: thing('fit', fit.id),
        unit: length,
        division: tolerance,
        tolerance,
      }),
      drawing: { kind: 'dial', scale: drawnScale(dial), reading: end, ...(zeroed ? {} : { start }) },
      space: lengthSpace(dial),
      answers: [numberAnswer(value)],
      lures: numberLures(value, tolerance, FACT, wrong),
      explanation: {
        row: face(end, to),
        reason: zeroed
          ? say('dial-reading.reason-zeroed', { travel: text(value), unit: length })
          : say('dial-reading.reason-moved', {
              to: text(to),
              from: text(from),
              travel: text(value),
              unit: length,
            }),
        more: [
          ...(zeroed ? [] : [face(start, from)]),
          say('dial-reading.small-hand', { turn: text(turn), unit: length }),
        ],
      },
      isRight: (answer) => isDistance(dial, answer, end, start),
    };
  },
};
