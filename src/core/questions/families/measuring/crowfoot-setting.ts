/** An adapter moves the drive off the bolt: what is the click wrench set to for a torque of the deck? */
import type { Adapter } from '../../../measure/wrench.ts';
import { gainOf, settingFor } from '../../../measure/wrench.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import { exactIn, type Torque } from '../../../unit/record.ts';
import type { DeckTorque } from '../../../unit/service.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { decimalText } from '../gear-parts.ts';
import { isNear, numberAnswer, numberLures } from '../number-parts.ts';

const FACT = 'skill:crowfoot';

/** Straight out, slanted, square across, slanted back, folded back. */
const ANGLES = [0, 45, 90, 135, 180] as const;

const torquesOf = (unit: Unit): DeckTorque[] =>
  (unit.deck.torques ?? []).filter(({ id }) => unit.sure(`torque:${id}`));

/** Lever and adapter as tools have them, by the torque's system: mm in tens, or inches in halves. */
const SIZES: Readonly<
  Record<Torque['unit'], { length: 'mm' | 'in'; lever: [number, number]; adapter: [number, number] }>
> = {
  N·m: { length: 'mm', lever: [25, 50], adapter: [3, 9] },
  kgf·m: { length: 'mm', lever: [25, 50], adapter: [3, 9] },
  lbf·ft: { length: 'in', lever: [20, 40], adapter: [2, 7] },
  lbf·in: { length: 'in', lever: [20, 40], adapter: [2, 7] },
};

export const crowfootSetting: Family = {
  id: 'crowfoot-setting',
  level: 'apply',
  form: 'number',
  facts: (unit) => (torquesOf(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const torques = torquesOf(unit);
    if (fact !== FACT || torques.length === 0) return undefined;
    const { id, torque } = random.pick(torques);
    const { length, lever, adapter } = SIZES[torque.unit];
    const scale = length === 'mm' ? rational(10) : rational(1, 2);
    const degrees = random.pick(ANGLES);
    const tool: Adapter = {
      lever: scale.mul(BigInt(random.int(...lever))),
      adapter: scale.mul(BigInt(random.int(...adapter))),
      degrees: rational(degrees),
    };
    const target = exactIn(torque, torque.unit);
    const [setting, gain] = [settingFor(target, tool), gainOf(tool)];
    if (!setting.ok || !gain.ok) return undefined;
    const straight = settingFor(target, { ...tool, degrees: rational(0) });
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'adapter-left-out', value: target },
      { slipUp: 'longer-means-higher', value: target.mul(gain.value) },
      ...(straight.ok && degrees !== 0 ? [{ slipUp: 'angle-left-out' as const, value: straight.value }] : []),
      { slipUp: 'adapter-taken-off', value: target.mul(tool.lever).div(tool.lever.sub(tool.adapter)) },
    ];
    // One in a hundred, to the last place shown: wide enough for a cosine of three places.
    const decimals = setting.value.lt(100n) ? 1 : 0;
    const tolerance = makeDecimal(setting.value.div(100n).add(rational(1, 2 * 10 ** decimals)), decimals);
    const text = (value: Rational) => makeDecimal(value, decimals);
    const tidy = (value: Rational) => makeDecimal(value, length === 'mm' ? 0 : 1);
    const reach = tool.lever.mul(gain.value);
    return {
      facts: [FACT],
      uses: [`torque:${id}`],
      prompt: say('crowfoot-setting.prompt', {
        torque: thing('torque', id),
        target: torque.value,
        unit: torque.unit,
        lever: tidy(tool.lever),
        adapter: tidy(tool.adapter),
        length,
        angle: String(degrees),
        tolerance,
      }),
      space: { form: 'number', unit: torque.unit, tolerance, signed: false, decimals },
      answers: [numberAnswer(setting.value)],
      lures: numberLures(setting.value, tolerance, FACT, wrong),
      explanation: {
        row: say('crowfoot-setting.row', {
          target: torque.value,
          lever: tidy(tool.lever),
          reach: makeDecimal(reach, 1),
          setting: text(setting.value),
          unit: torque.unit,
        }),
        reason: say('crowfoot-setting.reason', { angle: String(degrees) }),
        more: [
          say('crowfoot-setting.reach', {
            lever: tidy(tool.lever),
            adapter: tidy(tool.adapter),
            cosine: decimalText(gain.value.sub(1n).mul(tool.lever).div(tool.adapter), 3),
            angle: String(degrees),
            reach: makeDecimal(reach, 1),
            length,
          }),
        ],
      },
      isRight: (answer) => {
        const arm = tool.lever.valueOf() + tool.adapter.valueOf() * Math.cos((degrees * Math.PI) / 180);
        const really = (Number(torque.value) * tool.lever.valueOf()) / arm;
        return isNear(answer, really, tolerance, 1e-6);
      },
    };
  },
};
