import { describe, expect, test } from 'vitest';
import { outcomeOf } from '../../../src/core/faults/outcome.ts';
import { fullLoadNm, holdsNm, marginsIn, slipPoints } from '../../../src/core/faults/slip.ts';
import { telltalePercent } from '../../../src/core/faults/space.ts';
import type { Deck, DeckElement } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { PUBLISHED } from '../../units.ts';
import { fullDeckOf, fullUnit, fullUnits } from './decks.ts';

const several = fullUnits().filter(({ ranges }) => ranges.length > 1);

describe('F15 capacity, worked by hand', () => {
  const mm = (value: string) => ({ value, unit: 'mm' as const });
  // piston π/4 × (140² - 100²) = 7539.82 mm²; spring 539.82 N; lining radius (75 + 65)/2 = 70 mm; 3 plates, 0.12
  const element: DeckElement = {
    id: 'B1',
    kind: 'brake',
    between: ['a', 'case'],
    capacity: {
      piston: { outer: mm('140'), inner: mm('100') },
      spring: { value: '539.82', unit: 'N' },
      frictions: 3,
      lining: { outer: mm('150'), inner: mm('130') },
      friction: '0.12',
      pressure: { value: '1000', unit: 'kPa' },
    },
  };
  test.each([
    ['sound: 7000 N × 6 faces × 0.12 × 0.07 m', {}, 352.8],
    ['one plate less: 4 faces', { platesShort: 1 }, 235.2],
    ['half the pressure: 3769.91 - 539.82 = 3230.09 N', { percent: 50 }, 162.797],
    ['7 % of the pressure: the spring wins', { percent: 7 }, 0],
    ['no plate left', { platesShort: 3 }, 0],
  ])('%s', (_, weakness, expected) => {
    expect(holdsNm(element, weakness)!.valueOf()).toBeCloseTo(expected, 2);
  });

  test('the units it was entered in do not matter', () => {
    const capacity = { ...element.capacity!, pressure: { value: '10', unit: 'bar' as const } };
    expect(holdsNm({ ...element, capacity })).toEqual(holdsNm(element));
  });
});

describe('properties on the published trains with made-up capacities', () => {
  test('F16 at full load the weakest element has 15 % in hand, and none has less', () => {
    for (const unit of several) {
      const margins = unit.ranges.flatMap((range) => marginsIn(unit, range)!.map(({ margin }) => margin));
      const least = Math.min(...margins.flatMap((margin) => (margin ? [margin.valueOf()] : [])));
      expect(least).toBeCloseTo(1.15, 9);
    }
  });

  test('F17 as pressure falls, ranges begin to slip in the order of the slip points, and never stop again', () => {
    for (const unit of several) {
      const points = slipPoints(unit)!;
      for (let percent = 99; percent >= 1; percent -= 4) {
        const begun = points.filter((point) => point.percent.gt(BigInt(percent)));
        for (const range of unit.ranges) {
          const outcome = outcomeOf(unit, { kind: 'low-pressure', percent }, range);
          const expected = begun.filter((point) => point.range === range.id).map(({ element }) => element);
          const slipping = outcome.kind === 'slips' ? outcome.elements : [];
          expect([...slipping].sort(), `${unit.deck.id} ${range.id} ${percent}`).toEqual(expected.sort());
        }
      }
    }
  });

  test('F17 the weakest comes first: its margin is the least of the range', () => {
    for (const unit of several)
      for (const range of unit.ranges) {
        const outcome = outcomeOf(unit, { kind: 'low-pressure', percent: 30 }, range);
        if (outcome.kind !== 'slips') continue;
        const margins = marginsIn(unit, range, () => ({ percent: 30 }))!;
        expect(outcome.elements[0]).toBe(margins[0]!.element);
      }
  });

  test('F17 a plate short slips only where its element is on, and just where its margin is below n/(n-1)', () => {
    let slipped = 0;
    for (const unit of several)
      for (const { id, capacity } of unit.deck.train.elements) {
        if (!capacity) continue;
        const needed = capacity.frictions / (capacity.frictions - 1);
        for (const range of unit.ranges) {
          const { kind } = outcomeOf(unit, { kind: 'friction-short', element: id }, range);
          const own = marginsIn(unit, range)!.find(({ element }) => element === id);
          if (own && !own.margin) continue;
          expect(kind).toBe(own && own.margin!.valueOf() < needed ? 'slips' : 'works');
          if (kind === 'slips') slipped++;
        }
      }
    expect(slipped).toBeGreaterThan(0);
  });

  test('F19 the telltale pressure makes some ranges slip and leaves others', () => {
    for (const unit of several) {
      const percent = telltalePercent(unit)!;
      const kinds = unit.ranges.map(
        (range) => outcomeOf(unit, { kind: 'low-pressure', percent }, range).kind,
      );
      expect(kinds).toContain('slips');
      expect(kinds).toContain('works');
    }
  });
});

describe('F18 nothing is said of slip without capacities', () => {
  const deck = fullDeckOf(PUBLISHED.find(({ id }) => id === 'lepelletier-6-a')!);
  const without = (id: string): Deck => ({
    ...deck,
    train: {
      ...deck.train,
      elements: deck.train.elements.map(({ capacity, ...element }) =>
        element.id === id || !capacity ? element : { ...element, capacity },
      ),
    },
  });

  test('one of them missing', () => {
    const unit = makeUnit(without('B'));
    expect(fullLoadNm(unit)).toBeNull();
    expect(slipPoints(unit)).toBeNull();
    expect(telltalePercent(unit)).toBeNull();
    for (const range of unit.ranges)
      expect(outcomeOf(unit, { kind: 'low-pressure', percent: 50 }, range)).toEqual({ kind: 'unsettled' });
  });

  test('F15 a torque that the balance does not settle is not judged', () => {
    const unit = fullUnit('five-speed-3sets-a');
    const first = unit.ranges[0]!;
    const torques = new Map([...first.torques.elements].map(([id]) => [id, null]));
    const open = marginsIn(unit, { ...first, torques: { ...first.torques, elements: torques } })!;
    expect(open.every(({ margin }) => margin === null)).toBe(true);
  });
});
