/** Small tables of suspects and tests made up at random, to hold the engine against trying everything. */
import { makeTable, type Table } from '../../../src/core/diagnosis/table.ts';
import type { Reading, Test } from '../../../src/core/diagnosis/test.ts';
import type { Fault } from '../../../src/core/faults/fault.ts';
import type { Random } from '../../../src/core/random.ts';

export const suspect = (name: string): Fault => ({ kind: 'element-fails', element: name });
export const test = (name: string): Test => ({ kind: 'road', row: name, position: null });

/** A table from rows of readings: one row for each suspect; "?" is unsettled. */
export function tableFrom(rows: Readonly<Record<string, string>>): Table {
  const names = Object.keys(rows);
  const width = rows[names[0]!]!.length;
  const tests = Array.from({ length: width }, (_, column) => test(`t${column}`));
  return makeTable(names.map(suspect), tests, (fault, { ...asked }) => {
    const column = tests.findIndex(
      (one) => one.kind === 'road' && asked.kind === 'road' && one.row === asked.row,
    );
    const mark = rows[(fault as { element: string }).element]![column]!;
    return mark === '?' ? null : (`range:${mark}` as Reading);
  });
}

export interface RandomTable {
  readonly table: Table;
  readonly costs: ReadonlyMap<string, number>;
  readonly cost: (test: Test) => number;
}

export function randomTable(random: Random, suspects: number, tests: number, unsettled = false): RandomTable {
  const marks = random.pick(['ab', 'abc']) + (unsettled ? '?' : '');
  const rows = Object.fromEntries(
    Array.from({ length: suspects }, (_, index) => [
      `S${index}`,
      Array.from({ length: tests }, () => random.pick([...marks])).join(''),
    ]),
  );
  const costs = new Map(Array.from({ length: tests }, (_, index) => [`t${index}`, random.int(1, 5)]));
  return { table: tableFrom(rows), costs, cost: (asked) => costs.get((asked as { row: string }).row)! };
}
