import { describe, expect, test } from 'vitest';
import { solveSpeeds } from '../../../src/core/gears/solve.ts';
import { solveTorques } from '../../../src/core/gears/torque.ts';
import {
  CASE,
  type Element,
  type Gearset,
  type GearsetKind,
  MEMBERS,
  type Member,
  type Train,
} from '../../../src/core/gears/train.ts';
import { makeRational, parseRational, type Rational } from '../../../src/core/rational.ts';
import { PUBLISHED } from '../../units.ts';

const ONE_SET = { sun: 'a', ring: 'b', carrier: 'c' } as const;

/** One set with one member driving, one braked, and the third going out. */
function single(kind: GearsetKind, sun: number, ring: number, input: Member, held: Member): Train {
  const output = MEMBERS.find((member) => member !== input && member !== held)!;
  const set: Gearset = {
    id: 'P',
    kind,
    sun: { shaft: ONE_SET.sun, teeth: sun },
    ring: { shaft: ONE_SET.ring, teeth: ring },
    carrier: { shaft: ONE_SET.carrier },
  };
  const brake: Element = { id: 'B', kind: 'brake', between: [ONE_SET[held], CASE] };
  return { input: ONE_SET[input], output: ONE_SET[output], gearsets: [set], elements: [brake] };
}

// Torques in a simple set stand as zs : zr : -(zs + zr); balance form read in a public course note, "Torque
// on gears in epicyclic gear train", eqs 10.10 to 10.12, the rest from memory. Numbers are arithmetic from
// that: sun 100, ring, carrier; then input speed / output speed for four ways of using the set.
const SIMPLE_SETS: readonly [sun: number, ring: number, torques: number[], ratios: number[]][] = [
  [30, 70, [100, 233.333, -333.333], [3.3333, 1.428571, 0.7, -2.3333]],
  [24, 72, [100, 300, -400], [4, 1.3333, 0.75, -3]],
  [32, 80, [100, 250, -350], [3.5, 1.4, 0.714286, -2.5]],
];
const WAYS = [
  ['sun', 'ring'],
  ['ring', 'sun'],
  ['carrier', 'sun'],
  ['sun', 'carrier'],
] as const;

describe.each(SIMPLE_SETS)(
  'simple set %i / %i (balance read, numbers by arithmetic)',
  (sun, ring, shares, ratios) => {
    test.each(WAYS.map(([input, held], index) => [input, held, ratios[index]!] as const))(
      'S10 %s drives, %s held: torques as the teeth, ratio %d',
      (input, held, ratio) => {
        const train = single('simple', sun, ring, input, held);
        const { ratio: solved } = solveSpeeds(train, ['B']);
        expect(solved!.valueOf()).toBeCloseTo(ratio, 4);
        const torques = solveTorques(train, ['B'])!;
        const share = torques.members.get('P')!;
        const perHundred = share.sun!.inverse().mul(100n);
        expect(share.ring!.mul(perHundred).valueOf()).toBeCloseTo(shares[1]!, 3);
        expect(share.carrier!.mul(perHundred).valueOf()).toBeCloseTo(shares[2]!, 3);
        // What holds the held member undoes what the set does to it.
        expect(torques.elements.get('B')!.equals(share[held]!.neg())).toBe(true);
      },
    );
  },
);

// Problem statement read on a public page (epicyclic, "Fig. 15.29": sun A 28 held, compound planets 22 and 26,
// sun D 24 out, arm in, 1.2 kW at 120 rpm); its solution could not be read, so the answer is arithmetic.
// Two suns over compound planets are a double-pinion set with the products of teeth in place of the teeth.
test('S12 published problem, 1.2 kW at 120 rpm through compound planets (statement read, answer by arithmetic)', () => {
  const train = single('double-pinion', 28 * 26, 22 * 24, 'carrier', 'sun');
  const { ratio, speeds } = solveSpeeds(train, ['B']);
  expect(ratio!.valueOf()).toBeCloseTo(-2.64, 10);
  expect(speeds.get('b')!.mul(120n).valueOf()).toBeCloseTo(-45.4545, 4);
  const inputTorque = 1200 / ((120 / 60) * 2 * Math.PI);
  const torques = solveTorques(train, ['B'])!;
  expect(inputTorque).toBeCloseTo(95.493, 3);
  expect(torques.output.valueOf() * inputTorque).toBeCloseTo(252.101, 2);
  expect(torques.elements.get('B')!.valueOf() * inputTorque).toBeCloseTo(-347.594, 2);
  expect(torques.reaction.valueOf() * inputTorque).toBeCloseTo(-347.594, 2);
});

const text = (value: Rational | null | undefined) => (value ? makeRational(value) : value);
const simple = (id: string, sun: [string, number], ring: [string, number], carrier: string): Gearset => ({
  id,
  kind: 'simple',
  sun: { shaft: sun[0], teeth: sun[1] },
  ring: { shaft: ring[0], teeth: ring[1] },
  carrier: { shaft: carrier },
});

describe('worked by hand, per 1 of input torque', () => {
  const set = simple('P', ['in', 30], ['r', 70], 'out');
  const joined: Element[] = [
    { id: 'C', kind: 'clutch', between: ['in', 'r'] },
    { id: 'D', kind: 'clutch', between: ['in', 'out'] },
    { id: 'B', kind: 'brake', between: ['x', CASE] },
  ];
  const train: Train = { input: 'in', output: 'out', gearsets: [set], elements: joined };

  test('S10 one clutch in direct carries what the ring passes on', () => {
    // The sun takes 30, the ring 70 of every 100; the clutch feeds the ring.
    const torques = solveTorques(train, ['C'])!;
    expect(text(torques.elements.get('C'))).toBe('-7/10');
    expect(text(torques.members.get('P')!.sun)).toBe('-3/10');
    expect(text(torques.output)).toBe('-1');
    expect(text(torques.reaction)).toBe('0');
  });

  test('S13 two clutches in direct share the load in a way nobody can tell', () => {
    const torques = solveTorques(train, ['C', 'D'])!;
    expect(torques.elements.get('C')).toBeNull();
    expect(torques.elements.get('D')).toBeNull();
    expect(torques.members.get('P')).toEqual({ sun: null, ring: null, carrier: null });
    expect(text(torques.output)).toBe('-1');
  });

  test('S13 a brake on a shaft that is joined to nothing carries nothing, and that is known', () => {
    const torques = solveTorques(train, ['C', 'B'])!;
    expect(text(torques.elements.get('B'))).toBe('0');
    expect(text(torques.elements.get('C'))).toBe('-7/10');
  });

  test('S8 a sun fixed to the case carries torque although no element does', () => {
    // Ring 71 in, carrier out: the ring takes 1, so the sun takes 37/71 and the case gives it back.
    const fixed = simple('P', [CASE, 37], ['in', 71], 'out');
    const torques = solveTorques({ input: 'in', output: 'out', gearsets: [fixed], elements: [] }, [])!;
    expect(text(torques.members.get('P')!.sun)).toBe('-37/71');
    expect(text(torques.members.get('P')!.carrier)).toBe('108/71');
    expect(text(torques.reaction)).toBe('37/71');
    expect(torques.elements.size).toBe(0);
  });

  test('S11 an element between two shafts turns them opposite ways, equally', () => {
    const named = { ...joined[0]!, between: ['r', 'in'] as const };
    const torques = solveTorques({ ...train, elements: [named] }, ['C'])!;
    expect(text(torques.elements.get('C'))).toBe('7/10');
  });

  test.each([
    ['free', []],
    ['output held', ['O']],
    ['tied up', ['C', 'O']],
  ])('S14 no torque passes a train that is %s', (_, applied) => {
    const stop: Element = { id: 'O', kind: 'brake', between: ['out', CASE] };
    expect(solveTorques({ ...train, elements: [...joined, stop] }, applied)).toBeNull();
  });
});

// The case gives what the ratio adds: 4.171 out for 1 in leaves 3.171 to brake and fixed sun together.
test('S12 six-speed with its front sun on the case, first: brake and fixed sun share the reaction', () => {
  const train = PUBLISHED.find(({ id }) => id === 'lepelletier-6-a')!;
  const torques = solveTorques(train, ['A', 'D'])!;
  // Worked by hand: front set 108/71 to the carrier, so A carries 108/71 and the case 37/71 at the front.
  expect(text(torques.elements.get('A'))).toBe('-108/71');
  const front = torques.members.get('P1')!.sun!.neg();
  expect(text(front)).toBe('37/71');
  // Rear: 85/31 of what the small sun gets goes out, 54/31 of it comes from the brake.
  expect(text(torques.elements.get('D'))).toBe(text(parseRational('108/71')!.mul(54n).div(31n)));
  expect(torques.reaction.equals(front.add(torques.elements.get('D')!))).toBe(true);
});
