/** The facts of a unit: everything that can be asked about it, and by which families. */
import { randomFrom, seedOf } from '../random.ts';
import type { Unit } from '../unit/unit.ts';
import { FAMILIES } from './families/index.ts';
import { type FactId, type Family, LEVELS, type Level } from './question.ts';

export interface Fact {
  readonly id: FactId;
  /** Ids of the families that can ask about it, in the order of FAMILIES. */
  readonly families: readonly string[];
  /** The lowest level it can be asked at. */
  readonly level: Level;
  /** A question about it rests on a value that carries a caution. */
  readonly cautioned: boolean;
}

export const rankOf = (level: Level): number => LEVELS.indexOf(level);

function isCautioned(unit: Unit, family: Family, fact: FactId): boolean {
  const held = new Set<string>((unit.deck.cautions ?? []).flatMap((caution) => caution.attachedTo));
  if (held.size === 0) return false;
  const uses = family.pose(unit, fact, randomFrom(seedOf('cautions', fact)))?.uses ?? [];
  return uses.some((ref) => held.has(ref));
}

/** Every fact of the unit, by level and then in the families' own order. */
export function factsOf(unit: Unit, families: readonly Family[] = FAMILIES): Fact[] {
  const found = new Map<FactId, Family[]>();
  for (const family of families)
    for (const fact of family.facts(unit)) found.set(fact, [...(found.get(fact) ?? []), family]);
  const facts = [...found].map(
    ([id, able]): Fact => ({
      id,
      families: able.map((family) => family.id),
      level: able.map((family) => family.level).reduce((a, b) => (rankOf(b) < rankOf(a) ? b : a)),
      cautioned: able.some((family) => isCautioned(unit, family, id)),
    }),
  );
  return facts.sort((a, b) => rankOf(a.level) - rankOf(b.level));
}
