/**
 * Two suspects are left: which test tells them apart? Of the tests shown just one does. The others show the same
 * with both, trouble or none, so they only confirm what is known.
 */

import { predict } from '../../../diagnosis/predict.ts';
import { readingPhrase, symptomPhrase, testPhrase } from '../../../diagnosis/say.ts';
import { areAlike, fits, separates, suspectsThatFit } from '../../../diagnosis/table.ts';
import { type Reading, sameTest, type Test, testId } from '../../../diagnosis/test.ts';
import type { Fault } from '../../../faults/fault.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Family, Lure } from '../../question.ts';
import { perDeck } from '../per-unit.ts';
import { seenAgain } from './seen-again.ts';
import {
  benchOf,
  benchRefs,
  drawFault,
  showing,
  solenoidFacts,
  suspectPhrase,
  suspectsTable,
  symptomsOf,
} from './suspect-parts.ts';

const FACT = 'skill:separating-test';
const WRONG = 4;

const causes = perDeck((unit: Unit): Fault[] => {
  const bench = benchOf(unit);
  return bench ? showing(unit, bench) : [];
});

export const separatingTest: Family = {
  id: 'separating-test',
  level: 'reason',
  form: 'one',
  facts: (unit) => (causes(unit).length > 1 ? [FACT] : []),
  pose(unit, fact, random) {
    const bench = benchOf(unit);
    if (!bench || fact !== FACT || causes(unit).length < 2) return undefined;
    const a = drawFault(causes(unit), random);
    const told = random.pick(symptomsOf(unit, bench, a));
    const rivals = suspectsThatFit(bench, [told]).filter((fault) => !areAlike(bench, a, fault));
    if (rivals.length === 0) return undefined;
    const b = random.pick(rivals);
    const settled = bench.tests.filter(
      (test) => !sameTest(test, told.test) && [a, b].every((fault) => bench.reading(fault, test) !== null),
    );
    const apart = settled.filter((test) => separates(bench, test, a, b));
    const sound = (test: Test) => bench.reading(a, test) === predict(unit, null, test);
    const alike = random.shuffle(settled.filter((test) => !apart.includes(test)));
    const troubled = alike.filter((test) => !sound(test)).slice(0, WRONG - 1);
    const wrong = [...troubled, ...alike.filter(sound)].slice(0, WRONG);
    if (apart.length === 0 || wrong.length < WRONG) return undefined;
    const right = random.pick(apart);
    const shown = random.shuffle([right, ...wrong]);
    const suspects = bench.suspects.filter((fault) => fault === a || fault === b);
    const says = (fault: Fault, test: Test) =>
      readingPhrase(unit, test, bench.reading(fault, test) as Reading);
    return {
      facts: [fact, ...solenoidFacts(unit, suspects)],
      uses: benchRefs(unit, suspects, [told.test, ...shown]),
      prompt: say('separating-test.prompt', {
        symptom: symptomPhrase(unit, told),
        first: suspectPhrase(unit, suspects[0]!),
        second: suspectPhrase(unit, suspects[1]!),
      }),
      drawing: { kind: 'chart' },
      space: {
        form: 'one',
        options: shown.map((test) => ({ id: testId(test), label: testPhrase(unit, test) })),
      },
      answers: [{ form: 'one', pick: testId(right) }],
      lures: wrong.map(
        (test): Lure => ({
          answer: { form: 'one', pick: testId(test) },
          slipUp: sound(test) ? 'sound-with-both' : 'confirming-test',
          fact,
        }),
      ),
      explanation: {
        row: say('separating-test.row', {
          test: testPhrase(unit, right),
          first: says(suspects[0]!, right),
          second: says(suspects[1]!, right),
        }),
        reason: say('separating-test.reason'),
        more: shown
          .filter((test) => test !== right)
          .map((test) =>
            say('separating-test.alike', { test: testPhrase(unit, test), reading: says(a, test) }),
          ),
        drawing: suspectsTable(unit, bench, suspects, shown),
      },
      isRight(answer) {
        const picked = answer.form === 'one' ? shown.find((test) => testId(test) === answer.pick) : undefined;
        if (!picked || !fits(bench, b, told)) return false;
        const [one, other] = [a, b].map((fault) => seenAgain(unit, fault, picked));
        return one !== null && other !== null && one !== other;
      },
    };
  },
};
