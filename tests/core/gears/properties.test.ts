/** What holds for every train: the published ones, each range and odd choices of elements, and made-up ones. */
import { describe, expect, test } from 'vitest';
import { type Solution, STATES, solveSpeeds } from '../../../src/core/gears/solve.ts';
import { solveTorques } from '../../../src/core/gears/torque.ts';
import { CASE, type Gearset, MEMBERS, type Train } from '../../../src/core/gears/train.ts';
import { type Random, randomFrom } from '../../../src/core/random.ts';
import { makeRational, ONE, type Rational, ZERO } from '../../../src/core/rational.ts';
import { solveInFloats } from './float-solver.ts';
import { type Case, publishedCases, randomCase } from './random-train.ts';

const CASES: readonly Case[] = [
  ...Array.from({ length: 5 }, (_, seed) => publishedCases(randomFrom(seed))).flat(),
  ...Array.from({ length: 900 }, (_, seed) => randomCase(randomFrom(seed))),
];
const DRIVING = CASES.filter(({ train, applied }) => solveSpeeds(train, applied).state === 'drives');

const speedOf = ({ speeds }: Solution, shaft: string) => (shaft === CASE ? ZERO : speeds.get(shaft)!);
const plain = ({ state, ratio, speeds }: Solution) => ({
  state,
  ratio: ratio && makeRational(ratio),
  speeds: [...speeds].map(([shaft, speed]) => `${shaft} ${speed && makeRational(speed)}`).sort(),
});
/** Near enough for floats: to a millionth, or a millionth of the size. */
const near = (exact: Rational, float: number) =>
  Math.abs(exact.valueOf() - float) <= 1e-6 * Math.max(1, Math.abs(float));

/** -wc, ws and wr as Willis has them: the fractions that say it, rather than the solver's coefficients. */
function willisHolds({ kind, sun, ring, carrier }: Gearset, solution: Solution): boolean | null {
  const [ws, wr, wc] = [sun, ring, carrier].map(({ shaft }) => speedOf(solution, shaft));
  if (!ws || !wr || !wc) return null;
  const passed = ws.sub(wc).mul(BigInt(sun.teeth));
  const taken = wr.sub(wc).mul(BigInt(ring.teeth));
  return passed.equals(kind === 'simple' ? taken.neg() : taken);
}

test('the cases are of all four states, many of each', () => {
  const count = (state: string) =>
    CASES.filter(({ train, applied }) => solveSpeeds(train, applied).state === state).length;
  for (const state of STATES) expect(count(state)).toBeGreaterThan(40);
  expect(DRIVING.length).toBeGreaterThan(300);
});

describe('speeds', () => {
  test('S1 the two shafts of an applied element turn alike, and a braked one stands', () => {
    for (const { train, applied } of CASES) {
      const solution = solveSpeeds(train, applied);
      if (solution.state === 'tied-up') continue;
      for (const { id, between } of train.elements) {
        if (!applied.includes(id)) continue;
        const [first, second] = between.map((shaft) => speedOf(solution, shaft)) as [Rational, Rational];
        expect(first === null ? second === null : first.equals(second)).toBe(true);
      }
    }
  });

  test('S2 every gearset keeps Willis’ relation', () => {
    let checked = 0;
    for (const { train, applied } of CASES) {
      const solution = solveSpeeds(train, applied);
      if (solution.state === 'tied-up') continue;
      for (const set of train.gearsets) {
        const holds = willisHolds(set, solution);
        if (holds === null) continue;
        expect(holds).toBe(true);
        checked++;
      }
    }
    expect(checked).toBeGreaterThan(1000);
  });

  test('S3 the input turns at 1, and the ratio is 1 over the speed of the output', () => {
    for (const { train, applied } of CASES) {
      const solution = solveSpeeds(train, applied);
      if (solution.state === 'tied-up') expect(solution.speeds.size).toBe(0);
      else expect(speedOf(solution, train.input)!.equals(ONE)).toBe(true);
      if (solution.ratio) expect(solution.ratio.mul(speedOf(solution, train.output)!).equals(ONE)).toBe(true);
    }
  });

  test('S4 to S7 states, speeds and open shafts agree with a second solver in floating point', () => {
    for (const { train, applied } of CASES) {
      const exact = solveSpeeds(train, applied);
      const float = solveInFloats(train, applied);
      expect(exact.state).toBe(float.state);
      expect([...exact.speeds.keys()].sort()).toEqual([...float.speeds.keys()].sort());
      for (const [shaft, speed] of exact.speeds) {
        const other = float.speeds.get(shaft)!;
        expect(speed === null ? other === null : other !== null && near(speed, other)).toBe(true);
      }
    }
  });

  test('S9 more teeth on both gears of a set, in proportion, change nothing', () => {
    for (const [seed, { train, applied }] of CASES.entries()) {
      const random = randomFrom(seed);
      const [which, by] = [random.int(0, train.gearsets.length - 1), random.int(2, 9)];
      const gearsets = train.gearsets.map((set, index) =>
        index === which
          ? {
              ...set,
              sun: { ...set.sun, teeth: set.sun.teeth * by },
              ring: { ...set.ring, teeth: set.ring.teeth * by },
            }
          : set,
      );
      expect(plain(solveSpeeds({ ...train, gearsets }, applied))).toEqual(plain(solveSpeeds(train, applied)));
    }
  });

  test('S9 input and output swapped: 1 over the ratio; a held output becomes a tied-up input', () => {
    for (const { train, applied } of CASES) {
      const there = solveSpeeds(train, applied);
      const back = solveSpeeds({ ...train, input: train.output, output: train.input }, applied);
      if (there.state === 'drives') {
        expect(back.state).toBe('drives');
        expect(back.ratio!.mul(there.ratio!).equals(ONE)).toBe(true);
      }
      if (there.state === 'output-held') expect(back.state).toBe('tied-up');
      if (back.state === 'output-held') expect(there.state).toBe('tied-up');
    }
  });

  test('S9 other names for the shafts, another order of sets, elements and shafts change nothing', () => {
    for (const [seed, { train, applied }] of CASES.entries()) {
      const random = randomFrom(seed);
      const shafts = [...solveInFloats(train, []).speeds.keys()];
      const shuffled = random.shuffle(shafts);
      const rename = (shaft: string) => (shaft === CASE ? CASE : `n-${shuffled[shafts.indexOf(shaft)]}`);
      const back = new Map(shafts.map((shaft) => [rename(shaft), shaft]));
      const renamed = renameTrain(train, rename, random);
      const solution = solveSpeeds(renamed, random.shuffle(applied));
      const speeds = new Map([...solution.speeds].map(([shaft, speed]) => [back.get(shaft)!, speed]));
      expect(plain({ ...solution, speeds })).toEqual(plain(solveSpeeds(train, applied)));
    }
  });

  test('S9 a train with one set or one element fewer can only turn more freely', () => {
    for (const { train, applied } of CASES) {
      const before = solveSpeeds(train, applied);
      const looser = [
        ...train.gearsets.map((set) => solveSpeeds(without(train, set), applied)),
        ...applied.map((id) =>
          solveSpeeds(
            train,
            applied.filter((other) => other !== id),
          ),
        ),
      ];
      for (const after of looser) {
        if (before.state === 'tied-up') continue;
        expect(after.state).not.toBe('tied-up');
        for (const [shaft, speed] of after.speeds)
          if (speed && before.speeds.has(shaft)) expect(before.speeds.get(shaft)!.equals(speed)).toBe(true);
        if (before.state === 'free') expect(after.state).toBe('free');
      }
    }
  });
});

describe('torques', () => {
  test('S14 there are torques exactly where the train drives', () => {
    for (const { train, applied } of CASES)
      expect(solveTorques(train, applied) !== null).toBe(solveSpeeds(train, applied).state === 'drives');
  });

  test('S10 each gearset is in balance: no torque and no power left over', () => {
    for (const { train, applied } of DRIVING) {
      const solution = solveSpeeds(train, applied);
      const torques = solveTorques(train, applied)!;
      for (const set of train.gearsets) {
        const share = torques.members.get(set.id)!;
        if (!share.sun || !share.ring || !share.carrier) continue;
        expect(share.sun.add(share.ring).add(share.carrier).equals(ZERO)).toBe(true);
        expect(
          share.ring
            .mul(BigInt(set.sun.teeth))
            .abs()
            .equals(share.sun.mul(BigInt(set.ring.teeth)).abs()),
        ).toBe(true);
        const sense = set.kind === 'simple' ? share.sun : share.sun.neg();
        expect(share.ring.compare(0n)).toBe(sense.compare(0n));
        const speeds = MEMBERS.map((member) => speedOf(solution, set[member].shaft));
        if (speeds.some((speed) => speed === null)) continue;
        const power = MEMBERS.reduce((sum, member, i) => sum.add(share[member]!.mul(speeds[i]!)), ZERO);
        expect(power.equals(ZERO)).toBe(true);
      }
    }
  });

  test('S11 every shaft is in balance, and so is the case', () => {
    for (const { train, applied } of DRIVING) {
      const torques = solveTorques(train, applied)!;
      const on = new Map<string, Rational | null>();
      const put = (shaft: string, torque: Rational | null) => {
        const sum = on.get(shaft);
        on.set(shaft, sum === null || torque === null ? null : (sum ?? ZERO).add(torque));
      };
      put(train.input, ONE);
      put(train.output, torques.output);
      // The train pushes the case as hard as the case pushes the train.
      put(CASE, torques.reaction);
      for (const set of train.gearsets)
        for (const member of MEMBERS) put(set[member].shaft, torques.members.get(set.id)![member]);
      for (const { id, between } of train.elements) {
        if (!applied.includes(id)) continue;
        const torque = torques.elements.get(id)!;
        put(between[0], torque);
        put(between[1], torque?.neg() ?? null);
      }
      for (const sum of on.values()) if (sum) expect(sum.equals(ZERO)).toBe(true);
    }
  });

  test('S12 power in is power out: output torque is the ratio, the case gives the rest', () => {
    for (const { train, applied } of DRIVING) {
      const { ratio } = solveSpeeds(train, applied);
      const { output, reaction } = solveTorques(train, applied)!;
      expect(output.equals(ratio!.neg())).toBe(true);
      expect(reaction.equals(ratio!.sub(1n))).toBe(true);
    }
  });

  test('S12 an element’s torque is what letting it slip would do to the output (virtual work, in floats)', () => {
    let compared = 0;
    for (const { train, applied } of DRIVING) {
      const { elements } = solveTorques(train, applied)!;
      const { ratio, speeds } = solveSpeeds(train, applied);
      for (const id of applied) {
        const torque = elements.get(id)!;
        const slipping = solveInFloats(train, applied, { [id]: 1 });
        // One that shares its load cannot slip while the others hold.
        if (torque === null) {
          expect(slipping.state).toBe('tied-up');
          continue;
        }
        const gain = slipping.speeds.get(train.output)! - speeds.get(train.output)!.valueOf();
        expect(near(torque, ratio!.valueOf() * gain)).toBe(true);
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(500);
  });

  test('S12 input and output swapped: the same torques, per 1 at the other end', () => {
    for (const { train, applied } of DRIVING) {
      const there = solveTorques(train, applied)!;
      const back = solveTorques({ ...train, input: train.output, output: train.input }, applied)!;
      for (const [id, torque] of there.elements) {
        const other = back.elements.get(id)!;
        expect(torque === null ? other === null : other!.mul(there.output).equals(torque)).toBe(true);
      }
    }
  });

  test('S13 a set or element is needed exactly where its torque is settled and not 0', () => {
    const seen = { needed: 0, idle: 0, shared: 0 };
    for (const { train, applied } of DRIVING) {
      const { ratio } = solveSpeeds(train, applied);
      const torques = solveTorques(train, applied)!;
      const parts = [
        ...train.gearsets.map((set) => ({
          torque: torques.members.get(set.id)!.sun,
          after: solveSpeeds(without(train, set), applied),
        })),
        ...applied.map((id) => ({
          torque: torques.elements.get(id)!,
          after: solveSpeeds(
            train,
            applied.filter((other) => other !== id),
          ),
        })),
      ];
      for (const { torque, after } of parts) {
        if (torque && torque.n !== 0n) {
          expect(after.state).toBe('free');
          seen.needed++;
          continue;
        }
        expect(after.ratio!.equals(ratio!)).toBe(true);
        seen[torque ? 'idle' : 'shared']++;
      }
    }
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(30);
  });
});

function without(train: Train, set: Gearset): Train {
  return { ...train, gearsets: train.gearsets.filter((other) => other !== set) };
}

function renameTrain(train: Train, rename: (shaft: string) => string, random: Random): Train {
  return {
    input: rename(train.input),
    output: rename(train.output),
    gearsets: random.shuffle(train.gearsets).map(({ id, kind, sun, ring, carrier }) => ({
      id,
      kind,
      sun: { ...sun, shaft: rename(sun.shaft) },
      ring: { ...ring, shaft: rename(ring.shaft) },
      carrier: { shaft: rename(carrier.shaft) },
    })),
    elements: random.shuffle(train.elements).map((element) => ({
      ...element,
      between: random.shuffle(element.between.map(rename)) as [string, string],
    })),
  };
}
