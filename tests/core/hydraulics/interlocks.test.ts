import { describe, expect, test } from 'vitest';
import { currentsFor } from '../../../src/core/hydraulics/commands.ts';
import { blockedBy, withInterlocks } from '../../../src/core/hydraulics/interlocks.ts';
import { pressurised } from '../../../src/core/hydraulics/pressurised.ts';
import type { Deck, Pressure } from '../../../src/core/unit/deck.ts';
import { deckOf, PUBLISHED } from '../../units.ts';

type Given = Readonly<Record<string, Pressure | 'low' | null>>;

const after = (interlocks: Deck['interlocks'], given: Given) =>
  Object.fromEntries(withInterlocks({ interlocks }, new Map(Object.entries(given))));

describe('withInterlocks, by hand', () => {
  const pair = [{ id: 'X', whenApplied: ['A', 'B'], blocks: ['C'] }];
  test.each<[string, Deck['interlocks'], Given, Given]>([
    ['none recorded', undefined, { A: 'full', B: 'full' }, { A: 'full', B: 'full' }],
    ['both there', pair, { A: 'full', B: 'full', C: 'full' }, { A: 'full', B: 'full', C: 'none' }],
    ['one of them missing', pair, { A: 'full', B: 'none', C: 'full' }, { A: 'full', B: 'none', C: 'full' }],
    ['one of them open', pair, { A: 'full', B: null, C: 'full' }, { A: 'full', B: null, C: null }],
    ['one of them low', pair, { A: 'full', B: 'low', C: 'full' }, { A: 'full', B: 'low', C: null }],
    ['nothing to keep off', pair, { A: 'full', B: null, C: 'none' }, { A: 'full', B: null, C: 'none' }],
    [
      'what is blocked blocks nothing',
      [
        { id: 'Y', whenApplied: ['B'], blocks: ['C'] },
        { id: 'X', whenApplied: ['A'], blocks: ['B'] },
      ],
      { A: 'full', B: 'full', C: 'full' },
      { A: 'full', B: 'none', C: 'full' },
    ],
    [
      'two on one element',
      [
        { id: 'X', whenApplied: ['A'], blocks: ['C'] },
        { id: 'Y', whenApplied: ['B'], blocks: ['C'] },
      ],
      { A: null, B: 'full', C: 'full' },
      { A: null, B: 'full', C: 'none' },
    ],
    [
      'a circle is left open',
      [
        { id: 'X', whenApplied: ['A'], blocks: ['B'] },
        { id: 'Y', whenApplied: ['B'], blocks: ['A'] },
      ],
      { A: 'full', B: 'full', C: 'full' },
      { A: null, B: null, C: 'full' },
    ],
  ])('%s', (_, interlocks, given, left) => {
    expect(after(interlocks, given)).toEqual(left);
  });
});

describe('interlocks of a deck', () => {
  // crossed sets (tests/published names the source), oil made up in tests/units.ts: S1 UD none, S2 OD full,
  // S4 B24 full, S5 LR none when unplugged; D opens these four
  const crossed = deckOf(PUBLISHED.find((train) => train.id === 'four-range-two-crossed-sets')!);
  const deck: Deck = { ...crossed, interlocks: [{ id: 'X', whenApplied: ['UD', 'OD'], blocks: ['B24'] }] };
  const on = (...powered: string[]) =>
    Object.fromEntries(deck.solenoids!.map(({ id }) => [id, powered.includes(id) ? 'on' : 'off'] as const));

  test('commanded and kept off', () => {
    expect(pressurised(crossed, on('S1'), 'D')).toEqual(['UD', 'OD', 'B24']);
    expect(pressurised(deck, on('S1'), 'D')).toEqual(['UD', 'OD']);
    expect(pressurised(deck, on(), 'D')).toEqual(['OD', 'B24']);
  });

  test('what a row keeps off has no current of its own to ask for', () => {
    const row = (id: string) => deck.chart.ranges.find((range) => range.id === id)!;
    expect(currentsFor(crossed, row('3'), 'D').S4).toBe('on');
    expect(currentsFor(deck, row('3'), 'D').S4).toBeNull();
    expect(currentsFor(deck, row('2'), 'D').S4).toBe('off');
    expect(blockedBy(deck, row('3').applied)).toEqual(['B24']);
    expect(blockedBy(deck, row('2').applied)).toEqual([]);
  });
});
