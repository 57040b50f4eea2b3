import { describe, expect, test } from 'vitest';
import { codesWith } from '../../../src/core/diagnosis/codes.ts';
import type { Fault } from '../../../src/core/faults/fault.ts';
import { faultSpace } from '../../../src/core/faults/space.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { PUBLISHED } from '../../units.ts';
import { fullDeckOf } from '../faults/decks.ts';

const base = fullDeckOf(PUBLISHED.find(({ id }) => id === 'ravigneaux-4-a')!);
type Codes = NonNullable<Deck['codes']>;
const code = (id: string, kind: Codes[number]['kind'], ...watches: string[]) => ({
  id,
  kind,
  watches,
  meaning: id,
});

/** C1 hangs on S1 (no pressure unplugged); 2 is C1 B1, and B1 hangs on S4 (full unplugged). */
const deck: Deck = {
  ...base,
  electrical: {
    ...base.electrical,
    pickups: [
      { sensor: 'input-speed', kind: 'coil' },
      { sensor: 'output-speed', kind: 'coil' },
    ],
  },
  codes: [
    code('circuit-1', 'circuit', 'solenoid:S1'),
    code('loose-1', 'intermittent', 'solenoid:S1'),
    code('stuck-1', 'stuck-off', 'solenoid:S1'),
    code('stuck-4', 'performance', 'solenoid:S4'),
    code('input', 'circuit', 'sensor:input-speed'),
    code('ratio-2', 'ratio', 'range:2'),
    code('ratio', 'ratio'),
  ],
};
const unit = makeUnit(deck);

describe('D14 worked by hand on the Ravigneaux', () => {
  test.each<[Fault | null, string, string, string]>([
    [null, '', '', 'a sound unit'],
    [
      { kind: 'solenoid-unplugged', solenoid: 'S1' },
      'circuit-1',
      'loose-1 stuck-1 ratio-2 ratio', // no drive: there is no ratio to be wrong
      'its circuit; 1, 1m, 2 and 3 do not drive',
    ],
    [{ kind: 'solenoid-stuck-off', solenoid: 'S1' }, '', 'stuck-1 ratio-2 ratio', 'its circuit is whole'],
    [{ kind: 'element-fails', element: 'B1' }, 'ratio-2 ratio', 'stuck-4', '2 drives as 1'],
    [
      { kind: 'element-fails', element: 'C1' },
      '',
      'stuck-1 ratio-2 ratio',
      'the guess falls on its solenoid',
    ],
    [{ kind: 'element-fails', element: 'B2' }, '', 'ratio', 'only R is lost'],
    [
      { kind: 'sensor-lost', sensor: 'input-speed' },
      'input',
      '',
      'without the input there is no ratio at all',
    ],
    [
      { kind: 'sensor-lost', sensor: 'output-speed' },
      '',
      '',
      'nothing here watches it, and the ratio is gone',
    ],
  ])('%o: sets %s, could %s (%s)', (fault, sets, could) => {
    const named = (state: string) =>
      codesWith(unit, fault)
        .filter((verdict) => verdict.state === state)
        .map((verdict) => verdict.code.id)
        .join(' ');
    expect(named('sets')).toBe(sets);
    expect(named('could')).toBe(could);
  });
});

test('D15 the own code watches the part at fault; the ratio is a consequence', () => {
  const set = codesWith(unit, { kind: 'element-fails', element: 'B1' }).filter(
    ({ state }) => state === 'sets',
  );
  expect(set.map(({ own }) => own)).toEqual([false, false]);
  const unplugged = codesWith(unit, { kind: 'solenoid-unplugged', solenoid: 'S1' });
  expect(unplugged.filter(({ own }) => own).map((verdict) => verdict.code.id)).toEqual([
    'circuit-1',
    'loose-1',
    'stuck-1',
  ]);
});

test('D14 with no sensors no ratio code can set, whatever is wrong', () => {
  const blind = makeUnit({ ...deck, sensors: [] });
  for (const fault of faultSpace(blind))
    for (const { code: each, state } of codesWith(blind, fault))
      if (each.kind === 'ratio') expect(state).toBe('cannot');
});

test('D14 with a circuit broken its code sets, and with none broken none does', () => {
  for (const fault of faultSpace(unit))
    for (const { code: each, state } of codesWith(unit, fault)) {
      if (each.kind !== 'circuit' || each.watches[0] !== 'solenoid:S1') continue;
      const broken =
        fault.kind === 'connector-off' ||
        (fault.kind === 'supply-lost' && fault.supply === 'main') ||
        (fault.kind === 'solenoid-unplugged' && fault.solenoid === 'S1');
      expect(state).toBe(broken ? 'sets' : 'cannot');
    }
});
