import { describe, expect, test } from 'vitest';
import { currentsFor } from '../../../src/core/hydraulics/commands.ts';
import {
  noCurrents,
  pressuresAt,
  pressurised,
  unpluggedAt,
} from '../../../src/core/hydraulics/pressurised.ts';
import { CURRENTS, currentFor, pressureAt } from '../../../src/core/hydraulics/solenoid.ts';
import { type Deck, type DeckLever, type DeckSolenoid, PRESSURES } from '../../../src/core/unit/deck.ts';
import { deckOf, everyUnit, PUBLISHED, publishedUnits } from '../../units.ts';

const fourSpeed = deckOf(PUBLISHED.find((train) => train.id === 'four-range-two-crossed-sets')!);

/** The published four-range train with plumbing made up for one case. */
const withPlumbing = (solenoids: readonly Partial<DeckSolenoid>[], lever?: DeckLever): Deck => ({
  ...fourSpeed,
  solenoids: solenoids.map((solenoid, index) => ({
    id: `S${index + 1}`,
    kind: 'on-off',
    feeds: [],
    whenUnplugged: 'none',
    ...solenoid,
  })),
  lever,
});

describe('one solenoid', () => {
  // check-values: off gives the pressure stored for unplugged, current gives the other (from memory)
  test.each([
    ['none', 'off', 'none'],
    ['none', 'on', 'full'],
    ['full', 'off', 'full'],
    ['full', 'on', 'none'],
  ] as const)('%s when unplugged, current %s: %s', (whenUnplugged, current, pressure) => {
    expect(pressureAt({ whenUnplugged }, current)).toBe(pressure);
  });

  test('the current for a pressure is the one that gives it', () => {
    for (const whenUnplugged of PRESSURES)
      for (const pressure of PRESSURES)
        expect(pressureAt({ whenUnplugged }, currentFor({ whenUnplugged }, pressure))).toBe(pressure);
    expect(
      CURRENTS.map((current) =>
        currentFor({ whenUnplugged: 'full' }, pressureAt({ whenUnplugged: 'full' }, current)),
      ),
    ).toEqual([...CURRENTS]);
  });
});

describe('elements with pressure, plumbing made up on the published four-range train', () => {
  const all = [
    { feeds: ['UD'] },
    { feeds: ['OD'], whenUnplugged: 'full' },
    { feeds: ['RV'] },
    { feeds: ['B24', 'converter-clutch'] },
    { feeds: ['LR'] },
  ] as const;
  const valve: DeckLever = {
    valve: 'manual',
    positions: [
      { id: 'D', rows: ['1', '2', '3', '4'], opens: ['UD', 'OD', 'B24', 'LR'] },
      { id: 'R', rows: ['R'], opens: ['OD', 'LR'], feeds: ['RV'] },
      { id: 'P', rows: [] },
    ],
  };
  const on = (...ids: string[]) =>
    Object.fromEntries(
      ['S1', 'S2', 'S3', 'S4', 'S5'].map((id) => [id, ids.includes(id) ? 'on' : 'off'] as const),
    );

  test.each([
    ['no lever: every feed is open', undefined, null, on('S1', 'S3'), ['UD', 'OD', 'RV']],
    ['the valve cuts a feed', valve, 'D', on('S1', 'S3'), ['UD', 'OD']],
    ['current cuts a solenoid that is full when unplugged', valve, 'D', on('S1', 'S2', 'S4'), ['UD', 'B24']],
    ['the valve feeds by hand, whatever the solenoid says', valve, 'R', on('S2'), ['RV']],
    ['a position sensor alone cuts nothing', { ...valve, valve: 'none' }, 'R', on('S1', 'S2'), ['UD']],
  ] as const)('%s', (_, lever, position, currents, expected) => {
    expect(pressurised(withPlumbing(all, lever), currents, position)).toEqual(expected);
  });

  test('what the deck does not settle is null, not guessed', () => {
    const nothingFeedsLr = withPlumbing(all.slice(0, 4));
    expect(pressuresAt(nothingFeedsLr, on(), null).get('LR')).toBeNull();
    const shared = withPlumbing([...all.slice(0, 4), { feeds: ['LR'] }, { id: 'S6', feeds: ['LR'] }]);
    expect(pressuresAt(shared, { ...on('S5'), S6: 'off' }, null).get('LR')).toBeNull();
    expect(pressuresAt(shared, { ...on('S5'), S6: 'on' }, null).get('LR')).toBe('full');
    expect(pressuresAt(withPlumbing(all), { S1: 'on' }, null).get('OD')).toBeNull();
    expect(pressurised(withPlumbing(all, valve), on(), 'P')).toBeNull();
    expect(pressurised(withPlumbing(all, valve), on(), null)).toBeNull();
  });

  test('an element fed only by hand has no pressure where the valve does not feed it', () => {
    const deck = withPlumbing([all[0], all[1], all[3], all[4]], {
      valve: 'manual',
      positions: [
        { id: 'D', rows: ['1'], opens: ['UD', 'OD', 'B24', 'LR', 'RV'] },
        { id: 'R', rows: ['R'], opens: ['LR'], feeds: ['RV'] },
      ],
    });
    expect(pressuresAt(deck, noCurrents(deck), 'D').get('RV')).toBe('none');
    expect(unpluggedAt(deck, 'R')).toEqual(['RV']);
  });

  test('unplugged is every solenoid without current', () => {
    expect(unpluggedAt(withPlumbing(all, valve), 'D')).toEqual(['OD']);
    expect(unpluggedAt(withPlumbing(all, valve), 'R')).toEqual(['OD', 'RV']);
  });
});

describe('currents a row needs', () => {
  const row = (id: string) => fourSpeed.chart.ranges.find((range) => range.id === id)!;

  test.each([
    // UD+B24; solenoids S1..S5 feed UD, OD, RV, B24, LR; even ones full when unplugged (tests/units.ts)
    ['2', 'D', { S1: 'on', S2: 'on', S3: null, S4: 'off', S5: 'off' }],
    ['4', 'D', { S1: 'off', S2: 'off', S3: null, S4: 'off', S5: 'off' }],
    // in R the valve opens RV and LR only, so the other three do not matter
    ['R', 'R', { S1: null, S2: null, S3: 'on', S4: null, S5: 'on' }],
  ])('range %s in %s of the published four-range train', (id, position, expected) => {
    expect(currentsFor(fourSpeed, row(id), position)).toEqual(expected);
  });

  test('a solenoid whose elements ask for both is null, as is one that shares its element', () => {
    const conflicting = withPlumbing([{ feeds: ['UD', 'OD'] }, { feeds: ['LR'] }, { feeds: ['LR'] }]);
    expect(currentsFor(conflicting, row('1'), null)).toEqual({ S1: null, S2: null, S3: null });
    expect(currentsFor(conflicting, row('3'), null)).toEqual({ S1: 'on', S2: null, S3: null });
  });

  test('a feed that the valve cuts, or gives by hand, leaves its solenoid null', () => {
    const deck = withPlumbing([{ feeds: ['UD'] }, { feeds: ['LR'] }, { feeds: ['OD'] }], {
      valve: 'manual',
      positions: [
        { id: 'D', rows: ['1', '2'], opens: ['UD', 'LR', 'OD'] },
        { id: 'L', rows: ['1'], opens: ['UD'], feeds: ['LR'] },
        { id: 'P', rows: [] },
      ],
    });
    expect(currentsFor(deck, row('1'), 'D')).toEqual({ S1: 'on', S2: 'on', S3: 'off' });
    expect(currentsFor(deck, row('1'), 'L')).toEqual({ S1: 'on', S2: null, S3: null });
    expect(currentsFor(deck, row('1'), 'P')).toEqual({ S1: null, S2: null, S3: null });
  });

  test('in every position that commands it, the row’s currents give back the row', () => {
    let checked = 0;
    for (const { deck } of everyUnit())
      for (const range of deck.chart.ranges)
        for (const { id, rows } of deck.lever!.positions) {
          if (!rows.includes(range.id)) continue;
          for (const [element, pressure] of pressuresAt(deck, currentsFor(deck, range, id), id)) {
            const wanted = range.applied.includes(element) ? 'full' : 'none';
            expect(pressure, `${deck.id} ${range.id} ${element}`).toBe(wanted);
            checked++;
          }
        }
    expect(checked).toBeGreaterThan(300);
  });
});

describe('a dead unit', () => {
  // common practice, no source: solenoids that all give no pressure when unplugged, and no feed by hand
  test('with no pressure anywhere when unplugged, no element has pressure in any lever position', () => {
    for (const { deck } of publishedUnits()) {
      const dead: Deck = {
        ...deck,
        solenoids: deck.solenoids!.map((solenoid) => ({ ...solenoid, whenUnplugged: 'none' })),
      };
      for (const { id } of deck.lever!.positions) expect(unpluggedAt(dead, id)).toEqual([]);
    }
  });
});
