/** What a deck holds for the hands, read into the calculators of core: beside published figures and hand working. */
import { describe, expect, test } from 'vitest';
import { torqueCapacityNm } from '../../../src/core/capacity/clutch.ts';
import { pistonForceN } from '../../../src/core/capacity/piston.ts';
import { pinMatrix } from '../../../src/core/electrical/harness.ts';
import { fitPart } from '../../../src/core/measure/select.ts';
import { makeDecimal, rational } from '../../../src/core/rational.ts';
import { clutchOf, type DeckCapacity, pistonOf } from '../../../src/core/unit/capacity.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { type DeckElectrical, harnessOf } from '../../../src/core/unit/electrical.ts';
import { type DeckFit, fitWith, readingOf } from '../../../src/core/unit/fits.ts';
import { refsOf, unsureRefsOf } from '../../../src/core/unit/refs.ts';
import { type DeckSeat, faceTowards } from '../../../src/core/unit/seats.ts';
import {
  assemblyPrecedenceOf,
  type DeckSequence,
  precedenceOf,
  reasonOf,
} from '../../../src/core/unit/sequences.ts';
import { clearanceMm, type DeckStack, heightMm, interchangeable } from '../../../src/core/unit/stacks.ts';
import { given } from '../../results.ts';
import { shippedDecks } from '../../units.ts';

const mm = (value: string) => ({ value, unit: 'mm' as const });
const inch = (value: string) => ({ value, unit: 'in' as const });

describe('stacks', () => {
  const plates = [
    ...[1, 2, 3, 4, 5].flatMap((n) => [
      { id: `steel-${n}`, kind: 'steel' as const, thickness: mm('1.80'), identical: 'steel' },
      { id: `friction-${n}`, kind: 'friction' as const, thickness: mm('1.60'), identical: 'friction' },
    ]),
    { id: 'backing', kind: 'backing' as const, thickness: mm('6.00') },
    { id: 'ring', kind: 'snap-ring' as const, thickness: mm('1.60') },
  ];
  const stack = (room: string, more: Partial<DeckStack> = {}): DeckStack => ({
    id: 'C',
    floor: 'drum floor',
    floorAt: 'rear',
    room: mm(room),
    items: plates,
    ...more,
  });
  const clearance = (of: DeckStack) => makeDecimal(given(clearanceMm(of)!), 2);

  // Hand working: 5 × 1.60 + 5 × 1.80 + 6.00 + 1.60 = 24.60.
  test.each([
    ['28.40', '3.80'],
    ['26.00', '1.40'],
  ])('room %s leaves %s', (room, expected) => {
    expect(clearance(stack(room))).toBe(expected);
  });

  test('piston, spring and separators take no room; inches are converted exactly', () => {
    const more = [
      { id: 'piston', kind: 'piston' as const, thickness: mm('9') },
      { id: 'spring', kind: 'return-spring' as const },
      { id: 'separator', kind: 'separator' as const, thickness: mm('0.5'), free: mm('2') },
    ];
    expect(clearance(stack('26.00', { items: [...more, ...plates] }))).toBe('1.40');
    expect(clearance(stack('26.00', { room: inch('1') }))).toBe('0.80');
  });

  test('a waved plate counts as the stack says', () => {
    const wave = { id: 'wave', kind: 'waved' as const, thickness: mm('0.60'), free: mm('1.20') };
    const waved = (waves?: 'flat' | 'free') =>
      makeDecimal(given(heightMm(stack('26', { items: [wave], waves }))), 2);
    expect([waved(), waved('flat'), waved('free')]).toEqual(['0.60', '0.60', '1.20']);
  });

  test('plates of one word may change places', () => {
    expect(interchangeable(plates[0]!, plates[2]!)).toBe(true);
    expect(interchangeable(plates[0]!, plates[1]!)).toBe(false);
    expect(interchangeable(plates[10]!, plates[10]!)).toBe(true);
    expect(interchangeable(plates[10]!, plates[11]!)).toBe(false);
  });
});

describe('fits', () => {
  const fitOf = (more: Partial<DeckFit>): DeckFit => ({
    id: 'f',
    kind: 'end-play',
    where: 'pump',
    method: 'part-fitted',
    instrument: 'dial',
    limits: { low: mm('0.20'), high: mm('0.45') },
    effect: 'closes',
    parts: [],
    ...more,
  });
  const parts = (...list: string[]) => list.map((text) => ({ id: text, thickness: mm(text) }));

  test('reads with a part in it: 1.20 fitted, 0.95 play, of 1.20 1.50 1.80 2.10 only 1.80 does', () => {
    const of = fitOf({ parts: parts('1.20', '1.50', '1.80', '2.10') });
    const fitted = given(fitPart(fitWith(of, readingOf(of, { id: 'r', play: mm('0.95'), fitted: '1.20' })!)));
    expect([fitted.part.id, makeDecimal(fitted.play, 2)]).toEqual(['1.80', '0.35']);
  });

  test('depths over a bar: 63.42 and 62.81 over 25.00, gasket 0.35, leave 0.96 without a washer', () => {
    const of = fitOf({
      method: 'depths',
      instrument: 'depth-gauge',
      limits: { low: mm('0.25'), high: mm('0.55') },
      bar: mm('25.00'),
      gasket: mm('0.35'),
      parts: parts('0.30', '0.55', '0.80'),
    });
    const reading = readingOf(of, {
      id: 'r',
      seat: { reading: mm('63.42'), overBar: true },
      standOff: { reading: mm('62.81'), overBar: true },
    })!;
    const fitted = given(fitPart(fitWith(of, reading)));
    expect([makeDecimal(fitted.bare, 2), makeDecimal(fitted.window.low, 2)]).toEqual(['0.96', '0.41']);
    expect(fitted.part.id).toBe('0.55');
  });

  test('a fit in inches stays in inches', () => {
    const of = fitOf({
      method: 'bare',
      limits: { low: inch('0.005'), high: inch('0.025') },
      parts: [{ id: 'a', thickness: inch('0.040') }],
    });
    const fitted = given(fitPart(fitWith(of, readingOf(of, { id: 'r', play: inch('0.055') })!)));
    expect(makeDecimal(fitted.play, 3)).toBe('0.015');
  });

  test('a reading that lacks what the method needs is none', () => {
    expect(readingOf(fitOf({}), { id: 'r', play: mm('1') })).toBeNull();
    expect(readingOf(fitOf({ method: 'bare' }), { id: 'r' })).toBeNull();
    expect(readingOf(fitOf({ method: 'depths' }), { id: 'r', play: mm('1') })).toBeNull();
  });
});

describe('seats', () => {
  const seat = (A: string, B: string, place = 2): DeckSeat => ({
    id: `T${place}`,
    kind: 'thrust-bearing',
    place,
    faces: { A: { touches: A, mark: 'race' }, B: { touches: B, mark: 'needles' } },
    viewedFrom: 'front',
  });
  const deck = (seats: DeckSeat[]) =>
    ({ shaftLine: [{ id: 'pump' }, { id: 'drum' }, { id: 'hub' }], seats }) as unknown as Deck;
  test.each<[string, string, DeckSeat[], string, string]>([
    ['pump', 'drum', [], 'A', 'B'],
    ['drum', 'pump', [], 'B', 'A'],
    ['T1', 'drum', [seat('pump', 'T2', 1)], 'A', 'B'],
    ['drum', 'T1', [seat('pump', 'T2', 1)], 'B', 'A'],
    ['hub', 'T3', [seat('T2', 'hub', 3)], 'A', 'B'],
  ])('A to %s and B to %s', (A, B, others, front, rear) => {
    const own = seat(A, B);
    const of = deck([...others, own]);
    expect([faceTowards(of, own, 'front'), faceTowards(of, own, 'rear')]).toEqual([front, rear]);
  });
});

describe('sequences', () => {
  const sequence: DeckSequence = {
    id: 'strip',
    steps: [
      { id: 'ring', text: 'Ring out.' },
      { id: 'plates', text: 'Plates out.', after: [{ step: 'ring', reason: 'It holds them.' }] },
      { id: 'count', text: 'Count them.', after: [{ step: 'plates', reason: 'They must be out.' }] },
    ],
    assembly: {
      leftOut: [{ step: 'count', reason: 'Known by now.' }],
      added: [
        { id: 'measure', text: 'Clearance.', after: [{ step: 'ring', reason: 'It closes the pack.' }] },
      ],
    },
  };
  test('assembly is stripping backward with its exceptions', () => {
    expect([...given(precedenceOf(sequence)).before.get('count')!].sort()).toEqual(['plates', 'ring']);
    const assembly = given(assemblyPrecedenceOf(sequence));
    expect(assembly.ids).toEqual(['plates', 'ring', 'measure']);
    expect([...assembly.before.get('measure')!].sort()).toEqual(['plates', 'ring']);
  });
  test('a reason that is turned round stays the reason', () => {
    expect(reasonOf(sequence, 'strip', 'ring', 'plates')).toBe('It holds them.');
    expect(reasonOf(sequence, 'assembly', 'plates', 'ring')).toBe('It holds them.');
    expect(reasonOf(sequence, 'assembly', 'ring', 'measure')).toBe('It closes the pack.');
    expect(reasonOf(sequence, 'assembly', 'ring', 'plates')).toBeUndefined();
  });
  test('without exceptions stored it is not turned round', () => {
    const { assembly: _, ...plain } = sequence;
    expect(assemblyPrecedenceOf(plain)).toEqual({ ok: false, error: { code: 'not-turned' } });
  });
});

describe('electrical', () => {
  const ohms = (value: string) => ({ value, unit: 'Ω' as const });
  const winding = (solenoid: string, value: string, switched: 'low' | 'high') => ({
    solenoid,
    at20: { low: ohms(value), high: ohms(value) },
    supply: 'main',
    switched,
  });
  const data = (switched: 'low' | 'high', common: string): DeckElectrical => ({
    windings: [winding('S1', '5', switched), winding('S2', '12', switched)],
    connectors: [
      {
        id: 'case',
        rows: 1,
        columns: 3,
        seenFrom: 'unit',
        pins: [
          { id: '1', row: 1, column: 1, serves: common },
          { id: '2', row: 1, column: 2, serves: 'solenoid:S1' },
          { id: '3', row: 1, column: 3, serves: 'solenoid:S2' },
        ],
      },
    ],
  });
  test.each([
    ['low', 'supply:main', '1'],
    ['high', 'ground', '1'],
    ['high', 'spare', 'ground'],
  ] as const)('switched %s with a pin for %s: they meet at %s', (switched, common, meets) => {
    const harness = harnessOf(data(switched, common), 'main')!;
    expect(harness.common).toBe(meets);
    // Hand working: 5 and 12 from the common pin, 17 from pin to pin.
    expect(
      pinMatrix(harness).map(({ expected }) => expected.shows === 'ohms' && expected.low.valueOf()),
    ).toEqual([5, 12, 17]);
    expect(harness.solenoids.get('3')).toBe('S2');
  });
  test('no common pin, no harness', () => {
    expect(harnessOf(data('low', 'spare'), 'main')).toBeUndefined();
    expect(harnessOf(data('low', 'supply:main'), 'other')).toBeUndefined();
  });
});

describe('capacity', () => {
  // Hand working, as in tests/core/capacity: 140/80 mm piston, 900 N, 5 frictions, 0.13, 145/115 mm lining.
  const capacity: DeckCapacity = {
    piston: { outer: mm('140'), inner: mm('80') },
    spring: { value: '900', unit: 'N' },
    frictions: 5,
    lining: { outer: mm('145'), inner: mm('115') },
    friction: '0.13',
    pressure: { value: '1000', unit: 'kPa' },
  };
  test('diameters become radii, frictions two faces each', () => {
    const force = given(pistonForceN(pistonOf(capacity), rational(400)));
    expect(makeDecimal(force, 2)).toBe('3246.90');
    const torque = (model: 'uniform-wear' | 'uniform-pressure') =>
      makeDecimal(given(torqueCapacityNm(clutchOf(capacity, model), force)), 2);
    expect([torque('uniform-wear'), torque('uniform-pressure')]).toEqual(['274.36', '275.58']);
  });
});

describe('references', () => {
  test('a part that is unsure makes the whole unsure, and the other way round', () => {
    const [deck] = shippedDecks();
    const stacks = [
      {
        id: 'X',
        floor: 'floor',
        floorAt: 'rear',
        items: [
          { id: 'a', kind: 'steel', unsure: true },
          { id: 'b', kind: 'steel' },
        ],
      },
      { id: 'Y', floor: 'floor', floorAt: 'rear', unsure: true, items: [{ id: 'a', kind: 'steel' }] },
    ] as DeckStack[];
    const of: Deck = { ...deck!, stacks };
    const unsure = [...unsureRefsOf(of)].filter((ref) => /^(stack|plate):/.test(ref));
    expect(unsure).toEqual(['stack:X', 'plate:X/a', 'stack:Y', 'plate:Y/a']);
    expect(refsOf(of).has('plate:X/b')).toBe(true);
  });
});
