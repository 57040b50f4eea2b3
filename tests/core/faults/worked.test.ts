import { describe, expect, test } from 'vitest';
import { faultChart } from '../../../src/core/faults/chart.ts';
import { faultId } from '../../../src/core/faults/fault.ts';
import { faultSpace } from '../../../src/core/faults/space.ts';
import type { Unit } from '../../../src/core/unit/unit.ts';
import { PUBLISHED } from '../../units.ts';
import { fullUnit } from './decks.ts';
import { WORKED } from './worked.ts';

const WORDS: Readonly<Record<string, string>> = { 'no-drive': 'none', 'tied-up': 'ties' };

/** "none: 1 2 | ties: 4", in the words of the tables. */
function said(unit: Unit, id: string): string {
  const fault = faultSpace(unit).find((candidate) => faultId(candidate) === id)!;
  const groups = new Map<string, string[]>();
  for (const { row, outcome } of faultChart(unit, fault)) {
    if (outcome.kind === 'works') continue;
    const word = outcome.kind === 'becomes' ? `as ${outcome.range}` : (WORDS[outcome.kind] ?? outcome.kind);
    groups.set(word, [...(groups.get(word) ?? []), row.id]);
  }
  const order = (word: string) => ['none', 'ties'].indexOf(word) + (word.startsWith('as') ? 9 : 0);
  return [...groups]
    .sort(([a], [b]) => order(a) - order(b) || a.localeCompare(b))
    .map(([word, rows]) => `${word}: ${rows.join(' ')}`)
    .join(' | ');
}

describe.each(WORKED)('ranges lost and kept, worked by hand: $train', ({ train, rows }) => {
  test.each(rows)('F7 F8 %s: %s (%s)', (fault, does) => {
    expect(said(fullUnit(train), fault)).toBe(does);
  });

  test('every fault of the train is in the table, once', () => {
    const kinds = ['element-fails', 'element-stuck', 'one-way-reversed', 'gearset-stripped'] as const;
    const ids = faultSpace(fullUnit(train), kinds).map(faultId);
    expect(rows.map(([fault]) => fault).sort()).toEqual(ids.sort());
  });
});

test('every published train of more than one range is worked', () => {
  const several = PUBLISHED.filter(({ chart }) => chart.length > 1);
  expect(WORKED.map(({ train }) => train).sort()).toEqual(several.map(({ id }) => id).sort());
});
