import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandTorqueNm, tensionRatio } from '../../../src/core/capacity/band.ts';
import {
  type Clutch,
  facePressureKpa,
  facesFor,
  facesOf,
  forceForN,
  forceLimitN,
  MODELS,
  marginOf,
  meanRadiusMm,
  shareLeft,
  torqueCapacityNm,
} from '../../../src/core/capacity/clutch.ts';
import {
  pistonForceN,
  pressureForKpa,
  ringAreaMm2,
  spinForceN,
  spinPressureKpa,
} from '../../../src/core/capacity/piston.ts';
import { makeDecimal, type Rational, rational } from '../../../src/core/rational.ts';
import { convert } from '../../../src/core/units/convert.ts';
import type { UnitSymbol } from '../../../src/core/units/units.ts';
import { exact, given, refusal } from '../../results.ts';

const inUnit = (value: string, from: UnitSymbol, to: UnitSymbol) => given(convert(exact(value), from, to));
const shown = (value: Rational, decimals: number, from?: UnitSymbol, to?: UnitSymbol) =>
  makeDecimal(from && to ? given(convert(value, from, to)) : value, decimals);

describe('published clutch problems', () => {
  // Shigley, Mechanical Engineering Design, ch. 16, hydraulic multi-disc clutch (problem from memory, results
  // arithmetic): outside diameter 6.5 in, friction 0.24, 120 psi on the linings, 6 planes, uniform wear.
  const shigley = (insideDiameter: string) => {
    const face = {
      outerMm: inUnit('3.25', 'in', 'mm'),
      innerMm: inUnit(insideDiameter, 'in', 'mm').div(2n),
    };
    const force = given(forceLimitN('uniform-wear', face, inUnit('120', 'psi', 'kPa')));
    const clutch: Clutch = { model: 'uniform-wear', face, faces: 6, friction: exact('0.24') };
    return { force, torque: given(torqueCapacityNm(clutch, force)) };
  };

  test('inside diameter 4 in: 1884.96 lbf', () => {
    expect(shown(shigley('4').force, 2, 'N', 'lbf')).toBe('1884.96');
  });

  test.each<[diameter: string, torque: string]>([
    ['2', '5191.17'],
    ['3', '6768.88'],
    ['4', '7125.13'],
    ['5', '5852.79'],
    ['6', '2544.69'],
  ])('inside diameter %s in: %s lbf·in', (diameter, torque) => {
    expect(shown(shigley(diameter).torque, 2, 'N·m', 'lbf·in')).toBe(torque);
  });

  // Shigley, one pair of surfaces (from memory, results arithmetic): 250 and 175 mm, friction 0.30, 4 kN.
  test.each<[model: (typeof MODELS)[number], pressureMpa: string, torque: string]>([
    ['uniform-wear', '0.194017', '127.500'],
    ['uniform-pressure', '0.159779', '128.824'],
  ])('one pair, %s: %s MPa, %s N·m', (model, pressureMpa, torque) => {
    const face = { outerMm: exact('125'), innerMm: exact('87.5') };
    expect(shown(given(facePressureKpa(model, face, rational(4000))), 6, 'kPa', 'MPa')).toBe(pressureMpa);
    const clutch: Clutch = { model, face, faces: 1, friction: exact('0.30') };
    expect(shown(given(torqueCapacityNm(clutch, rational(4000))), 3)).toBe(torque);
  });

  // Juvinall and Marshek, wet multi-disc clutch (statement read on a public page, book from memory, results
  // arithmetic): 400 N·m, radii 45 and 75 mm, 1000 kPa, friction 0.10. The models ask for different plates.
  test.each<[model: (typeof MODELS)[number], each: string, share: string, faces: number, force: string]>([
    ['uniform-wear', '50.894', '7.86', 8, '8333.3'],
    ['uniform-pressure', '69.272', '5.77', 6, '10884.4'],
  ])('wet multi-disc, %s: %s N·m a face, %s, so %d faces at %s N', (model, each, share, faces, force) => {
    const face = { outerMm: exact('75'), innerMm: exact('45') };
    const clutch = { model, face, friction: exact('0.10') };
    const limit = given(forceLimitN(model, face, rational(1000)));
    expect(shown(given(torqueCapacityNm({ ...clutch, faces: 1 }, limit)), 3)).toBe(each);
    const needed = given(facesFor(clutch, rational(1000), rational(400)));
    expect([shown(needed.exact, 2), needed.faces]).toEqual([share, faces]);
    expect(shown(given(forceForN({ ...clutch, faces }, rational(400))), 1)).toBe(force);
  });

  test('its limit force with uniform wear is 8482.3 N, its mean radius with uniform pressure 61.25 mm', () => {
    const face = { outerMm: exact('75'), innerMm: exact('45') };
    expect(shown(given(forceLimitN('uniform-wear', face, rational(1000))), 1)).toBe('8482.3');
    expect(given(meanRadiusMm('uniform-pressure', face)).toFraction()).toBe('245/4');
  });
});

describe('piston and pack together (arithmetic)', () => {
  const area = given(ringAreaMm2(rational(140), rational(80)));
  const piston = { areaMm2: area, springN: rational(900) };
  const face = { outerMm: exact('72.5'), innerMm: exact('57.5') };
  const clutch = (model: (typeof MODELS)[number]): Clutch => ({
    model,
    face,
    faces: facesOf(5),
    friction: exact('0.13'),
  });

  test('140 by 80 mm is 10367.26 mm²', () => {
    expect(shown(area, 2)).toBe('10367.26');
  });

  test.each<[kPa: number, force: string, wear: string, pressure: string]>([
    [400, '3246.90', '274.36', '275.58'],
    [600, '5320.35', '449.57', '451.56'],
    [1000, '9467.26', '799.98', '803.53'],
    // below the pressure that moves the spring: nothing, not less than nothing
    [86, '0.00', '0.00', '0.00'],
    [0, '0.00', '0.00', '0.00'],
  ])('%d kPa, spring 900 N: %s N, 5 frictions hold %s or %s N·m', (kPa, force, wear, pressure) => {
    const pressed = given(pistonForceN(piston, rational(kPa)));
    expect(shown(pressed, 2)).toBe(force);
    const held = MODELS.map((model) => shown(given(torqueCapacityNm(clutch(model), pressed)), 2));
    expect(held).toEqual([wear, pressure]);
  });

  test('for 400 N·m it needs 4733.73 N and 543.42 kPa', () => {
    const force = given(forceForN(clutch('uniform-wear'), rational(400)));
    expect(shown(force, 2)).toBe('4733.73');
    expect(shown(given(pressureForKpa(piston, force)), 2)).toBe('543.42');
  });

  test('in inches: 5.5 by 3.0, 60 psi, spring 200 lbf, 8 faces of 2.75 by 2.25, friction 0.12', () => {
    const mm = (inches: string) => inUnit(inches, 'in', 'mm');
    const inchArea = given(ringAreaMm2(mm('5.5'), mm('3.0')));
    expect(shown(inchArea, 4, 'mm²', 'in²')).toBe('16.6897');
    const pressureKpa = inUnit('60', 'psi', 'kPa');
    const at = (spring: string) =>
      given(pistonForceN({ areaMm2: inchArea, springN: inUnit(spring, 'lbf', 'N') }, pressureKpa));
    expect(shown(at('0'), 2, 'N', 'lbf')).toBe('1001.38');
    expect(shown(at('200'), 2, 'N', 'lbf')).toBe('801.38');
    const held = torqueCapacityNm(
      {
        model: 'uniform-wear',
        face: { outerMm: mm('2.75'), innerMm: mm('2.25') },
        faces: 8,
        friction: exact('0.12'),
      },
      at('200'),
    );
    expect(shown(given(held), 3, 'N·m', 'lbf·ft')).toBe('160.277');
  });

  test('spinning oil: 850 kg/m³, 6000 rpm, from 30, piston 40 to 70 mm: 4087.7 N, 671.1 kPa at the edge', () => {
    const oil = {
      densityKgM3: rational(850),
      rpm: rational(6000),
      surfaceMm: rational(30),
      innerMm: rational(40),
      outerMm: rational(70),
    };
    const spinN = given(spinForceN(oil));
    expect(shown(spinN, 1)).toBe('4087.7');
    expect(shown(given(spinPressureKpa(oil)), 1)).toBe('671.1');
    // it adds to the piston, and takes its own share off the pressure needed
    const spinning = { ...piston, spinN };
    expect(shown(given(pistonForceN(spinning, rational(0))), 1)).toBe('3187.7');
    expect(given(pressureForKpa(spinning, rational(3000))).n).toBe(0n);
  });

  test('spinning oil agrees with its pressure summed over thin rings', () => {
    const any = fc.record({
      rpm: fc.integer({ min: 100, max: 9000 }),
      surface: fc.integer({ min: 0, max: 60 }),
      inner: fc.integer({ min: 0, max: 60 }),
      outer: fc.integer({ min: 61, max: 120 }),
    });
    fc.assert(
      fc.property(any, ({ rpm, surface, inner, outer }) => {
        const oil = {
          densityKgM3: rational(850),
          rpm: rational(rpm),
          surfaceMm: rational(surface),
          innerMm: rational(inner),
          outerMm: rational(outer),
        };
        const omega = (2 * Math.PI * rpm) / 60;
        const rings = 4000;
        let sum = 0;
        for (let ring = 0; ring < rings; ring++) {
          const r = (inner + ((outer - inner) * (ring + 0.5)) / rings) / 1000;
          const pascal = Math.max(0, (850 * omega ** 2 * (r ** 2 - (surface / 1000) ** 2)) / 2);
          sum += pascal * 2 * Math.PI * r * ((outer - inner) / 1000 / rings);
        }
        expect(given(spinForceN(oil)).valueOf() / sum).toBeCloseTo(1, 4);
      }),
      { numRuns: 40 },
    );
  });
});

describe('traps of the trade (arithmetic)', () => {
  const face = { outerMm: exact('72.5'), innerMm: exact('57.5') };
  const clutch: Clutch = { model: 'uniform-wear', face, faces: facesOf(5), friction: exact('0.13') };
  const right = given(torqueCapacityNm(clutch, rational(5000)));

  test('a face a plate gives half, diameters for radii give double', () => {
    const oneFace = given(torqueCapacityNm({ ...clutch, faces: 5 }, rational(5000)));
    expect(oneFace.div(right).toFraction()).toBe('1/2');
    const diameters = { outerMm: exact('145'), innerMm: exact('115') };
    expect(
      given(torqueCapacityNm({ ...clutch, face: diameters }, rational(5000)))
        .div(right)
        .toFraction(),
    ).toBe('2');
  });

  test('one friction short of five leaves four fifths, as fewer faces do', () => {
    expect(given(shareLeft(5, 1)).toFraction()).toBe('4/5');
    expect(
      given(torqueCapacityNm({ ...clutch, faces: facesOf(4) }, rational(5000)))
        .div(right)
        .toFraction(),
    ).toBe('4/5');
  });

  test('margin is what it holds over what is asked', () => {
    expect(given(marginOf(rational(300), rational(400))).toFraction()).toBe('3/4');
    expect(given(marginOf(rational(0), rational(400))).n).toBe(0n);
  });
});

describe('over many clutches', () => {
  const anyFace = fc
    .tuple(fc.integer({ min: 20, max: 150 }), fc.integer({ min: 1, max: 60 }))
    .map(([inner, width]) => ({ innerMm: rational(inner), outerMm: rational(inner + width) }));

  test('uniform wear never holds more than uniform pressure, and they meet in a thin ring', () => {
    fc.assert(
      fc.property(anyFace, (face) => {
        const [wear, pressure] = MODELS.map((model) => given(meanRadiusMm(model, face)));
        return wear!.lte(pressure!) && pressure!.lt(face.outerMm) && wear!.gt(face.innerMm);
      }),
    );
    const thin = { innerMm: exact('99.999'), outerMm: exact('100') };
    const [wear, pressure] = MODELS.map((model) => given(meanRadiusMm(model, thin)).valueOf());
    expect(pressure! - wear!).toBeLessThan(1e-8);
  });

  test('force and torque, force and pressure undo each other', () => {
    fc.assert(
      fc.property(
        anyFace,
        fc.constantFrom(...MODELS),
        fc.integer({ min: 1, max: 900 }),
        (face, model, size) => {
          const value = rational(size);
          const clutch: Clutch = { model, face, faces: 8, friction: exact('0.12') };
          const piston = { areaMm2: rational(9000), springN: rational(700) };
          expect(given(torqueCapacityNm(clutch, given(forceForN(clutch, value)))).equals(value)).toBe(true);
          expect(given(pistonForceN(piston, given(pressureForKpa(piston, value)))).equals(value)).toBe(true);
          expect(
            given(facePressureKpa(model, face, given(forceLimitN(model, face, value)))).equals(value),
          ).toBe(true);
        },
      ),
    );
  });
});

describe('band', () => {
  test('friction 0.12 over 300° multiplies the tension by 1.874 (arithmetic)', () => {
    expect(shown(given(tensionRatio(exact('0.12'), rational(300))), 3)).toBe('1.874');
  });

  test('it winds itself on towards the anchor: more torque by that same ratio (arithmetic)', () => {
    const band = { friction: exact('0.12'), wrapDegrees: rational(300), drumRadiusMm: rational(80) };
    const held = (sense: 'towards-anchor' | 'towards-servo') =>
      given(bandTorqueNm({ ...band, sense }, rational(1000)));
    // 1000 N × 0.874 × 0.08 m, and 1000 N × (1 - 1/1.874) × 0.08 m
    expect(shown(held('towards-anchor'), 1)).toBe('70.0');
    expect(shown(held('towards-servo'), 1)).toBe('37.3');
    expect(shown(held('towards-anchor').div(held('towards-servo')), 3)).toBe('1.874');
  });
});

describe('refused', () => {
  const [one, none, less] = [rational(1), rational(0), rational(-1)];
  const face = { outerMm: rational(2), innerMm: one };
  const inside = { outerMm: one, innerMm: one };
  const clutch: Clutch = { model: 'uniform-wear', face, faces: 2, friction: one };
  const piston = { areaMm2: one, springN: one };
  const oil = { densityKgM3: one, rpm: one, surfaceMm: none, innerMm: none, outerMm: one };
  const band = { friction: one, wrapDegrees: one, drumRadiusMm: one, sense: 'towards-anchor' } as const;

  test.each<[title: string, code: string | null, expected: string]>([
    ['ring of no size', refusal(ringAreaMm2(none, none)), 'not-positive'],
    ['ring with its hole as wide as itself', refusal(ringAreaMm2(one, one)), 'inside-out'],
    ['piston of no area', refusal(pistonForceN({ ...piston, areaMm2: none }, one)), 'not-positive'],
    ['spring that pulls the other way', refusal(pistonForceN({ ...piston, springN: less }, one)), 'negative'],
    ['pressure below nothing', refusal(pistonForceN(piston, less)), 'negative'],
    ['force below nothing', refusal(pressureForKpa(piston, less)), 'negative'],
    ['oil that weighs nothing', refusal(spinForceN({ ...oil, densityKgM3: none })), 'not-positive'],
    [
      'oil that does not reach the piston',
      refusal(spinPressureKpa({ ...oil, surfaceMm: one })),
      'inside-out',
    ],
    ['face inside out', refusal(meanRadiusMm('uniform-wear', inside)), 'inside-out'],
    ['face to the centre', refusal(meanRadiusMm('uniform-wear', { ...face, innerMm: none })), 'not-positive'],
    ['half a face', refusal(torqueCapacityNm({ ...clutch, faces: 1.5 }, one)), 'not-whole'],
    ['no friction', refusal(forceForN({ ...clutch, friction: none }, one)), 'not-positive'],
    ['torque below nothing', refusal(forceForN(clutch, less)), 'negative'],
    ['force pulling the plates apart', refusal(torqueCapacityNm(clutch, less)), 'negative'],
    ['faces for no torque', refusal(facesFor(clutch, one, none)), 'not-positive'],
    ['faces at no pressure', refusal(facesFor(clutch, none, one)), 'not-positive'],
    ['pressure of no force', refusal(facePressureKpa('uniform-wear', face, none)), 'not-positive'],
    ['margin over nothing', refusal(marginOf(one, none)), 'not-positive'],
    ['more plates left out than there are', refusal(shareLeft(2, 3)), 'not-whole'],
    ['half a plate left out', refusal(shareLeft(5, 0.5)), 'not-whole'],
    ['fewer than no plates left out', refusal(shareLeft(5, -1)), 'not-whole'],
    ['a clutch of no plates', refusal(shareLeft(0, 0)), 'not-whole'],
    ['band with no wrap', refusal(bandTorqueNm({ ...band, wrapDegrees: none }, one)), 'not-positive'],
    ['servo pulling the band off', refusal(bandTorqueNm(band, less)), 'negative'],
  ])('%s', (_, code, expected) => {
    expect(code).toBe(expected);
  });
});
