import { describe, expect, test } from 'vitest';
import { loadDeck } from '../../../src/content/load.ts';
import { makeCase } from '../../../src/core/diagnosis/case.ts';
import { rowsOf } from '../../../src/core/faults/chart.ts';
import { outcomeOf } from '../../../src/core/faults/outcome.ts';
import { faultSpace } from '../../../src/core/faults/space.ts';
import { settle } from '../../../src/core/gears/one-way.ts';
import { CASE } from '../../../src/core/gears/train.ts';
import { unpluggedAt } from '../../../src/core/hydraulics/pressurised.ts';
import { ask } from '../../../src/core/questions/ask.ts';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { makeUnseenDeck, makeUnseenUnit } from '../../../src/core/transfer/index.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit, type Range, type Unit } from '../../../src/core/unit/unit.ts';
import { solveInFloats } from '../gears/float-solver.ts';

const SEEDS = [...Array.from({ length: 26 }, (_, seed) => seed), -7, 2 ** 31 - 1];
const UNITS: readonly Unit[] = SEEDS.map((seed) => makeUnseenUnit(seed));

/** Forward ranges that shifts go through: a range that its brake holds as well is counted once. */
const forwardOf = ({ ranges }: Unit): Range[] =>
  ranges.filter(({ id, ratio }) => ratio.gt(0n) && !id.endsWith('m'));
const reverseOf = ({ ranges }: Unit): Range[] => ranges.filter(({ ratio }) => ratio.lt(0n));
const oneWaysOf = ({ deck }: Unit) => deck.train.elements.filter(({ kind }) => kind === 'one-way');

describe('what every never-seen unit is, over 28 seeds', () => {
  test('U1 the same seed gives the same deck, and others give others', () => {
    for (const seed of SEEDS.slice(0, 8)) expect(makeUnseenDeck(seed)).toEqual(makeUnseenDeck(seed));
    const charts = UNITS.map(({ deck }) => JSON.stringify([deck.train.gearsets, deck.chart.ranges]));
    expect(new Set(charts).size).toBe(SEEDS.length);
    expect(new Set(UNITS.map(({ deck }) => deck.id)).size).toBe(SEEDS.length);
  });

  test('U2 sizes vary', () => {
    const sets = UNITS.map(({ deck }) => deck.train.gearsets.length);
    const friction = UNITS.map((unit) => unit.deck.train.elements.length - oneWaysOf(unit).length);
    const on = UNITS.map((unit) => forwardOf(unit)[0]!.applied.length);
    expect([...new Set(sets)].sort()).toEqual([2, 3, 4]);
    expect([...new Set(friction)].sort()).toEqual([5, 6]);
    expect([...new Set(on)].sort()).toEqual([2, 3]);
    const withOneWay = UNITS.filter((unit) => oneWaysOf(unit).length > 0).length;
    expect(withOneWay).toBeGreaterThan(3);
    expect(withOneWay).toBeLessThan(SEEDS.length - 7);
  });

  test('U3 four falling forward ranges or more, plausible steps, and a reverse', () => {
    for (const unit of UNITS) {
      const forward = forwardOf(unit).map(({ ratio }) => ratio.valueOf());
      expect(forward.length, unit.deck.id).toBeGreaterThanOrEqual(4);
      expect(forward[0]).toBeGreaterThanOrEqual(2.2);
      expect(forward[0]).toBeLessThan(5.5);
      expect(forward.at(-1)).toBeGreaterThan(0.55);
      for (const [index, ratio] of forward.slice(1).entries()) {
        expect(forward[index]! / ratio).toBeGreaterThanOrEqual(1.15);
        expect(forward[index]! / ratio).toBeLessThanOrEqual(2.2);
      }
      const [reverse, ...more] = reverseOf(unit);
      expect(more).toEqual([]);
      expect(-reverse!.ratio.valueOf() / forward[0]!).toBeGreaterThan(0.55);
      expect(-reverse!.ratio.valueOf() / forward[0]!).toBeLessThan(1.4);
    }
  });

  test('U3 the second solver finds the ratios that the deck states', () => {
    for (const { deck } of UNITS)
      for (const { applied, ratio } of deck.chart.ranges) {
        const { state, speeds, freedoms } = solveInFloats(deck.train, applied);
        expect(state).toBe('drives');
        expect(freedoms).toBe(1);
        expect((1 / speeds.get('out')!).toFixed(3)).toBe(ratio);
      }
  });

  test('U4 shifts exchange one element, at most one of them two', () => {
    for (const unit of UNITS) {
      // the one-way stands for its brake
      const brakeOf = (id: string) => {
        const oneWay = oneWaysOf(unit).find((element) => element.id === id);
        const same = ({ kind, between }: Deck['train']['elements'][number]) =>
          kind === 'brake' && between[0] === oneWay?.between[0];
        return oneWay ? unit.deck.train.elements.find(same)!.id : id;
      };
      const rows = forwardOf(unit).map(({ applied }) => applied.map(brakeOf));
      const counts = rows.slice(1).map((row, index) => row.filter((id) => !rows[index]!.includes(id)).length);
      expect(counts.every((count) => count === 1 || count === 2)).toBe(true);
      expect(counts.filter((count) => count === 2).length).toBeLessThanOrEqual(1);
    }
  });

  test('U5 nothing idle, nothing overburdened, no loose shaft', () => {
    for (const { deck, ranges } of UNITS) {
      for (const { id } of deck.train.elements)
        expect(ranges.some(({ torques }) => (torques.elements.get(id)?.n ?? 0n) !== 0n)).toBe(true);
      for (const { id } of deck.train.gearsets)
        expect(ranges.some(({ torques }) => torques.members.get(id)!.sun!.n !== 0n)).toBe(true);
      for (const { torques, solution } of ranges) {
        for (const torque of torques.elements.values())
          expect(torque!.abs().valueOf()).toBeLessThanOrEqual(6);
        for (const speed of solution.speeds.values()) expect(speed!.abs().valueOf()).toBeLessThanOrEqual(5);
      }
      const ends = [
        'in',
        'out',
        ...deck.train.gearsets.flatMap(({ sun, ring, carrier }) => [sun.shaft, ring.shaft, carrier.shaft]),
        ...deck.train.elements.flatMap(({ between }) => between),
      ].filter((shaft) => shaft !== CASE);
      for (const shaft of ends) expect(ends.filter((other) => other === shaft).length).toBeGreaterThan(1);
    }
  });

  test('U6 neutral has one element fewer on than a range and is free', () => {
    for (const unit of UNITS) {
      expect(unit.neutrals).toHaveLength(2);
      for (const { applied, solution } of unit.neutrals) {
        expect(solution.state).toBe('free');
        expect(applied.length).toBe(reverseOf(unit)[0]!.applied.length - 1);
      }
    }
  });

  test('U7 one-ways hold where they are charted and bind nowhere: every row does as charted by itself', () => {
    for (const unit of UNITS)
      for (const row of rowsOf(unit)) {
        expect(outcomeOf(unit, null, row)).toEqual({ kind: 'works' });
        const charted = oneWaysOf(unit).filter(({ id }) => row.applied.includes(id));
        const friction = row.applied.filter((id) => !charted.some((element) => element.id === id));
        if (row.solution.ratio)
          expect(settle(unit.deck.train, friction).holding).toEqual(charted.map(({ id }) => id));
      }
  });

  test('U8 with the connector off it is safe in every position', () => {
    let limps = 0;
    for (const { deck } of UNITS)
      for (const { id } of deck.lever!.positions) {
        const { state, ratio } = settle(deck.train, unpluggedAt(deck, id)!).solution;
        expect(['free', 'drives']).toContain(state);
        if (!ratio) continue;
        expect(ratio.s).toBe(id === 'R' ? -1n : 1n);
        expect(['D', 'L', 'R']).toContain(id);
        if (id === 'D') limps++;
      }
    expect(limps).toBeGreaterThan(SEEDS.length / 4);
  });

  test('U9 every check of decks passes, with no warning either', () => {
    for (const { deck } of UNITS) {
      const loaded = loadDeck(JSON.stringify(deck));
      const findings = loaded.ok ? loaded.value.warnings : loaded.error;
      expect(findings, deck.id).toEqual([]);
    }
  });
});

describe('U10 what can be asked', () => {
  const some = UNITS.slice(0, 4);

  /** Families that need nothing but a train, a chart, solenoids and a lever. */
  const ALWAYS = [
    'row-ratio',
    'ratio-order',
    'shaft-speed',
    'tie-ups',
    'neutral-drive',
    'element-fails',
    'element-stuck',
    'unplugged',
  ];

  test.each(FAMILIES.filter(({ level }) => level === 'reason').map((family) => [family.id, family] as const))(
    '%s asks wherever it has a fact to ask about',
    (id, family) => {
      for (const unit of some) {
        const facts = family.facts(unit);
        if (ALWAYS.includes(id)) expect(facts.length, unit.deck.id).toBeGreaterThan(0);
        if (facts.length === 0) continue;
        for (let seed = 0; seed < 3; seed++) expect(ask(unit, family, seed), unit.deck.id).toBeDefined();
      }
    },
  );

  test('the families that always can are there', () => {
    for (const id of ALWAYS) expect(FAMILIES.map((family) => family.id)).toContain(id);
  });

  test('faults of every kind, and cases', () => {
    for (const unit of some) {
      const kinds = new Set(faultSpace(unit).map(({ kind }) => kind));
      for (const kind of [
        'low-pressure',
        'friction-short',
        'supply-lost',
        'connector-off',
        'sensor-lost',
      ] as const)
        expect(kinds).toContain(kind);
      for (let seed = 0; seed < 3; seed++) expect(makeCase(unit, seed)).toBeDefined();
    }
  });
});

test('a unit made anew from its own deck is the same', () => {
  const [unit] = UNITS;
  expect(makeUnit(unit!.deck).ranges).toEqual(unit!.ranges);
});
