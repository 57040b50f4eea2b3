/** The facts of a unit: everything that can be asked about it, and by which families. */
import type { Unit } from '../unit/unit.ts';
import { FAMILIES } from './families/index.ts';
import { type FactId, type Family, LEVELS, type Level } from './question.ts';

export interface Fact {
  readonly id: FactId;
  /** Ids of the families that can ask about it, in the order of FAMILIES. */
  readonly families: readonly string[];
  /** The lowest level it can be asked at. */
  readonly level: Level;
  /** The value it is about carries a caution. */
  readonly cautioned: boolean;
}

export const rankOf = (level: Level): number => LEVELS.indexOf(level);

/** What a fact is about, when that is one value of the deck: "solenoid:S1" of "solenoid:S1/pressure". */
const subjectOf = (fact: FactId): string => fact.slice(0, Math.max(0, fact.lastIndexOf('/')));

/** Every fact of the unit, by level and then in the families' own order. */
export function factsOf(unit: Unit, families: readonly Family[] = FAMILIES): Fact[] {
  const found = new Map<FactId, Family[]>();
  for (const family of families)
    for (const fact of family.facts(unit)) found.set(fact, [...(found.get(fact) ?? []), family]);
  const held = new Set((unit.deck.cautions ?? []).flatMap((caution) => caution.attachedTo));
  const facts = [...found].map(
    ([id, able]): Fact => ({
      id,
      families: able.map((family) => family.id),
      level: able.map((family) => family.level).reduce((a, b) => (rankOf(b) < rankOf(a) ? b : a)),
      cautioned: held.has(subjectOf(id)),
    }),
  );
  return facts.sort((a, b) => rankOf(a.level) - rankOf(b.level));
}
