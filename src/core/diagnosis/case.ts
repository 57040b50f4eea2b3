/**
 * Case runs: a customer's complaint with one hidden fault behind it. The learner asks for tests, one at a time,
 * and names the cause when he has it. Everything follows from deck and seed; each move is a pure step
 * (docs/spec/diagnosis.md D16 to D20).
 */
import { type Fault, type FaultKind, sameFault } from '../faults/fault.ts';
import { type Phrase, say } from '../questions/phrase.ts';
import { type Random, randomFrom, seedOf } from '../random.ts';
import type { Unit } from '../unit/unit.ts';
import { symptomPhrase } from './say.ts';
import { MOST_SUSPECTS } from './strategy.ts';
import { alike, narrow, suspectsThatFit, type Table, tableOf } from './table.ts';
import { type Observation, type Reading, sameTest, type Test } from './test.ts';

/** With fewer groups of alike suspects there is nothing to find out. */
const FEWEST_GROUPS = 3;
/** Rows a customer tells of. */
const MOST_TOLD = 2;

export interface Case {
  readonly seed: number;
  /** Hidden until the cause is named. */
  readonly cause: Fault;
  /** What the customer has told: rows, and what they do. */
  readonly told: readonly Observation[];
  readonly complaint: Phrase;
  /** Tests that can be asked, cheapest first, over all suspects of the unit: any of them can be named. */
  readonly table: Table;
  /** Suspects that fit the complaint. */
  readonly suspects: readonly Fault[];
}

/** Rows that do not do as charted, in random order. */
function symptomsOf(table: Table, cause: Fault, random: Random): Observation[] {
  const symptoms = table.tests.flatMap((test): Observation[] => {
    const reading = test.kind === 'road' ? table.reading(cause, test) : null;
    return reading === null || reading === 'works' ? [] : [{ test, reading }];
  });
  return random.shuffle(symptoms);
}

/** The tests that are left to ask: those that tell of this cause and that the customer has not told. */
const untold = (table: Table, cause: Fault, told: readonly Observation[]): Table =>
  narrow(table, {
    tests: table.tests.filter(
      (test) => table.reading(cause, test) !== null && !told.some((known) => sameTest(known.test, test)),
    ),
  });

type Told = Pick<Case, 'told' | 'table' | 'suspects'>;

/** The fewest symptoms that leave a number of suspects that can be worked with; null where none do. */
function tell(table: Table, cause: Fault, random: Random): Told | null {
  const symptoms = symptomsOf(table, cause, random);
  for (let count = 1; count <= Math.min(MOST_TOLD, symptoms.length); count++) {
    const told = symptoms.slice(0, count);
    const suspects = suspectsThatFit(table, told);
    if (suspects.length > MOST_SUSPECTS) continue;
    const left = untold(table, cause, told);
    return alike(left, suspects).length >= FEWEST_GROUPS ? { told, table: left, suspects } : null;
  }
  return null;
}

/** A case of this unit; undefined where none of its faults makes one. Kinds of fault are drawn evenly. */
export function makeCase(unit: Unit, seed: number): Case | undefined {
  const random = randomFrom(seedOf('case', unit.deck.id, seed));
  const table = tableOf(unit);
  const kinds = random.shuffle([...new Set(table.suspects.map(({ kind }): FaultKind => kind))]);
  const causes = kinds.flatMap((kind) =>
    random.shuffle(table.suspects.filter((fault) => fault.kind === kind)),
  );
  for (const cause of causes) {
    const found = tell(table, cause, random);
    if (!found) continue;
    const symptoms = found.told.map((seen) => symptomPhrase(unit, seen));
    return { seed, cause, complaint: say('case.complaint', { symptoms }), ...found };
  }
  return undefined;
}

export interface CaseState {
  /** What was asked, and what it showed, in order. */
  readonly asked: readonly Observation[];
  readonly named: Fault | null;
}

export const CASE_START: CaseState = { asked: [], named: null };

export type CaseMove =
  | { readonly kind: 'ask'; readonly test: Test }
  | { readonly kind: 'name'; readonly cause: Fault };

/** One move. Once a cause is named nothing changes any more, and a test asked twice is asked once. */
export function moveCase(run: Case, state: CaseState, move: CaseMove): CaseState {
  if (state.named) return state;
  if (move.kind === 'name') {
    if (!run.table.suspects.some((suspect) => sameFault(suspect, move.cause)))
      throw new Error(`${move.cause.kind} cannot be named in this case`);
    return { ...state, named: move.cause };
  }
  if (!run.table.tests.some((test) => sameTest(test, move.test)))
    throw new Error(`${move.test.kind} cannot be asked in this case`);
  if (state.asked.some(({ test }) => sameTest(test, move.test))) return state;
  const reading = run.table.reading(run.cause, move.test) as Reading;
  return { ...state, asked: [...state.asked, { test: move.test, reading }] };
}

/** Suspects that complaint and tests leave. */
export const suspectsLeft = (run: Case, { asked }: CaseState): Fault[] =>
  suspectsThatFit(run.table, asked).filter((suspect) => run.suspects.some((fit) => sameFault(fit, suspect)));
