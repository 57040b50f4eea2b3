import { describe, expect, test } from 'vitest';
import {
  CASE_START,
  type Case,
  type CaseMove,
  type CaseState,
  makeCase,
  moveCase,
  suspectsLeft,
} from '../../../src/core/diagnosis/case.ts';
import { bestWay, scoreCase, stepsOf } from '../../../src/core/diagnosis/case-result.ts';
import { isFound } from '../../../src/core/diagnosis/choose.ts';
import { faultPhrase, observationPhrase } from '../../../src/core/diagnosis/say.ts';
import { MOST_SUSPECTS } from '../../../src/core/diagnosis/strategy.ts';
import { alike, areAlike, tableOf } from '../../../src/core/diagnosis/table.ts';
import { costOf, type Test, testId } from '../../../src/core/diagnosis/test.ts';
import { type Fault, faultId } from '../../../src/core/faults/fault.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { shippedDecks } from '../../units.ts';
import { fullUnit, fullUnits } from '../faults/decks.ts';

const UNITS = [...fullUnits(), ...shippedDecks().map(makeUnit)];
const CASES = UNITS.flatMap((unit) =>
  Array.from({ length: 6 }, (_, seed) => ({ unit, run: makeCase(unit, seed)! })),
);
const play = (run: Case, moves: readonly CaseMove[]): CaseState =>
  moves.reduce((state, move) => moveCase(run, state, move), CASE_START);
const asking = (tests: readonly Test[]): CaseMove[] => tests.map((asked) => ({ kind: 'ask', test: asked }));
const naming = (cause: Fault): CaseMove => ({ kind: 'name', cause });
const testsOfBestWay = (run: Case) => bestWay(run).map((step) => step.test);

describe('D16 cases', () => {
  test('every unit makes one for every seed, and different seeds hide different faults', () => {
    for (const unit of UNITS) {
      const causes = Array.from({ length: 12 }, (_, seed) => faultId(makeCase(unit, seed)!.cause));
      expect(new Set(causes).size, unit.deck.id).toBeGreaterThan(3);
    }
  });

  test('the complaint shows, the cause fits it, and there is something to find out', () => {
    for (const { run } of CASES) {
      expect(run.told.length).toBeGreaterThan(0);
      for (const { reading } of run.told) expect(reading).not.toBe('works');
      expect(run.suspects.map(faultId)).toContain(faultId(run.cause));
      expect(run.suspects.length).toBeLessThanOrEqual(MOST_SUSPECTS);
      expect(alike(run.table, run.suspects).length).toBeGreaterThanOrEqual(3);
      expect(isFound(run.table, run.suspects)).toBe(false);
    }
  });

  test('D20 the same deck and seed give the same case', () => {
    for (const { unit, run } of CASES.slice(0, 12)) {
      const again = makeCase(makeUnit(unit.deck), run.seed)!;
      expect([again.cause, again.told, again.complaint]).toEqual([run.cause, run.told, run.complaint]);
      expect(again.table.tests).toEqual(run.table.tests);
    }
  });

  test('everything in a case has words', () => {
    for (const { unit, run } of CASES) {
      const say = makeSay(unit.deck);
      expect(say(run.complaint)).toMatch(/^The work order says: .+\.$/);
      for (const fault of run.table.suspects) expect(say(faultPhrase(unit, fault))).not.toBe('');
      for (const asked of run.table.tests) {
        const reading = run.table.reading(run.cause, asked)!;
        expect(say(observationPhrase(unit, { test: asked, reading }))).toMatch(/: .+\.$/);
      }
    }
  });
});

describe('D17 moves', () => {
  const { run } = CASES[10]!;
  const [first, second] = run.table.tests as [Test, Test];

  test('asking shows what the cause shows; asking again costs nothing', () => {
    const state = play(run, asking([first, second, first]));
    expect(state.asked.map((seen) => testId(seen.test))).toEqual([testId(first), testId(second)]);
    for (const seen of state.asked) expect(seen.reading).toBe(run.table.reading(run.cause, seen.test));
  });

  test('once a cause is named nothing changes', () => {
    const done = play(run, [naming(run.cause)]);
    expect(moveCase(run, done, asking([first])[0]!)).toBe(done);
    expect(moveCase(run, done, naming(run.table.suspects[0]!))).toBe(done);
  });

  test('the state before is left as it was', () => {
    const before = play(run, asking([first]));
    const copy = structuredClone(before);
    moveCase(run, before, asking([second])[0]!);
    moveCase(run, before, naming(run.cause));
    expect(before).toEqual(copy);
  });

  test('what the case does not have is refused', () => {
    expect(() => play(run, asking([{ kind: 'road', row: '99', position: null }]))).toThrow('road');
    expect(() => play(run, asking([run.told[0]!.test]))).toThrow('road');
    expect(() => play(run, [naming({ kind: 'element-fails', element: 'C99' })])).toThrow('element-fails');
  });
});

describe('D18 score', () => {
  test('worked by hand: UD stuck off behind S1 of the crossed sets', () => {
    // seek a case whose cause is S1 stuck off; its winding is in band, and UD has no pressure
    const unit = fullUnit('four-range-two-crossed-sets');
    const run = Array.from({ length: 200 }, (_, seed) => makeCase(unit, seed)!).find(
      ({ cause, told }) => faultId(cause) === 'solenoid-stuck-off:S1' && told.length === 1,
    )!;
    const named = (id: string) => run.table.suspects.find((fault) => faultId(fault) === id)!;
    const asked = asking(run.table.tests.filter((one) => ['resistance:S1', 'gauge:UD/2@D'].includes(testId(one))));
    const score = (cause: string) => scoreCase(run, play(run, [...asked, naming(named(cause))]), costOf)!;
    expect(score('solenoid-stuck-off:S1')).toMatchObject({ found: true, tests: 2, cost: 3 + 4 });
    // the port has no pressure, whether the solenoid or the passage is to blame: no test here tells them apart
    expect(score('feed-lost:UD').found).toBe(true);
    expect(score('solenoid-unplugged:S1')).toMatchObject({ found: false });
    expect(score('solenoid-unplugged:S1').contradicted.map((seen) => testId(seen.test))).toEqual(['resistance:S1']);
    expect(score('element-fails:UD').contradicted.map((seen) => testId(seen.test))).toEqual(['gauge:UD/2@D']);
    expect(score('element-fails:UD').share?.valueOf()).toBe(0);
  }); // biome-ignore format: names in one line

  test('following the best strategy finds the cause at its own cost, and is not early', () => {
    for (const { run } of CASES) {
      const score = scoreCase(run, play(run, [...asking(testsOfBestWay(run)), naming(run.cause)]))!;
      expect(score).toMatchObject({ found: true, early: false, contradicted: [] });
      expect(score.cost).toBe(score.best.here);
      expect(score.best.here).toBeGreaterThan(0);
    }
  });

  test('the best strategy over every cause that fits costs its average', () => {
    for (const { run } of CASES.slice(0, 30)) {
      const costs = run.suspects.map(
        (cause) => scoreCase({ ...run, cause }, { asked: [], named: cause })!.best.here,
      );
      const { average, worst } = scoreCase(run, { asked: [], named: run.cause })!.best;
      expect(costs.reduce((sum, cost) => sum + cost, 0) / costs.length).toBeCloseTo(average.valueOf(), 9);
      expect(Math.max(...costs)).toBeGreaterThanOrEqual(worst.valueOf());
    }
  });

  test('a cause named at once is early, right or wrong, and has no share', () => {
    for (const { run } of CASES) {
      expect(scoreCase(run, play(run, [naming(run.cause)]))).toMatchObject({
        found: true,
        early: true,
        share: null,
      });
      const other = run.table.suspects.find((suspect) => !areAlike(run.table, suspect, run.cause))!;
      const wrong = scoreCase(run, play(run, [naming(other)]))!;
      expect(wrong.found).toBe(false);
      expect(wrong.share?.valueOf()).toBe(0);
    }
  });

  test('asking everything finds the cause, and costs a share of the best', () => {
    for (const { run } of CASES) {
      const state = play(run, [...asking(run.table.tests), naming(run.cause)]);
      const score = scoreCase(run, state)!;
      expect(score).toMatchObject({ found: true, early: false });
      expect(score.share!.valueOf()).toBeCloseTo(score.best.average.valueOf() / score.cost, 9);
      for (const left of suspectsLeft(run, state)) expect(areAlike(run.table, left, run.cause)).toBe(true);
    }
  });

  test('with no cause named there is no score', () => {
    expect(scoreCase(CASES[0]!.run, CASE_START)).toBeNull();
  });
});

describe('D19 the way explained', () => {
  test('each test strikes out what its reading contradicts; the cause is never struck out', () => {
    for (const { run } of CASES) {
      const tests = randomFrom(run.seed).sample(run.table.tests, 6);
      const steps = stepsOf(run, play(run, asking(tests)));
      let left = run.suspects.map(faultId);
      for (const step of steps) {
        expect(step.before.map(faultId)).toEqual(left);
        for (const suspect of step.struckOut)
          expect(run.table.reading(suspect, step.test)).not.toBe(step.reading);
        left = left.filter((id) => !step.struckOut.some((suspect) => faultId(suspect) === id));
        expect(left).toContain(faultId(run.cause));
        expect(step.best.length > 0).toBe(!isFound(run.table, step.before));
      }
    }
  });

  test('the best way ends where nothing more can be told apart, and wastes no test', () => {
    for (const { run } of CASES) {
      const way = bestWay(run);
      const last = way.at(-1)!;
      const left = last.before.filter((suspect) => !last.struckOut.includes(suspect));
      expect(isFound(run.table, left)).toBe(true);
      expect(way.length).toBeGreaterThan(0);
    }
  });
});

test('the case takes tests and suspects from the one table of the unit', () => {
  const { unit, run } = CASES[0]!;
  expect(run.table.suspects).toBe(tableOf(unit).suspects);
});
