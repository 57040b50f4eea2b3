import { expect, test } from 'vitest';
import {
  CASE,
  elementOf,
  type Gearset,
  shaftsOf,
  type Train,
  willis,
} from '../../../src/core/gears/train.ts';

const set = (kind: Gearset['kind']): Gearset => ({
  id: 'P',
  kind,
  sun: { shaft: CASE, teeth: 30 },
  ring: { shaft: 'in', teeth: 70 },
  carrier: { shaft: 'c' },
});
const train: Train = {
  input: 'in',
  output: 'out',
  gearsets: [set('simple')],
  elements: [
    { id: 'C', kind: 'clutch', between: ['c', 'drum'] },
    { id: 'B', kind: 'brake', between: ['drum', CASE] },
  ],
};

// 30·ws + 70·wr = 100·wc, and 70·wr − 30·ws = 40·wc, all on one side.
test.each([
  ['simple', { sun: 30n, ring: 70n, carrier: -100n }],
  ['double-pinion', { sun: -30n, ring: 70n, carrier: -40n }],
] as const)('S2 coefficients of a %s set of 30 and 70 teeth', (kind, coefficients) => {
  expect(willis(set(kind))).toEqual(coefficients);
});

test('shafts come by first mention, those that only elements join included, the case left out', () => {
  expect(shaftsOf(train)).toEqual(['in', 'out', 'c', 'drum']);
});

test('an element is found by its id; an id the train does not have throws', () => {
  expect(elementOf(train, 'B').kind).toBe('brake');
  expect(() => elementOf(train, 'X')).toThrow('X');
});
