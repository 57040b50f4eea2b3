/**
 * The same ratio twice in the chart, once held by a one-way and once by hand: which elements does the lower lever
 * position use, and which of the two brakes the engine? The row that a one-way holds is given. One-ways are not
 * asked: whether a chart marks one beside a brake that holds the same shaft is custom.
 */
import { commandedIn } from '../../faults/behaviour.ts';
import { settle } from '../../gears/one-way.ts';
import type { Random } from '../../random.ts';
import { type Range, trainRefs, type Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import {
  distinctLures,
  elementNames,
  frictionIds,
  neighboursOf,
  rawApplied,
  rowInWords,
} from './chart-parts.ts';
import { faultRanges } from './fault-parts.ts';
import { perUnit } from './per-unit.ts';

/** Element rows of the grid; the braking row comes on top. */
const MOST_ELEMENTS = 6;
const BRAKING = 'engine-braking';

interface Twins {
  /** Held by a one-way: it does not brake the engine. */
  readonly free: Range;
  /** The same ratio with nothing but friction elements: it does. */
  readonly firm: Range;
  readonly oneWays: readonly string[];
}

const factOf = ({ firm }: Twins): FactId => `range:${firm.id}/by-hand`;

function coasts(unit: Unit, range: Range): 'drives' | 'free' | 'by-one-way' {
  const { solution, holding } = settle(unit.deck.train, commandedIn(unit.deck.train, range.applied), 'coast');
  if (holding.length > 0) return 'by-one-way';
  return solution.ratio?.equals(range.ratio) ? 'drives' : 'free';
}

const twins = perUnit((unit: Unit): Twins[] => {
  const { train } = unit.deck;
  const ranges = faultRanges(unit);
  return ranges.flatMap((free) => {
    const oneWays = settle(train, commandedIn(train, free.applied)).holding;
    if (oneWays.length === 0 || coasts(unit, free) !== 'free') return [];
    return ranges
      .filter((firm) => firm !== free && firm.ratio.equals(free.ratio) && coasts(unit, firm) === 'drives')
      .map((firm) => ({ free, firm, oneWays }));
  });
});

/** What is on in either row, filled up with others. */
function elementsAsked(unit: Unit, { free, firm }: Twins, random: Random): string[] {
  const friction = frictionIds(unit);
  const used = friction.filter((id) => free.applied.includes(id) || firm.applied.includes(id));
  const idle = random.sample(
    friction.filter((id) => !used.includes(id)),
    Math.max(0, MOST_ELEMENTS - used.length),
  );
  return friction.filter((id) => used.includes(id) || idle.includes(id));
}

const mark = (yes: boolean) => (yes ? 'yes' : 'no');

export const manualRange: Family = {
  id: 'manual-range',
  level: 'reason',
  form: 'fill',
  facts: (unit) => [...new Set(twins(unit).map(factOf))],
  pose(unit, fact, random) {
    const fitting = twins(unit).filter((pair) => factOf(pair) === fact);
    if (fitting.length === 0) return undefined;
    const pair = random.pick(fitting);
    const { free, firm, oneWays } = pair;
    const elements = elementsAsked(unit, pair, random);
    const asked = [...elements.map((id) => `${id}/firm`), `${BRAKING}/free`, `${BRAKING}/firm`];
    const filled = (row: Pick<Range, 'applied'>, freeBrakes: boolean, firmBrakes: boolean): Answer => ({
      form: 'fill',
      cells: Object.fromEntries([
        ...elements.map((id) => [`${id}/firm`, mark(row.applied.includes(id))]),
        [`${BRAKING}/free`, mark(freeBrakes)],
        [`${BRAKING}/firm`, mark(firmBrakes)],
      ]),
    });
    const lures: Lure[] = [
      { answer: filled(free, false, true), slipUp: 'same-range-same-elements', fact },
      { answer: filled(firm, true, true), slipUp: 'one-way-holds-both-ways', fact },
      { answer: filled(firm, true, false), slipUp: 'one-way-brakes-engine', fact },
      ...neighboursOf(unit, firm)
        .filter((row) => row !== free)
        .map((row): Lure => ({ answer: filled(row, false, true), slipUp: 'neighbour-range', fact })),
    ];
    const names = { free: thing('range', free.id), firm: thing('range', firm.id) };
    const [extra, spared] = [
      elements.filter((id) => firm.applied.includes(id) && !free.applied.includes(id)),
      elements.filter((id) => free.applied.includes(id) && !firm.applied.includes(id)),
    ];
    const label = (id: string): Phrase => say('manual-range.element', { element: thing('element', id) });
    return {
      facts: [fact],
      uses: [...trainRefs(unit.deck), ...faultRanges(unit).map((range) => range.ref)],
      prompt: say('manual-range.prompt', names),
      drawing: { kind: 'train', applied: free.applied },
      space: {
        form: 'fill',
        rows: [
          ...elements.map((id) => ({ id, label: label(id) })),
          { id: BRAKING, label: say('manual-range.braking') },
        ],
        columns: [
          { id: 'free', label: names.free },
          { id: 'firm', label: names.firm },
        ],
        marks: [
          { id: 'yes', label: say('manual-range.yes') },
          { id: 'no', label: say('manual-range.no') },
        ],
        asked,
        given: Object.fromEntries(elements.map((id) => [`${id}/free`, mark(free.applied.includes(id))])),
      },
      answers: [filled(firm, false, true)],
      lures: distinctLures(lures),
      explanation: {
        row: say('manual-range.row', {
          ...names,
          extraCount: extra.length,
          extra: elementNames(extra),
          sparedCount: spared.length,
          spared: elementNames(spared),
        }),
        reason: say('manual-range.reason', { ...names, oneWays: elementNames(oneWays) }),
        more: [rowInWords(free), rowInWords(firm)],
        drawing: { kind: 'chart', rows: [free.id, firm.id], litRows: [firm.id], showRatios: true },
      },
      // A range brakes the engine when its brakes and clutches alone settle the output, with every one-way gone.
      isRight: (answer) => {
        if (answer.form !== 'fill') return false;
        const { cells } = answer;
        const firmly = (range: Range) =>
          !!floatOutput(
            unit.deck.train,
            rawApplied(unit, range.id).filter((id) => frictionIds(unit).includes(id)),
          );
        return (
          elements.every((id) => cells[`${id}/firm`] === mark(rawApplied(unit, firm.id).includes(id))) &&
          cells[`${BRAKING}/free`] === mark(firmly(free)) &&
          cells[`${BRAKING}/firm`] === mark(firmly(firm))
        );
      },
    };
  },
};
