/**
 * The load in each leg of a two-leg sling: weight ÷ (2 × sine of the leg's angle to level)
 * (docs/sources.md [SLING-1]). The flatter the legs, the more each carries.
 */
import { cosine } from '../../../inexact.ts';
import { makeDecimal, parseRational, type Rational, rational } from '../../../rational.ts';
import type { DeckWeight } from '../../../unit/service.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import { floatOf, numberAnswer, numberLures } from '../number-parts.ts';

/** Angles of the legs to level, whole degrees. */
const ANGLES = [30, 40, 45, 50, 60] as const;

const factOf = ({ id }: DeckWeight) => `weight:${id}/sling`;

const sureWeights = (unit: Unit) => (unit.deck.weights ?? []).filter(({ id }) => unit.sure(`weight:${id}`));

const sine = (degrees: number): Rational => cosine(rational(90 - degrees));

export const slingLoad: Family = {
  id: 'sling-load',
  level: 'apply',
  form: 'number',
  facts: (unit) => sureWeights(unit).map(factOf),
  pose(unit, fact, random) {
    const weight = sureWeights(unit).find((candidate) => factOf(candidate) === fact);
    if (!weight) return undefined;
    const angle = random.pick(ANGLES);
    const mass = parseRational(weight.mass.value)!;
    const load = mass.div(sine(angle).mul(2n));
    const tolerance = makeDecimal(load.div(50n), 1);
    const name = thing('weight', weight.id);
    return {
      facts: [fact],
      uses: [`weight:${weight.id}`],
      prompt: say('sling-load.prompt', {
        name,
        mass: weight.mass.value,
        unit: weight.mass.unit,
        angle,
        tolerance,
      }),
      space: { form: 'number', unit: weight.mass.unit, tolerance, signed: false, decimals: 1 },
      answers: [numberAnswer(parseRational(makeDecimal(load, 3))!)],
      lures: numberLures(load, tolerance, fact, [
        { slipUp: 'half-on-each-leg', value: mass.div(2n) },
        {
          slipUp: 'angle-from-the-plumb',
          value: parseRational(makeDecimal(mass.div(sine(90 - angle).mul(2n)), 3))!,
        },
        { slipUp: 'whole-load-on-each-leg', value: parseRational(makeDecimal(mass.div(sine(angle)), 3))! },
      ]),
      explanation: {
        row: say('sling-load.row', {
          mass: weight.mass.value,
          unit: weight.mass.unit,
          angle,
          sine: makeDecimal(sine(angle), 3),
          load: makeDecimal(load, 1),
        }),
        reason: say('sling-load.reason'),
        more: [say('sling-load.label')],
      },
      isRight(answer) {
        const given = floatOf(answer);
        // By the pull upward: both legs together must carry the weight.
        const upward = given === null ? 0 : 2 * given * Math.sin((angle * Math.PI) / 180);
        const slack = 2 * Number(tolerance) * Math.sin((angle * Math.PI) / 180);
        return given !== null && Math.abs(upward - Number(weight.mass.value)) <= slack + 0.002;
      },
    };
  },
};
