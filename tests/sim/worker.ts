/** Does jobs sent by tests/sim/run.ts, one at a time. */
import { parentPort } from 'node:worker_threads';
import { doJob, type Job } from './jobs.ts';

parentPort!.on('message', (job: Job) => parentPort!.postMessage(doJob(job)));
