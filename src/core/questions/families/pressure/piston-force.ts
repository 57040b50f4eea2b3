/** Pressure on a ring-shaped piston against its spring: how hard does it press the plates? */
import { pistonForceN } from '../../../capacity/piston.ts';
import { PI } from '../../../inexact.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import { exactIn } from '../../../unit/record.ts';
import { say } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import { isNear, numberAnswer, shareOf } from '../number-parts.ts';
import {
  areaInWords,
  askedCapacities,
  drawGauge,
  FORCE_DECIMALS,
  floatFigures,
  fullDisc,
  inUnit,
  noSpring,
  partsInWords,
  positiveLures,
  type WrongFigure,
} from './capacity-parts.ts';

const FACT = 'skill:piston-force';
const SHARE = rational(1, 100);

export const pistonForce: Family = {
  id: 'piston-force',
  level: 'apply',
  form: 'number',
  facts: (unit) => (askedCapacities(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const among = askedCapacities(unit);
    if (fact !== FACT || among.length === 0) return undefined;
    const asked = random.pick(among);
    const { capacity, piston, uses } = asked;
    const { kpa, inWords } = drawGauge(capacity, random);
    const { unit: forceUnit } = capacity.spring;
    const force = (of: typeof piston): Rational | undefined => {
      const newtons = pistonForceN(of, kpa);
      return newtons.ok ? inUnit(newtons.value, 'N', forceUnit) : undefined;
    };
    const value = force(piston);
    if (!value || value.lte(0n)) return undefined;
    const spring = exactIn(capacity.spring, forceUnit);
    const open = force(noSpring(asked));
    const [outer, inner] = [capacity.piston.outer, capacity.piston.inner].map((width) =>
      width ? exactIn(width, 'mm') : rational(0),
    ) as [Rational, Rational];
    const bySides = PI.div(4n).mul(outer.sub(inner).mul(outer.sub(inner)));
    const wrong: WrongFigure[] = [
      { slipUp: 'spring-left-out', value: open },
      { slipUp: 'spring-added', value: open?.add(spring) },
      { slipUp: 'inner-left-out', value: force(fullDisc(asked)) },
      { slipUp: 'diameter-for-radius', value: force({ ...piston, areaMm2: piston.areaMm2.mul(4n) }) },
      { slipUp: 'widths-subtracted-first', value: force({ ...piston, areaMm2: bySides }) },
      { slipUp: 'thousand-off', value: value.mul(1000n) },
      { slipUp: 'thousand-off', value: value.div(1000n) },
    ];
    const decimals = FORCE_DECIMALS[forceUnit];
    const tolerance = shareOf(value, SHARE, decimals);
    return {
      facts: [FACT],
      uses,
      prompt: say('piston-force.prompt', { ...partsInWords(asked), ...inWords, unit: forceUnit, tolerance }),
      space: { form: 'number', unit: forceUnit, tolerance, signed: false, decimals },
      answers: [numberAnswer(value)],
      lures: positiveLures(value, tolerance, FACT, wrong),
      explanation: {
        row: areaInWords(asked),
        reason: say('piston-force.reason', {
          open: makeDecimal(open!, decimals),
          spring: makeDecimal(spring, decimals),
          force: makeDecimal(value, decimals),
          unit: forceUnit,
        }),
        more: [say(`pressure.units-${capacity.piston.outer.unit}`)],
      },
      isRight: (answer) => {
        const { areaMm2, springN } = floatFigures(capacity);
        const newtons = (kpa.valueOf() * areaMm2) / 1000 - springN;
        const really = inUnit(rational(Math.round(newtons * 1e6), 1_000_000), 'N', forceUnit).valueOf();
        return isNear(answer, really, tolerance, really * 1e-5);
      },
    };
  },
};
