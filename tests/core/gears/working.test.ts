import { describe, expect, test } from 'vitest';
import { solveSpeeds } from '../../../src/core/gears/solve.ts';
import { CASE, MEMBERS, shaftsOf, willis } from '../../../src/core/gears/train.ts';
import { type Form, type Step, workOut, workOutClash } from '../../../src/core/gears/working.ts';
import { makeRational, ZERO } from '../../../src/core/rational.ts';
import { everyUnit, PUBLISHED } from '../../units.ts';

const trainOf = (id: string) => PUBLISHED.find((train) => train.id === id)!;

const formText = ({ constant, terms }: Form) =>
  [makeRational(constant), ...[...terms].map(([letter, share]) => `${makeRational(share)}${letter}`)].join(
    '+',
  );

const stepText = (step: Step) => {
  switch (step.kind) {
    case 'call':
      return `call ${step.shaft} ${step.letter}`;
    case 'closes':
      return `${step.gearset.id} closes ${step.letter}=${formText(step.result)}`;
    case 'clashes':
      return `${step.gearset.id} clashes`;
    default:
      return `${step.gearset.id} ${step.kind} ${step.shaft}=${formText(step.result)}`;
  }
};

describe('working, done by hand first (teeth and charts in tests/published)', () => {
  test.each([
    // 41TE family: UD on, LR holds the rear ring. 45·1 + 83·0 = 128·out
    ['four-range-two-crossed-sets', ['UD', 'LR'], ['R solves output=45/128']],
    // UD on, B24 holds the front sun. Rear ring r: 62·out = 90·r, so r = 62/90 out; 45 + 83·r = 128·out
    [
      'four-range-two-crossed-sets',
      ['UD', 'B24'],
      ['call output x', 'F solves carrier-front-ring-rear=0+31/45x', 'R closes x=2025/3187'],
    ],
    // both clutches: rear sun and rear ring at 1
    ['four-range-two-crossed-sets', ['UD', 'OD'], ['R locks output=1']],
    // OD on, B24 holds: 28·0 + 62·out = 90·1; the rear set has no say
    ['four-range-two-crossed-sets', ['OD', 'B24'], ['F solves output=45/31']],
    // Ravigneaux first: carrier held, 69·out − 24·1 = 45·0; the large sun only runs along
    ['ravigneaux-4-a', ['C1', 'B2'], ['Psmall solves out=8/23']],
  ])('%s with %j', (id, applied, steps) => {
    const working = workOut(trainOf(id), applied, trainOf(id).output)!;
    expect(working.steps.map(stepText)).toEqual(steps);
  });

  test('a shaft that an element holds or drives needs no step', () => {
    const train = trainOf('ravigneaux-4-a');
    expect(workOut(train, ['C1', 'B1'], 's2')).toEqual({ speed: ZERO, steps: [] });
    expect(workOut(train, ['C1', 'B1'], 's1')?.steps).toEqual([]);
  });

  test('a clash ends with the equation that cannot be true', () => {
    // both clutches: the rear set wants the output at 1; the front set with its sun held wants 90/62
    const train = trainOf('four-range-two-crossed-sets');
    expect(workOutClash(train, ['UD', 'OD', 'B24'])?.map(stepText)).toEqual([
      'F solves output=45/31',
      'R clashes',
    ]);
    expect(workOutClash(train, ['UD', 'B24'])).toBeNull();
  });

  test('the rule can be changed: with ring over sun for the carrier, 45/128 becomes 45/83', () => {
    const train = trainOf('four-range-two-crossed-sets');
    const { speed } = workOut(train, ['UD', 'LR'], 'output', (set) => ({
      sun: BigInt(set.sun.teeth),
      ring: BigInt(set.ring.teeth),
      carrier: -BigInt(set.ring.teeth),
    }))!;
    expect(makeRational(speed)).toBe('45/83');
  });
});

describe('working agrees with the solver on every range of every unit', () => {
  const rows = everyUnit().flatMap((unit) =>
    unit.ranges.map((range) => ({ train: unit.deck.train, applied: range.applied })),
  );

  test('every shaft has the solver’s speed, or is open in both', () => {
    for (const { train, applied } of rows) {
      const { speeds } = solveSpeeds(train, applied);
      for (const shaft of shaftsOf(train)) {
        const speed = workOut(train, applied, shaft)?.speed ?? null;
        expect(speed && makeRational(speed)).toBe(speeds.get(shaft) && makeRational(speeds.get(shaft)!));
      }
    }
  });

  test('every step is true of the solved speeds', () => {
    for (const { train, applied } of rows) {
      const { speeds } = solveSpeeds(train, applied);
      const speedOf = (shaft: string) => (shaft === CASE ? ZERO : speeds.get(shaft)!);
      const steps = workOut(train, applied, train.output)!.steps;
      const letters = new Map(
        steps.flatMap((step) => (step.kind === 'call' ? [[step.letter, speedOf(step.shaft)] as const] : [])),
      );
      const worth = ({ constant, terms }: Form) =>
        [...terms].reduce((sum, [letter, share]) => sum.add(letters.get(letter)!.mul(share)), constant);
      for (const step of steps) {
        if (step.kind === 'call') continue;
        for (const member of MEMBERS) {
          const form = 'putIn' in step ? step.putIn[member] : null;
          if (form) expect(worth(form).equals(speedOf(step.gearset[member].shaft))).toBe(true);
        }
        if (step.kind === 'closes') expect(worth(step.result).equals(letters.get(step.letter)!)).toBe(true);
        if (step.kind === 'solves' || step.kind === 'locks')
          expect(worth(step.result).equals(speedOf(step.shaft))).toBe(true);
        const coefficients = willis(step.gearset);
        const sum = MEMBERS.reduce(
          (total, member) => total.add(speedOf(step.gearset[member].shaft).mul(coefficients[member])),
          ZERO,
        );
        expect(sum.n).toBe(0n);
      }
    }
  });

  test('with one more element a clash is found where the solver says tied up, unless the input is held', () => {
    let clashes = 0;
    for (const { train, applied } of rows)
      for (const { id } of train.elements) {
        const more = applied.includes(id) ? applied : [...applied, id];
        const clash = workOutClash(train, more);
        const tiedUp = solveSpeeds(train, more).state === 'tied-up';
        if (clash) clashes++;
        if (clash) expect(tiedUp).toBe(true);
        else if (tiedUp) expect(workOut(train, more, train.input)?.speed.n).toBe(0n);
      }
    expect(clashes).toBeGreaterThan(100);
  });
});
