import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  applyEdit,
  type DeckDraft,
  type Edit,
  emptyDraft,
  freshId,
  valueAt,
} from '../../../src/core/workshop/draft.ts';

const draft: DeckDraft = {
  unit: 'A',
  chart: { ranges: [{ id: '1', applied: ['B1'] }, { id: '2' }, { id: '3' }] },
};
const ids = (made: DeckDraft) => made.chart?.ranges?.map(({ id }) => id);

describe('edits of a draft', () => {
  test.each<[string, Edit, Place: (made: DeckDraft) => unknown, expected: unknown]>([
    ['a field', { kind: 'set', at: ['unit'], value: 'AB' }, ({ unit }) => unit, 'AB'],
    ['a field deep in a list', { kind: 'set', at: ['chart', 'ranges', 1, 'ratio'], value: '2.' }, ({ chart }) => chart?.ranges?.[1], { id: '2', ratio: '2.' }],
    ['a field with nothing around it yet', { kind: 'set', at: ['lever', 'valve'], value: 'none' }, ({ lever }) => lever, { valve: 'none' }],
    ['a field taken away', { kind: 'set', at: ['unit'], value: undefined }, (made) => 'unit' in made, false],
    ['an entry at the end', { kind: 'insert', at: ['chart', 'ranges'], value: { id: '4' } }, ids, ['1', '2', '3', '4']],
    ['an entry between', { kind: 'insert', at: ['chart', 'ranges'], index: 1, value: { id: '1b' } }, ids, ['1', '1b', '2', '3']],
    ['the first entry of a list', { kind: 'insert', at: ['solenoids'], value: { id: 'SA' } }, ({ solenoids }) => solenoids, [{ id: 'SA' }]],
    ['an entry less', { kind: 'remove', at: ['chart', 'ranges', 1] }, ids, ['1', '3']],
    ['an entry moved down', { kind: 'move', at: ['chart', 'ranges'], from: 0, to: 2 }, ids, ['2', '3', '1']],
    ['an entry moved up', { kind: 'move', at: ['chart', 'ranges'], from: 2, to: 0 }, ids, ['3', '1', '2']],
    ['two as one', { kind: 'all', edits: [{ kind: 'remove', at: ['chart', 'ranges', 0] }, { kind: 'set', at: ['chart', 'ranges', 0, 'id'], value: 'x' }] }, ids, ['x', '3']],
  ])('%s', (_, edit, read, expected) => {
    const before = structuredClone(draft);
    expect(read(applyEdit(draft, edit))).toEqual(expected);
    expect(draft).toEqual(before);
  }); // biome-ignore format: a table reads across

  test.each<[string, Edit]>([
    ['a field beyond the list', { kind: 'set', at: ['chart', 'ranges', 9, 'id'], value: 'x' }],
    ['an entry that is not there', { kind: 'remove', at: ['chart', 'ranges', 3] }],
    ['a position that is none', { kind: 'move', at: ['chart', 'ranges'], from: 0, to: 7 }],
    ['the same value again', { kind: 'set', at: ['unit'], value: 'A' }],
  ])('%s leaves the draft as it is', (_, edit) => {
    expect(applyEdit(draft, edit)).toBe(draft);
  });

  test('what an edit does not touch is the very same', () => {
    const made = applyEdit(draft, { kind: 'set', at: ['chart', 'ranges', 1, 'id'], value: '2a' });
    expect(made.chart?.ranges?.[0]).toBe(draft.chart?.ranges?.[0]);
    expect(made.chart?.ranges?.[1]).not.toBe(draft.chart?.ranges?.[1]);
  });

  test('a field keeps its place in the file when its value changes', () => {
    const made = applyEdit({ id: 'a', unit: 'b', title: 'c' }, { kind: 'set', at: ['unit'], value: 'd' });
    expect(Object.keys(made)).toEqual(['id', 'unit', 'title']);
  });

  test('valueAt reads what was set, and nothing that objects have by themselves', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('a', 'b', 'toString'), { minLength: 1, maxLength: 4 }), fc.string(), (at, value) => {
        expect(valueAt(applyEdit(emptyDraft(), { kind: 'set', at, value }), at)).toBe(value);
      }),
    ); // biome-ignore format: one property
    expect(valueAt({}, ['toString'])).toBeUndefined();
    expect(valueAt([], ['length'])).toBeUndefined();
  });

  test.each([
    ['P', [], 'P1'],
    ['P', ['P1', 'P2'], 'P3'],
    ['P', ['P2', undefined], 'P1'],
    ['s', ['s1', 's3'], 's2'],
  ])('the first free id from %j beside %j is %j', (stem, taken, id) => {
    expect(freshId(stem, taken)).toBe(id);
  });
});
