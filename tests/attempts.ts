/** Attempts and drills for the tests of memory and storage. */
import type { Attempt, AttemptDraft } from '../src/core/memory/attempt.ts';
import { type Drill, type DrillItem, startDrill } from '../src/core/memory/drill.ts';
import type { Store } from '../src/storage/store.ts';

/** A right answer to one fact on day 20000, at noon UTC of its day, with what the test cares about changed. */
export function anAttempt(changes: Partial<Attempt> = {}): Attempt {
  const day = changes.day ?? 20_000;
  const sequence = changes.sequence ?? 1;
  const fact = changes.fact ?? changes.facts?.[0] ?? 'range:1/elements';
  return {
    id: `${changes.device ?? 'phone'}-${sequence}`,
    deck: 'demo',
    revision: 1,
    family: 'range-elements',
    fact,
    seed: 7,
    facts: [fact],
    form: 'set',
    guessRate: 0,
    answer: { form: 'set', picks: ['C1'] },
    right: true,
    slipUps: [],
    missed: [],
    seconds: 8,
    interrupted: false,
    at: (day * 24 + 12) * 3_600_000 + sequence * 1000,
    day,
    zone: 'UTC',
    device: 'phone',
    sequence,
    drill: 'drill-1',
    ...changes,
  };
}

export const anItem = (fact: string, seed = 1): DrillItem => ({ fact, family: 'range-elements', seed });

export const aDrill = (changes: Partial<Drill> = {}): Drill => ({
  ...startDrill({
    id: 'drill-1',
    deck: { id: 'demo', revision: 1 },
    day: 20_000,
    minutes: 10,
    items: ['a', 'b', 'c', 'd', 'e', 'f'].map((fact) => anItem(fact)),
    at: 1_000_000,
  }),
  ...changes,
});

/** Puts an answer into the store as the only one of a drill that is then over; throws where the store refuses. */
export async function putAttempt(store: Store, attempt: AttemptDraft): Promise<Attempt> {
  const drill = aDrill({ id: attempt.drill, deck: attempt.deck, revision: attempt.revision });
  const begun = await store.beginDrill(drill);
  if (!begun.ok) throw new Error(begun.error.code);
  const recorded = await store.recordAttempt(attempt, { ...drill, index: 6 });
  if (!recorded.ok) throw new Error(recorded.error.code);
  const ended = await store.endDrill(drill.id);
  if (!ended.ok) throw new Error(ended.error.code);
  return recorded.value;
}
