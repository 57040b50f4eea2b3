import { describe, expect, test } from 'vitest';
import { faultChart } from '../../../src/core/faults/chart.ts';
import type { Fault } from '../../../src/core/faults/fault.ts';
import { outcomeOf } from '../../../src/core/faults/outcome.ts';
import { pressuresWith } from '../../../src/core/faults/pressure.ts';
import type { Deck, DeckSolenoid } from '../../../src/core/unit/deck.ts';
import { makeUnit, rangeOf } from '../../../src/core/unit/unit.ts';
import { PUBLISHED } from '../../units.ts';
import { fullDeckOf } from './decks.ts';

/**
 * Ranges 1 UD LR, 2 UD B24, 3 UD OD, 4 OD B24, R RV LR. S1 UD, S3 RV and S5 LR give nothing unplugged and hang on
 * the supply main; S2 OD and S4 B24 give full pressure and hang on spare. D opens UD OD B24 LR, R opens RV LR.
 */
const BASE = fullDeckOf(PUBLISHED.find(({ id }) => id === 'four-range-two-crossed-sets')!);

/** "1 no-drive, 4 becomes 3": every row that does not work. */
function said(deck: Deck, fault: Fault): string {
  return faultChart(makeUnit(deck), fault)
    .filter(({ outcome }) => outcome.kind !== 'works')
    .map(({ row, outcome }) => `${row.id} ${outcome.kind}${'range' in outcome ? ` ${outcome.range}` : ''}`)
    .join(', ');
}

const stuckOff = (solenoid: string): Fault => ({ kind: 'solenoid-stuck-off', solenoid });
const stuckOn = (solenoid: string): Fault => ({ kind: 'solenoid-stuck-on', solenoid });
const unplugged = (solenoid: string): Fault => ({ kind: 'solenoid-unplugged', solenoid });

describe('worked by hand on four ranges with two crossed sets', () => {
  test.each<[string, Fault, string, string]>([
    ['F9', stuckOff('S1'), '1 no-drive, 2 no-drive, 3 no-drive', 'S1 gives nothing without current: UD never on'],
    ['F9', stuckOn('S1'), '4 tied-up', 'UD on in D; in R the lever cuts its feed'],
    ['F9', stuckOff('S2'), '1 tied-up, 2 tied-up', 'S2 gives full without current: OD on in D'],
    ['F9', stuckOn('S2'), '3 no-drive, 4 no-drive', 'current takes the pressure from OD'],
    ['F9', stuckOff('S4'), '1 tied-up, 3 tied-up', 'B24 on in D'],
    ['F9', stuckOn('S5'), '2 tied-up, 3 tied-up, 4 tied-up', 'LR on in D, and in R where it belongs'],
    ['F10', unplugged('S1'), '1 no-drive, 2 no-drive, 3 no-drive', 'no current, as stuck off'],
    ['F10', unplugged('S2'), '1 tied-up, 2 tied-up', 'no current, as stuck off'],
    ['F10', { kind: 'supply-lost', supply: 'main' }, '1 no-drive, 2 no-drive, 3 no-drive, R no-drive', 'UD, RV, LR off'],
    ['F10', { kind: 'supply-lost', supply: 'spare' }, '1 tied-up, 2 tied-up, 3 tied-up', 'OD and B24 on in D'],
    ['F10', { kind: 'connector-off' }, '1 becomes 4, 2 becomes 4, 3 becomes 4, R no-drive', 'OD and B24 alone in D'],
  ])('%s %o: %s (%s)', (_, fault, expected) => {
    expect(said(BASE, fault)).toBe(expected);
  }); // biome-ignore format: a row a line

  test('F11 a hand-fed element has pressure whatever its solenoid does', () => {
    const positions = BASE.lever!.positions.map((position) =>
      position.id === 'R' ? { ...position, feeds: ['LR'] } : position,
    );
    const deck: Deck = { ...BASE, lever: { valve: 'manual', positions } };
    expect(said(BASE, stuckOff('S5'))).toBe('1 no-drive, R no-drive');
    expect(said(deck, stuckOff('S5'))).toBe('1 no-drive');
  });

  test('F11 the lever position decides in a row that two can command; the first is taken when none is named', () => {
    const positions = [
      ...BASE.lever!.positions,
      { id: 'L', rows: ['1'], opens: ['UD', 'LR'] }, // OD and B24 cut
    ];
    const unit = makeUnit({ ...BASE, lever: { valve: 'manual', positions } });
    const first = rangeOf(unit, '1')!;
    expect(outcomeOf(unit, stuckOff('S2'), first, 'D')).toEqual({ kind: 'tied-up' });
    expect(outcomeOf(unit, stuckOff('S2'), first, 'L')).toEqual({ kind: 'works' });
    expect(outcomeOf(unit, stuckOff('S2'), first)).toEqual({ kind: 'tied-up' });
  });

  test('F11 with no manual valve every feed is open', () => {
    const positions = BASE.lever!.positions.map(({ id, rows }) => ({ id, rows }));
    const deck: Deck = { ...BASE, lever: { valve: 'none', positions } };
    expect(said(deck, stuckOn('S1'))).toBe('4 tied-up, R tied-up');
    const { lever: _, ...bare } = BASE;
    expect(said(bare, stuckOn('S1'))).toBe('4 tied-up, R tied-up');
  });

  describe('F12 what the deck does not settle', () => {
    const second: DeckSolenoid = { id: 'S6', kind: 'on-off', feeds: ['UD'], whenUnplugged: 'none' };
    const shared: Deck = { ...BASE, solenoids: [...BASE.solenoids!, second] };

    test('two solenoids on UD: more of what is there changes nothing, the other way is unsettled', () => {
      expect(said(shared, stuckOn('S1'))).toBe('4 unsettled'); // not R: its feed is cut there
      expect(said(shared, stuckOff('S1'))).toBe('1 unsettled, 2 unsettled, 3 unsettled');
    });

    test('all of them alike is settled', () => {
      expect(said(shared, { kind: 'connector-off' })).toBe(said(BASE, { kind: 'connector-off' }));
    });

    test('a line pressure solenoid that gives none leaves rows with elements on unsettled', () => {
      const line: DeckSolenoid = {
        id: 'SL',
        kind: 'linear',
        feeds: ['line-pressure'],
        whenUnplugged: 'full',
      };
      const deck: Deck = { ...BASE, solenoids: [...BASE.solenoids!, line] };
      expect(said(deck, stuckOff('SL'))).toBe('');
      expect(said(deck, stuckOn('SL'))).toBe(
        '1 unsettled, 2 unsettled, 3 unsettled, 4 unsettled, R unsettled',
      );
    });
  });
});

describe('pressure at the ports', () => {
  const unit = makeUnit(BASE);
  const second = rangeOf(unit, '2')!; // UD and B24
  const at = (fault: Fault | null, ports: readonly string[]) => {
    const pressures = pressuresWith(BASE, fault, second);
    return ports.map((port) => pressures.get(port));
  };

  test.each<[Fault | null, readonly string[], readonly string[], string]>([
    [null, ['UD', 'B24', 'OD', 'RV'], ['full', 'full', 'none', 'none'], 'as charted'],
    [{ kind: 'element-fails', element: 'UD' }, ['UD'], ['full'], 'pressure is there, it does not hold'],
    [{ kind: 'element-stuck', element: 'OD' }, ['OD'], ['none'], 'it holds without'],
    [{ kind: 'feed-lost', element: 'UD' }, ['UD', 'B24'], ['none', 'full'], 'F13'],
    [stuckOff('S1'), ['UD', 'B24'], ['none', 'full'], 'F9'],
    [{ kind: 'low-pressure', percent: 60 }, ['UD', 'OD'], ['low', 'none'], 'F17'],
    [{ kind: 'sensor-lost', sensor: 'input-speed' }, ['UD', 'OD'], ['full', 'none'], 'F14'],
  ])('%o: %o have %o (%s)', (fault, ports, expected) => {
    expect(at(fault, ports)).toEqual(expected);
  });
});

describe('parts the unit does not have are refused', () => {
  const unit = makeUnit(BASE);
  const first = rangeOf(unit, '1')!;
  test.each<[Fault, string]>([
    [{ kind: 'gearset-stripped', gearset: 'P9' }, 'no gearset "P9"'],
    [{ kind: 'one-way-reversed', element: 'F9' }, 'no element "F9"'],
    [{ kind: 'element-fails', element: 'C9' }, 'no element "C9"'],
    [{ kind: 'feed-lost', element: 'C9' }, 'no element "C9"'],
    [{ kind: 'friction-short', element: 'C9' }, 'no element "C9"'],
    [stuckOff('S9'), 'no solenoid "S9"'],
    [unplugged('S9'), 'no solenoid "S9"'],
    [{ kind: 'supply-lost', supply: 'third' }, 'no supply "third"'],
    [{ kind: 'sensor-lost', sensor: 'none' }, 'no sensor "none"'],
    [{ kind: 'low-pressure', percent: 0 }, 'percent'],
  ])('%o', (fault, message) => {
    expect(() => outcomeOf(unit, fault, first)).toThrow(message);
  });
});
