/** The planner's own thread: takes a request, answers with its parts as they are ready, and says when it is through. */
import { type OutlookPart, type OutlookRequest, outlookOf } from '../core/plan/outlook.ts';

/** What the page says. */
export interface PlanOrder {
  readonly order: number;
  readonly request: OutlookRequest;
}

/** What the worker answers; `part` is null when there is no further one. */
export interface PlanAnswer {
  readonly order: number;
  readonly part: OutlookPart | null;
}

const answer = (said: PlanAnswer) => postMessage(said);

addEventListener('message', ({ data }: MessageEvent<PlanOrder>) => {
  const { order, request } = data;
  for (const part of outlookOf(request)) answer({ order, part });
  answer({ order, part: null });
});
