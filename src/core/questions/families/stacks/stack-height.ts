/** How high is a pack? Worked from a table of its plates, sprung ones counted pressed flat or free as asked. */
import { stackHeight, type Waves } from '../../../measure/stack.ts';
import { makeDecimal, parseRational, type Rational, ZERO } from '../../../rational.ts';
import { countOf } from '../../../unit/stacks.ts';
import { say } from '../../phrase.ts';
import type { FactId, Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { floatOf, numberAnswer, numberLures } from '../number-parts.ts';
import { perUnit } from '../per-unit.ts';
import {
  countLike,
  floatHeight,
  halfPlace,
  heightPlates,
  isSprung,
  lengthUnit,
  placesOf,
  plateTable,
} from './height-parts.ts';
import { kindsIn, plateName, platesIn, stackName, sureStacks } from './stack-parts.ts';

const FACT: FactId = 'skill:stack-height';
const FEWEST_PLATES = 4;
const BEYOND_FLOAT = 1e-9;

const askable = perUnit((unit) =>
  sureStacks(unit).filter((stack) => platesIn(stack).length >= FEWEST_PLATES),
);

export const stackHeightFamily: Family = {
  id: 'stack-height',
  level: 'apply',
  form: 'number',
  facts: (unit) => (askable(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || askable(unit).length === 0) return undefined;
    const stack = random.pick(askable(unit));
    const sprung = isSprung(stack);
    const waves: Waves = sprung ? random.pick(['flat', 'free'] as const) : 'flat';
    const plates = heightPlates(stack);
    const height = (counted: typeof plates, as: Waves): Rational => {
      const result = stackHeight(counted, as);
      return result.ok ? result.value : ZERO;
    };
    const right = height(plates, waves);
    const [places, in_] = [placesOf(stack), lengthUnit(stack)];
    const tolerance = halfPlace(places);
    const kinds = kindsIn(platesIn(stack));
    const without = (drop: readonly string[]) => plates.filter(({ id }) => !drop.includes(id));
    const rings = platesIn(stack).filter(({ kind }) => kind === 'snap-ring');
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'other-wave-height', value: height(plates, waves === 'flat' ? 'free' : 'flat') },
      { slipUp: 'ring-left-out', value: height(without(rings.map(({ id }) => id)), waves) },
      {
        slipUp: 'one-of-each-counted',
        value: height(
          plates.filter(({ id }) => kinds.some((item) => item.id === id)),
          waves,
        ),
      },
    ];
    const shown = (value: Rational) => makeDecimal(value, places);
    return {
      facts: [fact],
      uses: [`stack:${stack.id}`, ...platesIn(stack).map(({ id }) => `plate:${stack.id}/${id}` as const)],
      prompt: say('stack-height.prompt', {
        stack: stackName(stack),
        waves: sprung ? waves : 'none',
        ring: countOf(stack, 'snap-ring') > 0 ? 'yes' : 'no',
      }),
      drawing: plateTable(stack),
      space: { form: 'number', unit: in_, tolerance, signed: false, decimals: places },
      answers: [numberAnswer(right)],
      lures: numberLures(right, tolerance, fact, wrong),
      explanation: {
        row: say('stack-height.row', { stack: stackName(stack), height: shown(right), unit: in_ }),
        reason: say('stack-height.reason', { waves: sprung ? waves : 'none' }),
        more: kinds.map((item) => {
          const own = plates.find(({ id }) => id === item.id)!;
          const each = waves === 'free' ? (own.free ?? own.thickness) : own.thickness;
          const count = countLike(stack, item);
          return say('stack-height.step', {
            plate: plateName({ ...item, thickness: undefined }),
            count,
            each: shown(each),
            sum: shown(each.mul(BigInt(count))),
            unit: in_,
          });
        }),
        drawing: { kind: 'stack', stack: stack.id, showThickness: true },
      },
      isRight: (answer) => {
        const given = floatOf(answer);
        const within = parseRational(tolerance)!.valueOf() + BEYOND_FLOAT;
        return given !== null && Math.abs(given - floatHeight(stack, waves)) <= within;
      },
    };
  },
};
