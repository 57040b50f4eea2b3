/**
 * Tests a mechanic can make, and what each can show. A test is asked of a unit with one fault; what it shows is
 * predicted, never stored. Costs are effort, in whole points: what is read at the lever, from the driver's seat
 * or off the scan tool costs little, what wants tools, a lift or parts out costs more. The figures are our
 * choice; only their order is common practice (docs/spec/diagnosis.md D3).
 */
import { rowsOf } from '../faults/chart.ts';
import { usualPosition } from '../faults/pressure.ts';
import { frictionOf } from '../hydraulics/feeds.ts';
import type { Hazard } from '../unit/cautions.ts';
import type { Deck } from '../unit/deck.ts';
import type { Ref, Row, Unit } from '../unit/unit.ts';

interface InRow {
  /** The row that is commanded, and where the lever stands for it (null with no lever recorded). */
  readonly row: string;
  readonly position: string | null;
}

export type Test =
  /** Drive it, or see whether it stays put in a neutral row. */
  | ({ readonly kind: 'road' } & InRow)
  /** A gauge at the port of a brake or clutch. */
  | ({ readonly kind: 'gauge'; readonly element: string } & InRow)
  /** Codes of circuits, read after the unit has run. */
  | { readonly kind: 'codes' }
  /** Ohms of a solenoid's winding at the unit's connector. */
  | { readonly kind: 'resistance'; readonly solenoid: string }
  /** Volts for a solenoid at the unit's connector, when it is to have current. */
  | { readonly kind: 'voltage'; readonly solenoid: string }
  /** Whether a speed sensor is heard. */
  | { readonly kind: 'signal'; readonly sensor: string };

export const TEST_KINDS = ['road', 'codes', 'signal', 'voltage', 'resistance', 'gauge'] as const;
export type TestKind = (typeof TEST_KINDS)[number];

/** What a test shows. Codes are listed in the deck's order, joined by "+"; "codes:" is none. */
export type Reading =
  | 'works'
  | 'no-drive'
  | 'output-held'
  | 'tied-up'
  | 'other-ratio'
  | 'slips'
  | `range:${string}`
  | 'full'
  | 'low'
  | 'none'
  | `codes:${string}`
  | 'in-band'
  | 'open'
  | 'voltage'
  | 'no-voltage'
  | 'signal'
  | 'no-signal';

export interface Observation {
  readonly test: Test;
  readonly reading: Reading;
}

export const COSTS: Readonly<Record<TestKind, number>> = {
  road: 1,
  codes: 1,
  signal: 1,
  voltage: 2,
  resistance: 3,
  gauge: 4,
};

/** What can hurt whoever makes a test of the kind, on a vehicle that runs or is live. */
const DANGERS: Readonly<Record<TestKind, readonly Hazard[]>> = {
  road: ['moving-test', 'road-test'],
  codes: [],
  signal: ['moving-test'],
  voltage: ['electrical'],
  resistance: ['electrical'],
  gauge: ['pressure', 'hot-fluid', 'rotating'],
};

/** Dangers to be told before tests of a kind, and the deck's own cautions about what those tests touch. */
export function cautionsOfTests(
  deck: Deck,
  kind: TestKind,
  tests: readonly Test[],
): { readonly hazards: readonly Hazard[]; readonly texts: readonly string[] } {
  const touched = new Set(
    tests.flatMap((test) =>
      test.kind === 'gauge'
        ? [`element:${test.element}`]
        : test.kind === 'resistance' || test.kind === 'voltage'
          ? [`solenoid:${test.solenoid}`]
          : test.kind === 'signal'
            ? [`sensor:${test.sensor}`]
            : [],
    ),
  );
  return {
    hazards: DANGERS[kind],
    texts: (deck.cautions ?? [])
      .filter(({ attachedTo }) => attachedTo.some((ref) => touched.has(ref)))
      .map(({ text }) => text),
  };
}

/** Points of effort; a whole number above zero. */
export type CostOf = (test: Test) => number;
export const costOf: CostOf = ({ kind }) => COSTS[kind];

/** "road:3@D", "gauge:B1/3@D", "codes", "resistance:S1": one text for each test, stable for ever. */
export function testId(test: Test): string {
  const at = ({ row, position }: InRow) => (position === null ? row : `${row}@${position}`);
  switch (test.kind) {
    case 'road':
      return `road:${at(test)}`;
    case 'gauge':
      return `gauge:${test.element}/${at(test)}`;
    case 'codes':
      return 'codes';
    case 'signal':
      return `signal:${test.sensor}`;
    default:
      return `${test.kind}:${test.solenoid}`;
  }
}

export const sameTest = (a: Test, b: Test): boolean => testId(a) === testId(b);

/** The row of the chart that a test commands; an unknown one throws. */
export function rowOf(unit: Unit, id: string): Row {
  const found = rowsOf(unit).find((row) => row.id === id);
  if (!found) throw new Error(`no row "${id}" in this unit`);
  return found;
}

/** Deck values a prediction rests on, beside the train and the fault's own. */
export function testRefs(unit: Unit, test: Test): Ref[] {
  switch (test.kind) {
    case 'road':
    case 'gauge':
      return [
        rowOf(unit, test.row).ref,
        ...(test.position === null ? [] : [`position:${test.position}` as Ref]),
      ];
    case 'codes':
      return circuitCodes(unit.deck).map(({ id }): Ref => `code:${id}`);
    case 'signal':
      return [`sensor:${test.sensor}`];
    default:
      return [`winding:${test.solenoid}`];
  }
}

/** Codes that say a circuit is at fault. Those that are guessed from how the unit drives are not among them. */
export const circuitCodes = ({ codes = [] }: Deck) =>
  codes.filter(({ kind }) => kind === 'circuit' || kind === 'electrical');

/** Every test the deck's data allow, cheapest first; each row in the lever position that usually commands it. */
export function testsOf(unit: Unit, cost: CostOf = costOf): Test[] {
  const { deck } = unit;
  const windings = (deck.electrical?.windings ?? []).map(({ solenoid }) => solenoid);
  const rows = rowsOf(unit).map((row): InRow => ({ row: row.id, position: usualPosition(deck, row) }));
  const tests: Test[] = [
    ...rows.map((at): Test => ({ kind: 'road', ...at })),
    ...(circuitCodes(deck).length > 0 ? [{ kind: 'codes' } as const] : []),
    ...(deck.sensors ?? []).map(({ id }): Test => ({ kind: 'signal', sensor: id })),
    ...windings.map((solenoid): Test => ({ kind: 'voltage', solenoid })),
    ...windings.map((solenoid): Test => ({ kind: 'resistance', solenoid })),
    ...frictionOf(deck).flatMap((element) => rows.map((at): Test => ({ kind: 'gauge', element, ...at }))),
  ];
  return tests
    .filter((test) => testRefs(unit, test).every((ref) => unit.sure(ref)))
    .sort((a, b) => cost(a) - cost(b));
}
