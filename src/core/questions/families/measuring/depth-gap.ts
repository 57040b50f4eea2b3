/** Two depths, over a gauge bar or not, and a gasket: how much play is there with no selective part in? */
import type { Reading } from '../../../measure/play.ts';
import { type Rational, ZERO } from '../../../rational.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { FactId, Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { floatOf, numberAnswer, numberLures } from '../number-parts.ts';
import { type AskedFit, askedFits, bareInWords, drawReading, fixed, HAIR } from './fit-parts.ts';

const factOf = ({ fit }: AskedFit): FactId => `fit:${fit.id}/gap`;

const fitsByDepth = (unit: Unit) =>
  askedFits(unit).filter(({ fit, parts }) => fit.method === 'depths' && parts.length > 1);

type Depths = Extract<Reading, { method: 'depths' }>;

/** What each slip-up makes of the depths. */
function wrongGaps({ seat, standOff, gasket = ZERO }: Depths, bare: Rational) {
  const bars = [seat.bar ?? ZERO, standOff.bar ?? ZERO] as const;
  const open: { slipUp: SlipUp; value: Rational }[] = [
    { slipUp: 'gasket-left-out', value: bare.sub(gasket) },
    { slipUp: 'gasket-taken-off', value: bare.sub(gasket.mul(2n)) },
    ...(seat.bar && standOff.bar
      ? ([
          { slipUp: 'bar-taken-off-once', value: bare.add(bars[0]) },
          { slipUp: 'bar-taken-off-once', value: bare.sub(bars[1]) },
        ] as const)
      : ([{ slipUp: 'bar-left-in', value: bare.add(bars[0]).sub(bars[1]) }] as const)),
    { slipUp: 'depths-added', value: bare.add(standOff.reading.sub(bars[1]).mul(2n)) },
  ];
  // "Play" below nothing would be noticed; what people then write down is its size.
  return open.map(({ slipUp, value }) => ({ slipUp, value: value.abs() }));
}

export const depthGap: Family = {
  id: 'depth-gap',
  level: 'apply',
  form: 'number',
  facts: (unit) => fitsByDepth(unit).map(factOf),
  pose(unit, fact, random) {
    const asked = fitsByDepth(unit).find((candidate) => factOf(candidate) === fact);
    const drawn = asked && drawReading(asked, random);
    if (!asked || drawn?.reading.method !== 'depths') return undefined;
    const { fit, unit: length, places, step } = asked;
    const { seat, standOff, gasket } = drawn.reading;
    const tolerance = fixed(asked, step);
    const bar = seat.bar ?? standOff.bar;
    return {
      facts: [fact],
      uses: [asked.ref],
      prompt: say('depth-gap.prompt', {
        fit: thing('fit', fit.id),
        unit: length,
        seat: fixed(asked, seat.reading),
        seatBar: seat.bar ? 'yes' : 'no',
        standOff: fixed(asked, standOff.reading),
        standOffBar: standOff.bar ? 'yes' : 'no',
        bar: bar ? fixed(asked, bar) : 'none',
        gasket: gasket ? fixed(asked, gasket) : 'none',
        tolerance,
      }),
      space: { form: 'number', unit: length, tolerance, signed: false, decimals: places },
      answers: [numberAnswer(drawn.bare)],
      lures: numberLures(drawn.bare, tolerance, fact, wrongGaps(drawn.reading, drawn.bare)),
      explanation: {
        row: bareInWords(asked, drawn),
        reason: say('depth-gap.reason'),
        more: [
          ...(bar ? [say('depth-gap.bar', { bar: fixed(asked, bar), unit: length })] : []),
          ...(gasket ? [say('depth-gap.gasket', { gasket: fixed(asked, gasket), unit: length })] : []),
        ],
      },
      isRight: (answer) => {
        const given = floatOf(answer);
        const deep = (of: Depths['seat']) => of.reading.valueOf() - (of.bar?.valueOf() ?? 0);
        const really = deep(seat) - deep(standOff) + (gasket?.valueOf() ?? 0);
        return given !== null && Math.abs(given - really) <= step.valueOf() + HAIR;
      },
    };
  },
};
