import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitsOf, middleOf, placeIn } from '../../../src/core/measure/limits.ts';
import { bareGap, EFFECTS, playWith, type Reading, windowFor } from '../../../src/core/measure/play.ts';
import { type Fit, fitPart, selectPart } from '../../../src/core/measure/select.ts';
import { makeDecimal, type Rational, rational } from '../../../src/core/rational.ts';
import { exact, given, refusal } from '../../results.ts';

const limits = (low: string, high: string) => given(limitsOf(exact(low), exact(high)));
const partsOf = (...list: string[]) => list.map((id) => ({ id, thickness: exact(id) }));
const bare = (play: string): Reading => ({ method: 'bare', play: exact(play) });
const fitted = (part: string, play: string): Reading => ({
  method: 'part-fitted',
  part: exact(part),
  play: exact(play),
});
const closing = (reading: Reading, low: string, high: string, ...parts: string[]): Fit => ({
  limits: limits(low, high),
  effect: 'closes',
  reading,
  parts: partsOf(...parts),
});
const decimal = (value: Rational) => makeDecimal(value, 4).replace(/0{1,2}$/, '');

describe('thicknesses that would do', () => {
  test.each<[title: string, reading: Reading, low: string, high: string, window: [string, string]]>([
    ['Eaton FSO-2105 manual p. 95, no shims fitted', bare('0.47'), '0.06', '0.11', ['0.36', '0.41']],
    ['present shim fitted, arithmetic', fitted('1.20', '0.95'), '0.20', '0.45', ['1.70', '1.95']],
    [
      'Toyota underdrive flanges, 1.95 supposed with 3.2 fitted',
      fitted('3.2', '1.95'),
      '1.51',
      '1.71',
      ['3.44', '3.64'],
    ],
    ['DeLorean DMC manual p. 194, clearance to take up', bare('1.69'), '1.1', '1.5', ['0.19', '0.59']],
    ['Subaru Forester 2007, gap 2.45 supposed', bare('2.45'), '0.2', '0.6', ['1.85', '2.25']],
    ['backing plate, arithmetic', fitted('6.00', '1.40'), '1.00', '1.20', ['6.20', '6.40']],
  ])('%s', (_, reading, low, high, [thinnest, thickest]) => {
    const gap = given(bareGap(reading, 'closes'));
    const window = given(windowFor(gap, 'closes', limits(low, high)));
    expect([decimal(window.low), decimal(window.high)]).toEqual([thinnest, thickest]);
  });
});

describe('the part chosen and the play it leaves', () => {
  test.each<[title: string, fit: Fit, part: string, play: string]>([
    [
      'Honda Civic shop manual: standard 0.11-0.18, aims at 0.14, reads 1.93; neighbours of 1.78 supposed',
      { ...closing(bare('1.93'), '0.11', '0.18', '1.72', '1.75', '1.78', '1.81'), aim: exact('0.14') },
      '1.78',
      '0.15',
    ],
    [
      'Honda Accord 2009: standard 0.11-0.17, aims at 0.14, reads 1.93; neighbours of 1.80 supposed',
      { ...closing(bare('1.93'), '0.11', '0.17', '1.75', '1.80', '1.85'), aim: exact('0.14') },
      '1.80',
      '0.13',
    ],
    [
      'one listed thickness inside, arithmetic',
      closing(fitted('1.20', '0.95'), '0.20', '0.45', '1.20', '1.50', '1.80', '2.10'),
      '1.80',
      '0.35',
    ],
    [
      'backing plate with 6.3 in the list, arithmetic',
      closing(fitted('6.00', '1.40'), '1.00', '1.20', '5.8', '6.0', '6.2', '6.3', '6.4'),
      '6.3',
      '1.10',
    ],
    [
      'Toyota underdrive: 1.51-1.71, flanges 3.0 to 3.8; 1.95 supposed with 3.2 fitted',
      closing(fitted('3.2', '1.95'), '1.51', '1.71', '3.0', '3.2', '3.4', '3.6', '3.8'),
      '3.6',
      '1.55',
    ],
    [
      'Subaru Forester 2007: T = A - B + 0.45, 0.2-0.6, plates 1.6 to 2.8; A - B = 2.00 supposed',
      closing(
        {
          method: 'depths',
          seat: { reading: exact('5.00') },
          standOff: { reading: exact('3.00') },
          gasket: exact('0.45'),
        },
        '0.2',
        '0.6',
        '1.6',
        '2.0',
        '2.4',
        '2.8',
      ),
      '2.0',
      '0.45',
    ],
    [
      'Chrysler 42LE: 0.005-0.025 in; 0.055 read with a 0.0375 plate (the plate is implied), one of 0.0725 leaves 0.020',
      closing(fitted('0.0375', '0.055'), '0.005', '0.025', '0.0375', '0.0725', '0.1075'),
      '0.0725',
      '0.02',
    ],
  ])('%s', (_, fit, part, play) => {
    const chosen = given(fitPart(fit));
    expect(chosen.part.id).toBe(part);
    expect(chosen.play.toFraction()).toBe(exact(play).toFraction());
  });

  test('42LE: the plate chosen is 0.035 in thicker than the one fitted', () => {
    const gap = given(bareGap(bare('0.055'), 'closes'));
    expect(gap.sub(exact('0.020')).toFraction()).toBe(exact('0.035').toFraction());
    const implied = ['0.071', '0.074'].map((thickness) => decimal(exact(thickness).sub(exact('0.035'))));
    expect(implied).toEqual(['0.036', '0.039']);
  });

  test('a part that opens the play: thicker gives more (arithmetic)', () => {
    const fit: Fit = {
      limits: limits('0.20', '0.45'),
      effect: 'opens',
      reading: fitted('1.20', '0.05'),
      parts: partsOf('1.20', '1.45', '1.70', '1.95'),
    };
    const chosen = given(fitPart(fit));
    expect([decimal(chosen.window.low), decimal(chosen.window.high)]).toEqual(['1.35', '1.60']);
    expect([chosen.part.id, decimal(chosen.play)]).toEqual(['1.45', '0.30']);
  });
});

describe('after fitting', () => {
  test.each<
    [
      title: string,
      before: Reading,
      thickness: string,
      play: string,
      low: string,
      high: string,
      place: string,
    ]
  >([
    [
      'Mazda high clutch: 1.550 with a ring of 1.615; ring of 1.8',
      fitted('1.615', '1.550'),
      '1.8',
      '1.365',
      '1.0',
      '1.4',
      'in',
    ],
    [
      'Chrysler UD plates, means 6.1975 and 6.507; 1.62 supposed',
      fitted('6.1975', '1.62'),
      '6.507',
      '1.3105',
      '0.94',
      '1.50',
      'in',
    ],
    ['Doosan SD310 p. 337: at the limit is in', bare('0.50'), '0', '0.5', '0.3', '0.5', 'in'],
    ['DeLorean DMC p. 194: 1.69 is out', bare('1.69'), '0', '1.69', '1.1', '1.5', 'high'],
    [
      'tied list, the thicker of the two: on the limit, in (arithmetic)',
      fitted('1.20', '0.95'),
      '1.95',
      '0.20',
      '0.20',
      '0.45',
      'in',
    ],
    [
      'one size thicker again: low (arithmetic)',
      fitted('1.20', '0.95'),
      '2.20',
      '-0.05',
      '0.20',
      '0.45',
      'low',
    ],
  ])('%s', (_, before, thickness, play, low, high, place) => {
    const after = playWith(given(bareGap(before, 'closes')), 'closes', exact(thickness));
    expect(after.toFraction()).toBe(exact(play).toFraction());
    expect(placeIn(limits(low, high), after)).toBe(place);
  });
});

describe('refused, each by name', () => {
  test.each<[title: string, fit: Fit, code: string]>([
    [
      'two fit, equally far from the middle and both on a limit (arithmetic)',
      closing(fitted('1.20', '0.95'), '0.20', '0.45', '1.20', '1.45', '1.70', '1.95'),
      'tie',
    ],
    [
      'backing plates 6.2 and 6.4, equally far from 6.3 (arithmetic)',
      closing(fitted('6.00', '1.40'), '1.00', '1.20', '5.8', '6.0', '6.2', '6.4'),
      'tie',
    ],
    [
      'Eaton FSO-2105 p. 95: 0.02 with no shim is below 0.06-0.11, measure again',
      closing(bare('0.02'), '0.06', '0.11', '0.3', '0.4'),
      'bare-below-limits',
    ],
    ['nothing in the list fits', closing(bare('0.47'), '0.06', '0.11', '0.30', '0.50'), 'none-fits'],
    ['nothing in the list', closing(bare('0.47'), '0.06', '0.11'), 'no-parts'],
    ['a part of no thickness', closing(bare('0.47'), '0.06', '0.11', '0', '0.4'), 'part-not-positive'],
    [
      'two parts of one thickness',
      {
        ...closing(bare('0.47'), '0.06', '0.11'),
        parts: [...partsOf('0.38'), { id: 'b', thickness: exact('0.38') }],
      },
      'tie',
    ],
    ['less than no play', closing(bare('-0.01'), '0.06', '0.11', '0.4'), 'play-negative'],
    [
      'a fitted part of no thickness',
      closing(fitted('0', '0.4'), '0.06', '0.11', '0.4'),
      'part-not-positive',
    ],
    [
      'an aim outside the limits',
      { ...closing(bare('0.47'), '0.06', '0.11', '0.4'), aim: exact('0.12') },
      'aim-outside-limits',
    ],
    [
      'too much play already where a thicker part makes more',
      { ...closing(bare('0.60'), '0.20', '0.45', '1.0'), effect: 'opens' },
      'bare-above-limits',
    ],
  ])('%s', (_, fit, code) => {
    expect(refusal(fitPart(fit))).toBe(code);
  });

  test('a tie names the parts, and a margin makes near ones tie', () => {
    const tie = selectPart(partsOf('1.70', '1.95'), limits('1.70', '1.95'));
    expect(tie).toEqual({ ok: false, error: { code: 'tie', between: ['1.70', '1.95'] } });
    const near = partsOf('1.80', '1.86');
    expect(given(selectPart(near, limits('1.70', '1.95'))).id).toBe('1.80');
    expect(refusal(selectPart(near, limits('1.70', '1.95'), { margin: exact('0.01') }))).toBe('tie');
  });

  test('limits the wrong way round: a Volvo sensor sheet prints 223-71', () => {
    expect(refusal(limitsOf(exact('223'), exact('71')))).toBe('limits-swapped');
  });
});

describe('over many fits', () => {
  const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((n) => rational(n, 100));
  const anyFit = fc
    .record({
      effect: fc.constantFrom(...EFFECTS),
      low: hundredths(0, 60),
      width: hundredths(2, 40),
      play: hundredths(0, 200),
      part: hundredths(50, 300),
      list: fc.uniqueArray(fc.integer({ min: 50, max: 400 }), { minLength: 1, maxLength: 12 }),
    })
    .map(
      ({ effect, low, width, play, part, list }): Fit => ({
        effect,
        limits: { low, high: low.add(width) },
        reading: { method: 'part-fitted', play, part },
        parts: list.map((n) => ({ id: String(n), thickness: rational(n, 100) })),
      }),
    );

  test('the part chosen is the one that trying every part would choose', () => {
    fc.assert(
      fc.property(anyFit, (fit) => {
        const gap = bareGap(fit.reading, fit.effect);
        const result = fitPart(fit);
        if (!gap.ok) return refusal(result) === gap.error.code;
        // tried in hundredths, on the play and not on the thickness
        const tried = fit.parts
          .map(({ id, thickness }) => ({ id, play: playWith(gap.value, fit.effect, thickness) }))
          .filter(({ play }) => play.gte(fit.limits.low) && play.lte(fit.limits.high))
          .map(({ id, play }) => ({
            id,
            off: Math.round(play.sub(middleOf(fit.limits)).abs().valueOf() * 200),
          }));
        const least = Math.min(...tried.map(({ off }) => off));
        const best = tried.filter(({ off }) => off === least);
        if (best.length === 1) return given(result).part.id === best[0]!.id;
        return best.length === 0
          ? ['none-fits', 'bare-below-limits', 'bare-above-limits'].includes(refusal(result)!)
          : refusal(result) === 'tie';
      }),
    );
  });

  test('in any unit of length the same part is chosen, or the same refusal made', () => {
    const by = exact('25.4');
    const scaled = (fit: Fit): Fit => ({
      effect: fit.effect,
      limits: { low: fit.limits.low.mul(by), high: fit.limits.high.mul(by) },
      reading:
        fit.reading.method === 'part-fitted'
          ? { method: 'part-fitted', play: fit.reading.play.mul(by), part: fit.reading.part.mul(by) }
          : fit.reading,
      parts: fit.parts.map(({ id, thickness }) => ({ id, thickness: thickness.mul(by) })),
    });
    fc.assert(
      fc.property(anyFit, (fit) => {
        const [here, there] = [fitPart(fit), fitPart(scaled(fit))];
        expect(there.ok && there.value.part.id).toBe(here.ok && here.value.part.id);
        expect(refusal(there)).toBe(refusal(here));
      }),
    );
  });

  test('the order of the list changes nothing', () => {
    fc.assert(
      fc.property(anyFit, (fit) => {
        const [here, there] = [fitPart(fit), fitPart({ ...fit, parts: fit.parts.toReversed() })];
        expect(there.ok && there.value.part).toEqual(here.ok && here.value.part);
      }),
    );
  });
});
