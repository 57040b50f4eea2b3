/** Two complaints about one unit: which single faults would be behind both? */
import { symptomPhrase } from '../../../diagnosis/say.ts';
import { fits, type Table } from '../../../diagnosis/table.ts';
import type { Observation } from '../../../diagnosis/test.ts';
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
  showing,
  solenoidFacts,
  suspectsTable,
  symptomsOf,
  ticked,
  weighedInWords,
} from './suspect-parts.ts';

const FACT = 'skill:one-cause';
const MOST_FITTING = 2;

interface Heaps {
  readonly both: readonly Fault[];
  readonly firstOnly: readonly Fault[];
  readonly secondOnly: readonly Fault[];
}

function heapsOf({ suspects, ...rest }: Table, [first, second]: readonly Observation[]): Heaps {
  const table = { suspects, ...rest };
  const [one, other] = [first!, second!].map((seen) => suspects.filter((fault) => fits(table, fault, seen)));
  return {
    both: one!.filter((fault) => other!.includes(fault)),
    firstOnly: one!.filter((fault) => !other!.includes(fault)),
    secondOnly: other!.filter((fault) => !one!.includes(fault)),
  };
}

/** Each complaint has suspects of its own, so that only both together tell. */
const telling = ({ both, firstOnly, secondOnly }: Heaps): boolean =>
  both.length > 0 && firstOnly.length > 0 && secondOnly.length > 0;

/** Faults with two complaints that tell, each with the pairs that do. */
const cases = perDeck((unit: Unit): readonly { readonly fault: Fault; readonly pairs: Observation[][] }[] => {
  const bench = benchOf(unit);
  if (!bench) return [];
  const seenBefore = new Map<string, boolean>();
  return showing(unit, bench, 2).flatMap((fault) => {
    const symptoms = symptomsOf(unit, bench, fault);
    const pairs = symptoms
      .flatMap((first, place) => symptoms.slice(place + 1).map((second) => [first, second]))
      .filter((pair) => {
        const key = JSON.stringify(pair);
        const known = seenBefore.get(key) ?? telling(heapsOf(bench, pair));
        seenBefore.set(key, known);
        return known;
      });
    return pairs.length > 0 ? [{ fault, pairs }] : [];
  });
});

function drawCase(unit: Unit, random: Random): { pair: Observation[]; options: Fault[]; right: Fault[] } {
  const bench = benchOf(unit)!;
  const fault = drawFault(
    cases(unit).map((one) => one.fault),
    random,
  );
  const pair = random.shuffle(random.pick(cases(unit).find((one) => one.fault === fault)!.pairs));
  const { both, firstOnly, secondOnly } = heapsOf(bench, pair);
  const right = inOrder(bench, random.sample(both, MOST_FITTING));
  const wrong = [...random.sample(firstOnly, 2), ...random.sample(secondOnly, 2)];
  const more = random.shuffle(
    showing(unit, bench).filter((one) => !both.includes(one) && !wrong.includes(one)),
  );
  const options = [...right, ...wrong, ...more].slice(0, OPTIONS);
  return { pair, options: inOrder(bench, options), right };
}

export const oneCause: Family = {
  id: 'one-cause',
  level: 'reason',
  form: 'set',
  facts: (unit) => (cases(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const bench = benchOf(unit);
    if (!bench || fact !== FACT || cases(unit).length === 0) return undefined;
    const { pair, options, right } = drawCase(unit, random);
    if (options.length < OPTIONS) return undefined;
    const tests = pair.map(({ test }) => test);
    const fitting = (...seen: Observation[]) =>
      options.filter((fault) => seen.every((one) => fits(bench, fault, one)));
    const [first, second] = pair as [Observation, Observation];
    return {
      facts: [fact, ...solenoidFacts(unit, options)],
      uses: benchRefs(unit, options, tests),
      prompt: say('one-cause.prompt', {
        first: symptomPhrase(unit, first),
        second: symptomPhrase(unit, second),
      }),
      drawing: { kind: 'chart' },
      space: { form: 'set', options: faultOptions(unit, options) },
      answers: [faultsAnswer(right)],
      lures: distinctLures(
        ticked([
          {
            answer: faultsAnswer(
              options.filter((fault) => fits(bench, fault, first) || fits(bench, fault, second)),
            ),
            slipUp: 'either-complaint-enough',
            fact,
          },
          { answer: faultsAnswer(fitting(first)), slipUp: 'one-complaint-only', fact },
          { answer: faultsAnswer(fitting(second)), slipUp: 'one-complaint-only', fact },
          { answer: faultsAnswer(right.slice(0, 1)), slipUp: 'first-cause-enough', fact },
        ]),
      ),
      explanation: {
        row: leftInWords(unit, right),
        reason: say('one-cause.reason'),
        more: weighedInWords(unit, bench, options, pair),
        drawing: suspectsTable(unit, bench, options, tests, right),
      },
      isRight: ticksJust(() => options.filter((fault) => showsAgain(unit, fault, pair))),
    };
  },
};
