/**
 * Making questions, family by family, from a deck recorded in full. What a question costs is told beside writing the
 * same question as JSON and reading it back, work that any program would do to hand it on.
 */
import { Bench } from 'tinybench';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import type { Family, Question } from '../../src/core/questions/question.ts';
import { makeUnit, type Unit } from '../../src/core/unit/unit.ts';
import { shippedDecks } from '../units.ts';
import type { Suite } from './suite.ts';

const SEEDS = 3;

const units = shippedDecks().map(makeUnit);
/** Each family asks of the first shipped deck that has something for it. */
const asking = FAMILIES.flatMap((family): { family: Family; unit: Unit }[] => {
  const unit = units.find((one) => family.facts(one).length > 0);
  return unit ? [{ family, unit }] : [];
});

const made = (): Question[] =>
  asking.flatMap(({ family, unit }) =>
    Array.from({ length: SEEDS }, (_, seed) => ask(unit, family, seed)).filter((one) => one !== undefined),
  );
const questions = made();

export const generation: readonly Suite[] = [
  {
    title: `Questions of ${asking.length} families, ${SEEDS} each`,
    count: questions.length,
    unit: 'question',
    subject: { name: 'made from the deck', run: made },
    baselines: [
      {
        name: 'written as JSON and read back',
        run: () => questions.map((question) => JSON.parse(JSON.stringify(question))),
      },
    ],
    agree: () => {
      if (JSON.stringify(made()) !== JSON.stringify(questions))
        throw new Error('other questions than before');
      if (asking.length < FAMILIES.length) throw new Error('a family has nothing to ask of any shipped deck');
    },
  },
];

export interface FamilyRate {
  readonly family: string;
  readonly perSecond: number;
}

/** Questions a second of each family, slowest first. */
export async function familyRates(): Promise<FamilyRate[]> {
  const rates: FamilyRate[] = [];
  for (const { family, unit } of asking) {
    const bench = new Bench({ time: 60, warmupTime: 20 });
    let seed = 0;
    bench.add(family.id, () => ask(unit, family, seed++ % 50));
    const [task] = await bench.run();
    if (!task || !('latency' in task.result)) throw new Error(`${family.id} was not measured`);
    rates.push({ family: family.id, perSecond: 1000 / task.result.latency.mean });
  }
  return rates.sort((a, b) => a.perSecond - b.perSecond);
}
