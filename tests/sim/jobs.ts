/** What the whole simulation consists of, in jobs that a worker does one at a time. */
import { aCell, type Cell, DAYS, FACTS, MINUTES } from './cells.ts';
import { expectedLearner } from './learner.ts';
import { type Estimate, estimate, type Measured, measure } from './measure.ts';
import { type Credit, questionPool, runMixed } from './mixed.ts';
import { BASELINES, ours, oursUnaware, type Policy } from './policies.ts';

export const TABLES = ['known', 'unknown', 'seconds', 'missed', 'mixed'] as const;
export type Table = (typeof TABLES)[number];

export interface Job {
  readonly table: Table;
  readonly cell: Cell;
  readonly runs: number;
}

export interface MixedMeasured {
  readonly cell: Cell;
  readonly runs: number;
  readonly rows: readonly {
    readonly policy: string;
    readonly credit: Credit;
    readonly share: Estimate;
    readonly bias: number;
    readonly behind: Estimate;
  }[];
}

export type Done =
  | { readonly table: Exclude<Table, 'mixed'>; readonly measured: Measured }
  | { readonly table: 'mixed'; readonly measured: MixedMeasured };

const grid = (changes: Partial<Cell>): Cell[] =>
  FACTS.flatMap((facts) =>
    DAYS.flatMap((days) => MINUTES.map((minutes) => aCell({ facts, days, minutes, ...changes }))),
  );

/** All jobs; a long course needs fewer runs, since its scores scatter less and take longer. */
export function allJobs(): Job[] {
  const runsOf = (short: number, long: number) => (cell: Cell) => (cell.days === 60 ? long : short);
  const jobs = (table: Table, cells: readonly Cell[], runs: (cell: Cell) => number): Job[] =>
    cells.map((cell) => ({ table, cell, runs: runs(cell) }));
  const seconds = { rightSeconds: 10, wrongSeconds: 22 };
  return [
    ...jobs('known', grid({}), runsOf(6, 3)),
    ...jobs('unknown', grid({ known: false }), runsOf(10, 3)),
    ...jobs(
      'seconds',
      grid(seconds).filter(({ facts }) => facts === 300),
      runsOf(40, 4),
    ),
    ...jobs(
      'missed',
      [0.85, 0.7, 0.5].flatMap((attendance) => [7, 21].map((days) => aCell({ attendance, days }))),
      () => 12,
    ),
    ...jobs(
      'mixed',
      (
        [
          [15, 7],
          [10, 21],
          [25, 21],
        ] as const
      ).map(([minutes, days]) => aCell({ minutes, days })),
      () => 8,
    ),
  ];
}

function measureMixed({ cell, runs }: Job): MixedMeasured {
  const pool = questionPool(4);
  const sized = { ...cell, facts: pool.length };
  const learner = expectedLearner();
  const seeds = Array.from({ length: runs }, (_, i) => i + 1);
  const policies: readonly Policy[] = [ours, ...BASELINES];
  const rows = (['mixture', 'told'] as const).flatMap((credit) => {
    const scores = policies.map((policy) =>
      seeds.map((seed) => runMixed(sized, learner, policy, pool, credit, seed)),
    );
    return policies.map((policy, p) => ({
      policy: policy.name,
      credit,
      share: estimate(scores[p]!.map(({ raw }) => raw)),
      bias: estimate(scores[p]!.map(({ bias }) => bias)).mean,
      behind: estimate(scores[p]!.map(({ raw }, i) => scores[0]![i]!.raw - raw)),
    }));
  });
  return { cell: sized, runs, rows };
}

export function doJob(job: Job): Done {
  if (job.table === 'mixed') return { table: 'mixed', measured: measureMixed(job) };
  const policies = [ours, ...(job.table === 'missed' ? [oursUnaware] : []), ...BASELINES];
  return { table: job.table, measured: measure(job.cell, policies, job.runs) };
}
