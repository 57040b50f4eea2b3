/** The memories that a log of answers leaves, beside only putting the log in order by time. */
import type { Attempt } from '../../src/core/memory/attempt.ts';
import { foldAttempts } from '../../src/core/memory/fold.ts';
import { randomFrom } from '../../src/core/random.ts';
import { anAttempt } from '../attempts.ts';
import type { Suite } from './suite.ts';

const ANSWERS = 10_000;
const FACTS = 400;

const random = randomFrom(11);
const log: readonly Attempt[] = Array.from({ length: ANSWERS }, (_, index) => {
  const facts = [random.int(1, FACTS), random.int(1, FACTS)].map((fact) => `fact-${fact}`);
  return anAttempt({
    sequence: index + 1,
    day: 20_000 + Math.floor(index / 40),
    facts: random.unit() < 0.3 ? facts : facts.slice(0, 1),
    right: random.unit() < 0.8,
    guessRate: 0.1,
  });
});
const shuffled = random.shuffle(log);

const fold = () => foldAttempts(shuffled);

export const folding: readonly Suite[] = [
  {
    title: `A log of ${ANSWERS.toLocaleString('en')} answers to ${FACTS} facts`,
    count: ANSWERS,
    unit: 'answer',
    subject: { name: 'folded into memories', run: fold },
    baselines: [
      {
        name: 'put in order by time',
        run: () => [...shuffled].sort((a, b) => a.at - b.at || a.sequence - b.sequence),
      },
    ],
    agree: () => {
      const again = foldAttempts(log);
      for (const [fact, memory] of fold())
        if (JSON.stringify(again.get(fact)) !== JSON.stringify(memory)) throw new Error(`${fact} differs`);
    },
  },
];
