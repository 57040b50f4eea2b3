import { describe, expect, test } from 'vitest';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { everyDay } from '../../../src/core/plan/calendar.ts';
import { ceilingsOf } from '../../../src/core/plan/ceiling.ts';
import { type OutlookPart, type OutlookRequest, outlookOf } from '../../../src/core/plan/outlook.ts';
import { planToday } from '../../../src/core/plan/plan.ts';
import type { PlanFact } from '../../../src/core/plan/problem.ts';
import { anAttempt } from '../../attempts.ts';

const TODAY = 20_010;

const facts = Array.from(
  { length: 60 },
  (_, i): PlanFact => ({
    id: `range:${i}/elements`,
    weight: 1,
    rightSeconds: 20,
    wrongSeconds: 40,
    memory: i % 3 ? null : { stability: 1 + i / 10, difficulty: 5, lastDay: TODAY - 1 - (i % 4) },
    firstRecall: 0.3,
  }),
);

const asked = (other: Partial<OutlookRequest> = {}): OutlookRequest => ({
  w: WEIGHTS,
  today: TODAY,
  classDay: TODAY + 6,
  minutes: 5,
  attendance: 1,
  spentSeconds: 0,
  facts,
  topicOf: facts.map((_, i) => (i < 20 ? 'power-flow' : 'measuring')),
  attempts: [anAttempt({ facts: ['range:0/elements'], day: TODAY - 1, sequence: 1 })],
  voids: new Set(),
  seed: 3,
  ceilings: [5, 10],
  scale: true,
  ...other,
});

type Kind = OutlookPart['kind'];

function partOf<K extends Kind>(request: OutlookRequest, kind: K) {
  const found = [...outlookOf(request)].find((part) => part.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found as Extract<OutlookPart, { kind: K }>;
}

const kinds = (request: OutlookRequest) => [...outlookOf(request)].map(({ kind }) => kind);

describe('P25: what is told on the way to class', () => {
  test('the drill comes first, and only what is wanted is reckoned', () => {
    expect(kinds(asked())).toEqual(['drill', 'forecast', 'ceilings', 'scale']);
    expect(kinds(asked({ ceilings: [], scale: false }))).toEqual(['drill', 'forecast']);
  });

  test('its drill, its ceilings and what is left out are those of the plan', () => {
    const request = asked();
    const practice = everyDay(TODAY, TODAY + 6, 300);
    const plan = planToday({ ...request, classDay: TODAY + 6, practice });
    const { order, prices } = partOf(request, 'drill');
    expect(order).toEqual([...plan.facts, ...plan.reserve].map(({ fact }) => fact));
    expect(prices).toEqual(plan.prices);
    expect(partOf(request, 'forecast').leftOut).toEqual(plan.leftOut);
    expect(partOf(request, 'ceilings').each).toEqual(
      ceilingsOf({ ...request, classDay: TODAY + 6, practice, prices }, [5, 10]),
    );
  });

  test('minutes that are over are not counted on again', () => {
    const fresh = partOf(asked(), 'forecast');
    const spent = partOf(asked({ spentSeconds: 300 }), 'forecast');
    const half = partOf(asked({ spentSeconds: 150 }), 'forecast');
    expect(spent.readiness.all.expected).toBeLessThan(half.readiness.all.expected);
    expect(half.readiness.all.expected).toBeLessThan(fresh.readiness.all.expected);
    expect(spent.course.days[0]).toBe(1);
    // Who goes on all the same gets a whole drill.
    expect(partOf(asked({ spentSeconds: 300 }), 'drill').order).toEqual(partOf(asked(), 'drill').order);
  });

  test('days that may not take place make it less likely to be ready', () => {
    const { readiness } = partOf(asked({ attendance: 3 / 7 }), 'forecast');
    expect(readiness.all.expected).toBeLessThan(partOf(asked(), 'forecast').readiness.all.expected - 0.02);
  });

  test('today’s drill is worth something at class: without it the other days have the same minutes', () => {
    const { course, skipped, readiness } = partOf(asked(), 'forecast');
    expect(course.recalled.at(-1)).toBeCloseTo(readiness.all.expected, 12);
    expect(skipped.days).toEqual(course.days.slice(1));
    expect(skipped.recalled.at(-1)!).toBeLessThan(course.recalled.at(-1)! - 0.01);
    for (const seconds of [...course.seconds, ...skipped.seconds]) {
      expect(seconds).toBeGreaterThan(0.95 * 300);
      expect(seconds).toBeLessThan(1.05 * 300);
    }
  });

  test('on the class day itself there is nothing to practise for, and what is kept is told', () => {
    const request = asked({ classDay: TODAY });
    expect(kinds(request)).toEqual(['drill', 'forecast', 'scale']);
    expect(partOf(request, 'drill').order).toEqual([]);
    const { all } = partOf(request, 'forecast').readiness;
    expect(all.expected).toBeCloseTo(all.kept, 2);
  });

  test('without a class ahead only the scale is told', () => {
    expect(kinds(asked({ classDay: null }))).toEqual(['scale']);
    expect(kinds(asked({ classDay: null, scale: false }))).toEqual([]);
  });
});
