import { describe, expect, test } from 'vitest';
import { holdOf, LOADS, overrunOf, settle } from '../../../src/core/gears/one-way.ts';
import { solveSpeeds } from '../../../src/core/gears/solve.ts';
import { solveTorques } from '../../../src/core/gears/torque.ts';
import type { Element, Train } from '../../../src/core/gears/train.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { makeRational } from '../../../src/core/rational.ts';
import { PUBLISHED } from '../../units.ts';
import { outputRange } from './output-range.ts';
import { randomTrain } from './random-train.ts';

const published = (id: string) => PUBLISHED.find((train) => train.id === id)!;
const chartRatio = (train: ReturnType<typeof published>, range: string) =>
  makeRational(solveSpeeds(train, train.chart.find((row) => row.range === range)!.applied).ratio!);

const FIVE = 'five-speed-3sets-a';
const FOUR = 'ravigneaux-4-a';
const EIGHT = 'eight-speed-dp-ravigneaux-b';

// Which one-way stands in for which element: five-speed read in its power-flow pages, the others from memory
// (see the sources in tests/published/trains.json). Drive, then what is left of the range in coast.
const STANDING_IN: readonly {
  train: string;
  friction: string[];
  holds: string[];
  range: string;
  coast: 'drives' | 'free';
}[] = [
  { train: FIVE, friction: ['B2'], holds: ['F1', 'F2'], range: '1', coast: 'free' },
  { train: FIVE, friction: ['B1', 'B2'], holds: ['F2'], range: '1', coast: 'free' },
  { train: FIVE, friction: ['B2', 'K3'], holds: ['F1'], range: '1', coast: 'free' },
  { train: FIVE, friction: ['B1', 'B2', 'K3'], holds: [], range: '1', coast: 'drives' },
  { train: FIVE, friction: ['K1', 'B2'], holds: ['F2'], range: '2', coast: 'free' },
  { train: FIVE, friction: ['K1', 'B2', 'K3'], holds: [], range: '2', coast: 'drives' },
  { train: FIVE, friction: ['K1', 'K2', 'B2'], holds: [], range: '3', coast: 'drives' },
  { train: FIVE, friction: ['K2', 'K3', 'B1'], holds: [], range: '5', coast: 'drives' },
  { train: FOUR, friction: ['C1'], holds: ['F2'], range: '1', coast: 'free' },
  { train: FOUR, friction: ['C1', 'B2'], holds: [], range: '1m', coast: 'drives' },
  { train: FOUR, friction: ['C1', 'B1'], holds: [], range: '2', coast: 'drives' },
  { train: FOUR, friction: ['C2', 'B1'], holds: [], range: '4', coast: 'drives' },
  { train: EIGHT, friction: ['C1'], holds: ['F1'], range: '1', coast: 'free' },
  { train: EIGHT, friction: ['C1', 'B2'], holds: [], range: '1', coast: 'drives' },
];

describe('one-ways of published trains', () => {
  test.each(
    STANDING_IN.map(
      (row) => [row.train, row.range, row.friction.join('+'), row.holds.join('+') || 'none', row] as const,
    ),
  )(
    'S15 S16 %s range %s: %s applied, holding %s',
    (_train, _range, _applied, _holding, { train: id, friction, holds, range, coast }) => {
      const train = published(id);
      const drive = settle(train, friction);
      expect(drive.holding).toEqual(holds);
      expect(drive.applied).toEqual([...friction, ...holds]);
      expect(makeRational(drive.solution.ratio!)).toBe(chartRatio(train, range));
      const back = settle(train, friction, 'coast');
      expect(back.solution.state).toBe(coast);
      expect(back.holding).toEqual([]);
    },
  );

  // The carrier is pushed the other way in reverse, where F2 cannot hold it.
  test('S15 Ravigneaux four-speed: reverse without its brake does not drive', () => {
    expect(settle(published(FOUR), ['C3']).solution.state).toBe('free');
  });

  test('S15 Ravigneaux four-speed, second: F2 overruns at the speed of the carrier', () => {
    const train = published(FOUR);
    const { solution } = settle(train, ['C1', 'B1']);
    const f2 = train.elements.find((element) => element.id === 'F2')!;
    expect(overrunOf(f2, solution)!.equals(solution.speeds.get('c')!)).toBe(true);
    expect(overrunOf(f2, solution)!.gt(0n)).toBe(true);
  });

  test('S18 the same one-ways fitted the wrong way round lose first and bind second', () => {
    const train = published(FOUR);
    const elements = train.elements.map((element) =>
      element.id === 'F2' ? { ...element, overruns: 'backward' as const } : element,
    );
    expect(settle({ ...train, elements }, ['C1']).solution.state).toBe('free');
    expect(settle({ ...train, elements }, ['C1', 'B1']).solution.state).toBe('tied-up');
    expect(settle({ ...train, elements }, ['C3']).solution.state).toBe('drives');
  });
});

// One set, sun 30, ring 70, sun in, carrier out; worked by hand.
const set = {
  id: 'P',
  kind: 'simple',
  sun: { shaft: 'in', teeth: 30 },
  ring: { shaft: 'ring', teeth: 70 },
  carrier: { shaft: 'out' },
} as const;
const oneWay = (id: string, between: readonly [string, string], overruns?: Element['overruns']): Element => ({
  id,
  kind: 'one-way',
  between,
  overruns,
});
const trainOf = (...elements: Element[]): Train => ({
  input: 'in',
  output: 'out',
  gearsets: [set],
  elements,
});
const direct: Element = { id: 'C', kind: 'clutch', between: ['in', 'out'] };

// The held ring is pushed backward (torque balance: the case pushes it forward with 70/30).
const WORKED: readonly [name: string, train: Train, friction: string[], load: 'drive' | 'coast', seen: unknown][] = [
  ['holds the ring in drive', trainOf(oneWay('F', ['ring', 'case'])), [], 'drive', ['10/3', ['F']]],
  ['lets it go in coast: no engine braking', trainOf(oneWay('F', ['ring', 'case'])), [], 'coast', ['free', []]],
  ['reversed, lets it go in drive', trainOf(oneWay('F', ['ring', 'case'], 'backward')), [], 'drive', ['free', []]],
  ['reversed, holds it in coast', trainOf(oneWay('F', ['ring', 'case'], 'backward')), [], 'coast', ['10/3', ['F']]],
  ['named from the other shaft, the sense is the other', trainOf(oneWay('F', ['case', 'ring'], 'backward')), [], 'drive', ['10/3', ['F']]],
  ['overruns in direct', trainOf(oneWay('F', ['ring', 'case']), direct), ['C'], 'drive', ['1', []]],
  ['reversed, binds in direct', trainOf(oneWay('F', ['ring', 'case'], 'backward'), direct), ['C'], 'drive', ['tied-up', []]],
  ['two of one sense: one is enough', trainOf(oneWay('F', ['ring', 'case']), oneWay('G', ['ring', 'case'])), [], 'drive', ['10/3', ['F']]],
  ['two of opposite senses: the loaded one holds in drive', trainOf(oneWay('F', ['ring', 'case']), oneWay('G', ['ring', 'case'], 'backward')), [], 'drive', ['10/3', ['F']]],
  ['two of opposite senses: the other holds in coast', trainOf(oneWay('F', ['ring', 'case']), oneWay('G', ['ring', 'case'], 'backward')), [], 'coast', ['10/3', ['G']]],
  ['may only fall behind the input: holds in coast', trainOf(oneWay('F', ['ring', 'in'], 'backward')), [], 'coast', ['1', ['F']]],
  ['on the output against rolling back: no drive by itself', trainOf(oneWay('F', ['out', 'case'])), [], 'drive', ['free', []]],
  ['an input that may only turn backward is tied up', trainOf(oneWay('F', ['in', 'case'], 'backward')), [], 'drive', ['tied-up', []]],
  ['an idle shaft that two one-ways leave no speed ties up', trainOf(oneWay('F', ['idle', 'case'], 'backward'), oneWay('G', ['idle', 'in'])), [], 'drive', ['tied-up', []]],
  ['an idle shaft that they leave some speeds does not', trainOf(oneWay('F', ['idle', 'case']), oneWay('G', ['idle', 'in'], 'backward')), [], 'drive', ['free', []]],
  ['a one-way cannot be applied by naming it', trainOf(oneWay('F', ['ring', 'case'], 'backward')), ['F'], 'drive', ['free', []]],
]; // biome-ignore format: a table reads across

test.each(WORKED)('S15 S16 S18 %s', (_, train, friction, load, seen) => {
  const { solution, holding } = settle(train, friction, load);
  expect([solution.ratio ? makeRational(solution.ratio) : solution.state, holding]).toEqual(seen);
});

test('S15 holding and overrunning are signed by the free sense', () => {
  const train = trainOf(oneWay('F', ['ring', 'case']));
  const [f] = train.elements as [Element];
  const torque = solveTorques(train, ['F'])!.elements.get('F')!;
  expect(makeRational(holdOf(f, torque, 'drive')!)).toBe('7/3');
  expect(makeRational(holdOf(f, torque, 'coast')!)).toBe('-7/3');
  expect(makeRational(holdOf({ ...f, overruns: 'backward' }, torque, 'drive')!)).toBe('-7/3');
  expect(holdOf(f, null, 'drive')).toBeNull();
  expect(overrunOf(f, solveSpeeds(train, []))).toBeNull();
  expect(overrunOf(f, solveSpeeds(trainOf(f, oneWay('G', ['in', 'case'])), ['F', 'G']))).toBeNull();
});

describe('over 600 random trains with one-ways', () => {
  const cases = Array.from({ length: 600 }, (_, seed) => {
    const random = randomFrom(seed);
    const train = randomTrain(random, ['brake', 'clutch', 'one-way', 'one-way']);
    const friction = train.elements.filter(({ kind }) => kind !== 'one-way').map(({ id }) => id);
    return { train, friction: random.sample(friction, random.int(0, 2)) };
  });

  test('S17 drive and coast agree with the range of speeds the output can have at all', () => {
    const seen = new Map<string, number>();
    for (const { train, friction } of cases) {
      const range = outputRange(train, friction);
      for (const load of LOADS) {
        const { solution, holding } = settle(train, friction, load);
        const kind = `${load} ${solution.state} ${holding.length > 0 ? 'by one-ways' : ''}`;
        seen.set(kind, (seen.get(kind) ?? 0) + 1);
        if (range === 'none') {
          expect(solution.state).toBe('tied-up');
          continue;
        }
        const ahead = range.low?.gt(0n) === true;
        const astern = range.high?.lt(0n) === true;
        const coasting = astern ? range.low : range.high?.gt(0n) ? range.high : null;
        const speed = load === 'coast' ? coasting : ahead ? range.low : astern ? range.high : null;
        if (speed) {
          expect(solution.state).toBe('drives');
          expect(makeRational(solution.ratio!.inverse())).toBe(makeRational(speed));
        } else {
          expect(['free', 'output-held']).toContain(solution.state);
          expect(holding).toEqual([]);
        }
      }
    }
    for (const kind of [
      'drive drives by one-ways',
      'coast drives by one-ways',
      'drive tied-up ',
      'coast free ',
    ])
      expect(seen.get(kind) ?? 0).toBeGreaterThan(20);
  });

  test('S15 each holding one-way carries its way, and no other is asked to turn the way it blocks', () => {
    for (const { train, friction } of cases) {
      const settled = settle(train, friction);
      if (settled.solution.state !== 'drives') continue;
      const torques = solveTorques(train, settled.applied)!;
      for (const element of train.elements) {
        if (element.kind !== 'one-way') continue;
        if (settled.holding.includes(element.id))
          expect(holdOf(element, torques.elements.get(element.id)!, 'drive')!.gt(0n)).toBe(true);
        else expect(overrunOf(element, settled.solution)?.lt(0n) ?? false).toBe(false);
      }
    }
  });

  test('S15 naming a one-way from its other shaft, in the other sense, changes nothing', () => {
    for (const { train, friction } of cases.slice(0, 200)) {
      const elements = train.elements.map((element): Element => {
        const [first, second] = element.between;
        const overruns = element.overruns === 'backward' ? 'forward' : 'backward';
        return element.kind === 'one-way' ? { ...element, between: [second, first], overruns } : element;
      });
      for (const load of LOADS)
        expect(settle({ ...train, elements }, friction, load)).toEqual(settle(train, friction, load));
    }
  });

  test('S18 one-ways that nothing calls on leave drive and coast alike', () => {
    for (const { train, friction } of cases) {
      const alone = solveSpeeds(train, friction);
      if (alone.state !== 'drives') continue;
      for (const load of LOADS) {
        const { solution } = settle(train, friction, load);
        expect(solution.state === 'tied-up' || solution.ratio!.equals(alone.ratio!)).toBe(true);
      }
    }
  });

  test('S16 a range held by one-ways has no engine braking unless others hold in coast', () => {
    let freed = 0;
    for (const { train, friction } of cases) {
      const drive = settle(train, friction);
      if (drive.holding.length === 0) continue;
      const coast = settle(train, friction, 'coast');
      expect(coast.holding).not.toEqual(drive.holding);
      if (coast.solution.state === 'free') freed++;
    }
    expect(freed).toBeGreaterThan(20);
  });
});
