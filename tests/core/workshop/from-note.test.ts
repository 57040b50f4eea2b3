import { describe, expect, test } from 'vitest';
import { applyEdit, type DeckDraft, valueAt } from '../../../src/core/workshop/draft.ts';
import { type BenchNote, entryFromNote, NOTE_TARGETS } from '../../../src/core/workshop/from-note.ts';

const note: BenchNote = {
  part: 'thrust washer',
  seenFrom: 'rear',
  text: 'three tabs',
  thickness: { value: '1,78', unit: 'mm' },
};
const blank: BenchNote = { part: '', seenFrom: null, text: '', thickness: { value: '', unit: 'mm' } };
const draft: DeckDraft = {
  seats: [{ id: 'T1', place: 4 }],
  stacks: [{ id: 'B1', items: [{ id: 'plate-1', kind: 'steel' }] }],
  fits: [{ id: 'end-play', readings: [] }],
  sequences: [{ id: 'strip', steps: [{ id: 'thrust-washer-three-tabs', text: 'x' }] }],
};

/** Target, what holds it, where it lands, what stands there, and what evidence is found by; worked out by hand. */
const ROWS = [
  ['seat', '', ['seats', 1], { id: 'T2', name: 'thrust washer', place: 5, viewedFrom: 'rear', faces: { B: { mark: 'three tabs' } }, size: { thickness: { value: '1.78', unit: 'mm' } } }, 'seats:T2'],
  ['plate', 'B1', ['stacks', 0, 'items', 1], { id: 'plate-2', name: 'thrust washer', thickness: { value: '1.78', unit: 'mm' }, note: 'three tabs' }, 'stacks/B1:plate-2'],
  ['step', 'strip', ['sequences', 0, 'steps', 1], { id: 'thrust-washer-three-tabs-2', text: 'thrust washer: three tabs' }, 'sequences/strip:thrust-washer-three-tabs-2'],
  ['step', '', ['sequences', 1], { id: 'strip-1', steps: [{ id: 'thrust-washer-three-tabs', text: 'thrust washer: three tabs' }] }, 'sequences/strip-1:thrust-washer-three-tabs'],
  ['reading', 'end-play', ['fits', 0, 'readings', 0], { id: 'bench-1', play: { value: '1.78', unit: 'mm' }, note: 'thrust washer: three tabs' }, 'fits/end-play:bench-1'],
] as const; // biome-ignore format: a table reads across

describe('a bench note becomes', () => {
  test.each(ROWS)('a %s (%s)', (target, within, at, value, record) => {
    const made = entryFromNote(draft, note, target, within)!;
    expect(made.record).toBe(record);
    expect(valueAt(applyEdit(draft, made.edit), at)).toEqual(value);
  });

  test('seen from the front, what is before the eye is the face that looks to the front', () => {
    const { edit } = entryFromNote({}, { ...note, seenFrom: 'front' }, 'seat', '')!;
    expect(applyEdit({}, edit).seats?.[0]).toMatchObject({ place: 1, faces: { A: { mark: 'three tabs' } } });
  });

  test('nothing where its pack or its fit is not there', () => {
    expect(entryFromNote(draft, note, 'plate', 'C9')).toBeNull();
    expect(entryFromNote(draft, note, 'reading', 'none')).toBeNull();
  });

  test.each(NOTE_TARGETS)('an empty note makes an empty %s, and nothing is invented', (target) => {
    const within = { seat: '', plate: 'B1', step: 'strip', reading: 'end-play' }[target];
    const { edit } = entryFromNote(draft, blank, target, within)!;
    expect(JSON.stringify(edit)).not.toMatch(/undefined|null|NaN|mm/);
  });
});
