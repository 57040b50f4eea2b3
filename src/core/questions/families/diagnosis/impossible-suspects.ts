/** A complaint, its suspects, and two test results: which suspects do the results strike out? */
import { observationPhrase, symptomPhrase } from '../../../diagnosis/say.ts';
import { contradictionsOf, fits, suspectsThatFit, type Table } from '../../../diagnosis/table.ts';
import type { Observation } from '../../../diagnosis/test.ts';
import { sameTest } from '../../../diagnosis/test.ts';
import type { Fault } from '../../../faults/fault.ts';
import type { Random } from '../../../random.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { perDeck } from '../per-unit.ts';
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
  showing,
  solenoidFacts,
  suspectsTable,
  symptomsOf,
  ticked,
  weighedInWords,
} from './suspect-parts.ts';

const FACT = 'skill:impossible-suspects';

/** Faults with a complaint that leaves enough suspects. */
const causes = perDeck((unit: Unit): Fault[] => {
  const bench = benchOf(unit);
  if (!bench) return [];
  return showing(unit, bench).filter((fault) =>
    symptomsOf(unit, bench, fault).some((seen) => suspectsThatFit(bench, [seen]).length >= OPTIONS),
  );
});

/** Two tests, each of which strikes out what the other leaves; null where there are none. */
function drawResults(
  table: Table,
  cause: Fault,
  options: readonly Fault[],
  told: Observation,
  random: Random,
): Observation[] | null {
  const settled = random
    .shuffle(table.tests)
    .filter(
      (test) => !sameTest(test, told.test) && options.every((fault) => table.reading(fault, test) !== null),
    )
    .map((test) => observe(table, cause, test));
  const struckBy = (seen: Observation) => options.filter((fault) => !fits(table, fault, seen));
  const first = settled.find((seen) => struckBy(seen).length > 0);
  if (!first) return null;
  const struck = struckBy(first);
  const second = settled.find((seen) => {
    const also = struckBy(seen);
    return also.some((fault) => !struck.includes(fault)) && struck.some((fault) => !also.includes(fault));
  });
  return second ? [first, second] : null;
}

export const impossibleSuspects: Family = {
  id: 'impossible-suspects',
  level: 'reason',
  form: 'set',
  facts: (unit) => (causes(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const bench = benchOf(unit);
    if (!bench || fact !== FACT || causes(unit).length === 0) return undefined;
    const cause = drawFault(causes(unit), random);
    const told = random.pick(
      symptomsOf(unit, bench, cause).filter((seen) => suspectsThatFit(bench, [seen]).length >= OPTIONS),
    );
    const rivals = suspectsThatFit(bench, [told]).filter((fault) => fault !== cause);
    const options = inOrder(bench, [cause, ...random.sample(rivals, OPTIONS - 1)]);
    const results = drawResults(bench, cause, options, told, random);
    if (!results) return undefined;
    const struckBy = (...seen: Observation[]) =>
      options.filter((fault) => contradictionsOf(bench, fault, seen).length > 0);
    const struck = struckBy(...results);
    const standing = options.filter((fault) => !struck.includes(fault));
    const tests = [told, ...results].map(({ test }) => test);
    return {
      facts: [fact, ...solenoidFacts(unit, options)],
      uses: benchRefs(unit, options, tests),
      prompt: say('impossible-suspects.prompt', {
        symptom: symptomPhrase(unit, told),
        first: observationPhrase(unit, results[0]!),
        second: observationPhrase(unit, results[1]!),
      }),
      drawing: { kind: 'chart' },
      space: { form: 'set', options: faultOptions(unit, options) },
      answers: [faultsAnswer(struck)],
      lures: distinctLures(
        ticked([
          { answer: faultsAnswer(standing), slipUp: 'kept-for-struck', fact },
          { answer: faultsAnswer(struckBy(results[0]!)), slipUp: 'one-result-only', fact },
          { answer: faultsAnswer(struckBy(results[1]!)), slipUp: 'one-result-only', fact },
          {
            answer: faultsAnswer(options.filter((fault) => fault !== standing[0])),
            slipUp: 'unproven-struck-out',
            fact,
          },
        ]),
      ),
      explanation: {
        row: leftInWords(unit, standing),
        reason: say('impossible-suspects.reason'),
        more: weighedInWords(unit, bench, options, results),
        drawing: suspectsTable(unit, bench, options, tests.slice(1), standing),
      },
      isRight: ticksJust(() => options.filter((fault) => !showsAgain(unit, fault, results))),
    };
  },
};
