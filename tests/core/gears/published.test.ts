/**
 * Every range of every published train (tests/published/trains.json). Each title carries the source and how
 * we have it: read in it, from memory, or inferred from the ratios.
 */
import { describe, expect, test } from 'vitest';
import { settle } from '../../../src/core/gears/one-way.ts';
import { solveSpeeds } from '../../../src/core/gears/solve.ts';
import { decimalsOf, makeRational, parseRational, rational } from '../../../src/core/rational.ts';
import { PUBLISHED, type PublishedTrain } from '../../units.ts';

const labelOf = ({ provenance, provenanceDetail }: PublishedTrain) =>
  [provenance, ...Object.entries(provenanceDetail ?? {}).map(([part, label]) => `${part}: ${label}`)].join(
    '; ',
  );

const published = (id: string) => PUBLISHED.find((train) => train.id === id)!;

test('every train says where it is from and how we have it', () => {
  expect(PUBLISHED).toHaveLength(8);
  for (const { source, provenance, chart } of PUBLISHED) {
    expect(source).not.toBe('');
    expect(['read', 'memory', 'inferred']).toContain(provenance);
    expect(chart.length).toBeGreaterThan(0);
  }
});

describe.each(PUBLISHED.map((train) => [train.title, train.source, labelOf(train), train] as const))(
  '%s | %s | %s',
  (_title, _source, _label, train) => {
    const rows = train.chart.map(
      (row) => [row.range, row.applied.join('+'), row.publishedRatio, row] as const,
    );

    test.each(rows)('S7 range %s, %s, drives at %d', (_range, _elements, publishedRatio, row) => {
      const { state, ratio } = solveSpeeds(train, row.applied);
      const units = train.tolerance === 'one unit of the last decimal' ? 1n : 2n;
      const text = publishedRatio.toFixed(row.decimals);
      expect(decimalsOf(text)).toBe(row.decimals);
      expect(state).toBe('drives');
      const error = ratio!.sub(parseRational(text)!).abs();
      expect(error.lte(rational(1n, units * 10n ** BigInt(row.decimals)))).toBe(true);
    });

    test.each(rows)(
      'S16 range %s, one-ways left to themselves beside %s',
      (_range, _elements, _ratio, row) => {
        const charted = solveSpeeds(train, row.applied);
        const isOneWay = (id: string) =>
          train.elements.find((element) => element.id === id)!.kind === 'one-way';
        const friction = row.applied.filter((id) => !isOneWay(id));
        const { solution, holding } = settle(train, friction);
        expect(makeRational(solution.ratio!)).toBe(makeRational(charted.ratio!));
        expect(holding).toEqual(row.applied.filter(isOneWay));
      },
    );
  },
);

// The exact fractions, worked by hand from the teeth.
test.each([
  ['textbook-sun-held-23-55', '1', '55/78'],
  ['ravigneaux-4-a', '1', '23/8'],
  ['ravigneaux-4-a', 'R', '-23/10'],
  ['four-range-two-crossed-sets', '1', '128/45'],
  ['four-range-two-crossed-sets', 'R', '-31/14'],
])('%s range %s is exactly %s', (id, range, fraction) => {
  const train = published(id);
  const { applied } = train.chart.find((row) => row.range === range)!;
  expect(makeRational(solveSpeeds(train, applied).ratio!)).toBe(fraction);
});

// 203840/46569: read in a public source file that tabulates factory ratios (see the train's source).
test('seven-speed: first is the exact fraction that one source prints', () => {
  const train = published('seven-speed-reversed-ravigneaux');
  const { ratio } = solveSpeeds(train, train.chart[0]!.applied);
  expect(ratio!.equals(rational(203840, 46569))).toBe(true);
});

// Kinematics of one carrier with two pinions in mesh, from the teeth of the pinions themselves, which cancel.
test('seven-speed: two rings over meshing pinions turn opposite ways when their carrier is held', () => {
  const set = published('seven-speed-reversed-ravigneaux').gearsets.find(({ id }) => id === 'PB')!;
  const [long, short] = [23, 19];
  const longTurns = set.sun.teeth / long;
  const shortTurns = (-longTurns * long) / short;
  const ringTurns = (shortTurns * short) / set.ring.teeth;
  const brake = { id: 'H', kind: 'brake', between: ['fc', 'case'] } as const;
  const held = { input: 'in', output: 'fr', gearsets: [set], elements: [brake] };
  expect(solveSpeeds(held, ['H']).speeds.get('fr')!.valueOf()).toBeCloseTo(ringTurns, 12);
});
