/**
 * How a ledger lies in the database: numbers in columns, which are read in a fraction of the time that as many small
 * objects take. What has another shape counts as none.
 */
import type { Ledger } from '../core/ledger/ledger.ts';
import type { FactMemory } from '../core/memory/fold.ts';
import type { Observation } from '../core/plan/observe.ts';
import type { FactId } from '../core/questions/question.ts';
import { z } from './zod.ts';

const MEMORY = [
  'stability', 'difficulty', 'lastDay', 'firstDay', 'asked', 'missed', 'rightDays', 'held',
] as const satisfies readonly (keyof FactMemory)[]; // biome-ignore format: names read across
const OBSERVATION = ['day', 'days', 'stability', 'recall', 'guessRate', 'right'] as const;

type Columns = Readonly<Record<string, Float64Array>>;

type Packed = Omit<Ledger, 'memory' | 'observations'> & {
  readonly facts: readonly FactId[];
  readonly memory: Columns;
  readonly observations: Columns;
};

const columnsOf = <T>(
  names: readonly string[],
  rows: readonly T[],
  numbersOf: (row: T) => readonly number[],
) => {
  const columns = Object.fromEntries(names.map((name) => [name, new Float64Array(rows.length)]));
  for (const [place, row] of rows.entries())
    for (const [index, value] of numbersOf(row).entries()) columns[names[index]!]![place] = value;
  return columns;
};

function pack({ memory, observations, ...rest }: Ledger): Packed {
  return {
    ...rest,
    facts: [...memory.keys()],
    memory: columnsOf(MEMORY, [...memory.values()], (state) => MEMORY.map((name) => Number(state[name]))),
    // No memory before: not a number, in both columns.
    observations: columnsOf(OBSERVATION, observations, ({ day, before, recall, guessRate, right }) => [
      day,
      before?.days ?? Number.NaN,
      before?.stability ?? Number.NaN,
      recall,
      guessRate,
      Number(right),
    ]),
  };
}

function unpack({ facts, memory, observations, ...rest }: Packed): Ledger {
  const at = (columns: Columns, name: string, place: number) => columns[name]![place]!;
  const states = facts.map((fact, place): [FactId, FactMemory] => {
    const of = (name: (typeof MEMORY)[number]) => at(memory, name, place);
    return [
      fact,
      {
        stability: of('stability'),
        difficulty: of('difficulty'),
        lastDay: of('lastDay'),
        firstDay: of('firstDay'),
        asked: of('asked'),
        missed: of('missed'),
        rightDays: of('rightDays'),
        held: of('held') === 1,
      },
    ];
  });
  const seen = Array.from(observations.day!, (day, place): Observation => {
    const of = (name: (typeof OBSERVATION)[number]) => at(observations, name, place);
    const days = of('days');
    return {
      day,
      before: Number.isNaN(days) ? null : { days, stability: of('stability') },
      recall: of('recall'),
      guessRate: of('guessRate'),
      right: of('right') === 1,
    };
  });
  return { ...rest, memory: new Map(states), observations: seen };
}

const areColumns = (value: unknown, names: readonly string[], length?: number): value is Columns => {
  if (typeof value !== 'object' || value === null) return false;
  const columns = names.map((name) => (value as Record<string, unknown>)[name]);
  const first = columns[0];
  return columns.every(
    (column) =>
      column instanceof Float64Array && column.length === (length ?? (first as Float64Array).length),
  );
};

function isPacked(value: unknown): value is Packed {
  if (typeof value !== 'object' || value === null) return false;
  const { answers, facts, memory, days, times, worked, observations, end } = value as Partial<Packed>;
  return (
    Number.isInteger(answers) &&
    Array.isArray(facts) &&
    areColumns(memory, MEMORY, facts.length) &&
    areColumns(observations, OBSERVATION) &&
    [days, times, worked?.asked, end?.devices].every((map) => map instanceof Map) &&
    [worked?.alone?.facts, worked?.alone?.families].every((set) => set instanceof Set)
  );
}

export interface KeptLedger {
  readonly key: string;
  /** What it was made under. */
  readonly stamp: string;
  readonly ledger: Ledger;
}

const ledgerRow = z.strictObject({
  key: z.string(),
  stamp: z.string(),
  ledger: z.custom<Packed>(isPacked),
});

export const rowOf = ({ ledger, ...kept }: KeptLedger) => ({ ...kept, ledger: pack(ledger) });

/** The kept ledger in a row, when it was made under this stamp. */
export function keptIn(row: unknown, stamp: string): Ledger | undefined {
  const read = ledgerRow.safeParse(row);
  return read.success && read.data.stamp === stamp ? unpack(read.data.ledger) : undefined;
}
