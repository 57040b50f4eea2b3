/** What every range does is told: which of these single faults would do just that? The chart is in view. */
import { readingPhrase } from '../../../diagnosis/say.ts';
import { fits, suspectsThatFit } from '../../../diagnosis/table.ts';
import type { Observation } from '../../../diagnosis/test.ts';
import type { Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { showsAgain, ticksJust } from './seen-again.ts';
import {
  benchOf,
  benchRefs,
  drawFault,
  faultOptions,
  faultsAnswer,
  inOrder,
  leftInWords,
  OPTIONS,
  observe,
  rangeTests,
  showing,
  solenoidFacts,
  suspectsTable,
  ticked,
  weighedInWords,
} from './suspect-parts.ts';

const FACT = 'skill:faults-that-fit';
const MOST_FITTING = 3;

/** "range 2 and range 6 does not drive": ranges that do alike, together. */
function rowsInWords(unit: Unit, seen: readonly Observation[]): Phrase[] {
  const alike = new Map<string, Observation[]>();
  for (const one of seen) alike.set(one.reading, [...(alike.get(one.reading) ?? []), one]);
  return [...alike.values()].map((group) =>
    say('faults-that-fit.rows', {
      ranges: group.map(({ test }) => thing('range', (test as { row: string }).row)),
      does: readingPhrase(unit, group[0]!.test, group[0]!.reading),
    }),
  );
}

export const faultsThatFit: Family = {
  id: 'faults-that-fit',
  level: 'reason',
  form: 'set',
  facts(unit) {
    const bench = benchOf(unit);
    return bench && bench.suspects.length > OPTIONS && showing(unit, bench).length > 0 ? [FACT] : [];
  },
  pose(unit, fact, random) {
    const bench = benchOf(unit);
    if (!bench || fact !== FACT) return undefined;
    const tests = rangeTests(unit, bench);
    const cause = drawFault(showing(unit, bench), random);
    const seen = tests.map((test) => observe(bench, cause, test));
    const fitting = random.sample(suspectsThatFit(bench, seen), MOST_FITTING);
    const agreeing = (fault: typeof cause) => seen.filter((one) => fits(bench, fault, one)).length;
    // Those that come nearest to fitting.
    const others = random
      .shuffle(showing(unit, bench).filter((fault) => agreeing(fault) < seen.length))
      .sort((a, b) => agreeing(b) - agreeing(a))
      .slice(0, OPTIONS - fitting.length);
    const options = inOrder(bench, [...fitting, ...others]);
    if (options.length < OPTIONS) return undefined;
    const right = inOrder(bench, fitting);
    const lost = seen.filter(({ reading }) => reading !== 'works');
    const losesAlike = options.filter((fault) =>
      seen.every(({ test, reading }) => (bench.reading(fault, test) === 'works') === (reading === 'works')),
    );
    return {
      facts: [fact, ...solenoidFacts(unit, options)],
      uses: benchRefs(unit, options, tests),
      prompt: say('faults-that-fit.prompt', { rows: rowsInWords(unit, seen) }),
      drawing: { kind: 'chart', litRows: lost.map(({ test }) => (test as { row: string }).row) },
      space: { form: 'set', options: faultOptions(unit, options) },
      answers: [faultsAnswer(right)],
      lures: distinctLures(
        ticked([
          { answer: faultsAnswer(right.slice(0, 1)), slipUp: 'first-cause-enough', fact },
          { answer: faultsAnswer(losesAlike), slipUp: 'how-it-fails-left-out', fact },
          {
            answer: faultsAnswer(options.filter((fault) => lost.every((one) => fits(bench, fault, one)))),
            slipUp: 'sound-ranges-left-out',
            fact,
          },
          {
            answer: faultsAnswer(options.filter((fault) => fits(bench, fault, lost[0]!))),
            slipUp: 'one-range-enough',
            fact,
          },
        ]),
      ),
      explanation: {
        row: leftInWords(unit, right),
        reason: say('faults-that-fit.reason'),
        more: weighedInWords(unit, bench, options, seen),
        drawing: suspectsTable(unit, bench, options, tests, right),
      },
      isRight: ticksJust(() => options.filter((fault) => showsAgain(unit, fault, seen))),
    };
  },
};
