import { describe, expect, test } from 'vitest';
import { chainOf, LINKS, type Link, sideOf } from '../../../src/core/diagnosis/chain.ts';
import { rowsOf } from '../../../src/core/faults/chart.ts';
import { type Fault, faultId } from '../../../src/core/faults/fault.ts';
import { faultSpace } from '../../../src/core/faults/space.ts';
import { frictionOf } from '../../../src/core/hydraulics/feeds.ts';
import { makeUnit, rangeOf } from '../../../src/core/unit/unit.ts';
import { PUBLISHED } from '../../units.ts';
import { fullDeckOf, fullUnit } from '../faults/decks.ts';

/**
 * Ranges 1 UD LR, 2 UD B24, 3 UD OD, 4 OD B24. UD hangs on S1 (no pressure unplugged), OD on S2 (full unplugged).
 */
const unit = fullUnit('four-range-two-crossed-sets');

describe('D12 the first broken link, worked by hand', () => {
  test.each<[string, string, Fault | null, Link | null, string]>([
    ['UD', '1', null, null, 'sound'],
    ['UD', '1', { kind: 'supply-lost', supply: 'main' }, 'driver', 'S1 is to have current and gets no voltage'],
    ['UD', '1', { kind: 'connector-off' }, 'driver', 'the same'],
    ['UD', '4', { kind: 'supply-lost', supply: 'main' }, null, 'no current is asked for: nothing differs'],
    ['UD', '1', { kind: 'solenoid-unplugged', solenoid: 'S1' }, 'winding', 'voltage, and no current'],
    ['OD', '3', { kind: 'solenoid-unplugged', solenoid: 'S2' }, null, 'OD wants pressure, and S2 gives it without'],
    ['OD', '1', { kind: 'solenoid-unplugged', solenoid: 'S2' }, 'winding', 'S2 is to have current to cut OD off'],
    ['UD', '1', { kind: 'solenoid-stuck-off', solenoid: 'S1' }, 'valve', 'current, and no pressure'],
    ['UD', '4', { kind: 'solenoid-stuck-on', solenoid: 'S1' }, 'valve', 'pressure without current'],
    ['OD', '1', { kind: 'solenoid-stuck-off', solenoid: 'S2' }, 'valve', 'pressure in spite of current'],
    ['UD', '1', { kind: 'feed-lost', element: 'UD' }, 'feed', 'pressure stops on the way'],
    ['UD', '1', { kind: 'low-pressure', percent: 50 }, 'feed', 'the solenoid lets through what there is'],
    ['UD', '1', { kind: 'element-fails', element: 'UD' }, 'element', 'pressure, and no hold'],
    ['UD', '4', { kind: 'element-stuck', element: 'UD' }, 'element', 'no pressure, and it holds'],
    ['UD', '1', { kind: 'gearset-stripped', gearset: 'R' }, 'gear', 'it holds, and nothing drives'],
    ['UD', '1', { kind: 'sensor-lost', sensor: 'input-speed' }, null, 'nothing on the way to the gear'],
  ])('%s in %s with %o: %s (%s)', (element, row, fault, expected) => {
    expect(chainOf(unit, fault, element, rangeOf(unit, row)!)!.firstBreak).toBe(expected);
  }); // biome-ignore format: a row a line

  test('the current asked follows from what the solenoid gives unplugged', () => {
    const asked = (element: string, row: string) =>
      chainOf(unit, null, element, rangeOf(unit, row)!)!.commanded;
    expect([asked('UD', '1'), asked('UD', '4')]).toEqual(['on', 'off']);
    expect([asked('OD', '3'), asked('OD', '1')]).toEqual(['off', 'on']);
  });

  test('links by side', () => {
    expect(LINKS.map(sideOf)).toEqual([
      'electrical',
      'electrical',
      'electrical',
      'hydraulic',
      'hydraulic',
      'mechanical',
      'mechanical',
    ]);
  });
});

describe('D13 nothing is said of', () => {
  const deck = fullDeckOf(PUBLISHED.find(({ id }) => id === 'four-range-two-crossed-sets')!);
  const reverse = 'R';

  test('an element whose feed the lever cuts, or that it feeds by hand', () => {
    expect(chainOf(unit, null, 'UD', rangeOf(unit, reverse)!)).toBeNull();
    const positions = deck.lever!.positions.map((position) =>
      position.id === 'R' ? { ...position, feeds: ['LR'] } : position,
    );
    const byHand = makeUnit({ ...deck, lever: { valve: 'manual', positions } });
    expect(chainOf(unit, null, 'LR', rangeOf(unit, reverse)!)).not.toBeNull();
    expect(chainOf(byHand, null, 'LR', rangeOf(byHand, reverse)!)).toBeNull();
  });

  test('an element with two solenoids, or with none', () => {
    const second = { id: 'S9', kind: 'on-off' as const, feeds: ['UD'], whenUnplugged: 'none' as const };
    const two = makeUnit({ ...deck, solenoids: [...deck.solenoids!, second] });
    expect(chainOf(two, null, 'UD', rangeOf(two, '1')!)).toBeNull();
    const none = makeUnit({ ...deck, solenoids: deck.solenoids!.slice(1), electrical: undefined });
    expect(chainOf(none, null, 'UD', rangeOf(none, '1')!)).toBeNull();
  });
});

describe('properties', () => {
  /** Where a fault breaks the chain to its own part, if it breaks it at all. */
  const OWN: Readonly<Partial<Record<Fault['kind'], Link>>> = {
    'supply-lost': 'driver',
    'connector-off': 'driver',
    'solenoid-unplugged': 'winding',
    'solenoid-stuck-off': 'valve',
    'solenoid-stuck-on': 'valve',
    'feed-lost': 'feed',
    'low-pressure': 'feed',
    'element-fails': 'element',
    'element-stuck': 'element',
  };

  test('D12 a fault breaks a chain at its own link first, or only its gear; a sound unit breaks none', () => {
    let broken = 0;
    for (const each of [fullUnit('ravigneaux-4-a'), fullUnit('seven-speed-reversed-ravigneaux')])
      for (const fault of [null, ...faultSpace(each)])
        for (const row of rowsOf(each))
          for (const element of frictionOf(each.deck)) {
            const chain = chainOf(each, fault, element, row);
            if (!chain?.firstBreak) continue;
            broken++;
            const name = `${each.deck.id} ${fault && faultId(fault)} ${element} ${row.id}`;
            const own = fault === null ? undefined : OWN[fault.kind];
            const allowed = [own, fault?.kind === 'friction-short' ? 'element' : undefined, 'gear'];
            expect(fault, name).not.toBeNull();
            expect(allowed, name).toContain(chain.firstBreak);
          }
    expect(broken).toBeGreaterThan(500);
  });
});
