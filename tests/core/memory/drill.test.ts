import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  answeringMs,
  askAgain,
  type Drill,
  type DrillEvent,
  type DrillItem,
  isOver,
  progress,
} from '../../../src/core/memory/drill.ts';
import { aDrill, anItem } from '../../attempts.ts';

const RIGHT = { right: true, slipUps: [], missed: [] } as const;
const WRONG = { right: false, slipUps: [], missed: [] } as const;
const items = (letters: string): DrillItem[] => [...letters].map((fact) => anItem(fact));
const letters = (list: readonly DrillItem[]) => list.map((item) => item.fact).join('');
const run = (drill: Drill, ...events: DrillEvent[]) => events.reduce(progress, drill);
const T0 = 1_000_000;

describe('M28 M29 a missed fact once more', () => {
  test.each([
    ['three places later', 'abcdef', 0, 'a', 'abcdaef'],
    ['at the end when fewer are left', 'abcd', 1, 'b', 'abcdb'],
    ['with one other in between at least', 'abc', 1, 'b', 'abcb'],
    ['at the very end an earlier one comes in between', 'abc', 2, 'c', 'abcac'],
    ['not when it still comes', 'abcda', 0, 'a', 'abcda'],
    ['not a fourth time', 'abacadef', 4, 'a', 'abacadef'],
    ['nor by wearing out another', 'abababc', 6, 'c', 'abababc'],
    ['not when it is alone', 'a', 0, 'a', 'a'],
    ['not what was never in the drill', 'abc', 0, 'z', 'abc'],
    ['a fact from earlier in the drill', 'abcdefg', 2, 'a', 'abcdefag'],
    ['a fact from earlier, at the end', 'abc', 2, 'a', 'abca'],
  ])('%s', (_, before, index, fact, expected) => {
    expect(letters(askAgain(items(before), index, fact))).toBe(expected);
  });

  test('M27 it takes the seed beside the last one and the same family', () => {
    const once = askAgain(items('ab'), 0, 'a');
    expect(once.at(-1)).toEqual({ fact: 'a', family: 'range-elements', seed: 2 });
    const twice = askAgain([...once, ...items('cd')], 2, 'a');
    expect(twice.filter((item) => item.fact === 'a').map((item) => item.seed)).toEqual([1, 2, 1]);
  });

  test('however a drill goes, no fact comes twice running or more than three times, and missed ones come again', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.array(fc.record({ right: fc.boolean(), named: fc.integer({ min: -1, max: 12 }) }), {
          minLength: 60,
          maxLength: 60,
        }),
        (count, answers) => {
          const planned = items('abcdefghijklm'.slice(0, count));
          let drill = aDrill({ items: planned });
          let answered = 0;
          while (!isOver(drill)) {
            const { right, named } = answers[answered++]!;
            const missed = !right && named >= 0 ? ['abcdefghijklm'[named]!] : [];
            const { fact } = drill.items[drill.index]!;
            drill = progress(drill, { kind: 'checked', verdict: { right, slipUps: [], missed }, at: T0 });
            if (!right && missed.length === 0 && count > 2) {
              const timesOf = (id: string) => drill.items.filter((item) => item.fact === id).length;
              const coming = drill.items.slice(drill.index + 1);
              // At the very end an earlier one comes in between, unless all of them have come three times.
              const hasBetween =
                coming.length > 0 || planned.some((item) => item.fact !== fact && timesOf(item.fact) < 3);
              if (timesOf(fact) < 3 && hasBetween)
                expect(coming.some((item) => item.fact === fact)).toBe(true);
            }
            drill = progress(drill, { kind: 'next', at: T0 });
          }
          for (const [i, item] of drill.items.slice(1).entries())
            expect(item.fact).not.toBe(drill.items[i]!.fact);
          for (const { fact } of planned) {
            const times = drill.items.filter((item) => item.fact === fact).length;
            expect(times).toBeGreaterThanOrEqual(1);
            expect(times).toBeLessThanOrEqual(3);
          }
          expect(drill.answered).toBe(drill.items.length);
        },
      ),
      {
        // The last one at hand, and nothing left to stand in between.
        examples: [
          [3, [0, 0, 2, 0, 2, 1, 0, -1].concat(Array(52).fill(0)).map((named) => ({ right: false, named }))],
        ],
      },
    );
  });
});

describe('M28 which fact comes again', () => {
  const next = (drill: Drill) => letters(drill.items.slice(drill.index + 1));

  test('the one asked, when the slip-up names none or one the drill cannot ask', () => {
    expect(next(run(aDrill(), { kind: 'checked', verdict: WRONG, at: T0 }))).toBe('bcdaef');
    const elsewhere = { ...WRONG, missed: ['z'] };
    expect(next(run(aDrill(), { kind: 'checked', verdict: elsewhere, at: T0 }))).toBe('bcdaef');
  });

  test('the named one, when the drill has asked it or still will', () => {
    const named = { ...WRONG, missed: ['a'] };
    expect(next(run(aDrill({ index: 2 }), { kind: 'checked', verdict: named, at: T0 }))).toBe('defa');
    expect(next(run(aDrill(), { kind: 'checked', verdict: { ...WRONG, missed: ['c'] }, at: T0 }))).toBe(
      'bcdef',
    );
  });
});

describe('M30 the clock', () => {
  test('counts what is in sight and not yet checked', () => {
    const drill = run(
      aDrill(),
      { kind: 'draft-changed', draft: { form: 'set', picks: ['C1'] }, at: T0 + 4000 },
      { kind: 'paused', at: T0 + 6000 },
      { kind: 'resumed', at: T0 + 96_000 },
      { kind: 'checked', verdict: RIGHT, at: T0 + 97_500 },
    );
    expect(answeringMs(drill, T0 + 500_000)).toBe(7500);
  });

  test('a page killed between two taps: what lies between does not count', () => {
    const stored = run(aDrill(), {
      kind: 'draft-changed',
      draft: { form: 'set', picks: ['C1'] },
      at: T0 + 4000,
    });
    const woken = progress(stored, { kind: 'resumed', at: T0 + 7_200_000 });
    expect(woken.draft).toEqual({ form: 'set', picks: ['C1'] });
    expect(answeringMs(woken, T0 + 7_201_000)).toBe(5000);
  });

  test('starts at nothing with each question, and stands once the drill is over', () => {
    const at = T0 + 9000;
    const second = run(aDrill(), { kind: 'checked', verdict: RIGHT, at }, { kind: 'next', at });
    expect([second.index, second.draft, second.verdict, answeringMs(second, at + 10)]).toEqual([
      1,
      null,
      null,
      10,
    ]);
    const last = run(aDrill({ index: 5 }), { kind: 'checked', verdict: RIGHT, at }, { kind: 'next', at });
    expect([isOver(last), last.shownAt]).toEqual([true, null]);
  });

  test('a hidden page stays hidden while the result is read; a clock set back takes nothing off', () => {
    const told = run(aDrill(), { kind: 'checked', verdict: RIGHT, at: T0 + 3000 });
    expect(progress(told, { kind: 'resumed', at: T0 + 8000 }).shownAt).toBeNull();
    expect(answeringMs(progress(aDrill(), { kind: 'paused', at: T0 - 50_000 }), T0)).toBe(0);
  });
});

describe('M31 events that do not fit change nothing', () => {
  const told = progress(aDrill(), { kind: 'checked', verdict: WRONG, at: T0 });
  const over = aDrill({ index: 6 });
  test.each<[string, Drill, DrillEvent]>([
    ['a second check', told, { kind: 'checked', verdict: RIGHT, at: T0 }],
    ['a draft after the check', told, { kind: 'draft-changed', draft: { form: 'set', picks: [] }, at: T0 }],
    ['going on unchecked', aDrill(), { kind: 'next', at: T0 }],
    ['a check when it is over', over, { kind: 'checked', verdict: RIGHT, at: T0 }],
    ['coming back when it is over', over, { kind: 'resumed', at: T0 }],
  ])('%s', (_, drill, event) => {
    expect(progress(drill, event)).toEqual(drill);
  });
});

test('M32 stored and read back at any point, a drill goes on as if nothing had happened', () => {
  const events: DrillEvent[] = [
    { kind: 'draft-changed', draft: { form: 'set', picks: ['C1'] }, at: T0 + 1 },
    { kind: 'paused', at: T0 + 2 },
    { kind: 'resumed', at: T0 + 3 },
    { kind: 'checked', verdict: WRONG, at: T0 + 4 },
    { kind: 'next', at: T0 + 5 },
    { kind: 'checked', verdict: RIGHT, at: T0 + 6 },
  ];
  const straight = run(aDrill(), ...events);
  const stored = events.reduce(
    (drill, event) => progress(JSON.parse(JSON.stringify(drill)), event),
    aDrill(),
  );
  expect(stored).toEqual(straight);
  expect([straight.answered, straight.right]).toEqual([2, 1]);
});
