/**
 * Plans a drill: takes facts from the agenda, or from a plan, while they fit the minutes, picks a family and a seed for each
 * that surely ask, and puts them in order. Pure: the same request gives the same drill. A chart that is new
 * starts with a short block of reading questions; after it the families are mixed, so that the way to answer
 * has to be found each time. docs/spec/memory.md M18 to M26.
 */
import { ask } from '../questions/ask.ts';
import { rankOf } from '../questions/facts.ts';
import { FAMILIES } from '../questions/families/index.ts';
import type { FactId, Family } from '../questions/question.ts';
import { type Random, randomFrom, seedOf } from '../random.ts';
import type { Unit } from '../unit/unit.ts';
import { type AgendaRequest, agendaOf, type Wanted } from './agenda.ts';
import { UNSEEN_RECALL } from './credit.ts';
import type { DrillItem } from './drill.ts';
import { type SecondsPerForm, secondsFor } from './pace.ts';
import { recallOn } from './recall.ts';

export interface DrillRequest extends AgendaRequest {
  readonly unit: Unit;
  readonly minutes: number;
  /** Own answering times (`paceOf`). */
  readonly secondsPerForm?: SecondsPerForm;
  readonly families?: readonly Family[];
  /** Facts in the order a plan to the class date wants them (core/plan); the agenda's rule where there is none. */
  readonly order?: readonly FactId[];
}

/** Added to guess rates before they are weighed, so that none wins outright. */
const GUESS_FLOOR = 0.05;

/** Seeds tried for a family before it is passed over. */
const SEEDS_TRIED = 4;

/** Reading questions a new chart starts with. */
const OPENING = 4;

interface Chosen {
  readonly item: DrillItem;
  readonly family: Family;
  readonly isNew: boolean;
}

/** A seed whose question, and the one of the seed after it, can be asked; with the larger of the guess rates. */
function findSeed({ unit, seed, day }: DrillRequest, family: Family, fact: string) {
  for (let tried = 0; tried < SEEDS_TRIED; tried++) {
    const candidate = seedOf('drill', seed, day, family.id, fact, tried) >>> 1;
    const [first, second] = [candidate, candidate + 1].map((each) => ask(unit, family, each, fact));
    if (first && second) return { seed: candidate, guessRate: Math.max(first.guessRate, second.guessRate) };
  }
  return undefined;
}

/**
 * The family to ask a fact by. Levels rise: one above the fact's lowest for each day it was right; harder
 * families only where the others cannot ask. Among those chance decides, for low guess rates and for families
 * little used in this drill.
 */
function chooseFamily(request: DrillRequest, { fact, memory }: Wanted, used: ReadonlyMap<string, number>) {
  const able = (request.families ?? FAMILIES).filter((family) => fact.families.includes(family.id));
  const reach = rankOf(fact.level) + (memory?.rightDays ?? 0);
  const random = randomFrom(seedOf('families', request.seed, request.day, fact.id));
  const within = (family: Family) => rankOf(family.level) <= reach;
  for (const families of [able.filter(within), able.filter((family) => !within(family))]) {
    const found = families.flatMap((family) => {
      const asking = findSeed(request, family, fact.id);
      if (!asking) return [];
      const weight = 1 / ((GUESS_FLOOR + asking.guessRate) * (1 + (used.get(family.id) ?? 0)));
      return [{ family, seed: asking.seed, weight }];
    });
    if (found.length > 0) return pickWeighted(random, found);
  }
  return undefined;
}

/** One of them, each with a chance as its weight. */
function pickWeighted<T extends { readonly weight: number }>(random: Random, choices: readonly T[]): T {
  let left = random.unit() * choices.reduce((sum, choice) => sum + choice.weight, 0);
  for (const choice of choices) {
    left -= choice.weight;
    if (left < 0) return choice;
  }
  return choices.at(-1)!;
}

function wantedOf(request: DrillRequest): Wanted[] {
  if (!request.order) return agendaOf(request);
  const known = new Map(request.facts.map((fact) => [fact.id, fact]));
  return request.order.flatMap((id) => {
    const fact = known.get(id);
    return fact ? [{ fact, memory: request.memory.get(id) }] : [];
  });
}

/** Takes from the agenda what fits the minutes, a second try for each expected miss included. */
function choose(request: DrillRequest): Chosen[] {
  const chosen: Chosen[] = [];
  const used = new Map<string, number>();
  let left = request.minutes * 60;
  const least = secondsFor('one', request.secondsPerForm);
  for (const wanted of wantedOf(request)) {
    if (left < least && chosen.length > 0) break;
    const found = chooseFamily(request, wanted, used);
    if (!found) continue;
    const { family, seed } = found;
    const recall = wanted.memory ? recallOn(wanted.memory, request.day) : UNSEEN_RECALL;
    const seconds = secondsFor(family.form, request.secondsPerForm) * (2 - recall);
    if (seconds > left && chosen.length > 0) continue;
    left -= seconds;
    used.set(family.id, (used.get(family.id) ?? 0) + 1);
    const item = { fact: wanted.fact.id, family: family.id, seed };
    chosen.push({ item, family, isNew: wanted.memory === undefined });
  }
  return chosen;
}

/** The block a new chart opens with, in the chart's order: reading questions, of one family where there are enough. */
function openingOf({ facts, memory }: DrillRequest, chosen: readonly Chosen[]): Chosen[] {
  const readBefore = facts.some((fact) => fact.level === 'read' && memory.has(fact.id));
  if (readBefore) return [];
  const reading = chosen.filter(({ family, isNew }) => isNew && family.level === 'read');
  const counts = new Map<string, number>();
  for (const { family } of reading) counts.set(family.id, (counts.get(family.id) ?? 0) + 1);
  const most = [...counts].reduce((a, b) => (b[1] > a[1] ? b : a), ['', 0]);
  const ofOne = reading.filter(({ family }) => family.id === most[0]);
  const rest = reading.filter(({ family }) => family.id !== most[0]);
  const place = new Map(facts.map((fact, index) => [fact.id, index]));
  return [...ofOne, ...rest]
    .slice(0, OPENING)
    .sort((a, b) => place.get(a.item.fact)! - place.get(b.item.fact)!);
}

/** No family twice running where that can be: each time one of those with most left, but not the last one. */
function mixFamilies(chosen: readonly Chosen[], previous: string | undefined, seed: number): Chosen[] {
  const random = randomFrom(seedOf('mix', seed));
  const piles = new Map<string, Chosen[]>();
  for (const entry of chosen) {
    const pile = piles.get(entry.family.id);
    if (pile) pile.push(entry);
    else piles.set(entry.family.id, [entry]);
  }
  const mixed: Chosen[] = [];
  let last = previous;
  while (mixed.length < chosen.length) {
    const open = [...piles].filter(([, pile]) => pile.length > 0);
    const others = open.filter(([id]) => id !== last);
    const from = others.length > 0 ? others : open;
    const total = open.reduce((sum, [, pile]) => sum + pile.length, 0);
    const pressing = from.filter(([, pile]) => pile.length * 2 >= total);
    const [id, pile] = random.pick(pressing.length > 0 ? pressing : from);
    mixed.push(pile.shift()!);
    last = id;
  }
  return mixed;
}

/**
 * The items of the next drill; empty when there is nothing to ask today. Every fact at most once, and the
 * estimated seconds within the minutes (a single question is kept even when it is too long).
 */
export function planDrill(request: DrillRequest): DrillItem[] {
  const chosen = choose(request);
  const opening = openingOf(request, chosen);
  const rest = chosen.filter((entry) => !opening.includes(entry));
  const mixed = mixFamilies(rest, opening.at(-1)?.family.id, seedOf(request.seed, request.day));
  return [...opening, ...mixed].map(({ item }) => item);
}
