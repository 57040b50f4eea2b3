import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeDecimal, rational } from '../../../src/core/rational.ts';
import { actualRange, relativeDistance, tooClose } from '../../../src/core/speeds/actual-range.ts';
import { capacityFactor, converterEfficiency, converterState } from '../../../src/core/speeds/converter.ts';
import { ratioOf, slipOf } from '../../../src/core/speeds/slip.ts';
import { exact, given, refusal } from '../../results.ts';
import { everyUnit } from '../../units.ts';

const speeds = (input: string, output: string) => ({ inputRpm: exact(input), outputRpm: exact(output) });
const percent = (share: ReturnType<typeof exact>) => makeDecimal(share.mul(100n), 2);

describe('slip, by arithmetic', () => {
  test.each<
    [input: string, output: string, ratio: string, slip: string, ofInput: string, ofExpected: string]
  >([
    ['2500', '1000', '2.34', '160', '6.40', '6.84'],
    ['3000', '2000', '1.45', '100', '3.33', '3.45'],
    ['1800', '2600', '0.69', '6', '0.33', '0.33'],
    // less than none: another range, or a wrong count
    ['1800', '2600', '0.70', '-20', '-1.11', '-1.10'],
    ['-2500', '1000', '-2.34', '-160', '6.40', '6.84'],
  ])(
    '%s in, %s out, commanded %s: slips %s rpm, %s percent of input, %s of expected',
    (input, output, ratio, slip, ofInput, ofExpected) => {
      const found = given(slipOf(speeds(input, output), exact(ratio)));
      expect(found.slipRpm.toFraction()).toBe(slip);
      expect([percent(found.ofInput), percent(found.ofExpected)]).toEqual([ofInput, ofExpected]);
    },
  );

  test('with no slip the ratio is the commanded one', () => {
    const nonZero = fc.integer({ min: -9000, max: 9000 }).filter((rpm) => rpm !== 0);
    fc.assert(
      fc.property(nonZero, nonZero, (input, output) => {
        const measured = { inputRpm: rational(input), outputRpm: rational(output) };
        expect(given(slipOf(measured, given(ratioOf(measured)))).slipRpm.n).toBe(0n);
      }),
    );
  });

  test.each<[title: string, code: string | null, expected: string]>([
    ['ratio with the output at rest', refusal(ratioOf(speeds('900', '0'))), 'output-still'],
    ['slip with the output at rest', refusal(slipOf(speeds('900', '0'), exact('2'))), 'output-still'],
    ['slip with the input at rest', refusal(slipOf(speeds('0', '900'), exact('2'))), 'input-still'],
    ['slip against no ratio', refusal(slipOf(speeds('900', '900'), exact('0'))), 'ratio-zero'],
  ])('refused: %s', (_, code, expected) => {
    expect(code).toBe(expected);
  });
});

describe('which range the speeds show', () => {
  const ranges = [
    ['1', '2.842'],
    ['2', '1.495'],
    ['3', '1.000'],
    ['4', '0.731'],
    ['R', '-2.720'],
  ].map(([id, ratio]) => ({ id: id!, ratio: exact(ratio!) }));

  test.each<[measured: string, tolerance: string, found: string]>([
    // worked by hand: share off the nearest ratio
    ['2.90', '0.03', '1'],
    ['1.46', '0.03', '2'],
    ['1.45', '0.0302', '2'],
    ['1.45', '0.0301', 'none-near'],
    ['0.72', '0.03', '4'],
    ['-2.70', '0.03', 'R'],
    ['2.70', '0.03', 'none-near'],
    ['0.85', '0.10', 'none-near'],
    ['0.85', '0.17', 'ambiguous'],
    ['1.20', '0.25', 'ambiguous'],
    ['1.03', '0.03', '3'],
    ['1.0301', '0.03', 'none-near'],
  ])('%s within %s: %s', (measured, tolerance, found) => {
    const result = actualRange(ranges, exact(measured), exact(tolerance));
    expect(result.ok ? result.value : result.error.code).toBe(found);
  });

  test('a refusal names the ranges in question', () => {
    expect(actualRange(ranges, exact('0.85'), exact('0.17'))).toEqual({
      ok: false,
      error: { code: 'ambiguous', between: ['3', '4'] },
    });
    expect(actualRange(ranges, exact('2.70'), exact('0.03'))).toEqual({
      ok: false,
      error: { code: 'none-near', nearest: '1' },
    });
    expect(actualRange([], exact('2.70'), exact('0.03'))).toEqual({
      ok: false,
      error: { code: 'none-near', nearest: null },
    });
  });

  test('nearest by share, not by difference: 1.22 belongs to 1.495 though 1.000 is nearer in figures', () => {
    // 1.22 is 0.22 above 1.000 (22 %) and 0.275 below 1.495 (18 %)
    expect(makeDecimal(relativeDistance(exact('1.22'), exact('1.000')), 2)).toBe('0.22');
    expect(makeDecimal(relativeDistance(exact('1.22'), exact('1.495')), 2)).toBe('0.18');
    expect(actualRange(ranges, exact('1.22'), exact('0.2'))).toEqual({ ok: true, value: '2' });
  });

  test('two rows of one ratio are never told apart', () => {
    const twice = [...ranges, { id: '1-manual', ratio: exact('2.842') }];
    expect(refusal(actualRange(twice, exact('2.842'), exact('0')))).toBe('ambiguous');
    expect(tooClose(twice, exact('0.01'))).toEqual([['1', '1-manual']]);
  });

  test('ranges whose windows just touch can be confused, forward and reverse never (arithmetic)', () => {
    // 10 % above 0.9 and 10 % below 1.1 are both 0.99
    const touching = [
      { id: 'a', ratio: exact('0.9') },
      { id: 'b', ratio: exact('1.1') },
    ];
    expect(tooClose(touching, exact('0.1'))).toEqual([['a', 'b']]);
    expect(refusal(actualRange(touching, exact('0.99'), exact('0.1')))).toBe('ambiguous');
    expect(tooClose(touching, exact('0.0999'))).toEqual([]);
    expect(tooClose([touching[0]!, { id: 'R', ratio: exact('-0.9') }], exact('0.5'))).toEqual([]);
  });

  test('on every unit, ranges far enough apart each show themselves, and close ones can be confused', () => {
    for (const { ranges: rows } of everyUnit()) {
      const list = rows.map(({ id, ratio }) => ({ id, ratio }));
      for (const percentOff of [1, 3, 5, 8, 12]) {
        const tolerance = rational(percentOff, 100);
        const close = tooClose(list, tolerance);
        const alone = list.filter(({ id }) => !close.flat().includes(id));
        for (const range of alone)
          for (const side of [-1n, 0n, 1n]) {
            const measured = range.ratio.mul(tolerance.mul(side).add(1n));
            expect(actualRange(list, measured, tolerance)).toEqual({ ok: true, value: range.id });
          }
        for (const pair of close) {
          const [small] = pair
            .map((id) => list.find((range) => range.id === id)!.ratio)
            .sort((a, b) => a.abs().compare(b.abs()));
          const between = small!.mul(tolerance.add(1n));
          expect(refusal(actualRange(list, between, tolerance))).toBe('ambiguous');
        }
      }
    }
  });
});

describe('torque converter', () => {
  test('2000 and 1960 rpm: 40 rpm, 0.98, 2 % (SAE J643 terms, from memory)', () => {
    const state = given(converterState({ pumpRpm: rational(2000), turbineRpm: rational(1960) }));
    expect([state.slipRpm, state.speedRatio, state.slip].map((value) => value.toFraction())).toEqual([
      '40',
      '49/50',
      '1/50',
    ]);
  });

  test('efficiency is speed ratio times torque ratio: 0.5 × 1.5 is 0.75, and nothing at stall (arithmetic)', () => {
    const at = (turbine: number, torqueRatio: string) =>
      given(
        converterEfficiency({ pumpRpm: rational(2000), turbineRpm: rational(turbine) }, exact(torqueRatio)),
      ).toFraction();
    expect([at(1000, '1.5'), at(0, '2.1'), at(2000, '1')]).toEqual(['3/4', '0', '1']);
  });

  test('capacity factor: 1800 rpm at 144 N·m is 150 (arithmetic)', () => {
    expect(given(capacityFactor(rational(1800), rational(144))).toFraction()).toBe('150');
  });

  test.each<[title: string, code: string | null, expected: string]>([
    [
      'pump at rest',
      refusal(converterState({ pumpRpm: rational(0), turbineRpm: rational(0) })),
      'pump-still',
    ],
    [
      'a speed below nothing',
      refusal(converterState({ pumpRpm: rational(9), turbineRpm: rational(-1) })),
      'speed-negative',
    ],
    [
      'torque lost',
      refusal(converterEfficiency({ pumpRpm: rational(9), turbineRpm: rational(9) }, exact('0.9'))),
      'torque-ratio-below-one',
    ],
    ['no torque', refusal(capacityFactor(rational(9), rational(0))), 'torque-not-positive'],
  ])('refused: %s', (_, code, expected) => {
    expect(code).toBe(expected);
  });
});
