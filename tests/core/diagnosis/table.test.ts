import { describe, expect, test } from 'vitest';
import { predict } from '../../../src/core/diagnosis/predict.ts';
import {
  alike,
  commonCause,
  contradictionsOf,
  suspectsRuledOut,
  suspectsThatFit,
  tableOf,
  testsThatSeparate,
} from '../../../src/core/diagnosis/table.ts';
import {
  COSTS,
  costOf,
  type Observation,
  type Reading,
  TEST_KINDS,
  type Test,
  testId,
  testsOf,
} from '../../../src/core/diagnosis/test.ts';
import { type Fault, faultId } from '../../../src/core/faults/fault.ts';
import { faultSpace } from '../../../src/core/faults/space.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit, type Unit } from '../../../src/core/unit/unit.ts';
import { PUBLISHED, shippedDecks } from '../../units.ts';
import { bruteOutcome } from '../faults/brute.ts';
import { fullDeckOf, fullUnit, fullUnits } from '../faults/decks.ts';

const ids = (faults: readonly Fault[]) => faults.map(faultId);
/** "1 no-drive, R works": road tests of an unit with one lever position a row. */
const road = (unit: Unit, text: string): Observation[] =>
  text.split(', ').map((part) => {
    const [row, reading] = part.split(' ') as [string, Reading];
    return { test: testsOf(unit).find((one) => one.kind === 'road' && one.row === row)!, reading };
  });
const gauge = (unit: Unit, element: string, row: string, reading: Reading): Observation => ({
  test: testsOf(unit).find((one) => one.kind === 'gauge' && one.element === element && one.row === row)!,
  reading,
});

describe('suspects worked by hand (what rows do: tests/core/faults/worked.ts)', () => {
  const crossed = fullUnit('four-range-two-crossed-sets');
  const lost123 = road(crossed, '1 no-drive, 2 no-drive, 3 no-drive, 4 works, R works');

  test('D5 1, 2 and 3 lost: UD, what feeds it, or the rear set that only 4 and R do without', () => {
    expect(ids(suspectsThatFit(tableOf(crossed), lost123))).toEqual([
      'element-fails:UD',
      'feed-lost:UD',
      'gearset-stripped:R',
      'solenoid-stuck-off:S1',
      'solenoid-unplugged:S1',
    ]); // not the supply main: it takes R along
  });

  test('D5 full pressure at UD leaves UD itself and the rear set', () => {
    const seen = [...lost123, gauge(crossed, 'UD', '1', 'full')];
    expect(ids(suspectsThatFit(tableOf(crossed), seen))).toEqual(['element-fails:UD', 'gearset-stripped:R']);
    const [struck] = contradictionsOf(tableOf(crossed), { kind: 'feed-lost', element: 'UD' }, seen);
    expect(testId(struck!.test)).toBe('gauge:UD/1@D');
  });

  test('D5 on the Ravigneaux, 2 drives as 1 and 4 does not: B1 or what feeds it; the large set would take R along', () => {
    const unit = fullUnit('ravigneaux-4-a');
    const seen = road(unit, '2 range:1, 4 no-drive');
    // S4 gives full pressure unplugged, so it must be stuck on to give none
    const fit = ['element-fails:B1', 'feed-lost:B1', 'gearset-stripped:Plarge', 'solenoid-stuck-on:S4'];
    expect(ids(suspectsThatFit(tableOf(unit), seen))).toEqual(fit);
    expect(ids(suspectsThatFit(tableOf(unit), [...seen, ...road(unit, 'R works')]))).toEqual(
      fit.filter((id) => !id.startsWith('gearset')),
    );
  });

  test('D6 what separates a solenoid that is stuck from one that is unplugged: its winding and its voltage do not, its ohms do', () => {
    const apart = testsThatSeparate(
      tableOf(crossed),
      { kind: 'solenoid-stuck-off', solenoid: 'S1' },
      { kind: 'solenoid-unplugged', solenoid: 'S1' },
    );
    expect(apart.map(testId)).toEqual(['resistance:S1']);
  });

  test('D6 a lost supply and an unplugged solenoid: the voltage', () => {
    const apart = testsThatSeparate(
      tableOf(crossed),
      { kind: 'solenoid-unplugged', solenoid: 'S1' },
      { kind: 'supply-lost', supply: 'main' },
    ).map(testId);
    expect(apart).toEqual(
      expect.arrayContaining(['voltage:S1', 'voltage:S3', 'voltage:S5', 'resistance:S1', 'road:R@R']),
    );
    expect(apart).not.toContain('voltage:S2');
  });

  test('D7 no drive in 1 and none in R: LR and what feeds it, the supply both hang on, or the connector', () => {
    const { first, second, both } = commonCause(
      tableOf(crossed),
      road(crossed, '1 no-drive, 3 works'),
      road(crossed, 'R no-drive, 4 works'),
    );
    expect(ids(both)).toEqual(['element-fails:LR', 'feed-lost:LR', 'solenoid-stuck-off:S5', 'solenoid-unplugged:S5']);
    for (const fault of both) {
      expect(ids(first)).toContain(faultId(fault));
      expect(ids(second)).toContain(faultId(fault));
    }
    expect(first.length).toBeGreaterThanOrEqual(both.length);
    expect(second.length).toBeGreaterThan(both.length);
  }); // biome-ignore format: names in one line
});

describe('D2 readings that no row shows, by table', () => {
  const base = fullDeckOf(PUBLISHED.find(({ id }) => id === 'four-range-two-crossed-sets')!);
  const pin = (id: string, serves: string) => ({ id, row: 1, column: Number(id), serves });
  const watching = (id: string, kind: 'circuit' | 'ratio' | 'stuck-off', ...watches: string[]) => ({
    id,
    kind,
    watches,
    meaning: id,
  });
  const deck: Deck = {
    ...base,
    electrical: {
      ...base.electrical,
      pickups: [
        { sensor: 'input-speed', kind: 'hall', supply: 'main' },
        { sensor: 'output-speed', kind: 'coil' },
      ],
      connectors: [
        { id: 'case', rows: 1, columns: 9, seenFrom: 'unit', pins: [pin('1', 'sensor:input-speed')] },
      ],
    },
    codes: [
      watching('K1', 'circuit', 'solenoid:S1'),
      watching('K2', 'circuit', 'solenoid:S2'),
      watching('K3', 'circuit', 'sensor:input-speed'),
      watching('K4', 'circuit', 'supply:spare'),
      watching('K5', 'ratio', 'range:1'),
      watching('K6', 'stuck-off', 'solenoid:S1'),
    ],
  };
  const unit = makeUnit(deck);

  test.each<[Fault | null, string, Reading]>([
    [null, 'codes', 'codes:'],
    [{ kind: 'solenoid-unplugged', solenoid: 'S1' }, 'codes', 'codes:K1'],
    [{ kind: 'solenoid-stuck-off', solenoid: 'S1' }, 'codes', 'codes:'],
    [{ kind: 'supply-lost', supply: 'main' }, 'codes', 'codes:K1+K3'],
    [{ kind: 'supply-lost', supply: 'spare' }, 'codes', 'codes:K2+K4'],
    [{ kind: 'connector-off' }, 'codes', 'codes:K1+K2+K3'],
    [{ kind: 'sensor-lost', sensor: 'input-speed' }, 'codes', 'codes:K3'],
    [{ kind: 'element-fails', element: 'UD' }, 'codes', 'codes:'],
    [{ kind: 'connector-off' }, 'signal:input-speed', 'no-signal'],
    [{ kind: 'connector-off' }, 'signal:output-speed', 'signal'],
    [{ kind: 'supply-lost', supply: 'main' }, 'signal:input-speed', 'no-signal'],
    [{ kind: 'supply-lost', supply: 'main' }, 'signal:output-speed', 'signal'],
    [{ kind: 'solenoid-unplugged', solenoid: 'S1' }, 'resistance:S1', 'open'],
    [{ kind: 'solenoid-unplugged', solenoid: 'S1' }, 'voltage:S1', 'voltage'],
    [{ kind: 'supply-lost', supply: 'main' }, 'resistance:S1', 'in-band'],
    [{ kind: 'supply-lost', supply: 'main' }, 'voltage:S1', 'no-voltage'],
    [{ kind: 'supply-lost', supply: 'main' }, 'voltage:S2', 'voltage'],
    [{ kind: 'low-pressure', percent: 60 }, 'gauge:UD/1@D', 'low'],
    [{ kind: 'element-fails', element: 'UD' }, 'gauge:UD/1@D', 'full'],
    [{ kind: 'element-stuck', element: 'OD' }, 'gauge:OD/1@D', 'none'],
  ])('%o, %s: %s', (fault, id, reading) => {
    const asked = testsOf(unit).find((one) => testId(one) === id)!;
    expect(predict(unit, fault, asked)).toBe(reading);
  });

  test('D4 with no pins recorded it is not settled which sensors are behind the connector', () => {
    const bare = makeUnit({ ...deck, electrical: { ...deck.electrical, connectors: undefined } });
    const asked = (id: string) => testsOf(bare).find((one) => testId(one) === id)!;
    expect(predict(bare, { kind: 'connector-off' }, asked('signal:input-speed'))).toBeNull();
    expect(predict(bare, { kind: 'connector-off' }, asked('codes'))).toBeNull();
  });
});

describe('properties', () => {
  const units = [...fullUnits(), ...shippedDecks().map(makeUnit)];

  // every fault of every train is held to it in tests/core/faults
  test('D2 road tests agree with the second working', () => {
    for (const unit of [fullUnit('ravigneaux-4-a'), fullUnit('lepelletier-6-a')]) {
      const table = tableOf(unit);
      for (const fault of table.suspects)
        for (const asked of table.tests) {
          if (asked.kind !== 'road') continue;
          const told = bruteOutcome(unit.deck, fault, asked.row, asked.position!);
          const reading = table.reading(fault, asked)!;
          const range = unit.ranges.find(({ id }) => reading === `range:${id}`);
          if (typeof told === 'number')
            expect(range ? range.ratio.valueOf() : 'other-ratio').toEqual(
              range ? expect.closeTo(told, 6) : reading,
            );
          else expect(reading).toBe(told.split(' ')[0]);
        }
    }
  });

  test('D1 every suspect is settled on the road, and a sound unit would show none of them', () => {
    for (const unit of units) {
      const table = tableOf(unit);
      expect(table.suspects.length).toBeGreaterThan(8);
      for (const asked of table.tests) {
        const sound = predict(unit, null, asked)!;
        expect(['works', 'full', 'none', 'codes:', 'in-band', 'voltage', 'signal']).toContain(sound);
        if (asked.kind !== 'road') continue;
        for (const suspect of table.suspects) expect(table.reading(suspect, asked)).not.toBeNull();
      }
    }
  });

  test('D5 what is seen with a fault in the unit never strikes that fault out, whatever is seen', () => {
    for (const unit of units) {
      const table = tableOf(unit);
      for (const cause of table.suspects.filter((_, index) => index % 5 === 0)) {
        const seen = table.tests.flatMap((one): Observation[] => {
          const reading = table.reading(cause, one);
          return reading === null ? [] : [{ test: one, reading }];
        });
        const left = ids(suspectsThatFit(table, seen));
        expect(left).toContain(faultId(cause));
        expect(ids(suspectsRuledOut(table, seen)).length + left.length).toBe(table.suspects.length);
        for (const other of suspectsRuledOut(table, seen))
          expect(contradictionsOf(table, other, seen).length).toBeGreaterThan(0);
      }
    }
  });

  test('D6 groups of alike suspects are whole and apart', () => {
    for (const unit of fullUnits()) {
      const table = tableOf(unit);
      const groups = alike(table);
      expect(groups.flat()).toHaveLength(table.suspects.length);
      for (const [index, [first]] of groups.entries())
        for (const [other] of groups.slice(index + 1))
          expect(testsThatSeparate(table, first!, other!).length).toBeGreaterThan(0);
    }
  });

  test('D3 costs are whole, and what needs no tools comes before what does', () => {
    for (const kind of TEST_KINDS) expect(Number.isInteger(COSTS[kind]) && COSTS[kind] > 0).toBe(true);
    for (const unit of units) {
      const costs = testsOf(unit).map((one) => costOf(one));
      expect(costs).toEqual([...costs].sort((a, b) => a - b));
      expect(new Set(testsOf(unit).map(testId)).size).toBe(costs.length);
    }
  });

  test('D1 nothing unverified is a suspect or a test', () => {
    const deck = fullDeckOf(PUBLISHED.find(({ id }) => id === 'ravigneaux-4-a')!);
    const unsure = <T extends { id: string }>(records: readonly T[], id: string) =>
      records.map((record) => (record.id === id ? { ...record, unsure: true as const } : record));
    const unit = makeUnit({
      ...deck,
      solenoids: unsure(deck.solenoids!, 'S2'),
      sensors: unsure(deck.sensors!, 'input-speed'),
      chart: { ...deck.chart, ranges: unsure(deck.chart.ranges, '3') },
    });
    const faults = ids(faultSpace(unit));
    expect(faults.filter((id) => /S2|input-speed|connector|spare/.test(id))).toEqual([]);
    expect(faults).toContain('supply-lost:main');
    const tests: Test[] = testsOf(unit);
    expect(tests.some((one) => 'row' in one && one.row === '3')).toBe(false);
    expect(tests.map(testId)).not.toContain('signal:input-speed');
  });
});
