import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  currentOf,
  dutyOf,
  inParallel,
  inSeries,
  meanCurrentOf,
  powerOf,
  pulseMs,
} from '../../../src/core/electrical/current.ts';
import { placeInBandAt20, resistanceAt, resistanceAt20 } from '../../../src/core/electrical/winding.ts';
import { limitsOf } from '../../../src/core/measure/limits.ts';
import { makeDecimal, type Rational, rational } from '../../../src/core/rational.ts';
import { exact, given, refusal } from '../../results.ts';

const to3 = (value: Rational) => makeDecimal(value, 3);

describe('a winding that is not at 20 °C', () => {
  // Coefficient 0.00393: Hioki RM3545 manual App. 4, and Industrial Power Engineering Handbook pp. 967-970.
  // The resistances are arithmetic from it.
  test.each<[ohmsAt20: string, celsius: string, ohms: string]>([
    ['5.0', '-40', '3.821'],
    ['5.0', '0', '4.607'],
    ['5.0', '20', '5.000'],
    ['5.0', '40', '5.393'],
    ['5.0', '80', '6.179'],
    ['5.0', '100', '6.572'],
    ['5.0', '120', '6.965'],
    ['5.6', '100', '7.361'],
    ['12.0', '80', '14.830'],
    ['12.0', '100', '15.773'],
    ['25.0', '90', '31.878'],
  ])('%s Ω at 20 °C is, at %s °C, %s', (ohmsAt20, celsius, ohms) => {
    expect(to3(given(resistanceAt(exact(ohmsAt20), exact(celsius))))).toBe(ohms);
  });

  test.each<
    [title: string, ohms: string, celsius: string, at20: string, low: string, high: string, place: string]
  >([
    // bands at 20 °C: Toyota U341E shift solenoids 11-15, Lexus GS430 linear 5.0-5.6; readings supposed, arithmetic
    ['on the limit when hot, well inside when cold', '15.0', '80', '12.138', '11', '15', 'in'],
    ['above the band when hot, inside when cold', '6.6', '100', '5.021', '5.0', '5.6', 'in'],
    ['inside the band when hot, below when cold', '5.5', '100', '4.184', '5.0', '5.6', 'low'],
    ['inside the band when cold, above at 20 °C', '14.0', '-20', '16.611', '11', '15', 'high'],
  ])('%s: %s Ω at %s °C is %s at 20 °C', (_, ohms, celsius, at20, low, high, place) => {
    expect(to3(given(resistanceAt20(exact(ohms), exact(celsius))))).toBe(at20);
    const band = given(limitsOf(exact(low), exact(high)));
    expect(given(placeInBandAt20(band, exact(ohms), exact(celsius)))).toBe(place);
  });

  test('there and back is exact, at every temperature of a workshop', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: -60, max: 200 }), (ohms, celsius) => {
        const [cold, heat] = [rational(ohms, 100), rational(celsius)];
        return given(resistanceAt20(given(resistanceAt(cold, heat)), heat)).equals(cold);
      }),
    );
  });

  test('between two temperatures it agrees with (234.45 + T2) / (234.45 + T1), the other form in the Hioki manual', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 200 }), fc.integer({ min: -60, max: 200 }), (one, other) => {
        const [a, b] = [one, other].map((celsius) => given(resistanceAt(rational(10), rational(celsius))));
        expect(b!.div(a!).valueOf()).toBeCloseTo((234.45 + other) / (234.45 + one), 4);
      }),
    );
  });

  test('refused: no resistance, and colder than the law reaches', () => {
    expect(refusal(resistanceAt(rational(0), rational(20)))).toBe('resistance-not-positive');
    expect(refusal(resistanceAt20(rational(-1), rational(20)))).toBe('resistance-not-positive');
    expect(refusal(resistanceAt(rational(5), rational(-235)))).toBe('too-cold');
    expect(refusal(resistanceAt20(rational(5), rational(-235)))).toBe('too-cold');
  });
});

describe('current, power and duty (arithmetic)', () => {
  test.each<[volts: string, ohms: string, amperes: string, watts: string]>([
    ['12.0', '15', '0.800', '9.600'],
    ['12.6', '5.0', '2.520', '31.752'],
    ['14', '5', '2.800', '39.200'],
    ['13.8', '5.2', '2.654', '36.623'],
    ['12', '25', '0.480', '5.760'],
    ['0', '25', '0.000', '0.000'],
  ])('%s V over %s Ω: %s A, %s W', (volts, ohms, amperes, watts) => {
    const load = { volts: exact(volts), ohms: exact(ohms) };
    expect([to3(given(currentOf(load))), to3(given(powerOf(load)))]).toEqual([amperes, watts]);
  });

  test.each<[volts: string, ohms: string, percent: string, amperes: string]>([
    ['13.8', '5', '40', '1.104'],
    ['13.8', '5', '50', '1.380'],
    ['14', '12', '25', '0.292'],
    ['14', '12', '0', '0.000'],
    ['14', '12', '100', '1.167'],
  ])('%s V, %s Ω, on for %s percent: %s A', (volts, ohms, percent, amperes) => {
    const load = { volts: exact(volts), ohms: exact(ohms) };
    expect(to3(given(meanCurrentOf(load, exact(percent).div(100n))))).toBe(amperes);
  });

  test('50 Hz at 40 % is 8 ms on and 12 ms off, and back (duty as Lexus P2714 pages define it)', () => {
    const pulse = given(pulseMs(rational(50), rational(2, 5)));
    expect([pulse.on.toFraction(), pulse.off.toFraction()]).toEqual(['8', '12']);
    expect(given(dutyOf(pulse.on, pulse.off)).toFraction()).toBe('2/5');
  });

  test.each<[title: string, result: ReturnType<typeof currentOf>, code: string]>([
    ['no resistance', currentOf({ volts: rational(12), ohms: rational(0) }), 'resistance-not-positive'],
    ['less than no volts', powerOf({ volts: rational(-1), ohms: rational(5) }), 'voltage-negative'],
    [
      'duty in percent',
      meanCurrentOf({ volts: rational(12), ohms: rational(5) }, rational(40)),
      'duty-out-of-range',
    ],
    [
      'less than no duty',
      meanCurrentOf({ volts: rational(12), ohms: rational(5) }, rational(-1)),
      'duty-out-of-range',
    ],
    ['time running back', dutyOf(rational(-1), rational(3)), 'time-negative'],
    ['no time at all', dutyOf(rational(0), rational(0)), 'no-period'],
    ['nothing in series', inSeries([]), 'no-resistors'],
    ['a bridge in parallel', inParallel([rational(5), rational(0)]), 'resistance-not-positive'],
  ])('refused: %s', (_, result, code) => {
    expect(refusal(result)).toBe(code);
  });

  test('refused: pulses of no frequency, or of a duty in percent', () => {
    expect(refusal(pulseMs(rational(0), rational(1, 2)))).toBe('frequency-not-positive');
    expect(refusal(pulseMs(rational(50), rational(40)))).toBe('duty-out-of-range');
  });
});

describe('several resistors (arithmetic)', () => {
  test.each<[parts: string[], series: string, parallel: string]>([
    [['12', '12'], '24.000', '6.000'],
    [['5', '12'], '17.000', '3.529'],
    [['12', '12', '12'], '36.000', '4.000'],
    [['7'], '7.000', '7.000'],
  ])('%o: %s in series, %s side by side', (parts, series, parallel) => {
    const ohms = parts.map(exact);
    expect([to3(given(inSeries(ohms))), to3(given(inParallel(ohms)))]).toEqual([series, parallel]);
  });
});
