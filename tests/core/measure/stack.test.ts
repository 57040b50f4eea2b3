import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Plate,
  type PlateKind,
  packClearance,
  slidingFaces,
  slipsThatExplain,
  stackHeight,
  usualClearanceMm,
} from '../../../src/core/measure/stack.ts';
import { rational } from '../../../src/core/rational.ts';
import { exact, given, refusal } from '../../results.ts';

const plate = (id: string, kind: PlateKind, thickness: string, free?: string): Plate => ({
  id,
  kind,
  thickness: exact(thickness),
  free: free ? exact(free) : undefined,
});

/** Steel, friction, steel, friction … then backing plate and ring. */
const pack = (frictions: number): Plate[] => [
  ...Array.from({ length: frictions }, (_, index) => [
    plate(`steel-${index + 1}`, 'steel', '1.80'),
    plate(`friction-${index + 1}`, 'friction', '1.60'),
  ]).flat(),
  plate('backing', 'backing', '6.00'),
  plate('ring', 'ring', '1.60'),
];

describe('clearance from the parts (arithmetic)', () => {
  test.each<[depth: string, clearance: string]>([
    ['28.40', '3.80'],
    ['26.00', '1.40'],
  ])('depth %s, 5 frictions 1.60, 5 steels 1.80, backing 6.00, ring 1.60: %s', (depth, clearance) => {
    expect(given(packClearance(exact(depth), pack(5), 'flat')).toFraction()).toBe(
      exact(clearance).toFraction(),
    );
  });

  test('3.80 is far from the usual 0.010 in for each friction, 1.27 mm (common practice, no source)', () => {
    expect(usualClearanceMm(5).toFraction()).toBe(exact('1.27').toFraction());
  });

  test('a stack that just fills its room leaves nothing, and goes together', () => {
    expect(given(packClearance(exact('24.60'), pack(5), 'flat')).n).toBe(0n);
  });

  test('one steel doubled: 0.40 too high, it does not go together', () => {
    const doubled = [plate('steel-6', 'steel', '1.80'), ...pack(5)];
    const result = packClearance(exact('26.00'), doubled, 'flat');
    expect(refusal(result)).toBe('does-not-assemble');
    expect(!result.ok && 'by' in result.error && result.error.by.toFraction()).toBe('2/5');
  });

  test('a cushion plate, flat 2.00 and free 2.60, takes 0.60 more where it is measured unloaded', () => {
    const plates = [plate('cushion', 'cushion', '2.00', '2.60'), ...pack(4)];
    const [flat, free] = (['flat', 'free'] as const).map((waves) =>
      given(packClearance(exact('26.00'), plates, waves)),
    );
    expect(flat!.sub(free!).toFraction()).toBe('3/5');
    expect(given(stackHeight(plates, 'flat')).toFraction()).toBe(exact('23.20').toFraction());
  });
});

describe('sliding faces', () => {
  test('n frictions between n + 1 plates that react have 2n, counted by hand for 1, 2, 5', () => {
    expect([1, 2, 5].map((frictions) => slidingFaces(pack(frictions)))).toEqual([2, 4, 10]);
  });

  test('a friction beside a friction, or beside a cushion, has a face less', () => {
    const [steel, friction, ...rest] = pack(5);
    expect(slidingFaces([friction!, steel!, ...rest])).toBe(9);
    expect(slidingFaces([plate('cushion', 'cushion', '2.00', '2.60'), friction!, ...rest])).toBe(9);
  });

  test('plates that change places leave the clearance as it was', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 7 }), fc.nat(), fc.nat(), (frictions, a, b) => {
        const plates = pack(frictions);
        const [i, j] = [a % plates.length, b % plates.length];
        const swapped = plates.with(i, plates[j]!).with(j, plates[i]!);
        return given(packClearance(exact('40'), swapped, 'flat')).equals(
          given(packClearance(exact('40'), plates, 'flat')),
        );
      }),
    );
  });
});

describe('which slip a height betrays (arithmetic)', () => {
  const plates = [...pack(1), plate('wave', 'cushion', '1.00', '1.40')];
  test.each<[height: string, waves: 'flat' | 'free', slips: string[]]>([
    ['12.00', 'flat', []],
    ['10.20', 'flat', ['steel-1 left-out']],
    ['13.80', 'flat', ['steel-1 doubled']],
    ['13.60', 'flat', ['friction-1 doubled', 'ring doubled']],
    ['11.00', 'flat', ['wave left-out']],
    ['11.00', 'free', ['wave left-out']],
    ['18.03', 'flat', ['backing doubled']],
    ['20.00', 'flat', []],
  ])('%s %s: %o', (height, waves, slips) => {
    const found = given(slipsThatExplain(plates, waves, exact(height), exact('0.05')));
    expect(found.map(({ plate: id, slip }) => `${id} ${slip}`)).toEqual(slips);
  });
});

test.each<[title: string, plates: Plate[], code: string]>([
  ['a plate of no thickness', [plate('steel-1', 'steel', '0')], 'thickness-not-positive'],
  ['a wave lower free than flat', [plate('cushion', 'cushion', '2.0', '1.9')], 'free-below-flat'],
])('refused: %s', (_, plates, code) => {
  expect(refusal(stackHeight(plates, 'flat'))).toBe(code);
  expect(refusal(packClearance(rational(20), plates, 'free'))).toBe(code);
  expect(refusal(slipsThatExplain(plates, 'flat', rational(20), rational(1)))).toBe(code);
});

test('refused: no room at all', () => {
  expect(refusal(packClearance(rational(0), pack(1), 'flat'))).toBe('depth-not-positive');
});
