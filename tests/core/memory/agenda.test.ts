import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type AgendaRequest,
  agendaOf,
  KEEP_ALIVE_RECALL,
  shareOfUnseen,
  spreadDays,
} from '../../../src/core/memory/agenda.ts';
import { type FactMemory, foldAttempts, type Memory } from '../../../src/core/memory/fold.ts';
import { recallOn } from '../../../src/core/memory/recall.ts';
import type { Fact } from '../../../src/core/questions/facts.ts';
import type { Level } from '../../../src/core/questions/question.ts';
import { anAttempt } from '../../attempts.ts';

const DAY = 20_000;

const aFact = (id: string, level: Level = 'read'): Fact => ({ id, families: ['f'], level, cautioned: false });
const someFacts = (count: number) => Array.from({ length: count }, (_, i) => aFact(`f${i}`));

const aMemory = (changes: Partial<FactMemory> = {}): FactMemory => ({
  stability: 5,
  difficulty: 5,
  lastDay: DAY - 2,
  firstDay: DAY - 2,
  asked: 1,
  missed: 0,
  rightDays: 1,
  held: false,
  ...changes,
});

const agenda = (changes: Partial<AgendaRequest>) =>
  agendaOf({ facts: [], memory: new Map(), day: DAY, classDay: DAY + 20, seed: 1, ...changes }).map(
    ({ fact }) => fact.id,
  );

describe('M18 unseen facts', () => {
  test.each([
    ['at the start of 20 days: over 10', 0, 0, 20, 10],
    ['of 21 days: over 11', 0, 0, 21, 11],
    ['on the fourth of 20 days: over 7', 0, 3, 20, 7],
    ['on the last day of the first half: today', 0, 9, 20, 1],
    ['behind after the first half: over half of what is left', 0, 10, 20, 5],
    ['the day before class: today', 0, 19, 20, 1],
    ['class today: today', 0, 20, 20, 1],
    ['one day in all: today', 0, 0, 1, 1],
  ])('%s', (_, firstDay, day, classDay, expected) => {
    expect(spreadDays(DAY + firstDay, DAY + day, DAY + classDay)).toBe(expected);
  });

  test('shared out day by day, all are met when the first half ends, in shares that differ by one at most', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 90 }), (count, length) => {
        const shares: number[] = [];
        let unseen = count;
        for (let day = 0; day < length && unseen > 0; day++) {
          const share = shareOfUnseen(unseen, 0, spreadDays(DAY, DAY + day, DAY + length));
          shares.push(share);
          unseen -= share;
        }
        expect(unseen).toBe(0);
        expect(shares.length).toBeLessThanOrEqual(Math.ceil(length / 2));
        expect(Math.max(...shares) - Math.min(...shares)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('a second sitting on the same day does not take the next day’s share', () => {
    expect(shareOfUnseen(90, 10, 10)).toBe(0);
    expect(shareOfUnseen(94, 6, 10)).toBe(4);
  });

  test('come lowest level first, in an order that the seed changes', () => {
    const facts = [aFact('c', 'reason'), aFact('b', 'apply'), ...someFacts(20)];
    const first = agenda({ facts });
    expect(first.slice(-2)).toEqual(['b', 'c']);
    expect(agenda({ facts })).toEqual(first);
    expect(agenda({ facts, seed: 2 })).not.toEqual(first);
  });
});

describe('M19 to M21 the order of want', () => {
  const memory: Memory = new Map([
    ['strong', aMemory({ stability: 50 })],
    ['weak', aMemory({ stability: 0.5 })],
    ['today', aMemory({ stability: 0.2, lastDay: DAY })],
    ['middling', aMemory({ stability: 5 })],
  ]);
  const facts = [...['strong', 'weak', 'today', 'middling'].map((id) => aFact(id)), ...someFacts(30)];

  test('today’s share of unseen with every third question for the lowest recall, the other met, the other unseen', () => {
    // The first answer was two days ago, class is in 20: 9 of the 11 days of the first half are left.
    const order = agenda({ facts, memory });
    const kinds = order.map((id) => (id.startsWith('f') ? 'unseen' : id));
    expect(kinds.slice(0, 7)).toEqual(['unseen', 'unseen', 'weak', 'unseen', 'unseen', 'middling', 'strong']);
    expect(kinds.slice(7)).toEqual(Array.from({ length: 26 }, () => 'unseen'));
    expect(order).not.toContain('today');
  });

  test('M21 with class tomorrow or today, what was asked today comes last', () => {
    for (const ahead of [0, 1]) expect(agenda({ facts, memory, classDay: DAY + ahead }).at(-1)).toBe('today');
    expect(agenda({ facts, memory, classDay: DAY + 2 })).not.toContain('today');
  });

  test('M19 the lower the recall, the earlier, for any memories', () => {
    const memories = fc.array(
      fc.record({
        stability: fc.double({ min: 0.01, max: 300, noNaN: true }),
        ago: fc.integer({ min: 1, max: 60 }),
      }),
      { minLength: 1, maxLength: 40 },
    );
    fc.assert(
      fc.property(memories, (given) => {
        const own = new Map(
          given.map(({ stability, ago }, i) => [
            `f${i}`,
            aMemory({ stability, lastDay: DAY - ago, firstDay: DAY - 60 }),
          ]),
        );
        const recalls = agenda({ facts: someFacts(given.length), memory: own }).map((id) =>
          recallOn(own.get(id)!, DAY),
        );
        expect(recalls).toHaveLength(given.length);
        expect(recalls).toEqual(recalls.toSorted((a, b) => a - b));
      }),
    );
  });
});

describe('M22 after class', () => {
  test('a fact always answered right is asked at gaps that grow; a fact not faded is left alone', () => {
    const facts = [aFact('a')];
    const classDay = DAY + 3;
    const log = [
      anAttempt({ fact: 'a', sequence: 1, day: DAY }),
      anAttempt({ fact: 'a', sequence: 2, day: DAY + 2 }),
    ];
    const asked: number[] = [];
    for (let day = classDay + 1; day < classDay + 3000; day++) {
      const memory = foldAttempts(log);
      if (agenda({ facts, memory, day, classDay }).length === 0) continue;
      expect(recallOn(memory.get('a')!, day)).toBeLessThanOrEqual(KEEP_ALIVE_RECALL);
      asked.push(day);
      log.push(anAttempt({ fact: 'a', sequence: log.length + 1, day }));
    }
    const gaps = asked.slice(1).map((day, i) => day - asked[i]!);
    expect(gaps.length).toBeGreaterThanOrEqual(3);
    for (const [i, gap] of gaps.slice(1).entries()) expect(gap).toBeGreaterThan(gaps[i]!);
  });

  test('facts still unseen are spread over two weeks', () => {
    expect(agenda({ facts: someFacts(28), day: DAY + 21, classDay: DAY + 20 })).toHaveLength(2);
  });
});

describe('M23 no class date', () => {
  /** Unseen facts that come before the last of many met ones. */
  const share = (unseen: number, day: number) => {
    const met = Array.from({ length: 60 }, (_, i) => `met${i}`);
    const memory = new Map(met.map((id) => [id, aMemory({ firstDay: DAY, lastDay: DAY })]));
    const facts = [...someFacts(unseen), ...met.map((id) => aFact(id))];
    const order = agenda({ facts, memory, day, classDay: null });
    const last = order.findLastIndex((id) => id.startsWith('met'));
    return order.slice(0, last).filter((id) => !id.startsWith('met')).length;
  };

  test('unseen facts are spread over 11 days from the first answer', () => {
    expect(agenda({ facts: someFacts(110), classDay: null })).toHaveLength(110);
    expect(share(100, DAY + 1)).toBe(10);
    expect(share(20, DAY + 9)).toBe(10);
  });

  test('years later it still looks a week ahead and asks what was met', () => {
    expect(share(8, DAY + 1000)).toBe(2);
  });
});
