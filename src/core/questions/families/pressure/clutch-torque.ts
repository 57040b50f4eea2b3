/** From the gauge to the torque a pack holds: piston force, then every face at the middle of its lining. */
import { meanRadiusMm, torqueCapacityNm } from '../../../capacity/clutch.ts';
import { type Piston, pistonForceN } from '../../../capacity/piston.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
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

const FACT = 'skill:clutch-torque';
const SHARE = rational(1, 50);

export const clutchTorque: Family = {
  id: 'clutch-torque',
  level: 'reason',
  form: 'number',
  facts: (unit) => (askedCapacities(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const among = askedCapacities(unit);
    if (fact !== FACT || among.length === 0) return undefined;
    const asked = random.pick(among);
    const { capacity, piston, clutch, torqueUnit, uses } = asked;
    const { kpa, inWords } = drawGauge(capacity, random);
    const torque = (of: Piston, plates = clutch): Rational | undefined => {
      const force = pistonForceN(of, kpa);
      const held = force.ok ? torqueCapacityNm(plates, force.value) : force;
      return held.ok ? inUnit(held.value, 'N·m', torqueUnit) : undefined;
    };
    const value = torque(piston);
    const [force, radius] = [pistonForceN(piston, kpa), meanRadiusMm(clutch.model, clutch.face)];
    if (!value || value.lte(0n) || !force.ok || !radius.ok) return undefined;
    const outerOnly = value.mul(clutch.face.outerMm).div(radius.value);
    const wrong: WrongFigure[] = [
      { slipUp: 'one-face-per-friction', value: value.div(2n) },
      { slipUp: 'diameter-for-radius', value: value.mul(2n) },
      { slipUp: 'spring-left-out', value: torque(noSpring(asked)) },
      { slipUp: 'inner-left-out', value: torque(fullDisc(asked)) },
      { slipUp: 'outer-radius-taken', value: outerOnly },
      { slipUp: 'one-friction-counted', value: value.div(BigInt(capacity.frictions)) },
      { slipUp: 'thousand-off', value: value.mul(1000n) },
    ];
    const tolerance = shareOf(value, SHARE, 0);
    const forceUnit = capacity.spring.unit;
    const length = capacity.lining.outer.unit;
    const forceText = makeDecimal(inUnit(force.value, 'N', forceUnit), FORCE_DECIMALS[forceUnit]);
    const radiusText = makeDecimal(inUnit(radius.value, 'mm', length), length === 'mm' ? 1 : 3);
    return {
      facts: [FACT],
      uses,
      prompt: say('clutch-torque.prompt', {
        ...partsInWords(asked),
        ...inWords,
        unit: torqueUnit,
        tolerance,
      }),
      space: { form: 'number', unit: torqueUnit, tolerance, signed: false, decimals: 0 },
      answers: [numberAnswer(value)],
      lures: positiveLures(value, tolerance, FACT, wrong),
      explanation: {
        row: say('clutch-torque.row', {
          faces: clutch.faces,
          friction: capacity.friction,
          force: forceText,
          forceUnit,
          radius: radiusText,
          length,
          torque: makeDecimal(value, 0),
          unit: torqueUnit,
        }),
        reason: say('clutch-torque.reason', { frictions: capacity.frictions, faces: clutch.faces }),
        more: [
          areaInWords(asked),
          say('clutch-torque.force', {
            spring: makeDecimal(inUnit(piston.springN, 'N', forceUnit), FORCE_DECIMALS[forceUnit]),
            force: forceText,
            unit: forceUnit,
          }),
          say('clutch-torque.radius', {
            outer: capacity.lining.outer.value,
            inner: capacity.lining.inner.value,
            radius: radiusText,
            unit: length,
          }),
          say(`pressure.units-${length}`),
        ],
      },
      isRight: (answer) => {
        const { areaMm2, springN, perNewton } = floatFigures(capacity);
        const newtonMetres = ((kpa.valueOf() * areaMm2) / 1000 - springN) * perNewton;
        const really = newtonMetres / (torqueUnit === 'N·m' ? 1 : 1.355818);
        return isNear(answer, really, tolerance, really * 1e-5);
      },
    };
  },
};
