/**
 * The table of suspects and tests: every single fault, every test, and what the test would show. Questions about
 * suspects are answered by going through all of it. A reading that is not settled (null) speaks for and against
 * nothing: it never strikes a suspect out, and never separates two.
 */
import { type Fault, faultId } from '../faults/fault.ts';
import { faultSpace } from '../faults/space.ts';
import type { Deck } from '../unit/deck.ts';
import type { Unit } from '../unit/unit.ts';
import { predict } from './predict.ts';
import { type Observation, type Reading, type Test, testId, testsOf } from './test.ts';

export interface Table {
  readonly suspects: readonly Fault[];
  readonly tests: readonly Test[];
  /** What the test shows if this suspect is the cause; null where not settled. Unknown ones throw. */
  reading(suspect: Fault, test: Test): Reading | null;
}

/** A table whose readings are worked out as they are asked for, each once. */
export function makeTable(
  suspects: readonly Fault[],
  tests: readonly Test[],
  predicted: (suspect: Fault, test: Test) => Reading | null,
): Table {
  const tested = new Map(tests.map((test) => [testId(test), test]));
  const rows = new Map(
    suspects.map((suspect) => [faultId(suspect), { suspect, known: new Map<string, Reading | null>() }]),
  );
  return {
    suspects,
    tests,
    reading(suspect, test) {
      const id = testId(test);
      const row = rows.get(faultId(suspect));
      const asked = tested.get(id);
      if (!row || !asked) throw new Error(`the table lacks "${faultId(suspect)}" under "${id}"`);
      const known = row.known.get(id);
      if (known !== undefined) return known;
      const reading = predicted(row.suspect, asked);
      row.known.set(id, reading);
      return reading;
    },
  };
}

const tables = new WeakMap<Deck, Table>();

/**
 * Every single fault of the unit under every test its data allow; kept with the deck. A fault of which
 * the deck does not settle what every row does is no suspect: it could never be struck out.
 */
export function tableOf(unit: Unit): Table {
  const known = tables.get(unit.deck);
  if (known) return known;
  const all = makeTable(faultSpace(unit), testsOf(unit), (suspect, test) => predict(unit, suspect, test));
  const roads = all.tests.filter(({ kind }) => kind === 'road');
  const suspects = all.suspects.filter((suspect) =>
    roads.every((road) => all.reading(suspect, road) !== null),
  );
  const table = narrow(all, { suspects });
  tables.set(unit.deck, table);
  return table;
}

/** The same table with only some suspects or tests in it. */
export function narrow(
  table: Table,
  { suspects = table.suspects, tests = table.tests }: Partial<Pick<Table, 'suspects' | 'tests'>>,
): Table {
  return { suspects, tests, reading: table.reading };
}

/** Whether a suspect would show just this. */
export function fits(table: Table, suspect: Fault, { test, reading }: Observation): boolean {
  const predicted = table.reading(suspect, test);
  return predicted === null || predicted === reading;
}

/** Every suspect that all observations leave standing. */
export const suspectsThatFit = (table: Table, observations: readonly Observation[]): Fault[] =>
  table.suspects.filter((suspect) => observations.every((seen) => fits(table, suspect, seen)));

/** Every suspect that some observation rules out. */
export const suspectsRuledOut = (table: Table, observations: readonly Observation[]): Fault[] =>
  table.suspects.filter((suspect) => !observations.every((seen) => fits(table, suspect, seen)));

/** The observations that rule a suspect out; none when it still stands. */
export const contradictionsOf = (
  table: Table,
  suspect: Fault,
  observations: readonly Observation[],
): Observation[] => observations.filter((seen) => !fits(table, suspect, seen));

/** Whether this test shows one thing for the one suspect and another for the other. */
export function separates(table: Table, test: Test, a: Fault, b: Fault): boolean {
  const [one, other] = [table.reading(a, test), table.reading(b, test)];
  return one !== null && other !== null && one !== other;
}

/** Every test that tells two suspects apart, in the table's order. */
export const testsThatSeparate = (table: Table, a: Fault, b: Fault): Test[] =>
  table.tests.filter((test) => separates(table, test, a, b));

/** Whether no test of the table tells them apart: naming the one is as good as naming the other. */
export const areAlike = (table: Table, a: Fault, b: Fault): boolean =>
  !table.tests.some((test) => separates(table, test, a, b));

/** Suspects in groups, each alike to the first of its group; in the order of the suspects. */
export function alike(table: Table, suspects: readonly Fault[] = table.suspects): Fault[][] {
  const groups: Fault[][] = [];
  for (const suspect of suspects) {
    const group = groups.find(([first]) => areAlike(table, first!, suspect));
    if (group) group.push(suspect);
    else groups.push([suspect]);
  }
  return groups;
}

export interface CommonCause {
  /** What could cause the one symptom, the other, and both at once. */
  readonly first: readonly Fault[];
  readonly second: readonly Fault[];
  readonly both: readonly Fault[];
}

/** Two symptoms, one cause: with a single fault in the unit, it is among those that fit both. */
export function commonCause(
  table: Table,
  first: readonly Observation[],
  second: readonly Observation[],
): CommonCause {
  return {
    first: suspectsThatFit(table, first),
    second: suspectsThatFit(table, second),
    both: suspectsThatFit(table, [...first, ...second]),
  };
}
