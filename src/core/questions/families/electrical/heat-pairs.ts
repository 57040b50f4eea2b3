/** Resistances and temperatures of one part, mixed up: which belongs to which? Which way it goes has to be known. */
import { type HeatSense, pairByHeat } from '../../../electrical/heat-sense.ts';
import { resistanceAt } from '../../../electrical/winding.ts';
import type { Random } from '../../../random.ts';
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import type { DeckThermistor } from '../../../unit/electrical.ts';
import { exactIn, limitsIn } from '../../../unit/record.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { decimalText } from '../gear-parts.ts';
import { askedWindings, ohmsIn, ohmsText, toTenths } from './winding-parts.ts';

const WINDING_FACT = 'skill:winding-heat-sense';
const MOST_POINTS = 4;
const FEWEST_POINTS = 3;
const CELSIUS = [0, 20, 40, 60, 80, 100, 120] as const;

const factOf = ({ id }: DeckThermistor): FactId => `thermistor:${id}/heat`;

const thermistorsOf = (unit: Unit): DeckThermistor[] =>
  (unit.deck.electrical?.thermistors ?? []).filter(
    ({ id, points }) => points.length >= FEWEST_POINTS && unit.sure(`thermistor:${id}`),
  );

interface Point {
  readonly celsius: Rational;
  readonly ohms: Rational;
}

interface Drawn {
  readonly part: Phrase;
  readonly uses: readonly Ref[];
  readonly sense: HeatSense;
  /** Coldest first. */
  readonly points: readonly Point[];
}

const coldestFirst = (points: readonly Point[]) => points.toSorted((a, b) => a.celsius.compare(b.celsius));

/** Two figures, as one reads from a meter. */
function twoFigures(ohms: Rational): Rational {
  let step = rational(1);
  while (ohms.div(step).gte(1000n)) step = step.mul(10n);
  return ohms.div(step).add(rational(1, 2)).floor().mul(step);
}

function drawThermistor(thermistor: DeckThermistor, random: Random): Drawn {
  const points = random.sample(thermistor.points, MOST_POINTS).map(({ at, ohms }) => {
    const { low, high } = limitsIn(ohms, 'Ω');
    const drawn = low.add(high.sub(low).mul(rational(random.int(0, 20), 20)));
    return { celsius: exactIn(at, '°C'), ohms: twoFigures(drawn) };
  });
  return {
    part: thing('thermistor', thermistor.id),
    uses: [`thermistor:${thermistor.id}`],
    sense: thermistor.sense,
    points: coldestFirst(points),
  };
}

function drawWinding(unit: Unit, random: Random): Drawn | undefined {
  const { winding, band, uses } = random.pick(askedWindings(unit));
  const at20 = ohmsIn(band, random);
  const points = random.sample(CELSIUS, MOST_POINTS).map((degrees) => {
    const ohms = resistanceAt(at20, rational(degrees));
    return { celsius: rational(degrees), ohms: ohms.ok ? toTenths(ohms.value) : at20 };
  });
  const part = say('heat-pairs.winding', { solenoid: thing('solenoid', winding.solenoid) });
  return { part, uses, sense: 'rises', points: coldestFirst(points) };
}

export const heatPairs: Family = {
  id: 'heat-pairs',
  level: 'apply',
  form: 'pair',
  facts: (unit) => [
    ...thermistorsOf(unit).map(factOf),
    ...(askedWindings(unit).length > 0 ? [WINDING_FACT] : []),
  ],
  pose(unit, fact, random) {
    const thermistor = thermistorsOf(unit).find((candidate) => factOf(candidate) === fact);
    const winding = fact === WINDING_FACT && askedWindings(unit).length > 0;
    const drawn = thermistor
      ? drawThermistor(thermistor, random)
      : winding
        ? drawWinding(unit, random)
        : undefined;
    if (!drawn) return undefined;
    const { part, uses, sense, points } = drawn;
    const [celsius, ohms] = [points.map((point) => point.celsius), points.map((point) => point.ohms)];
    const right = pairByHeat(celsius, ohms, sense);
    if (!right.ok) return undefined;
    const falling = right.value;
    const id = (value: Rational) => value.toFraction();
    const pairs = (list: readonly Point[]): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(list.map((point) => [id(point.celsius), id(point.ohms)])),
    });
    const turned = pairByHeat(celsius, ohms, sense === 'falls' ? 'rises' : 'falls');
    const swapped = falling.slice(1).map((_, index): readonly Point[] =>
      falling.map((point, place) => {
        const from = place === index ? index + 1 : place === index + 1 ? index : place;
        return { celsius: point.celsius, ohms: falling[from]!.ohms };
      }),
    );
    const lures: Lure[] = [
      ...(turned.ok
        ? [{ slipUp: 'heat-sense-turned-round' as const, answer: pairs(turned.value), fact }]
        : []),
      ...swapped.map((list) => ({ slipUp: 'adjacent-swapped' as const, answer: pairs(list) })),
    ];
    return {
      facts: [fact],
      uses,
      prompt: say('heat-pairs.prompt', { part }),
      space: {
        form: 'pair',
        left: random.shuffle(celsius).map((value) => ({
          id: id(value),
          label: say('electrical.degrees', { celsius: decimalText(value, 0) }),
        })),
        right: random.shuffle(ohms).map((value) => ({
          id: id(value),
          label: say('electrical.ohms', { ohms: value.gte(100n) ? makeDecimal(value, 0) : ohmsText(value) }),
        })),
      },
      answers: [pairs(falling)],
      lures: distinctLures(lures),
      explanation: {
        row: say(`heat-pairs.row-${sense}`, { part }),
        reason: say(`heat-pairs.reason-${thermistor ? 'sensor' : 'copper'}`, { part }),
        more: falling.map((point) =>
          say('electrical.reading-at', {
            ohms: point.ohms.gte(100n) ? makeDecimal(point.ohms, 0) : ohmsText(point.ohms),
            celsius: decimalText(point.celsius, 0),
          }),
        ),
      },
      // Any two of the pairs must go the way the part goes.
      isRight: (answer) => {
        if (answer.form !== 'pair') return false;
        const given = celsius.map((value) => ({
          celsius: value.valueOf(),
          ohms: ohms.find((one) => id(one) === answer.pairs[id(value)])!.valueOf(),
        }));
        return given.every((one, index) =>
          given.slice(index + 1).every((other) => {
            const same = one.celsius < other.celsius === one.ohms < other.ohms && one.ohms !== other.ohms;
            return one.ohms !== other.ohms && same === (sense === 'rises');
          }),
        );
      },
    };
  },
};
