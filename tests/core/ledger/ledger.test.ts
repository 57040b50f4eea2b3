import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { voidsOf } from '../../../src/core/assign/corrections.ts';
import { DAYS_KEPT, secondsOnDay } from '../../../src/core/ledger/days.ts';
import { addToLedger, EMPTY_LEDGER, ledgerOf, OBSERVATIONS } from '../../../src/core/ledger/ledger.ts';
import type { Attempt } from '../../../src/core/memory/attempt.ts';
import { foldAttempts } from '../../../src/core/memory/fold.ts';
import { inOrder } from '../../../src/core/memory/order.ts';
import { READING_SECONDS, secondsFor } from '../../../src/core/memory/pace.ts';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { addWorked, NOTHING_WORKED } from '../../../src/core/memory/support.ts';
import { observationsOf } from '../../../src/core/plan/observe.ts';
import { weightsAt } from '../../../src/core/plan/personal.ts';
import { anAttempt } from '../../attempts.ts';
import { aCorrection } from '../../reports.ts';

const DAY = 20_000;
const FACTS = ['a', 'b', 'c', 'd'];

/** Answers of up to three devices; `hours` is how far the device's clock moves before each. */
const logsWith = (hours: fc.Arbitrary<number>) =>
  fc
    .array(
      fc.record({
        device: fc.constantFrom('phone', 'tablet', 'desk'),
        hours,
        facts: fc.uniqueArray(fc.constantFrom(...FACTS), { minLength: 1, maxLength: 2 }),
        right: fc.boolean(),
        form: fc.constantFrom('set' as const, 'number' as const),
        guessRate: fc.constantFrom(0, 0.25, 0.5),
        seconds: fc.integer({ min: 0, max: 90 }),
        revision: fc.integer({ min: 1, max: 3 }),
      }),
      { minLength: 1, maxLength: 30 },
    )
    .map((steps) => {
      const clocks = new Map<string, { sequence: number; hour: number }>();
      return steps.map(({ device, hours: moved, facts, right, ...rest }): Attempt => {
        const last = clocks.get(device) ?? { sequence: 0, hour: DAY * 24 };
        const clock = { sequence: last.sequence + 1, hour: last.hour + moved };
        clocks.set(device, clock);
        return anAttempt({
          ...rest,
          device,
          sequence: clock.sequence,
          facts,
          fact: facts[0]!,
          right,
          missed: right ? [] : [facts[0]!],
          slipUps: right ? [] : ['neighbour-range'],
          interrupted: rest.seconds > 60,
          at: clock.hour * 3_600_000,
          day: Math.floor(clock.hour / 24),
        });
      });
    });

/** Clocks that are set back now and then. */
const logs = logsWith(fc.integer({ min: -30, max: 80 }));
const corrections = fc.constantFrom(
  [],
  [aCorrection({ revision: 2, facts: ['a'] })],
  [aCorrection({ revision: 3, facts: ['b', 'c'] }), aCorrection({ id: 'other', deck: 'another deck' })],
);
const weights = fc.constantFrom(WEIGHTS, weightsAt({ first: 0.3, growth: -0.1 }));
const terms = fc.record({ corrections, weights });

const shuffled = <T>(values: readonly T[], keys: Iterator<number>): T[] =>
  values
    .map((value) => ({ value, key: keys.next().value as number }))
    .sort((a, b) => a.key - b.key)
    .map(({ value }) => value);

describe('L1 a ledger is the fold of the log', () => {
  test('memories, days, times, working and observations are what the log by itself gives', () => {
    fc.assert(
      fc.property(logs, terms, (log, under) => {
        const voids = voidsOf(log, under.corrections);
        const ledger = ledgerOf(log, under);
        const counted = inOrder(log)
          .map(({ attempt }) => attempt)
          .filter(({ id }) => !voids.has(id));
        expect(ledger.memory).toEqual(foldAttempts(log, voids, { weights: under.weights }));
        expect(ledger.answers).toBe(counted.length);
        expect(ledger.observations).toEqual(observationsOf(log, voids, under.weights));
        expect(ledger.worked).toEqual(addWorked(NOTHING_WORKED, counted));
        expect(ledger.latest?.id).toBe(counted.at(-1)?.id);
        for (const day of ledger.days.keys()) {
          const own = counted.filter((attempt) => attempt.day === day);
          const seconds = own.map((each) =>
            each.interrupted ? secondsFor(each.form) : each.seconds + READING_SECONDS,
          );
          expect(secondsOnDay(ledger.days, day)).toBeCloseTo(
            seconds.reduce((a, b) => a + b),
            6,
          );
          expect(ledger.days.get(day)?.slipUps.get('neighbour-range') ?? 0).toBe(
            own.filter(({ right }) => !right).length,
          );
        }
      }),
    );
  });

  test('in any order, doubled, merged from parts, it is the same', () => {
    fc.assert(
      fc.property(logs, terms, fc.infiniteStream(fc.nat()), (log, under, chance) => {
        const mixed = shuffled(log, chance);
        expect(ledgerOf([...mixed, ...log.slice(0, 5)], under)).toEqual(ledgerOf(log, under));
      }),
    );
  });

  test('of more days than are kept the latest stay, however they came', () => {
    const forward = Array.from({ length: DAYS_KEPT + 9 }, (_, i) =>
      anAttempt({ sequence: i + 1, day: DAY + i }),
    );
    const { days } = ledgerOf(forward);
    expect([...days.keys()]).toEqual(forward.slice(9).map(({ day }) => day));
    expect(addToLedger(ledgerOf(forward.slice(0, 64)), forward.slice(64))!.days).toEqual(days);
  });

  test('of more observations than are kept the latest stay', () => {
    const log = Array.from({ length: OBSERVATIONS + 5 }, (_, i) =>
      anAttempt({ sequence: i + 1, fact: `fact-${i}`, day: DAY + i }),
    );
    expect(ledgerOf(log).observations).toEqual(observationsOf(log).slice(-OBSERVATIONS));
  });
});

describe('L2 answers added to a ledger', () => {
  test('give the ledger of the whole log, or none: shuffled parts, clocks set back, voided answers', () => {
    let [made, refused] = [0, 0];
    fc.assert(
      fc.property(logs, terms, fc.infiniteStream(fc.nat()), fc.nat(), (log, under, chance, cut) => {
        // Half of the time a true prefix, half of the time any answers whatever.
        const parts = cut % 2 ? log : shuffled(log, chance);
        const place = cut % (log.length + 1);
        const longer = addToLedger(ledgerOf(parts.slice(0, place), under), parts.slice(place), under);
        if (longer) expect(longer).toEqual(ledgerOf(log, under));
        if (longer) made++;
        else refused++;
      }),
      { numRuns: 1000 },
    );
    expect(Math.min(made, refused)).toBeGreaterThan(100);
  });

  test('are always added while the device’s clock goes forward, one by one or many at once', () => {
    const forward = logsWith(fc.integer({ min: 0, max: 80 })).map((log) =>
      log.filter(({ device }) => device === log[0]!.device),
    );
    fc.assert(
      fc.property(forward, terms, fc.nat(), (log, under, cut) => {
        const place = cut % (log.length + 1);
        expect(addToLedger(ledgerOf(log.slice(0, place), under), log.slice(place), under)).toEqual(
          ledgerOf(log, under),
        );
        const oneByOne = log.reduce(
          (ledger, attempt) => addToLedger(ledger, [attempt], under)!,
          EMPTY_LEDGER,
        );
        expect(oneByOne).toEqual(ledgerOf(log, under));
      }),
    );
  });

  const folded = ledgerOf([1, 2, 3].map((sequence) => anAttempt({ sequence, day: DAY + sequence })));
  test.each<[string, Partial<Attempt>]>([
    ['of another device, given before the end', { device: 'tablet', day: DAY + 2 }],
    ['by a clock that was set back', { sequence: 4, day: DAY + 1 }],
    ['with a number that was there', { id: 'new', sequence: 3, day: DAY + 3 }],
    ['with a number that was passed', { id: 'new', sequence: 2, day: DAY + 9 }],
  ])('none for one %s', (_, changes) => {
    expect(addToLedger(folded, [anAttempt(changes)])).toBeNull();
  });

  test('one of another device given later is added, whatever its number', () => {
    const late = anAttempt({ device: 'tablet', sequence: 1, day: DAY + 9 });
    expect(addToLedger(folded, [late])?.answers).toBe(4);
  });

  test('a clock that ran ahead for one answer only: its day is told right once later answers outweigh it', () => {
    const days = [0, 365, 3, 9].map((day, i) => anAttempt({ fact: 'a', sequence: i + 1, day: DAY + day }));
    expect(ledgerOf(days).latest?.day).toBe(DAY + 9);
    expect(ledgerOf(days.slice(0, 2)).latest?.day).toBe(DAY + 365);
  });
});

test('L1 minutes of a day count answering and reading; an interrupted answer counts as a usual one', () => {
  const { days } = ledgerOf([
    anAttempt({ day: DAY, seconds: 50, sequence: 1 }),
    anAttempt({ day: DAY + 1, seconds: 10, sequence: 2 }),
    anAttempt({ day: DAY + 1, seconds: 4, sequence: 3 }),
    anAttempt({ day: DAY + 1, form: 'one', seconds: 3000, interrupted: true, sequence: 4 }),
  ]);
  expect(secondsOnDay(days, DAY + 1)).toBe(10 + 4 + 2 * READING_SECONDS + secondsFor('one'));
  expect(secondsOnDay(days, DAY + 2)).toBe(0);
});
