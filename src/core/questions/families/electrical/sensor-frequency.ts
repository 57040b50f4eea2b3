/** A speed sensor: how many pulses a second at this speed, or what speed at this frequency? Teeth are told. */
import { frequencyHz, speedRpm } from '../../../electrical/speed-sensor.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import type { DeckSensor } from '../../../unit/deck.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { isNear, numberAnswer, numberLures, shareOf } from '../number-parts.ts';

const HERTZ_FACT = 'skill:sensor-frequency';
const RPM_FACT = 'skill:sensor-speed';
const SHARE = rational(1, 200);

const sensorsOf = (unit: Unit): DeckSensor[] =>
  (unit.deck.sensors ?? []).filter(({ id }) => unit.sure(`sensor:${id}`));

export const sensorFrequency: Family = {
  id: 'sensor-frequency',
  level: 'apply',
  form: 'number',
  facts: (unit) => (sensorsOf(unit).length > 0 ? [HERTZ_FACT, RPM_FACT] : []),
  pose(unit, fact, random) {
    const sensors = sensorsOf(unit);
    if (sensors.length === 0 || (fact !== HERTZ_FACT && fact !== RPM_FACT)) return undefined;
    const sensor = random.pick(sensors);
    const toHertz = fact === HERTZ_FACT;
    // 600 to 4200 rpm in steps of 50, or the frequency of such a speed in whole hertz.
    const rpm = rational(50 * random.int(12, 84));
    const pulses = frequencyHz(sensor, rpm);
    if (!pulses.ok) return undefined;
    const given = toHertz ? rpm : pulses.value.floor();
    const answer = toHertz ? pulses : speedRpm(sensor, given);
    if (!answer.ok) return undefined;
    const { teeth } = sensor;
    const other = sensors.find((one) => one.teeth !== teeth);
    const by = (wheel: bigint, each = 60n): Rational =>
      toHertz ? given.mul(wheel).div(each) : given.mul(each).div(wheel);
    const count = BigInt(teeth);
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'minutes-for-seconds', value: by(count, 1n) },
      { slipUp: 'both-edges', value: by(count * 2n) },
      { slipUp: 'teeth-left-out', value: by(1n) },
      {
        slipUp: 'factor-turned-round',
        value: toHertz ? given.mul(60n).div(count) : given.mul(count).div(60n),
      },
      ...(other ? [{ slipUp: 'other-wheel' as const, value: by(BigInt(other.teeth)) }] : []),
    ];
    const value = answer.value;
    const tolerance = shareOf(value, SHARE, 0);
    const values = {
      sensor: thing('sensor', sensor.id),
      shaft: thing('shaft', sensor.reads),
      teeth,
      given: given.toFraction(),
      tolerance,
    };
    return {
      facts: [fact],
      uses: [`sensor:${sensor.id}`],
      prompt: say(toHertz ? 'sensor-frequency.prompt-hertz' : 'sensor-frequency.prompt-rpm', values),
      space: { form: 'number', unit: toHertz ? 'Hz' : 'rpm', tolerance, signed: false, decimals: 0 },
      answers: [numberAnswer(value)],
      lures: numberLures(value, tolerance, fact, wrong),
      explanation: {
        row: say(toHertz ? 'sensor-frequency.row-hertz' : 'sensor-frequency.row-rpm', {
          teeth,
          given: values.given,
          value: makeDecimal(value, 0),
        }),
        reason: say('sensor-frequency.reason', { teeth }),
        more: [],
      },
      isRight: (answer) => {
        const [times, number] = [teeth / 60, given.valueOf()];
        const really = toHertz ? number * times : number / times;
        return isNear(answer, really, tolerance, 1e-9);
      },
    };
  },
};
