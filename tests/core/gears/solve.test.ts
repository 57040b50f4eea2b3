import { describe, expect, test } from 'vitest';
import { solveSpeeds } from '../../../src/core/gears/solve.ts';
import {
  CASE,
  type Element,
  type Gearset,
  type GearsetKind,
  type Train,
} from '../../../src/core/gears/train.ts';
import { makeDecimal, makeRational } from '../../../src/core/rational.ts';
import { solveInFloats } from './float-solver.ts';

const gearset = (
  id: string,
  kind: GearsetKind,
  [sun, sunTeeth]: [string, number],
  [ring, ringTeeth]: [string, number],
  carrier: string,
): Gearset => ({
  id,
  kind,
  sun: { shaft: sun, teeth: sunTeeth },
  ring: { shaft: ring, teeth: ringTeeth },
  carrier: { shaft: carrier },
});
const brake = (id: string, shaft: string): Element => ({ id, kind: 'brake', between: [shaft, CASE] });
const clutch = (id: string, a: string, b: string): Element => ({ id, kind: 'clutch', between: [a, b] });
const train = (gearsets: Gearset[], elements: Element[], input = 'in', output = 'out'): Train => ({
  input,
  output,
  gearsets,
  elements,
});

const one = (kind: GearsetKind, sun: string, ring: string, carrier: string) =>
  gearset('P', kind, [sun, 30], [ring, 70], carrier);
const beside = gearset('Q', 'simple', ['out', 24], ['x', 72], 'y');

// Worked by hand from Willis' relation. Freedoms: speeds that can be chosen when the input is left alone.
const WORKED: readonly {
  name: string;
  of: Train;
  applied: string[];
  state: string;
  freedoms: number;
  speeds: Record<string, string | null>;
}[] = [
  {
    name: 'S2 sun in, ring held: (70 + 30) / 30',
    of: train([one('simple', 'in', 'r', 'out')], [brake('B', 'r')]),
    applied: ['B'], state: 'drives', freedoms: 1, speeds: { in: '1', r: '0', out: '3/10' },
  },
  {
    name: 'S2 carrier in, sun held: overdrive',
    of: train([one('simple', 's', 'out', 'in')], [brake('B', 's')]),
    applied: ['B'], state: 'drives', freedoms: 1, speeds: { in: '1', s: '0', out: '10/7' },
  },
  {
    name: 'S2 carrier held: sun and ring opposed',
    of: train([one('simple', 'in', 'out', 'c')], [brake('B', 'c')]),
    applied: ['B'], state: 'drives', freedoms: 1, speeds: { in: '1', c: '0', out: '-3/7' },
  },
  {
    name: 'S2 double-pinion, carrier held: sun and ring alike',
    of: train([one('double-pinion', 'in', 'out', 'c')], [brake('B', 'c')]),
    applied: ['B'], state: 'drives', freedoms: 1, speeds: { in: '1', c: '0', out: '3/7' },
  },
  {
    name: 'S2 double-pinion, ring held: carrier backward',
    of: train([one('double-pinion', 'in', 'r', 'out')], [brake('B', 'r')]),
    applied: ['B'], state: 'drives', freedoms: 1, speeds: { in: '1', r: '0', out: '-3/4' },
  },
  {
    name: 'S1 any two members joined: the set turns as one',
    of: train([one('simple', 'in', 'r', 'out')], [clutch('C', 'r', 'out')]),
    applied: ['C'], state: 'drives', freedoms: 1, speeds: { in: '1', r: '1', out: '1' },
  },
  {
    name: 'S4 tied up with one freedom: the input is locked, the output could turn',
    of: train(
      [one('simple', 'in', 'r', 'c'), gearset('Q', 'simple', ['x', 24], ['out', 72], 'c')],
      [brake('B', 'r'), brake('D', 'c')],
    ),
    applied: ['B', 'D'], state: 'tied-up', freedoms: 1, speeds: {},
  },
  {
    name: 'S4 tied up with none: everything locked',
    of: train([one('simple', 'in', 'r', 'out')], [brake('B', 'r'), clutch('C', 'in', 'out')]),
    applied: ['B', 'C'], state: 'tied-up', freedoms: 0, speeds: {},
  },
  {
    name: 'S4 tied up by a brake on the input itself',
    of: train([one('simple', 'in', 'r', 'out')], [brake('B', 'in')]),
    applied: ['B'], state: 'tied-up', freedoms: 1, speeds: {},
  },
  {
    name: 'S5 output held: the output is braked, the input turns the ring backward',
    of: train([one('simple', 'in', 'r', 'out')], [brake('B', 'out')]),
    applied: ['B'], state: 'output-held', freedoms: 1, speeds: { in: '1', r: '-3/7', out: '0' },
  },
  {
    name: 'S5 output held through a second set, with another shaft open',
    of: train(
      [one('simple', 'in', 'r', 'c'), gearset('Q', 'simple', ['out', 24], ['x', 72], 'y')],
      [brake('B', 'out')],
    ),
    applied: ['B'], state: 'output-held', freedoms: 3, speeds: { in: '1', out: '0', r: null, c: null, x: null, y: null },
  },
  {
    name: 'S6 free: nothing holds the ring',
    of: train([one('simple', 'in', 'r', 'out')], [brake('B', 'r')]),
    applied: [], state: 'free', freedoms: 2, speeds: { in: '1', r: null, out: null },
  },
  {
    name: 'S6 free although the driven set is settled',
    of: train([one('simple', 'in', 'r', 'c'), beside], [brake('B', 'r')]),
    applied: ['B'], state: 'free', freedoms: 3, speeds: { in: '1', r: '0', c: '3/10', out: null, x: null, y: null },
  },
  {
    name: 'S7 a good ratio with two freedoms: an idle set behind the output stays open',
    of: train([one('simple', 'in', 'r', 'out'), beside], [brake('B', 'r')]),
    applied: ['B'], state: 'drives', freedoms: 2, speeds: { in: '1', r: '0', out: '3/10', x: null, y: null },
  },
  {
    name: 'S7 a redundant element leaves the ratio alone',
    of: train([one('simple', 'in', 'r', 'out')], [clutch('C', 'in', 'r'), clutch('D', 'in', 'out')]),
    applied: ['C', 'D'], state: 'drives', freedoms: 1, speeds: { in: '1', r: '1', out: '1' },
  },
  {
    name: 'S7 no gears at all: a clutch from input to output',
    of: train([], [clutch('C', 'in', 'out')]),
    applied: ['C'], state: 'drives', freedoms: 1, speeds: { in: '1', out: '1' },
  },
  {
    name: 'S8 a sun fixed to the case is held with nothing applied',
    of: train([one('simple', CASE, 'in', 'out')], []),
    applied: [], state: 'drives', freedoms: 1, speeds: { in: '1', out: '7/10' },
  },
  {
    name: 'S8 two members fixed to the case lock the third',
    of: train([gearset('P', 'simple', [CASE, 30], [CASE, 70], 'in')], [clutch('C', 'in', 'out')]),
    applied: [], state: 'tied-up', freedoms: 1, speeds: {},
  },
  {
    name: 'S8 an element joined to a braked shaft holds like a brake',
    of: train([one('simple', 'in', 'r', 'out')], [brake('B', 'x'), clutch('C', 'r', 'x')]),
    applied: ['C', 'B'], state: 'drives', freedoms: 1, speeds: { in: '1', r: '0', x: '0', out: '3/10' },
  },
]; // biome-ignore format: a table reads across

describe('worked by hand', () => {
  test.each(WORKED.map((row) => [row.name, row] as const))('%s', (_, row) => {
    const { of, applied, state, freedoms, speeds } = row;
    const solution = solveSpeeds(of, applied);
    expect(solution.state).toBe(state);
    expect(
      Object.fromEntries([...solution.speeds].map(([shaft, speed]) => [shaft, speed && makeRational(speed)])),
    ).toEqual(speeds);
    expect(solution.ratio ? makeRational(solution.ratio.inverse()) : null).toBe(
      state === 'drives' ? speeds[of.output] : null,
    );
    expect(solveInFloats(of, applied).freedoms).toBe(freedoms);
  });
});

// Our own invented seven-range unit. Every pair of its five elements: eight ranges, and the two pairs that are
// none, whose reasons are worked by hand.
const seven = train(
  [
    gearset('P1', 'simple', ['s1', 43], ['s0', 109], 's4'),
    gearset('P2', 'simple', ['in', 40], ['s3', 72], 's0'),
    gearset('P3', 'simple', ['s3', 45], ['out', 87], 's4'),
  ],
  [
    brake('B1', 's1'),
    brake('B2', 's3'),
    brake('B3', 's0'),
    clutch('C1', 'in', 's4'),
    clutch('C2', 's4', 's3'),
  ],
);

test.each([
  // s3 and s0 stand, so P2 locks the input; P1 and P3 still turn together, the output with them.
  ['B2', 'B3', 'tied-up', null],
  // s3 and s4 stand, so P3 holds the output, while the input turns s0 and s1.
  ['B2', 'C2', 'output-held', null],
  // All three of P2 turn alike, all three of P1, all three of P3: direct.
  ['C1', 'C2', 'drives', '1.000'],
  // s1 and s0 stand, so s4 does: s3 is -40/72 of the input, out is -45/87 of s3.
  ['B1', 'B3', 'drives', '3.480'],
  // s0 stands, s4 and s3 turn as one with out: out is -40/72 of the input.
  ['B3', 'C2', 'drives', '-1.800'],
])('S4 S5 S7 invented seven-range unit, %s and %s: %s', (first, second, state, ratio) => {
  const solution = solveSpeeds(seven, [first, second]);
  expect(solution.state).toBe(state);
  expect(solution.ratio && makeDecimal(solution.ratio, 3)).toBe(ratio);
  expect(solveInFloats(seven, [first, second]).freedoms).toBe(1);
});

test('S3 speeds are exact: sixty sets in a row give the power of one', () => {
  const gearsets = Array.from({ length: 60 }, (_, i) =>
    gearset(`P${i}`, 'simple', [`n${i}`, 29], [CASE, 71], `n${i + 1}`),
  );
  const { ratio } = solveSpeeds(train(gearsets, [], 'n0', 'n60'), []);
  expect(makeRational(ratio!)).toBe(`${100n ** 60n}/${29n ** 60n}`);
});

test('an element that the train does not have is the caller’s mistake and throws', () => {
  expect(() => solveSpeeds(seven, ['B9'])).toThrow('B9');
});
