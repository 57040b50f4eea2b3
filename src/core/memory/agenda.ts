/**
 * Which facts want to be asked today, most wanted first. Facts never asked are spread over the first half of
 * the days to class; the rest of the time, at least every third question, goes to the lowest recall first; time
 * left over goes to further unseen facts. After class a fact is asked once its recall has fallen to 0.9, so that gaps grow by themselves.
 * A rule that needs no solver (docs/sources.md [SPREAD]). docs/spec/memory.md M18 to M23.
 */
import { type Fact, rankOf } from '../questions/facts.ts';
import { randomFrom, seedOf } from '../random.ts';
import type { FactMemory, Memory } from './fold.ts';
import { recallOn } from './recall.ts';

/** Without a class date: days to meet everything in, and the shortest look ahead once they are over. */
const DEFAULT_DAYS = 21;
const LEAST_DAYS_AHEAD = 7;

/** After class, days over which facts still unseen are spread. */
export const UNSEEN_DAYS_AFTER_CLASS = 14;

/** After class, recall at which a fact is asked again. */
export const KEEP_ALIVE_RECALL = 0.9;

export interface AgendaRequest {
  readonly facts: readonly Fact[];
  readonly memory: Memory;
  readonly day: number;
  readonly classDay: number | null;
  readonly seed: number;
}

export interface Wanted {
  readonly fact: Fact;
  readonly memory: FactMemory | undefined;
}

/**
 * Days, today included, over which the unseen facts are still to be spread: what is left of the first half of
 * the time from the first answer to class; once that is over, half of what is left.
 */
export function spreadDays(firstDay: number, day: number, classDay: number): number {
  const half = firstDay + Math.ceil((classDay - firstDay) / 2);
  return Math.max(1, day < half ? half - day : Math.ceil((classDay - day) / 2));
}

/** How many facts to meet today so that all are met in `days` days of equal share. */
export function shareOfUnseen(unseen: number, metToday: number, days: number): number {
  return Math.max(0, Math.ceil((unseen + metToday) / days) - metToday);
}

/** Facts to ask today in order of want, ties by seed; a drill takes from the front what fits its minutes. */
export function agendaOf({ facts, memory, day, classDay, seed }: AgendaRequest): Wanted[] {
  const shuffled = randomFrom(seedOf('agenda', seed, day)).shuffle(facts);
  const wanted = shuffled.map((fact): Wanted => ({ fact, memory: memory.get(fact.id) }));
  const met = wanted.flatMap((entry) => (entry.memory ? [{ ...entry, memory: entry.memory }] : []));
  const unseen = wanted
    .filter((entry) => !entry.memory)
    .sort((a, b) => rankOf(a.fact.level) - rankOf(b.fact.level));
  const firstDay = met.reduce((first, entry) => Math.min(first, entry.memory.firstDay), day);
  const target = classDay ?? Math.max(firstDay + DEFAULT_DAYS, day + LEAST_DAYS_AHEAD);
  const afterClass = day > target;

  const metToday = met.filter((entry) => entry.memory.firstDay >= day).length;
  const days = afterClass ? UNSEEN_DAYS_AFTER_CLASS : spreadDays(firstDay, day, target);
  const share = shareOfUnseen(unseen.length, metToday, days);

  const byRecall = met
    .map((entry) => ({ entry, recall: recallOn(entry.memory, day) }))
    .sort((a, b) => a.recall - b.recall || a.entry.memory.stability - b.entry.memory.stability);
  const entriesOf = (ranked: typeof byRecall) => ranked.map(({ entry }) => entry);
  const rested = byRecall.filter(({ entry }) => entry.memory.lastDay < day);
  if (afterClass) {
    const faded = rested.filter(({ recall }) => recall <= KEEP_ALIVE_RECALL);
    return [...unseen.slice(0, share), ...entriesOf(faded)];
  }
  // Two unseen, one met: where minutes are short, what was missed yesterday still has its turn.
  const shared = unseen.slice(0, share);
  const waiting = entriesOf(rested);
  const interleaved = shared.flatMap((entry, i) => [entry, ...(i % 2 === 1 ? waiting.splice(0, 1) : [])]);
  const lastMinute = target - day <= 1 ? byRecall.filter(({ entry }) => entry.memory.lastDay >= day) : [];
  return [...interleaved, ...waiting, ...unseen.slice(share), ...entriesOf(lastMinute)];
}
