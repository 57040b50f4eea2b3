import { describe, expect, test } from 'vitest';
import { checkExample, impossibilities } from '../../../src/core/measure/impossible.ts';
import { limitsOf } from '../../../src/core/measure/limits.ts';
import { bareGap, type Depth, depthOf, type Reading, windowFor } from '../../../src/core/measure/play.ts';
import { advise, summarise } from '../../../src/core/measure/readings.ts';
import { exact, given, refusal } from '../../results.ts';

const limits = (low: string, high: string) => given(limitsOf(exact(low), exact(high)));
const depth = (reading: string, bar?: string): Depth => ({
  reading: exact(reading),
  bar: bar ? exact(bar) : undefined,
});
const depths = (seat: Depth, standOff: Depth, gasket?: string): Reading => ({
  method: 'depths',
  seat,
  standOff,
  gasket: gasket ? exact(gasket) : undefined,
});

describe('gap from depths', () => {
  test.each<[title: string, reading: Reading, gap: string]>([
    ['Doosan SD310 transmission p. 337: 79.60 - 79.10', depths(depth('79.60'), depth('79.10')), '0.50'],
    [
      'DeLorean DMC p. 194: 65.10 over a bar of 6.38, less 57.03',
      depths(depth('65.10', '6.38'), depth('57.03')),
      '1.69',
    ],
    [
      'bar on both, gasket 0.35 compressed (arithmetic)',
      depths(depth('63.42', '25.00'), depth('62.81', '25.00'), '0.35'),
      '0.96',
    ],
    [
      'the same without the gasket (arithmetic)',
      depths(depth('63.42', '25.00'), depth('62.81', '25.00')),
      '0.61',
    ],
  ])('%s', (_, reading, gap) => {
    expect(given(bareGap(reading, 'closes')).toFraction()).toBe(exact(gap).toFraction());
  });

  test('its washer, for 0.25-0.55, is 0.41 to 0.71 (arithmetic)', () => {
    const gap = given(bareGap(depths(depth('63.42', '25.00'), depth('62.81', '25.00'), '0.35'), 'closes'));
    const window = given(windowFor(gap, 'closes', limits('0.25', '0.55')));
    expect([window.low.toFraction(), window.high.toFraction()]).toEqual(['41/100', '71/100']);
  });

  test('the depth itself is the reading less the bar', () => {
    expect(given(depthOf(depth('63.42', '25.00'))).toFraction()).toBe(exact('38.42').toFraction());
  });

  test.each<[title: string, reading: Reading, code: string]>([
    ['reading smaller than its bar', depths(depth('24.9', '25'), depth('1')), 'bar-exceeds-reading'],
    ['a bar of no height', depths(depth('30', '0'), depth('1')), 'bar-not-positive'],
    ['a depth below nothing', depths(depth('-1'), depth('1')), 'depth-negative'],
    ['a gasket below nothing', depths(depth('3'), depth('1'), '-0.1'), 'gasket-negative'],
    ['parts in each other', depths(depth('79.10'), depth('79.60')), 'parts-overlap'],
  ])('refused: %s', (_, reading, code) => {
    expect(refusal(bareGap(reading, 'closes'))).toBe(code);
  });

  test('where the part makes the play, the bare gap may be below zero', () => {
    expect(given(bareGap(depths(depth('79.10'), depth('79.60')), 'opens')).toFraction()).toBe('-1/2');
  });
});

describe('a source that contradicts itself', () => {
  // Honda Civic set: standard 0.14-0.21, "reading 1.93", shim 1.05; the sum on the page starts from 1.23
  const printed = { limits: limits('0.14', '0.21'), effect: 'closes', chosen: exact('1.05') } as const;

  test('1.93 and a shim of 1.05 leave 0.88: refused, not answered', () => {
    const check = checkExample({ ...printed, bare: exact('1.93') });
    expect(refusal(check)).toBe('source-contradicts-itself');
    expect(check.ok ? null : [check.error.play.toFraction(), check.error.place]).toEqual(['22/25', 'high']);
  });

  test('1.23, as the page reckons, holds', () => {
    expect(given(checkExample({ ...printed, bare: exact('1.23') })).toFraction()).toBe('9/50');
  });
});

describe('figures that cannot be right (arithmetic)', () => {
  const noted = (record: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(record).map(([name, value]) => [name, exact(value)]));
  test.each<[record: Record<string, string>, reasons: string[]]>([
    [{ low: '0.14', high: '0.21', play: '0.18' }, []],
    [{ low: '0.21', high: '0.14' }, ['limits-swapped']],
    [{ low: '0.14', high: '0.14' }, []],
    [{ low: '-0.14', high: '0.21' }, ['limits-negative']],
    [{ play: '-0.05' }, ['play-negative']],
    [{ play: '28.50', depth: '28.40' }, ['play-exceeds-depth']],
    // one steel of 1.80 too many in a room of 26.00
    [{ depth: '26.00', stack: '26.40' }, ['stack-exceeds-depth']],
    [{ depth: '26.00', stack: '24.60', play: '1.40' }, []],
    [{ depth: '26.00', stack: '24.60', play: '1.30' }, ['sum-disagrees']],
    [{ depth: '26.00', stack: '26.00', play: '0.10' }, ['sum-disagrees']],
    [{ depth: '26.00', stack: '24.60', play: '1.38', tolerance: '0.02' }, []],
    [{ low: '1.20', high: '1.00', play: '-0.4' }, ['limits-swapped', 'play-negative']],
    [{}, []],
  ])('%o: %o', (record, reasons) => {
    expect(impossibilities(noted(record))).toEqual(reasons);
  });
});

describe('several readings (arithmetic)', () => {
  const four = ['1.30', '1.34', '1.32', '1.28'].map(exact);

  test('mean, ends and spread', () => {
    const summary = given(summarise(four));
    expect(Object.values(summary).map((value) => value.toFraction())).toEqual(
      ['1.31', '1.28', '1.34', '0.06'].map((text) => exact(text).toFraction()),
    );
  });

  test.each<[allowed: string, low: string | null, advice: string]>([
    ['0.06', null, 'accept'],
    ['0.06', '1.20', 'accept'],
    ['0.05', '1.20', 'reseat'],
    ['0.06', '1.32', 'out-of-limits'],
  ])('spread allowed %s, limit from %s: %s', (allowed, low, advice) => {
    expect(advise(given(summarise(four)), exact(allowed), low ? limits(low, '1.50') : undefined)).toBe(
      advice,
    );
  });

  test('none at all is refused', () => {
    expect(refusal(summarise([]))).toBe('no-readings');
  });
});
