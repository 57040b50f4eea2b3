/**
 * Which facts come out otherwise when deck values change: the same draws are posed on both units, and where
 * prompt or right answer differ, the fact rests on what those questions use. A skill is no value: what it was
 * asked on stood in view, so it is left out; the row or element it also needed is a fact of its own.
 */
import { randomFrom, seedOf } from '../random.ts';
import type { Ref, Unit } from '../unit/unit.ts';
import { FAMILIES } from './families/index.ts';
import type { FactId, Family, Posed } from './question.ts';

/** Draws posed for each family and fact. */
const DRAWS = 8;

const SKILL = /^skill:/;

const pose = (unit: Unit, family: Family, fact: FactId, draw: number): Posed | undefined =>
  family.pose(unit, fact, randomFrom(seedOf('resting', family.id, fact, draw)));

const asked = (posed: Posed | undefined) =>
  JSON.stringify(posed && [posed.prompt, posed.answers, posed.accepts]);

/** For each fact of `before` that comes out otherwise in `after`: the references that its differing questions use. */
export function factsApart(
  before: Unit,
  after: Unit,
  families: readonly Family[] = FAMILIES,
): ReadonlyMap<FactId, ReadonlySet<Ref>> {
  const apart = new Map<FactId, Set<Ref>>();
  for (const family of families) {
    const still = new Set(family.facts(after));
    for (const fact of family.facts(before)) {
      if (SKILL.test(fact)) continue;
      for (let draw = 0; draw < DRAWS; draw++) {
        const was = pose(before, family, fact, draw);
        const is = still.has(fact) ? pose(after, family, fact, draw) : undefined;
        if (asked(was) === asked(is)) continue;
        const refs = apart.get(fact) ?? new Set();
        for (const ref of [...(was?.uses ?? []), ...(is?.uses ?? [])]) refs.add(ref);
        apart.set(fact, refs);
      }
    }
  }
  return apart;
}

/** Facts of `before` that come out otherwise because of the changed references, sorted. */
export function changedFacts(before: Unit, after: Unit, changed: readonly Ref[]): FactId[] {
  return [...factsApart(before, after)]
    .filter(([, refs]) => changed.some((ref) => refs.has(ref)))
    .map(([fact]) => fact)
    .sort();
}
