/**
 * Questions for paper. A work sheet asks everybody the same facts, each person by another seed: other families,
 * other draws, another order. Pure; the same request gives the same sheet.
 */
import { areaOf } from '../assign/assignment.ts';
import type { DrillItem } from '../memory/drill.ts';
import { ask } from '../questions/ask.ts';
import type { Fact } from '../questions/facts.ts';
import { FAMILIES } from '../questions/families/index.ts';
import { type Random, randomFrom, seedOf } from '../random.ts';
import type { Unit } from '../unit/unit.ts';

/** Seeds tried for a family before it is passed over. */
const SEEDS_TRIED = 4;

/** `count` of the facts, drawn by turns from each area, so that a short sheet touches them all. */
export function drawFacts(facts: readonly Fact[], count: number, seed: number): Fact[] {
  const random = randomFrom(seedOf('sheet-facts', seed));
  const piles = new Map<string, Fact[]>();
  for (const fact of random.shuffle(facts)) {
    const area = areaOf(fact) ?? '';
    piles.set(area, [...(piles.get(area) ?? []), fact]);
  }
  const order = random.shuffle([...piles.values()]);
  const longest = Math.max(0, ...order.map((pile) => pile.length));
  return Array.from({ length: longest }, (_, turn) => order.flatMap((pile) => pile.slice(turn, turn + 1)))
    .flat()
    .slice(0, count);
}

/** A family and a seed that surely ask the fact of this unit. */
function itemFor(unit: Unit, fact: Fact, random: Random): DrillItem | undefined {
  const able = FAMILIES.filter(({ id }) => fact.families.includes(id));
  for (const family of random.shuffle(able))
    for (let tried = 0; tried < SEEDS_TRIED; tried++) {
      const seed = random.int(0, 2 ** 30 - 1);
      if (ask(unit, family, seed, fact.id)) return { fact: fact.id, family: family.id, seed };
    }
  return undefined;
}

/** One question for each fact, in an order of its own; facts that this draw cannot ask are left out. */
export function makeSheet(unit: Unit, facts: readonly Fact[], seed: number): DrillItem[] {
  const random = randomFrom(seedOf('sheet', unit.deck.id, seed));
  return random.shuffle(facts).flatMap((fact) => itemFor(unit, fact, random) ?? []);
}
