/** An amount of the deck in another unit, as a wrench, a gauge or a jug is marked. The rule is given. */
import { makeDecimal, parseRational, type Rational, rational } from '../../../rational.ts';
import { type Amount, exactIn } from '../../../unit/record.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { convert } from '../../../units/convert.ts';
import { type Kind, kindOf, type UnitSymbol } from '../../../units/units.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { FactId, Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { isNear, numberAnswer, numberLures } from '../number-parts.ts';
import { perUnit } from '../per-unit.ts';
import { floatConvert } from './float-units.ts';

/** Kinds that shops print in more than one unit, and the units asked for. */
const TARGETS = {
  torque: ['N·m', 'lbf·ft', 'lbf·in'],
  pressure: ['kPa', 'bar', 'psi'],
  length: ['mm', 'in'],
  volume: ['L', 'US qt'],
  temperature: ['°C', '°F'],
} as const satisfies Partial<Record<Kind, readonly UnitSymbol[]>>;
type Asked = keyof typeof TARGETS;
const ASKED = Object.keys(TARGETS) as Asked[];

interface Entry {
  readonly ref: Ref;
  readonly of: Phrase;
  readonly amount: Amount<UnitSymbol>;
}

/** What the deck has entered in units that convert, verified values only. */
const entriesOf = perUnit((unit: Unit): Entry[] => {
  const { torques = [], fits = [], fluids = [], train } = unit.deck;
  const entries: (Entry | undefined)[] = [
    ...torques.map(({ id, torque }) => ({
      ref: `torque:${id}` as Ref,
      of: thing('torque', id),
      amount: torque,
    })),
    ...train.elements.map(
      ({ id, capacity }) =>
        capacity && {
          ref: `capacity:${id}` as Ref,
          of: say('unit-convert.pressure-of', { element: thing('element', id) }),
          amount: capacity.pressure,
        },
    ),
    ...fits.flatMap(({ id, limits }) =>
      [limits.low, limits.high].map((amount) => ({
        ref: `fit:${id}` as Ref,
        of: say('unit-convert.limit-of', { fit: thing('fit', id) }),
        amount,
      })),
    ),
    ...fluids.flatMap(({ id, dryFill, refill, levelAt }) => {
      const of = (key: string) => say(`unit-convert.${key}`, { fluid: thing('fluid', id) });
      return [
        dryFill && { ref: `fluid:${id}` as Ref, of: of('fill-of'), amount: dryFill },
        refill && { ref: `fluid:${id}` as Ref, of: of('refill-of'), amount: refill },
        ...[levelAt?.low, levelAt?.high].map(
          (amount) => amount && { ref: `fluid:${id}` as Ref, of: of('level-of'), amount },
        ),
      ];
    }),
  ];
  return entries
    .filter((entry) => entry !== undefined)
    .filter(({ ref, amount }) => unit.sure(ref) && exactIn(amount, amount.unit).gt(0n));
});

const factOf = (kind: Asked): FactId => `skill:convert-${kind}`;

const entriesOfKind = (unit: Unit, kind: Asked) =>
  entriesOf(unit).filter(({ amount }) => kindOf(amount.unit) === kind);

/** The figure for one unit of `from` in `to`; only units without a zero of their own. */
const factorOf = (from: UnitSymbol, to: UnitSymbol): Rational => exactIn({ value: '1', unit: from }, to);

/** A factor to five figures, and whether that is all of it. */
function factorText(factor: Rational): { readonly text: string; readonly exact: boolean } {
  let decimals = 0;
  while (factor.mul(10n ** BigInt(decimals)).lt(10_000n) && decimals < 6) decimals++;
  const text = makeDecimal(factor, decimals)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  return { text, exact: parseRational(text)!.equals(factor) };
}

/** "1 lbf·ft = 1.3558 N·m": always so that the factor is above 1. */
function ruleOf(from: UnitSymbol, to: UnitSymbol): Phrase {
  if (kindOf(from) === 'temperature') return say('unit-convert.rule-temperature');
  const [a, b] = [from, to].map((unit) => (unit === 'lbf·in' ? ('lbf·ft' as const) : unit));
  if (a === b) return say('unit-convert.rule-none');
  const [large, small] = factorOf(a!, b!).gte(1n) ? [a!, b!] : [b!, a!];
  const { text, exact } = factorText(factorOf(large, small));
  return say('unit-convert.rule', { large, small, factor: text, exact: exact ? 'yes' : 'no' });
}

/** What the wrong rules make of it. */
function wrongValues(amount: Amount<UnitSymbol>, to: UnitSymbol): { slipUp: SlipUp; value: Rational }[] {
  const from = amount.unit;
  const figure = exactIn(amount, from);
  const kind = kindOf(from);
  const right = exactIn(amount, to);
  if (kind === 'temperature') {
    const ratio = rational(9, 5);
    return [
      { slipUp: 'zero-left-out', value: to === '°F' ? figure.mul(ratio) : figure.div(ratio) },
      {
        slipUp: 'factor-turned-round',
        value: to === '°F' ? figure.div(ratio).add(32n) : figure.sub(32n).mul(ratio),
      },
      {
        slipUp: 'zero-too-late',
        value: to === '°F' ? figure.add(32n).mul(ratio) : figure.div(ratio).sub(32n),
      },
    ];
  }
  const pounds = from.startsWith('lbf·') || to.startsWith('lbf·');
  return [
    { slipUp: 'factor-turned-round', value: figure.div(right.div(figure)) },
    ...(pounds
      ? [
          { slipUp: 'inch-for-foot-pounds' as const, value: right.mul(12n) },
          { slipUp: 'inch-for-foot-pounds' as const, value: right.div(12n) },
        ]
      : []),
    ...(kind === 'volume'
      ? [
          {
            slipUp: 'other-quart' as const,
            value: exactIn({ ...amount, unit: swapQuart(from) }, swapQuart(to)),
          },
        ]
      : []),
    { slipUp: 'decimal-point-moved', value: right.mul(10n) },
    { slipUp: 'decimal-point-moved', value: right.div(10n) },
  ];
}

const swapQuart = (unit: UnitSymbol): UnitSymbol => (unit === 'US qt' ? 'imp qt' : unit);

/** Decimals by size, so that half a hundredth of the value can be told; lengths to what is read in the shop. */
function decimalsFor(value: Rational, to: UnitSymbol): number {
  if (to === 'mm') return 2;
  if (to === 'in') return 4;
  if (kindOf(to) === 'temperature') return 0;
  const size = value.abs();
  return size.gte(200n) ? 0 : size.gte(20n) ? 1 : size.gte(2n) ? 2 : 3;
}

export const unitConvert: Family = {
  id: 'unit-convert',
  level: 'apply',
  form: 'number',
  facts: (unit) => ASKED.filter((kind) => entriesOfKind(unit, kind).length > 0).map(factOf),
  pose(unit, fact, random) {
    const kind = ASKED.find((candidate) => factOf(candidate) === fact);
    const entries = kind ? entriesOfKind(unit, kind) : [];
    if (!kind || entries.length === 0) return undefined;
    const { ref, of, amount } = random.pick(entries);
    const to: UnitSymbol = random.pick(TARGETS[kind].filter((target) => target !== amount.unit));
    const exact = convert(exactIn(amount, amount.unit), amount.unit, to);
    if (!exact.ok) return undefined;
    const value = exact.value;
    const decimals = decimalsFor(value, to);
    const last = rational(1n, 10n ** BigInt(decimals));
    const margin = kind === 'temperature' ? last : value.abs().div(200n);
    // Up to whole steps of the last place: a rounded answer is always right.
    const tolerance = makeDecimal(margin.div(last).ceil().mul(last), decimals);
    const shown = makeDecimal(value, decimals);
    return {
      facts: [fact],
      uses: [ref],
      prompt: say('unit-convert.prompt', {
        of,
        value: amount.value,
        unit: amount.unit,
        to,
        decimals,
        rule: ruleOf(amount.unit, to),
        tolerance,
      }),
      space: { form: 'number', unit: to, tolerance, signed: kind === 'temperature', decimals },
      answers: [numberAnswer(value)],
      lures: numberLures(value, tolerance, fact, wrongValues(amount, to)),
      explanation: {
        row: workInWords(amount, to, shown),
        reason:
          kind === 'temperature'
            ? say('unit-convert.reason-zero')
            : say('unit-convert.reason-size', {
                from: amount.unit,
                to,
                more: factorOf(amount.unit, to).gt(1n) ? 'yes' : 'no',
              }),
        more: [
          ...(amount.unit.startsWith('lbf·') || to.startsWith('lbf·') ? [say('unit-convert.twelve')] : []),
          ...(kind === 'volume' ? [say('unit-convert.quarts')] : []),
        ],
      },
      isRight: (answer) => {
        const really = floatConvert(Number(amount.value), amount.unit, to);
        return isNear(answer, really, tolerance, 1e-6);
      },
    };
  },
};

/** The sum with figures put in. */
function workInWords(amount: Amount<UnitSymbol>, to: UnitSymbol, shown: string): Phrase {
  const from = amount.unit;
  if (kindOf(from) === 'temperature')
    return say(`unit-convert.work-${to === '°F' ? 'fahrenheit' : 'celsius'}`, { value: amount.value, shown });
  const factor = factorOf(from, to);
  const multiplies = factor.gte(1n);
  const { text } = factorText(multiplies ? factor : factor.inverse());
  return say(`unit-convert.work-${multiplies ? 'times' : 'over'}`, {
    value: amount.value,
    factor: text,
    shown,
    unit: to,
  });
}
