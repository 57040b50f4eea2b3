/** How much torque does an element carry in a range, for a given torque on the input? From tooth counts. */

import { solveTorques } from '../../gears/torque.ts';
import { CASE, elementOf, type Train } from '../../gears/train.ts';
import { type Rational, rational } from '../../rational.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { FactId, Family } from '../question.ts';
import type { SlipUp } from '../slip-ups.ts';
import { elementNames, neighboursOf, rawApplied, rowInWords } from './chart-parts.ts';
import { decimalText, speedRefs } from './gear-parts.ts';
import { floatOf, numberAnswer, numberLures } from './number-parts.ts';
import { balanceInWords, type Carried, carriedIn, torqueByWork } from './torque-parts.ts';

const INPUT_NM = [100, 150, 200, 250, 300] as const;
/** Two percent of the answer, at least 1 N·m. */
const PER_TOLERANCE = 50;
/** An element that carries less than this share of the input torque is not asked. */
const CLEAR = rational(1, 20);

const factOf = (range: Range): FactId => `range:${range.id}/torques`;

const askable = (unit: Unit): Carried[] => carriedIn(unit).filter(({ torque }) => torque.abs().gt(CLEAR));

/** Sun and ring swapped, or pinions in pairs taken for single ones, in every gearset. */
const wrongTrains = (train: Train): (readonly [SlipUp, Train])[] => [
  [
    'sun-ring-swapped',
    {
      ...train,
      gearsets: train.gearsets.map((set) => ({
        ...set,
        sun: { ...set.sun, teeth: set.ring.teeth },
        ring: { ...set.ring, teeth: set.sun.teeth },
      })),
    },
  ],
  [
    'pinion-pair-missed',
    { ...train, gearsets: train.gearsets.map((set) => ({ ...set, kind: 'simple' as const })) },
  ],
];

function wrongTorques(unit: Unit, { element, range }: Carried): { slipUp: SlipUp; value: Rational }[] {
  const { train } = unit.deck;
  const held = range.applied.filter((id) => elementOf(train, id).between.includes(CASE));
  const reaction = range.torques.reaction.abs();
  const one = rational(1);
  return [
    { slipUp: 'input-torque-everywhere' as const, value: one },
    { slipUp: 'output-torque-everywhere' as const, value: range.ratio.abs() },
    { slipUp: 'shared-alike' as const, value: one.div(BigInt(range.applied.length)) },
    ...(held.includes(element)
      ? [
          { slipUp: 'shared-alike' as const, value: reaction.div(BigInt(held.length)) },
          { slipUp: 'whole-reaction' as const, value: reaction },
        ]
      : []),
    ...range.applied.flatMap((other) => {
      const torque = other === element ? null : range.torques.elements.get(other);
      return torque ? [{ slipUp: 'other-element' as const, value: torque.abs() }] : [];
    }),
    ...neighboursOf(unit, range).flatMap((row) => {
      const torque = row.torques.elements.get(element);
      return torque ? [{ slipUp: 'neighbour-range' as const, value: torque.abs() }] : [];
    }),
    ...wrongTrains(train).flatMap(([slipUp, wrong]) => {
      const torque = solveTorques(wrong, range.applied)?.elements.get(element);
      return torque ? [{ slipUp, value: torque.abs() }] : [];
    }),
  ];
}

export const elementTorque: Family = {
  id: 'element-torque',
  level: 'reason',
  form: 'number',
  facts: (unit) => [...new Set(askable(unit).map(({ range }) => factOf(range)))],
  pose(unit, fact, random) {
    const fitting = askable(unit).filter(({ range }) => factOf(range) === fact);
    if (fitting.length === 0) return undefined;
    const asked = random.pick(fitting);
    const { element, range, torque } = asked;
    const inputNm = rational(random.pick(INPUT_NM));
    const value = torque.abs().mul(inputNm);
    const tolerance = value.div(BigInt(PER_TOLERANCE)).add(rational(1, 2)).floor();
    const within = (tolerance.lt(1n) ? rational(1) : tolerance).toFraction();
    const wrong = wrongTorques(unit, asked).map((each) => ({ ...each, value: each.value.mul(inputNm) }));
    return {
      facts: [fact],
      uses: speedRefs(unit, range),
      prompt: say('element-torque.prompt', {
        range: thing('range', range.id),
        elements: elementNames(range.applied),
        element: thing('element', element),
        input: inputNm.toFraction(),
        tolerance: within,
      }),
      drawing: { kind: 'train', applied: range.applied, showTeeth: true },
      space: { form: 'number', unit: 'N·m', tolerance: within, signed: false, decimals: 0 },
      answers: [numberAnswer(value)],
      lures: numberLures(value, within, fact, wrong),
      explanation: {
        row: rowInWords(range),
        reason: say('element-torque.reason', {
          element: thing('element', element),
          torque: decimalText(value, 0),
          times: decimalText(torque.abs(), 3),
        }),
        more: balanceInWords(unit, asked, inputNm),
        drawing: {
          kind: 'train',
          applied: range.applied,
          litShafts: elementOf(unit.deck.train, element).between.filter((shaft) => shaft !== CASE),
          showTeeth: true,
        },
      },
      isRight: (answer) => {
        const given = floatOf(answer);
        const found = torqueByWork(unit.deck.train, rawApplied(unit, range.id), element);
        if (given === null || found === null) return false;
        return Math.abs(given - Math.abs(found) * inputNm.valueOf()) <= Number(within);
      },
    };
  },
};
