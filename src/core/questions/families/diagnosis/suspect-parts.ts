/** What the suspect families say alike: the table they ask from, options, what it all rests on, tables in words. */
import { faultPhrase, readingPhrase, testPhrase } from '../../../diagnosis/say.ts';
import { contradictionsOf, narrow, type Table, tableOf } from '../../../diagnosis/table.ts';
import {
  type Observation,
  type Reading,
  type Test,
  type TestKind,
  testRefs,
} from '../../../diagnosis/test.ts';
import { type Fault, type FaultKind, faultId } from '../../../faults/fault.ts';
import { suppliedBy } from '../../../faults/pressure.ts';
import { faultRefs } from '../../../faults/space.ts';
import { elementsFedBy } from '../../../hydraulics/feeds.ts';
import type { Random } from '../../../random.ts';
import { type Ref, trainRefs, type Unit } from '../../../unit/unit.ts';
import type { TableDrawing } from '../../drawing.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, FactId, Lure, Option } from '../../question.ts';
import { elementNames, setAnswer } from '../chart-parts.ts';
import { faultRanges } from '../fault-parts.ts';
import { perDeck } from '../per-unit.ts';
import { pressureFact } from '../solenoid-parts.ts';

/** Options of a set: one in 64 is guessed. */
export const OPTIONS = 6;

/** Matters of degree are left out: an element that only slips, pressure that is only low. */
const OF_DEGREE: readonly FaultKind[] = ['friction-short', 'low-pressure', 'sensor-lost'];
const BY_TEST: readonly TestKind[] = ['road', 'gauge', 'voltage', 'resistance'];

/** What every reading of a fault rests on beside the train: where one is unverified nothing can be asked. */
export const interlocksSure = (unit: Unit): boolean =>
  (unit.deck.interlocks ?? []).every(({ id }) => unit.sure(`interlock:${id}`));

/** Suspects and tests that may be asked about; null where a one-way belies the chart or too little is verified. */
export const benchOf = perDeck((unit: Unit): Table | null => {
  if (!interlocksSure(unit) || faultRanges(unit).length === 0) return null;
  const table = tableOf(unit);
  return narrow(table, {
    suspects: table.suspects.filter(({ kind }) => !OF_DEGREE.includes(kind)),
    tests: table.tests.filter(({ kind }) => BY_TEST.includes(kind)),
  });
});

/** Road tests of driving ranges, in chart order. */
export const rangeTests = (unit: Unit, { tests }: Table): Test[] =>
  tests.filter((test) => test.kind === 'road' && unit.ranges.some(({ id }) => id === test.row));

export const observe = (table: Table, fault: Fault, test: Test): Observation => ({
  test,
  reading: table.reading(fault, test) as Reading,
});

/** Ranges that do not do as charted with this fault, as road tests. */
export const symptomsOf = (unit: Unit, table: Table, fault: Fault): Observation[] =>
  rangeTests(unit, table)
    .map((test) => observe(table, fault, test))
    .filter(({ reading }) => reading !== 'works');

/** Suspects that show in at least so many ranges. */
export const showing = (unit: Unit, table: Table, fewest = 1): Fault[] =>
  table.suspects.filter((fault) => symptomsOf(unit, table, fault).length >= fewest);

/** A fault drawn so that each kind is as likely as any other. */
export function drawFault(faults: readonly Fault[], random: Random): Fault {
  const kind = random.pick([...new Set(faults.map((fault) => fault.kind))]);
  return random.pick(faults.filter((fault) => fault.kind === kind));
}

/** In the table's order, so that the order tells nothing. */
export const inOrder = ({ suspects }: Table, faults: readonly Fault[]): Fault[] =>
  suspects.filter((fault) => faults.includes(fault));

/** The fault, and what its solenoid feeds or its supply bears, since the chart does not show that. */
export function suspectPhrase(unit: Unit, fault: Fault): Phrase {
  const named = faultPhrase(unit, fault);
  if ('solenoid' in fault) {
    const solenoid = unit.deck.solenoids?.find(({ id }) => id === fault.solenoid);
    const elements = solenoid ? elementsFedBy(unit.deck, solenoid) : [];
    return elements.length > 0
      ? say('suspects.feeding', { fault: named, elements: elementNames(elements) })
      : named;
  }
  if (fault.kind !== 'supply-lost') return named;
  const solenoids = suppliedBy(unit.deck, fault.supply).map(({ id }) => thing('solenoid', id));
  return say('suspects.bearing', { fault: named, solenoids });
}

export const faultOptions = (unit: Unit, faults: readonly Fault[]): Option[] =>
  faults.map((fault) => ({ id: faultId(fault), label: suspectPhrase(unit, fault) }));

/** What solenoids give with no current has to be known to tell what their faults do. */
export const solenoidFacts = (unit: Unit, faults: readonly Fault[]): FactId[] => [
  ...new Set(
    faults.flatMap((fault) =>
      'solenoid' in fault
        ? [pressureFact(fault.solenoid)]
        : fault.kind === 'supply-lost'
          ? suppliedBy(unit.deck, fault.supply).map(({ id }) => pressureFact(id))
          : fault.kind === 'connector-off'
            ? (unit.deck.solenoids ?? []).map(({ id }) => pressureFact(id))
            : [],
    ),
  ),
];

export const faultsAnswer = (faults: readonly Fault[]): Answer => setAnswer(faults.map(faultId));

/** Lures with nothing ticked are none: a set needs a tick. */
export const ticked = (lures: readonly Lure[]): Lure[] =>
  lures.filter(({ answer }) => answer.form !== 'set' || answer.picks.length > 0);

/** Everything the readings of these faults under these tests rest on. */
export const benchRefs = (unit: Unit, faults: readonly Fault[], tests: readonly Test[]): Ref[] => [
  ...new Set([
    ...trainRefs(unit.deck),
    ...faults.flatMap((fault) => faultRefs(unit, fault)),
    ...tests.flatMap((test) => testRefs(unit, test)),
    ...(unit.deck.interlocks ?? []).map(({ id }): Ref => `interlock:${id}`),
  ]),
];

/** One row a suspect, one column a test; the rows of `lit` are marked. */
export const suspectsTable = (
  unit: Unit,
  table: Table,
  faults: readonly Fault[],
  tests: readonly Test[],
  lit: readonly Fault[] = [],
): TableDrawing => ({
  kind: 'table',
  columns: tests.map((test) => testPhrase(unit, test)),
  rows: faults.map((fault) => ({
    head: faultPhrase(unit, fault),
    cells: tests.map((test) => readingPhrase(unit, test, table.reading(fault, test) as Reading)),
    lit: lit.includes(fault),
  })),
});

/** "The passage to B1 is blocked or leaks: struck out. Drive range 3: would tie up, but was seen to not drive." */
const struckInWords = (unit: Unit, table: Table, fault: Fault, { test, reading }: Observation) =>
  say('suspects.struck', {
    fault: faultPhrase(unit, fault),
    test: testPhrase(unit, test),
    would: readingPhrase(unit, test, table.reading(fault, test) as Reading),
    seen: readingPhrase(unit, test, reading),
  });

/** Every suspect held against what was seen: the first thing that strikes it out, or that it stands. */
export const weighedInWords = (
  unit: Unit,
  table: Table,
  faults: readonly Fault[],
  seen: readonly Observation[],
): Phrase[] =>
  faults.map((fault) => {
    const [struck] = contradictionsOf(table, fault, seen);
    return struck
      ? struckInWords(unit, table, fault, struck)
      : say('suspects.stands', { fault: faultPhrase(unit, fault) });
  });

export const leftInWords = (unit: Unit, faults: readonly Fault[]): Phrase =>
  say('suspects.left', { faults: faults.map((fault) => faultPhrase(unit, fault)) });
