import { describe, expect, test } from 'vitest';
import type { PlanAnswer, PlanOrder } from '../../src/app/plan-worker.ts';
import { openPlanner, type PlanWorker } from '../../src/app/planner.ts';
import { WEIGHTS } from '../../src/core/memory/recall.ts';
import { type OutlookPart, type OutlookRequest, outlookOf } from '../../src/core/plan/outlook.ts';

const requestFor = (other: Partial<OutlookRequest> = {}): OutlookRequest => ({
  w: WEIGHTS,
  today: 20_010,
  classDay: 20_013,
  minutes: 5,
  attendance: 1,
  spentSeconds: 0,
  facts: ['a', 'b', 'c'].map((id) => ({
    id,
    weight: 1,
    rightSeconds: 20,
    wrongSeconds: 40,
    memory: null,
    firstRecall: 0.3,
  })),
  topicOf: ['x', 'x', 'y'],
  attempts: [],
  voids: new Set(),
  seed: 1,
  ceilings: [5],
  scale: false,
  ...other,
});

/** A worker that answers a part each time it is told to go on; what it is sent is copied, as a real one's is. */
class SlowWorker implements PlanWorker {
  onmessage: PlanWorker['onmessage'] = null;
  onerror: PlanWorker['onerror'] = null;
  onmessageerror: PlanWorker['onmessageerror'] = null;
  stopped = false;
  readonly got: PlanOrder[] = [];
  private parts: Iterator<OutlookPart> = [][Symbol.iterator]();

  postMessage(order: unknown) {
    const sent = structuredClone(order) as PlanOrder;
    this.got.push(sent);
    this.parts = outlookOf(sent.request);
  }

  terminate() {
    this.stopped = true;
  }

  goOn() {
    const { value, done } = this.parts.next();
    this.say({ order: this.got.at(-1)!.order, part: done ? null : value });
  }

  say(data: PlanAnswer) {
    this.onmessage?.call(this as unknown as Worker, { data: structuredClone(data) } as MessageEvent);
  }

  breakDown() {
    this.onerror?.call(this as unknown as Worker, new Event('error') as ErrorEvent);
  }
}

function onBench() {
  const workers: SlowWorker[] = [];
  const planner = openPlanner(() => {
    workers.push(new SlowWorker());
    return workers.at(-1)!;
  });
  const listen = () => {
    const heard: (OutlookPart['kind'] | null)[] = [];
    const tell = (part: OutlookPart | null) => heard.push(part?.kind ?? null);
    return { heard, tell };
  };
  return { workers, planner, listen };
}

describe('a request', () => {
  test('is answered part by part, and the worker serves the next one', () => {
    const { workers, planner, listen } = onBench();
    const [first, second] = [listen(), listen()];
    planner.planFor('demo', requestFor(), first.tell);
    for (let i = 0; i < 4; i++) workers[0]!.goOn();
    expect(first.heard).toEqual(['drill', 'forecast', 'ceilings', null]);
    planner.planFor('demo', requestFor(), second.tell);
    workers[0]!.goOn();
    expect(second.heard).toEqual(['drill']);
    expect(workers).toHaveLength(1);
    expect(first.heard).toHaveLength(4);
  });

  test('lets a plan for the same course say what to ask, then takes over with its prices', () => {
    const { workers, planner, listen } = onBench();
    const [first, second, third] = [listen(), listen(), listen()];
    planner.planFor('demo', requestFor(), first.tell);
    planner.planFor('demo', requestFor({ seed: 2 }), second.tell);
    planner.planFor('demo', requestFor({ seed: 3 }), third.tell);
    expect(second.heard).toEqual([null]);
    expect(workers).toHaveLength(1);
    workers[0]!.goOn();
    expect(first.heard).toEqual(['drill', null]);
    expect(workers[0]!.stopped).toBe(true);
    const [sent] = workers[1]!.got;
    expect(sent!.request.seed).toBe(3);
    expect([...sent!.request.prices!.keys()]).toEqual([20_010, 20_011, 20_012]);
    workers[1]!.goOn();
    expect(third.heard).toEqual(['drill']);
  });

  test('does not wait for another course, nor for what comes after the drill', () => {
    const { workers, planner, listen } = onBench();
    const [first, second, third] = [listen(), listen(), listen()];
    planner.planFor('demo', requestFor(), first.tell);
    planner.planFor('other', requestFor(), second.tell);
    expect(first.heard).toEqual([null]);
    expect(workers[0]!.stopped).toBe(true);
    workers[1]!.goOn();
    planner.planFor('other', requestFor(), third.tell);
    expect(second.heard).toEqual(['drill', null]);
    expect(workers[1]!.stopped).toBe(true);
    expect(workers).toHaveLength(3);
  });
});

describe('a worker that fails', () => {
  test('and cannot start is said at once; the next request tries again', () => {
    let refuse = true;
    const working = new SlowWorker();
    const planner = openPlanner(() => {
      if (refuse) throw new DOMException('no', 'SecurityError');
      return working;
    });
    const heard: unknown[] = [];
    planner.planFor('demo', requestFor(), (part) => heard.push(part));
    expect(heard).toEqual([null]);
    refuse = false;
    planner.planFor('demo', requestFor(), (part) => heard.push(part?.kind));
    working.goOn();
    expect(heard).toEqual([null, 'drill']);
  });

  test('and breaks down tells everybody, and a new one is started', () => {
    const { workers, planner, listen } = onBench();
    const [first, second, third] = [listen(), listen(), listen()];
    planner.planFor('demo', requestFor(), first.tell);
    planner.planFor('demo', requestFor(), second.tell);
    workers[0]!.breakDown();
    expect([first.heard, second.heard]).toEqual([[null], [null]]);
    planner.planFor('demo', requestFor(), third.tell);
    workers[1]!.goOn();
    expect(third.heard).toEqual(['drill']);
  });

  test('and answers what nobody asked any more is not listened to', () => {
    const { workers, planner, listen } = onBench();
    const [first, second] = [listen(), listen()];
    planner.planFor('demo', requestFor(), first.tell);
    planner.planFor('other', requestFor(), second.tell);
    workers[0]!.goOn();
    expect(first.heard).toEqual([null]);
    expect(second.heard).toEqual([]);
  });
});
