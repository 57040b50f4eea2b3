/**
 * The whole simulation: `npm run -s sim` runs every cell on two workers at low priority and writes
 * docs/simulation.md. `npm run -s sim -- known` prints one table and writes nothing.
 */
import { writeFileSync } from 'node:fs';
import { constants, setPriority } from 'node:os';
import { Worker } from 'node:worker_threads';
import { allJobs, type Done, type Job, TABLES } from './jobs.ts';
import { makeReport, makeTable } from './report.ts';

setPriority(constants.priority.PRIORITY_LOW);

const wanted = TABLES.filter((table) => process.argv.includes(table));
const jobs = allJobs().filter(({ table }) => wanted.length === 0 || wanted.includes(table));
/** Longest first, so that no worker is left with one at the end. */
const effort = ({ cell, runs, table }: Job) => runs * cell.days ** 2 * (table === 'unknown' ? 2 : 1);
const waiting = jobs.map((_, index) => index).sort((a, b) => effort(jobs[b]!) - effort(jobs[a]!));
const done: Done[] = [];
const started = performance.now();

await Promise.all(
  [1, 2].map(
    () =>
      new Promise<void>((resolve, reject) => {
        const worker = new Worker(new URL('./worker.ts', import.meta.url), { execArgv: ['--import', 'tsx'] });
        let at: number | undefined;
        const next = () => {
          at = waiting.shift();
          if (at === undefined) worker.terminate().then(() => resolve(), reject);
          else worker.postMessage(jobs[at]);
        };
        worker.on('message', (result: Done) => {
          done[at!] = result;
          const minutes = ((performance.now() - started) / 60_000).toFixed(1);
          console.error(`${Object.keys(done).length} of ${jobs.length} cells, ${minutes} min`);
          next();
        });
        worker.on('error', reject);
        next();
      }),
  ),
);

if (wanted.length === 0) {
  writeFileSync(new URL('../../docs/simulation.md', import.meta.url), makeReport(done));
  console.log('docs/simulation.md written');
} else for (const table of wanted) console.log(makeTable(table, done));
