/** What every range does is told: which of these single faults would do just that? The chart is not shown. */
import { faultPhrase } from '../../../diagnosis/say.ts';
import { contradictionsOf, fits, suspectsThatFit } from '../../../diagnosis/table.ts';
import { faultId } from '../../../faults/fault.ts';
import { say } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { seenAgain } from './seen-again.ts';
import {
  benchOf,
  benchRefs,
  drawFault,
  faultOptions,
  faultsAnswer,
  inOrder,
  OPTIONS,
  observe,
  rangeTests,
  seenTable,
  showing,
  standsInWords,
  struckInWords,
  suspectsTable,
  ticked,
} from './suspect-parts.ts';

const FACT = 'skill:faults-that-fit';
const MOST_FITTING = 3;

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
      .shuffle(bench.suspects.filter((fault) => agreeing(fault) < seen.length))
      .sort((a, b) => agreeing(b) - agreeing(a))
      .slice(0, OPTIONS - fitting.length);
    const options = inOrder(bench, [...fitting, ...others]);
    if (options.length < OPTIONS) return undefined;
    const right = inOrder(bench, fitting);
    const lost = seen.filter(({ reading }) => reading !== 'works');
    const losesAlike = options.filter((fault) =>
      seen.every(({ test, reading }) => (bench.reading(fault, test) === 'works') === (reading === 'works')),
    );
    let checked: ReadonlySet<string> | undefined;
    return {
      facts: [fact],
      uses: benchRefs(unit, options, tests),
      prompt: say('faults-that-fit.prompt'),
      drawing: seenTable(unit, seen),
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
        row: say('suspects.left', { faults: right.map((fault) => faultPhrase(unit, fault)) }),
        reason: say('faults-that-fit.reason'),
        more: options.map((fault) => {
          const [struck] = contradictionsOf(bench, fault, seen);
          return struck ? struckInWords(unit, bench, fault, struck) : standsInWords(unit, fault);
        }),
        drawing: suspectsTable(unit, bench, options, tests, right),
      },
      isRight(answer) {
        checked ??= new Set(
          options
            .filter((fault) => seen.every(({ test, reading }) => seenAgain(unit, fault, test) === reading))
            .map(faultId),
        );
        return (
          answer.form === 'set' &&
          answer.picks.length === checked.size &&
          answer.picks.every((pick) => checked!.has(pick))
        );
      },
    };
  },
};
