import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  everyFault,
  expectedBetween,
  faultsThatFit,
  fits,
  GROUND,
  type Harness,
  type HarnessFault,
  type PinReading,
  pinMatrix,
} from '../../../src/core/electrical/harness.ts';
import { type Resistor, resistanceBetween } from '../../../src/core/electrical/network.ts';
import { limitsOf } from '../../../src/core/measure/limits.ts';
import { type Rational, rational } from '../../../src/core/rational.ts';
import { exact, given } from '../../results.ts';

const edges = (ohms: string, ...pairs: [string, string][]): Resistor[] =>
  pairs.map((between) => ({ between, ohms: exact(ohms) }));

describe('resistance of a network', () => {
  /** Corners named by their coordinates; an edge wherever one coordinate differs. */
  const CUBE = edges(
    '1',
    ...Array.from({ length: 8 }, (_, corner) => corner).flatMap((corner) =>
      [1, 2, 4]
        .filter((axis) => (corner & axis) === 0)
        .map((axis): [string, string] => [String(corner), String(corner | axis)]),
    ),
  );
  const complete = (n: number) =>
    edges(
      '1',
      ...Array.from({ length: n }, (_, a) => a).flatMap((a) =>
        Array.from({ length: a }, (_, b): [string, string] => [String(a), String(b)]),
      ),
    );

  test.each<[title: string, network: Resistor[], from: string, to: string, ohms: string | null]>([
    ['cube of 1 Ω, along an edge (textbook, from memory)', CUBE, '0', '1', '7/12'],
    ['cube of 1 Ω, across a face (textbook, from memory)', CUBE, '0', '3', '3/4'],
    ['cube of 1 Ω, through the body (textbook, from memory)', CUBE, '0', '7', '5/6'],
    ['five nodes, each joined to each: 2 / 5 (symmetry)', complete(5), '0', '4', '2/5'],
    [
      'balanced bridge: what lies across it carries nothing (by hand)',
      [
        ...edges('10', ['a', 'b'], ['a', 'c']),
        ...edges('20', ['b', 'd'], ['c', 'd']),
        ...edges('7', ['b', 'c']),
      ],
      'a',
      'd',
      '15',
    ],
    ['12 beside 12 (arithmetic)', edges('12', ['a', 'b'], ['a', 'b']), 'a', 'b', '6'],
    ['5 beside 12 (arithmetic)', [...edges('5', ['a', 'b']), ...edges('12', ['b', 'a'])], 'a', 'b', '60/17'],
    [
      'a wire of 0 Ω joins',
      [...edges('0', ['a', 'b'], ['b', 'c']), ...edges('9', ['c', 'd'])],
      'a',
      'd',
      '9',
    ],
    [
      'a wire of 0 Ω beside it bridges it',
      [...edges('0', ['a', 'b']), ...edges('9', ['a', 'b'])],
      'a',
      'b',
      '0',
    ],
    ['no path', edges('9', ['a', 'b'], ['c', 'd']), 'a', 'd', null],
    ['no such node', edges('9', ['a', 'b']), 'a', 'x', null],
    ['a pin to itself', edges('9', ['a', 'b']), 'a', 'a', '0'],
  ])('%s', (_, network, from, to, ohms) => {
    expect(resistanceBetween(network, from, to)?.toFraction() ?? null).toBe(ohms);
    expect(resistanceBetween(network, to, from)?.toFraction() ?? null).toBe(ohms);
  });

  test('the order in which it is written changes nothing, and more resistance never gives less', () => {
    const nodes = ['a', 'b', 'c', 'd', 'e'];
    const resistor = fc
      .tuple(fc.constantFrom(...nodes), fc.constantFrom(...nodes), fc.integer({ min: 0, max: 30 }))
      .map(([a, b, ohms]): Resistor => ({ between: [a, b], ohms: rational(ohms) }));
    fc.assert(
      fc.property(fc.array(resistor, { minLength: 1, maxLength: 10 }), fc.nat(), (network, at) => {
        const ohms = resistanceBetween(network, 'a', 'b');
        const turned = resistanceBetween(network.toReversed(), 'a', 'b');
        expect(turned?.toFraction()).toBe(ohms?.toFraction());
        const index = at % network.length;
        const more = network.with(index, { ...network[index]!, ohms: network[index]!.ohms.add(1n) });
        const risen = resistanceBetween(more, 'a', 'b');
        expect(ohms === null || risen!.gte(ohms)).toBe(true);
      }),
    );
  });

  test('a resistance below zero is a mistake of ours', () => {
    expect(() => resistanceBetween(edges('-1', ['a', 'b']), 'a', 'b')).toThrow();
  });
});

/** On/off shift solenoids 11-15 Ω (Toyota U341E) and linear ones 5.0-5.6 (Lexus GS430) on one feed, supposed. */
const harness: Harness = {
  common: 'feed',
  windings: [
    { pin: 'S1', ohms: given(limitsOf(exact('11'), exact('15'))) },
    { pin: 'S2', ohms: given(limitsOf(exact('11'), exact('15'))) },
    { pin: 'SL', ohms: given(limitsOf(exact('5.0'), exact('5.6'))) },
  ],
};

const name = (fault: HarnessFault | null) => (fault ? Object.values(fault).join(' ') : 'sound');
const read = (row: Readonly<Record<string, string>>): PinReading[] =>
  Object.entries(row).map(([pins, ohms]) => ({
    between: pins.split('-') as [string, string],
    ohms: ohms === 'open' ? null : exact(ohms),
  }));
const diagnose = (row: Readonly<Record<string, string>>, on = harness) =>
  faultsThatFit(on, read(row)).map(name);

describe('pin pairs of a sound harness: one winding to the feed, two in series to each other (arithmetic)', () => {
  test.each<[between: string, low: string, high: string]>([
    ['feed-S1', '11', '15'],
    ['feed-S2', '11', '15'],
    ['feed-SL', '5', '28/5'],
    ['S1-S2', '22', '30'],
    ['S1-SL', '16', '103/5'],
    ['S2-SL', '16', '103/5'],
  ])('%s', (between, low, high) => {
    const found = pinMatrix(harness).find((cell) => cell.between.join('-') === between)!.expected;
    if (found.shows !== 'ohms') throw new Error('open');
    expect([found.low.toFraction(), found.high?.toFraction()]).toEqual([low, high]);
  });

  test('ground is open, unless the common wire is the ground', () => {
    expect(expectedBetween(harness, null, 'S1', GROUND)).toEqual({ shows: 'open' });
    expect(expectedBetween({ ...harness, common: GROUND }, null, 'S1', GROUND).shows).toBe('ohms');
  });
});

const SOUND = { 'feed-S1': '13', 'feed-S2': '12.5', 'feed-SL': '5.3', 'feed-ground': 'open' };

describe('which single fault the readings show (by hand)', () => {
  test.each<[title: string, changed: Record<string, string>, faults: string[]]>([
    ['all in band', {}, ['sound']],
    ['open to the feed', { 'feed-S1': 'open' }, ['open S1']],
    ['below its band', { 'feed-S1': '8' }, ['turns-shorted S1']],
    ['nothing', { 'feed-S1': '0' }, ['shorted S1']],
    ['above its band', { 'feed-S2': '40' }, ['high-resistance S2']],
    ['ground through one winding', { 'feed-ground': '13', 'S1-ground': '0' }, ['to-ground S1']],
    ['ground at the feed itself', { 'feed-ground': '0' }, ['common-to-ground']],
    ['two pins alike, at half', { 'feed-S1': '6.4', 'feed-S2': '6.4', 'S1-S2': '0' }, ['pins-joined S1 S2']],
    [
      'two pins alike, a small and a large one',
      { 'feed-S1': '3.8', 'feed-SL': '3.8', 'S1-SL': '0' },
      ['pins-joined S1 SL'],
    ],
    [
      'all open to the feed, sound to each other',
      { 'feed-S1': 'open', 'feed-S2': 'open', 'feed-SL': 'open', 'S1-S2': '25.5', 'S1-SL': '18.3' },
      ['common-open'],
    ],
    ['two faults at once fit no single one', { 'feed-S1': 'open', 'feed-S2': '0' }, []],
  ])('%s', (_, changed, faults) => {
    expect(diagnose({ ...SOUND, ...changed })).toEqual(faults);
  });

  test('too few readings leave several, and all of them are named', () => {
    expect(diagnose({ 'S1-S2': 'open' })).toEqual(['open S1', 'open S2']);
    expect(diagnose({ 'feed-S1': 'open' })).toEqual(['open S1', 'common-open']);
    expect(diagnose({ 'S1-S2': '14' })).toEqual([
      'turns-shorted S1',
      'shorted S1',
      'turns-shorted S2',
      'shorted S2',
    ]);
    expect(diagnose({ 'feed-S1': '13' })).toContain('to-ground S2');
  });

  test('with a grounded common wire a short to ground and a bridged winding are one and the same', () => {
    const grounded = { ...harness, common: GROUND };
    expect(everyFault(grounded).map(name)).not.toContain('to-ground S1');
    expect(diagnose({ 'S1-ground': '0', 'S2-ground': '12', 'SL-ground': '5.2' }, grounded)).toEqual([
      'shorted S1',
    ]);
  });
});

test('a fault put in is among those found from all pins, and every other is told apart or reads the same', () => {
  const pins = ['feed', 'S1', 'S2', 'SL', GROUND];
  const all = pins.flatMap((a, index) => pins.slice(index + 1).map((b): [string, string] => [a, b]));
  const actual: Record<string, string> = { S1: '13', S2: '12', SL: '5.4' };
  /** The wires as they would be soldered on a bench. */
  const bench = (fault: HarnessFault): Resistor[] => {
    const of = (pin: string): Rational | null => {
      if (!('pin' in fault) || fault.pin !== pin) return exact(actual[pin]!);
      if (fault.kind === 'open') return null;
      if (fault.kind === 'shorted') return rational(0);
      if (fault.kind === 'turns-shorted') return exact(actual[pin]!).div(3n);
      return fault.kind === 'high-resistance' ? exact(actual[pin]!).mul(3n) : exact(actual[pin]!);
    };
    const wire = (a: string, b: string): Resistor => ({ between: [a, b], ohms: rational(0) });
    return [
      ...(fault.kind === 'common-open' ? [] : [wire('feed', 'inside')]),
      ...['S1', 'S2', 'SL'].flatMap((pin) => {
        const ohms = of(pin);
        return ohms ? [{ between: ['inside', pin], ohms } as Resistor] : [];
      }),
      ...(fault.kind === 'to-ground' ? [wire(fault.pin, GROUND)] : []),
      ...(fault.kind === 'pins-joined' ? [wire(fault.pin, fault.other)] : []),
      ...(fault.kind === 'common-to-ground' ? [wire('feed', GROUND)] : []),
    ];
  };
  for (const fault of everyFault(harness)) {
    const readings = all.map((between) => ({ between, ohms: resistanceBetween(bench(fault), ...between) }));
    expect(faultsThatFit(harness, readings).map(name)).toEqual([name(fault)]);
  }
});

test('a reading on the edge of a band is sound, and just beyond it is not', () => {
  const at = (ohms: string) => diagnose({ ...SOUND, 'feed-S1': ohms });
  expect([at('11'), at('15')]).toEqual([['sound'], ['sound']]);
  expect([at('10.99'), at('15.01')]).toEqual([['turns-shorted S1'], ['high-resistance S1']]);
  expect(fits({ shows: 'open' }, exact('5'))).toBe(false);
});
