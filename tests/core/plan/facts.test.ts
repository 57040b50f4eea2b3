import { describe, expect, test } from 'vitest';
import { areaOf, weightsOf } from '../../../src/core/assign/assignment.ts';
import { foldAttempts } from '../../../src/core/memory/fold.ts';
import { secondsFor } from '../../../src/core/memory/pace.ts';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { everyDay } from '../../../src/core/plan/calendar.ts';
import { boundOf } from '../../../src/core/plan/ceiling.ts';
import { planFactsOf } from '../../../src/core/plan/facts.ts';
import { planToday } from '../../../src/core/plan/plan.ts';
import { factsOf } from '../../../src/core/questions/facts.ts';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { anAttempt } from '../../attempts.ts';
import { shippedDecks } from '../../units.ts';

const TODAY = 20_010;

describe('P10: what a fact costs and counts', () => {
  const [deck] = shippedDecks();
  const facts = factsOf(makeUnit(deck!));
  const id = facts[0]!.id;

  test('seconds by the forms that can ask it, twice as long when missed; weight 1 unless set', () => {
    const planned = planFactsOf({
      facts,
      families: FAMILIES,
      memory: new Map(),
      weights: new Map([[id, 3]]),
    });
    expect(planned.map((fact) => fact.id)).toEqual(facts.map((fact) => fact.id));
    for (const [i, fact] of planned.entries()) {
      const times = FAMILIES.filter((family) => facts[i]!.families.includes(family.id)).map((family) =>
        secondsFor(family.form),
      );
      expect(fact.rightSeconds).toBeCloseTo(times.reduce((a, b) => a + b, 0) / times.length, 9);
      expect(fact.wrongSeconds).toBe(2 * fact.rightSeconds);
      expect(fact.weight).toBe(i === 0 ? 3 : 1);
      expect(fact.memory).toBeNull();
      expect(fact.rightDays).toEqual(facts[i]!.cautioned ? { wanted: 2, had: 0 } : undefined);
    }
    expect(planned.some(({ rightDays }) => rightDays)).toBe(true);
  });

  test('where the days are too few, an area that counts double goes before one that counts half', () => {
    const counting = { hydraulics: 'double', 'power-flow': 'half' } as const;
    const planOf = (weights: ReadonlyMap<string, number>) =>
      planToday({
        w: WEIGHTS,
        today: TODAY,
        classDay: TODAY + 5,
        practice: everyDay(TODAY, TODAY + 5, 300),
        facts: planFactsOf({ facts, families: FAMILIES, memory: new Map(), weights }),
        seed: 1,
      });
    const shareOut = (area: string, leftOut: readonly string[]) => {
      const own = facts.filter((fact) => areaOf(fact) === area);
      return own.filter((fact) => leftOut.includes(fact.id)).length / own.length;
    };
    const { leftOut } = planOf(weightsOf({ counting }, facts));
    const usual = planOf(new Map()).leftOut;
    expect(shareOut('hydraulics', leftOut)).toBeLessThan(shareOut('hydraulics', usual));
    expect(shareOut('power-flow', leftOut)).toBeGreaterThan(shareOut('power-flow', usual));
    expect(shareOut('power-flow', leftOut)).toBeGreaterThan(shareOut('hydraulics', leftOut));
  });

  test('safety facts are the cautioned ones, or those named', () => {
    const named = planFactsOf({ facts, families: FAMILIES, memory: new Map(), safety: new Set([id]) });
    expect(named.filter(({ rightDays }) => rightDays).map((fact) => fact.id)).toEqual([id]);
  });

  test('what is remembered comes from the fold', () => {
    const memory = foldAttempts([
      anAttempt({ facts: [id], day: TODAY - 3, sequence: 1 }),
      anAttempt({ facts: [id], day: TODAY - 1, sequence: 2 }),
    ]);
    const [first] = planFactsOf({ facts, families: FAMILIES, memory });
    const { stability, difficulty } = memory.get(id)!;
    expect(first!.memory).toEqual({ stability, difficulty, lastDay: TODAY - 1 });
  });

  test('a whole shipped deck is planned from it', () => {
    const request = {
      w: WEIGHTS,
      today: TODAY,
      classDay: TODAY + 14,
      practice: everyDay(TODAY, TODAY + 14, 600),
      facts: planFactsOf({ facts, families: FAMILIES, memory: new Map() }),
      seed: 1,
    };
    const plan = planToday(request);
    expect(plan.facts.length).toBeGreaterThan(5);
    expect(plan.forecast).toBeGreaterThan(0.3);
    expect(boundOf(request)).toBeGreaterThanOrEqual(plan.forecast);
  });
});
