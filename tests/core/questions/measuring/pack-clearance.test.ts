import { describe, expect, test } from 'vitest';
import { packClearance } from '../../../../src/core/questions/families/measuring/pack-clearance.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { DeckStack, DeckStackItem } from '../../../../src/core/unit/stacks.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { inch, mm } from './bench.ts';

const bare = deckOf(PUBLISHED.find(({ id }) => id === 'textbook-sun-held-23-55')!);

type Of = typeof mm | typeof inch;

function packOf(of: Of, room: string, more: readonly DeckStackItem[] = []): DeckStack {
  const plates = (kind: 'friction' | 'steel', count: number, thickness: string): DeckStackItem[] =>
    Array.from({ length: count }, (_, n) => ({ id: `${kind}-${n}`, kind, thickness: of(thickness) }));
  const metric = of === mm;
  return {
    id: 'p',
    floor: 'drum floor',
    floorAt: 'rear',
    room: of(room),
    items: [
      ...more,
      ...plates('steel', 5, metric ? '1.80' : '0.070'),
      ...plates('friction', 5, metric ? '1.60' : '0.063'),
      { id: 'backing', kind: 'backing', thickness: of(metric ? '6.00' : '0.236') },
      { id: 'ring', kind: 'snap-ring', thickness: of(metric ? '1.60' : '0.063') },
    ],
  };
}

/** The room is drawn as many last places off the recorded one as `off` says. */
const posed = (stack: DeckStack, off = 0) =>
  packClearance.pose(makeUnit({ ...bare, stacks: [stack] }), 'stack:p/clearance', scripted({ ints: [off] }));
const said = (stack: DeckStack, value: string, off = 0) =>
  judge(posed(stack, off)!, { form: 'number', value });

const wave: DeckStackItem = { id: 'wave', kind: 'waved', thickness: mm('2.00'), free: mm('2.60') };

describe('pack-clearance, plates summed by hand', () => {
  test.each([
    // 28.40 − 8.00 − 9.00 − 6.00 − 1.60
    ['28.40', 0, '3.80'],
    ['26.00', 0, '1.40'],
    ['26.00', -20, '1.20'],
  ])('room %s, %i hundredths off: %s', (room, off, clearance) => {
    expect(said(packOf(mm, room), clearance, off).right).toBe(true);
    expect(said(packOf(mm, room), (Number(clearance) + 0.02).toFixed(2), off).right).toBe(false);
  });

  test('inches stay inches: 1.010 less 0.350, 0.315, 0.236 and 0.063', () => {
    expect(said(packOf(inch, '1.010'), '0.046').right).toBe(true);
  });

  test('a waved plate counts flat or free, as the deck says', () => {
    const flat = { ...packOf(mm, '28.00', [wave]), waves: 'flat' as const };
    const free = { ...flat, waves: 'free' as const };
    expect(said(flat, '1.40').right).toBe(true);
    expect(said(flat, '0.80').slipUps).toEqual(['other-wave-height']);
    expect(said(free, '0.80').right).toBe(true);
    expect(said(free, '1.40').slipUps).toEqual(['other-wave-height']);
  });

  test('slip-ups are known', () => {
    const slips = (value: string) => said(packOf(mm, '26.00'), value).slipUps;
    expect(slips('3.00')).toEqual(['ring-left-out']);
    expect(slips('7.40')).toEqual(['backing-left-out']);
    // 26.00 − 1.80 − 1.60 − 6.00 − 1.60
    expect(slips('15.00')).toEqual(['one-of-each-counted']);
  });
});

describe('pack-clearance is not asked', () => {
  test.each<[string, DeckStack]>([
    // a steel doubled: 26.00 − 26.40 does not go together
    [
      'of a pack that does not go in',
      packOf(mm, '26.00', [{ id: 's', kind: 'steel', thickness: mm('1.80') }]),
    ],
    ['without a room', { ...packOf(mm, '26.00'), room: undefined }],
    ['without a thickness', packOf(mm, '28.00', [{ id: 's', kind: 'steel' }])],
    ['where nobody said how the waved plate counts', packOf(mm, '28.00', [wave])],
  ])('%s', (_, stack) => {
    expect(posed(stack)).toBeUndefined();
  });
});

describeRules(packClearance, { seeds: 60 });
