/**
 * Readings of one winding at different temperatures: below its band, within it or above? The band is stated at
 * 20 °C, so every reading is brought back first. One too near an end of the band is never asked.
 */
import { placeInBandAt20, resistanceAt, resistanceAt20 } from '../../../electrical/winding.ts';
import { type Limits, type Place, placeIn } from '../../../measure/limits.ts';
import type { Random } from '../../../random.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import { say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { decimalText } from '../gear-parts.ts';
import { askedWindings, ohmsText, toTenths } from './winding-parts.ts';

const FACT = 'skill:winding-verdict';
const READINGS = ['a', 'b', 'c', 'd'] as const;
const WAYS = ['low', 'in', 'high'] as const satisfies readonly Place[];
const CELSIUS = [-10, 0, 60, 80, 90, 100, 110, 120] as const;
/** How much nearer to an end of the band than this share of it a reading must not be. */
const CLEAR = rational(1, 100);

interface Reading {
  readonly celsius: Rational;
  readonly ohms: Rational;
  readonly at20: Rational;
  readonly place: Place;
}

/** At 20 °C in hundredths of the band's ends: from 15 below to 15 above. */
function drawReading(band: Limits, place: Place, random: Random): Reading | undefined {
  const hundredths = (of: Rational, count: number) => of.mul(rational(count, 100));
  const width = Number(band.high.sub(band.low).mul(100n).floor().toFraction());
  const wanted = {
    low: () => hundredths(band.low, random.int(72, 97)),
    in: () => band.low.add(rational(random.int(0, width), 100)),
    high: () => hundredths(band.high, random.int(103, 128)),
  }[place]();
  const celsius = rational(random.pick(CELSIUS));
  const hot = resistanceAt(wanted, celsius);
  if (!hot.ok) return undefined;
  const ohms = toTenths(hot.value);
  const at20 = resistanceAt20(ohms, celsius);
  const found = placeInBandAt20(band, ohms, celsius);
  if (!at20.ok || !found.ok || found.value !== place) return undefined;
  const near = [band.low, band.high].some((end) => at20.value.sub(end).abs().lt(end.mul(CLEAR)));
  return near ? undefined : { celsius, ohms, at20: at20.value, place };
}

function drawReadings(band: Limits, random: Random): Reading[] | undefined {
  const places = random.shuffle<Place>(['in', random.pick(WAYS), random.pick(WAYS), random.pick(WAYS)]);
  const readings = places.map((place) => {
    for (let attempt = 0; attempt < 12; attempt++) {
      const reading = drawReading(band, place, random);
      if (reading) return reading;
    }
    return undefined;
  });
  return readings.every((reading) => reading !== undefined) ? readings : undefined;
}

export const windingVerdict: Family = {
  id: 'winding-verdict',
  level: 'apply',
  form: 'pair',
  facts: (unit) => (askedWindings(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const windings = askedWindings(unit);
    if (fact !== FACT || windings.length === 0) return undefined;
    const { winding, band, uses } = random.pick(windings);
    const readings = drawReadings(band, random);
    if (!readings) return undefined;
    const told = (rule: (reading: Reading) => Place): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(READINGS.map((id, index) => [id, rule(readings[index]!)])),
    });
    const right = told(({ place }) => place);
    const raw = told(({ ohms }) => placeIn(band, ohms));
    // Where the heat makes no difference, nothing is asked about it.
    if (
      READINGS.every(
        (id) => right.form === 'pair' && raw.form === 'pair' && right.pairs[id] === raw.pairs[id],
      )
    )
      return undefined;
    const turned = ({ ohms, celsius }: Reading): Place => {
      const more = resistanceAt(ohms, celsius);
      return more.ok ? placeIn(band, more.value) : 'high';
    };
    const lures: Lure[] = [
      { slipUp: 'hot-as-cold', answer: raw, fact },
      { slipUp: 'heat-turned-round', answer: told(turned), fact },
    ];
    const [low, high] = [ohmsText(band.low), ohmsText(band.high)];
    return {
      facts: [FACT],
      uses,
      prompt: say('winding-verdict.prompt', { solenoid: thing('solenoid', winding.solenoid), low, high }),
      space: {
        form: 'pair',
        left: readings.map(({ ohms, celsius }, index) => ({
          id: READINGS[index]!,
          label: say('electrical.reading-at', { ohms: ohmsText(ohms), celsius: decimalText(celsius, 0) }),
        })),
        right: WAYS.map((way) => ({ id: way, label: say(`electrical.place-${way}`) })),
      },
      answers: [right],
      lures: distinctLures(lures),
      explanation: {
        row: say('winding-verdict.row'),
        reason: say('winding-verdict.reason', { low, high }),
        more: readings.map(({ ohms, celsius, at20, place }) =>
          say('winding-verdict.line', {
            ohms: ohmsText(ohms),
            celsius: decimalText(celsius, 0),
            factor: makeDecimal(ohms.div(at20), 3),
            at20: makeDecimal(at20, 2),
            place: say(`electrical.place-${place}`),
          }),
        ),
      },
      // The other way round: the band is taken to the reading's temperature.
      isRight: (answer) =>
        answer.form === 'pair' &&
        readings.every(({ ohms, celsius }, index) => {
          const growth = 1 + 0.00393 * (celsius.valueOf() - 20);
          const [from, to] = [band.low.valueOf() * growth, band.high.valueOf() * growth];
          const place = ohms.valueOf() < from ? 'low' : ohms.valueOf() > to ? 'high' : 'in';
          return answer.pairs[READINGS[index]!] === place;
        }),
    };
  },
};
