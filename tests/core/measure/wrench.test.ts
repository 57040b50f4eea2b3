import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gainOf, settingFor, torqueAt } from '../../../src/core/measure/wrench.ts';
import { makeDecimal, rational } from '../../../src/core/rational.ts';
import { exact, given, refusal } from '../../results.ts';

const adapter = (lever: string, length: string, degrees: string) => ({
  lever: exact(lever),
  adapter: exact(length),
  degrees: exact(degrees),
});

describe('setting of the wrench', () => {
  test.each<
    [lever: string, length: string, degrees: string, torque: string, setting: string, source: string]
  >([
    ['10', '1.5', '0', '135', '117.391', 'Robinson R66 Maintenance Manual p. 20.4, lbf·in'],
    ['10', '1.5', '180', '135', '158.824', 'Robinson R66 Maintenance Manual p. 20.4, lbf·in'],
    ['16', '2', '0', '50', '44.444', 'Performance Tool M199 manual p. 7, lbf·ft'],
    ['40', '5', '0', '80', '71.111', 'a public torque wrench page, N·m'],
    ['16', '2', '45', '50', '45.939', 'arithmetic, lbf·ft'],
    [
      '400',
      '60',
      '90',
      '12',
      '12.000',
      'arithmetic, N·m; Performance Tool M199 manual: square across changes nothing',
    ],
    ['300', '100', '60', '70', '60.000', 'arithmetic: cos 60° is a half'],
    ['300', '100', '120', '60', '72.000', 'arithmetic: cos 120° is minus a half'],
  ])('lever %s, adapter %s at %s°, wants %s: set %s (%s)', (lever, length, degrees, torque, setting) => {
    const shown = makeDecimal(given(settingFor(exact(torque), adapter(lever, length, degrees))), 3);
    expect(shown).toBe(setting);
  });

  test('straight out is exact: 50 × 16 / 18', () => {
    expect(given(settingFor(exact('50'), adapter('16', '2', '0'))).toFraction()).toBe('400/9');
  });

  test('an adapter forgotten straight out over-torques by its share of the lever (arithmetic)', () => {
    expect(given(torqueAt(exact('50'), adapter('16', '2', '0'))).toFraction()).toBe('225/4');
  });
});

describe('over many adapters', () => {
  const any = fc
    .tuple(
      fc.integer({ min: 100, max: 900 }),
      fc.integer({ min: 0, max: 99 }),
      fc.integer({ min: 0, max: 180 }),
    )
    .map(([lever, length, degrees]) => ({
      lever: rational(lever),
      adapter: rational(length),
      degrees: rational(degrees),
    }));

  test('the setting gives the torque back', () => {
    fc.assert(
      fc.property(any, fc.integer({ min: 1, max: 500 }), (how, torque) =>
        given(torqueAt(given(settingFor(rational(torque), how)), how)).equals(rational(torque)),
      ),
    );
  });

  test('the setting is below the torque before 90°, above it after, and units of length do not matter', () => {
    const by = exact('25.4');
    fc.assert(
      fc.property(any, (how) => {
        const setting = given(settingFor(rational(100), how));
        const side = how.adapter.n === 0n ? 0 : how.degrees.compare(90n);
        expect(setting.compare(100n)).toBe(side);
        const inches = { ...how, lever: how.lever.mul(by), adapter: how.adapter.mul(by) };
        expect(given(settingFor(rational(100), inches)).equals(setting)).toBe(true);
      }),
    );
  });

  test('the cosine is good to 11 places against the half-angle law', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90 }), (half) => {
        const gain = (degrees: number) =>
          given(gainOf({ lever: rational(1), adapter: rational(1, 2), degrees: rational(degrees) }))
            .sub(1n)
            .mul(2n)
            .valueOf();
        expect(gain(2 * half)).toBeCloseTo(2 * gain(half) ** 2 - 1, 11);
      }),
    );
  });
});

test.each<[title: string, torque: string, how: ReturnType<typeof adapter>, code: string]>([
  ['no torque', '0', adapter('10', '1', '0'), 'torque-not-positive'],
  ['no lever', '10', adapter('0', '1', '0'), 'lever-not-positive'],
  ['an adapter below nothing', '10', adapter('10', '-1', '0'), 'adapter-negative'],
  ['an angle past folded back', '10', adapter('10', '1', '181'), 'angle-out-of-range'],
  ['folded back as far as the hand', '10', adapter('10', '10', '180'), 'no-lever-left'],
])('refused: %s', (_, torque, how, code) => {
  expect(refusal(settingFor(exact(torque), how))).toBe(code);
  expect(refusal(torqueAt(exact(torque), how))).toBe(code);
});
