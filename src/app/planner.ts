/**
 * Keeps the planner's worker: one request at a time. A plan for the same course (deck and class) that has not
 * yet said what to ask is let finish, since the next one starts from its prices; all else gives way to a new
 * request. A worker that cannot start or breaks down says so, and the next request tries a new one.
 */
import type { OutlookPart, OutlookRequest } from '../core/plan/outlook.ts';
import type { Services } from '../screens/services.ts';
import type { PlanAnswer, PlanOrder } from './plan-worker.ts';

/** Told of each part; null when no more will come. */
type Tell = (part: OutlookPart | null) => void;

/** What is needed of a Worker. */
export type PlanWorker = Pick<
  Worker,
  'postMessage' | 'terminate' | 'onmessage' | 'onerror' | 'onmessageerror'
>;

type Planner = Pick<Services, 'planFor'>;

interface Job {
  readonly course: string;
  readonly request: OutlookRequest;
  readonly tell: Tell;
}

function startPlanWorker(): PlanWorker {
  return new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module', name: 'plan' });
}

export function openPlanner(start: () => PlanWorker = startPlanWorker): Planner {
  let worker: PlanWorker | null = null;
  let running: (Job & { readonly order: number; drillTold: boolean }) | null = null;
  let waiting: Job | null = null;
  let orders = 0;

  const drop = (job: Job | null) => job?.tell(null);
  const stop = () => {
    worker?.terminate();
    worker = null;
    const stopped = running;
    running = null;
    drop(stopped);
  };
  const breakDown = () => {
    const left = waiting;
    waiting = null;
    stop();
    drop(left);
  };
  const runWaiting = (prices?: ReadonlyMap<number, number>) => {
    const next = waiting;
    if (!next) return;
    waiting = null;
    if (running) stop();
    run(prices ? { ...next, request: { ...next.request, prices } } : next);
  };
  const hear = ({ data: { order, part } }: MessageEvent<PlanAnswer>) => {
    if (running?.order !== order) return;
    const { tell } = running;
    if (part === null) running = null;
    else if (part.kind === 'drill') running.drillTold = true;
    tell(part);
    if (part === null) runWaiting();
    else if (part.kind === 'drill') runWaiting(part.prices);
  };
  const run = (job: Job) => {
    running = { ...job, order: ++orders, drillTold: false };
    try {
      worker ??= start();
      worker.onmessage = hear;
      worker.onerror = breakDown;
      worker.onmessageerror = breakDown;
      worker.postMessage({ order: orders, request: job.request } satisfies PlanOrder);
    } catch {
      breakDown();
    }
  };

  return {
    planFor(course, request, tell) {
      const replaced = waiting;
      waiting = { course, request, tell };
      drop(replaced);
      if (!running || running.drillTold || running.course !== course) runWaiting();
    },
  };
}
