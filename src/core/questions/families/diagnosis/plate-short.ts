/**
 * A brake or clutch was built with one friction plate too few: at what input torque does the first range that
 * uses it slip? What it holds whole, and what it carries in each range, are told.
 */
import { makeDecimal, type Rational, rational } from '../../../rational.ts';
import type { DeckElement } from '../../../unit/deck.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { FactId, Family } from '../../question.ts';
import { floatSpeeds } from '../../second-route.ts';
import { rawApplied } from '../chart-parts.ts';
import { floatOf, numberAnswer, numberLures } from '../number-parts.ts';
import { perUnit } from '../per-unit.ts';
import { capacityRefs, floatHoldsNm, type Loaded, loadedIn } from './capacity-parts.ts';

const shortFact = (element: string): FactId => `element:${element}/plate-short`;

const HUNDRED = rational(100);
/** Wide enough for the figures as shown, shares to one decimal. */
const WITHIN = rational(1, 100);

interface Setting {
  readonly element: DeckElement;
  /** In chart order. */
  readonly uses: readonly Loaded[];
}

/** Elements of two plates or more that carry torque in two ranges or more, all of it settled. */
const settings = perUnit((unit: Unit): Setting[] => {
  const loaded = loadedIn(unit);
  return unit.deck.train.elements.flatMap((element) => {
    const uses = loaded.filter((one) => one.element === element);
    const settled = unit.ranges
      .filter(({ applied }) => applied.includes(element.id))
      .every(({ ref, torques }) => unit.sure(ref) && torques.elements.get(element.id) != null);
    const shares = new Set(uses.map(({ share }) => share.toFraction()));
    return settled && shares.size > 1 && (element.capacity?.frictions ?? 0) > 1 ? [{ element, uses }] : [];
  });
});

/** Torque on an element for each N·m at the input, a second time: slip it a little, see what the output loses. */
function floatShare(unit: Unit, range: string, element: string): number {
  const applied = rawApplied(unit, range);
  const { train } = unit.deck;
  const { between } = train.elements.find(({ id }) => id === element)!;
  const without = applied.filter((id) => id !== element);
  // With the output held by hand and the element let go, the input turns its two sides against each other.
  const held = {
    ...train,
    elements: [
      ...train.elements,
      { id: ' held', kind: 'brake' as const, between: [train.output, 'case'] as const },
    ],
  };
  const speeds = floatSpeeds(held, [...without, ' held']);
  if (!speeds) return Number.NaN;
  const [first, second] = between.map((shaft) => (shaft === 'case' ? 0 : (speeds.get(shaft) ?? Number.NaN)));
  return 1 / Math.abs(first! - second!);
}

export const plateShort: Family = {
  id: 'plate-short',
  level: 'reason',
  form: 'number',
  facts: (unit) => settings(unit).map(({ element }) => shortFact(element.id)),
  pose(unit, fact) {
    const setting = settings(unit).find(({ element }) => shortFact(element.id) === fact);
    if (!setting) return undefined;
    const { element, uses } = setting;
    const plates = element.capacity!.frictions;
    const byShare = [...uses].sort((a, b) => b.share.compare(a.share));
    const [most, least] = [byShare[0]!, byShare.at(-1)!];
    const holds = most.holdsNm;
    const short = holds.mul(rational(plates - 1, plates));
    const right = short.div(most.share);
    const tolerance = right.mul(WITHIN).ceil().toFraction();
    const nm = (value: Rational) => makeDecimal(value, 0);
    const percent = (share: Rational) => makeDecimal(share.mul(HUNDRED), 1);
    return {
      facts: [fact],
      uses: [...capacityRefs(unit), ...uses.map(({ range }): Ref => range.ref)],
      prompt: say('plate-short.prompt', {
        element: thing('element', element.id),
        plates,
        left: plates - 1,
        holds: nm(holds),
        tolerance,
      }),
      drawing: {
        kind: 'table',
        columns: [say('plate-short.carries')],
        rows: uses.map(({ range, share }) => ({
          head: thing('range', range.id),
          cells: [say('slips-first.torque', { torque: percent(share) })],
        })),
      },
      space: { form: 'number', unit: 'N·m', tolerance, signed: false, decimals: 0 },
      answers: [numberAnswer(right)],
      lures: numberLures(right, tolerance, fact, [
        { slipUp: 'plate-count-kept', value: holds.div(most.share) },
        { slipUp: 'one-face-less', value: holds.mul(rational(2 * plates - 1, 2 * plates)).div(most.share) },
        { slipUp: 'share-left-out', value: short },
        { slipUp: 'least-loaded-range', value: short.div(least.share) },
        { slipUp: 'share-multiplied', value: short.mul(most.share) },
      ]),
      explanation: {
        row: say('plate-short.row', {
          holds: nm(holds),
          plates,
          left: plates - 1,
          short: nm(short),
        }),
        reason: say('plate-short.reason', {
          range: thing('range', most.range.id),
          share: percent(most.share),
          short: nm(short),
          answer: nm(right),
        }),
        more: byShare.map(({ range, share }) =>
          say('plate-short.line', {
            range: thing('range', range.id),
            share: percent(share),
            torque: nm(short.div(share)),
          }),
        ),
      },
      isRight(answer) {
        const given = floatOf(answer);
        if (given === null) return false;
        const held = floatHoldsNm(element, plates - 1);
        const slips = uses.map(({ range }) => held / floatShare(unit, range.id, element.id));
        return Math.abs(given - Math.min(...slips)) <= Number(tolerance);
      },
    };
  },
};
