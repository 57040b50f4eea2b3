/** How much pressure does an element need for the torque it carries in a range? The torque is told. */
import { forceForN } from '../../../capacity/clutch.ts';
import { type Piston, pressureForKpa } from '../../../capacity/piston.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import { exactIn } from '../../../unit/record.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import { speedRefs } from '../gear-parts.ts';
import { isNear, numberAnswer, shareOf } from '../number-parts.ts';
import { perUnit } from '../per-unit.ts';
import { type Carried, carriedIn } from '../torque-parts.ts';
import {
  type AskedCapacity,
  areaInWords,
  askedCapacities,
  FORCE_DECIMALS,
  floatFigures,
  fullDisc,
  inUnit,
  noSpring,
  partsInWords,
  positiveLures,
  pressureText,
  type WrongFigure,
} from './capacity-parts.ts';

const FACT = 'skill:pressure-needed';
const SHARE = rational(1, 33);
/** Torque on the input, in tens of the torque unit. */
const INPUT_TENS = [10, 40] as const;

interface Loaded extends AskedCapacity {
  readonly carried: Carried;
}

/** Elements with a capacity, in each range in which their torque is settled. */
const loadedIn = perUnit((unit: Unit): Loaded[] =>
  carriedIn(unit).flatMap((carried): Loaded[] => {
    const asked = askedCapacities(unit).find(({ element }) => element === carried.element);
    return asked ? [{ ...asked, carried }] : [];
  }),
);

export const pressureNeeded: Family = {
  id: 'pressure-needed',
  level: 'reason',
  form: 'number',
  facts: (unit) => (loadedIn(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const among = loadedIn(unit);
    if (fact !== FACT || among.length === 0) return undefined;
    const asked = random.pick(among);
    const { capacity, piston, clutch, torqueUnit, carried } = asked;
    const { range } = carried;
    const input = rational(10 * random.int(...INPUT_TENS));
    // To a whole unit, and reckoned on with that: it is what the question tells.
    const torque = carried.torque.abs().mul(input).add(rational(1, 2)).floor();
    if (torque.lt(10n)) return undefined;
    const torqueNm = inUnit(torque, torqueUnit, 'N·m');
    const force = forceForN(clutch, torqueNm);
    if (!force.ok) return undefined;
    const { unit: gaugeUnit } = capacity.pressure;
    const pressure = (of: Piston, newtons: Rational): Rational | undefined => {
      const kpa = pressureForKpa(of, newtons);
      return kpa.ok ? inUnit(kpa.value, 'kPa', gaugeUnit) : undefined;
    };
    const value = pressure(piston, force.value);
    // Where it would slip at full pressure, another question is due.
    if (!value || value.gt(exactIn(capacity.pressure, gaugeUnit))) return undefined;
    const less = force.value.sub(piston.springN);
    const wrong: WrongFigure[] = [
      { slipUp: 'spring-left-out', value: pressure(noSpring(asked), force.value) },
      ...(less.gt(0n)
        ? [{ slipUp: 'spring-taken-off' as const, value: pressure(noSpring(asked), less) }]
        : []),
      { slipUp: 'one-face-per-friction', value: pressure(piston, force.value.mul(2n)) },
      { slipUp: 'diameter-for-radius', value: pressure(piston, force.value.div(2n)) },
      { slipUp: 'inner-left-out', value: pressure(fullDisc(asked), force.value) },
      { slipUp: 'thousand-off', value: value.mul(1000n) },
    ];
    const decimals = gaugeUnit === 'MPa' ? 2 : gaugeUnit === 'bar' || gaugeUnit === 'kgf/cm²' ? 1 : 0;
    const tolerance = shareOf(value, SHARE, decimals);
    const forceUnit = capacity.spring.unit;
    const forceText = (newtons: Rational) =>
      makeDecimal(inUnit(newtons, 'N', forceUnit), FORCE_DECIMALS[forceUnit]);
    return {
      facts: [FACT],
      uses: [...new Set([...asked.uses, ...speedRefs(unit, range)])],
      prompt: say('pressure-needed.prompt', {
        ...partsInWords(asked),
        range: thing('range', range.id),
        torque: torque.toFraction(),
        torqueUnit,
        unit: gaugeUnit,
        tolerance,
      }),
      space: { form: 'number', unit: gaugeUnit, tolerance, signed: false, decimals },
      answers: [numberAnswer(value)],
      lures: positiveLures(value, tolerance, FACT, wrong),
      explanation: {
        row: say('pressure-needed.row', {
          torque: torque.toFraction(),
          torqueUnit,
          faces: clutch.faces,
          friction: capacity.friction,
          force: forceText(force.value),
          forceUnit,
        }),
        reason: say('pressure-needed.reason', {
          force: forceText(force.value),
          spring: forceText(piston.springN),
          sum: forceText(force.value.add(piston.springN)),
          forceUnit,
          pressure: pressureText(value, gaugeUnit),
          unit: gaugeUnit,
        }),
        more: [
          areaInWords(asked),
          say('pressure-needed.input', {
            input: input.toFraction(),
            torque: torque.toFraction(),
            unit: torqueUnit,
          }),
          say(`pressure.units-${capacity.piston.outer.unit}`),
        ],
      },
      isRight: (answer) => {
        const { areaMm2, springN, perNewton } = floatFigures(capacity);
        const newtons = torqueNm.valueOf() / perNewton + springN;
        const kpa = (newtons * 1000) / areaMm2;
        const perUnitOfGauge = { kPa: 1, MPa: 1000, bar: 100, psi: 6.894757, 'kgf/cm²': 98.0665 };
        const really = kpa / perUnitOfGauge[gaugeUnit];
        return isNear(answer, really, tolerance, really * 1e-5);
      },
    };
  },
};
