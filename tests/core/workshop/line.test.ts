import { describe, expect, test } from 'vitest';
import { checkDraft } from '../../../src/content/draft.ts';
import { lineShown } from '../../../src/core/questions/describe/seats.ts';
import type { DeckDraft } from '../../../src/core/workshop/draft.ts';
import { applyEdit } from '../../../src/core/workshop/draft.ts';
import { addSeat, drawnLine, hiddenFace, seenFace } from '../../../src/core/workshop/line.ts';
import { unitToDraw } from '../../../src/core/workshop/train.ts';
import { baseDeck } from '../../content/base.ts';
import { shippedDecks } from '../../units.ts';

const parts: DeckDraft = {
  shaftLine: [{ id: 'pump', name: 'pump' }, { id: 'drum' }, { id: 'hub' }, { id: 'sun' }],
};
const bearing = { kind: 'thrust-bearing', faces: { A: { touches: 'pump' }, B: { touches: 'drum' } } };

describe('the shaft line as far as it can be drawn', () => {
  test.each<[string, DeckDraft, string[]]>([
    ['a seat between two bodies', { ...parts, seats: [{ id: 'T1', ...bearing }] }, ['T1']],
    ['one whose kind is not said', { ...parts, seats: [{ id: 'T1', faces: bearing.faces }] }, []],
    ['one that touches nobody known', { ...parts, seats: [{ id: 'T1', ...bearing, faces: { A: { touches: 'x' }, B: { touches: 'drum' } } }] }, []],
    ['one with both faces against one body', { ...parts, seats: [{ id: 'T1', ...bearing, faces: { A: { touches: 'pump' }, B: { touches: 'pump' } } }] }, []],
    ['a seat against a seat that cannot be drawn', { ...parts, seats: [{ id: 'T1', ...bearing, faces: { A: { touches: 'T2' }, B: { touches: 'drum' } } }, { id: 'T2' }] }, []],
    ['a figure half typed', { ...parts, seats: [{ id: 'T1', ...bearing, size: { inner: { value: '4', unit: 'mm' }, outer: { value: '6.', unit: 'mm' } } }] }, ['T1']],
  ])('%s', (_, draft, ids) => {
    const line = drawnLine(draft);
    expect(line.seats.map(({ id }) => id)).toEqual(ids);
    const { deck } = unitToDraw(draft, line);
    expect(lineShown(deck, { kind: 'shaft-line' })).toHaveLength(4 + ids.length);
  }); // biome-ignore format: a table reads across

  test('a whole line is drawn as the deck has it', () => {
    for (const deck of shippedDecks()) {
      const { shaftLine, seats } = drawnLine(deck as DeckDraft);
      expect(shaftLine.map(({ id }) => id)).toEqual((deck.shaftLine ?? []).map(({ id }) => id));
      expect(seats).toEqual(
        (deck.seats ?? []).map(({ turned: _t, source: _s, verified: _v, unsure: _u, note: _n, measuredBy: _m, ...seat }) => seat),
      ); // biome-ignore format: fields read across
    }
  });
});

describe('a new seat', () => {
  test('its face A looks to the front: what is seen from there, whichever end it is noted from', () => {
    const front = applyEdit(parts, addSeat(parts, 'front', 'pump', 'drum'));
    expect(front.seats).toEqual([
      { id: 'T1', place: 1, viewedFrom: 'front', faces: { A: { touches: 'pump' }, B: { touches: 'drum' } } },
    ]);
    expect([seenFace(front, 0), hiddenFace(front, 0)]).toEqual(['A', 'B']);
    const rear = applyEdit(parts, addSeat(parts, 'rear', 'pump', 'drum'));
    expect([seenFace(rear, 0), hiddenFace(rear, 0)]).toEqual(['B', 'A']);
  });

  test('a deck that letters its faces the other way round is read as it is', () => {
    const faces = { A: { touches: 'drum' }, B: { touches: 'pump' } };
    const draft: DeckDraft = {
      ...parts,
      seats: [{ id: 'T1', kind: 'thrust-bearing', viewedFrom: 'front', faces }],
    };
    expect(seenFace(draft, 0)).toBe('B');
  });

  test('numbers go from front to rear; one put between moves those behind it', () => {
    const kinds = (draft: DeckDraft): DeckDraft => ({
      ...draft,
      seats: draft.seats?.map((seat) => ({ kind: 'thrust-bearing', ...seat })),
    });
    let draft = kinds(applyEdit(parts, addSeat(parts, 'front', 'pump', 'drum')));
    draft = kinds(applyEdit(draft, addSeat(draft, 'front', 'hub', 'sun')));
    draft = kinds(applyEdit(draft, addSeat(draft, 'front', 'drum', 'hub')));
    expect(draft.seats?.map(({ id, place }) => [id, place])).toEqual([
      ['T1', 1],
      ['T2', 3],
      ['T3', 2],
    ]);
  });

  test('the checks find nothing against a line written so', () => {
    const deck = baseDeck();
    const bare = Object.fromEntries(Object.entries(deck).filter(([part]) => !['seats', 'fits', 'cautions', 'aliases'].includes(part)));
    let draft = { ...bare, shaftLine: parts.shaftLine } as DeckDraft;
    for (const [front, rear] of [['hub', 'sun'], ['pump', 'drum'], ['drum', 'hub']] as const) {
      draft = applyEdit(draft, addSeat(draft, 'rear', front, rear));
      const index = draft.seats!.length - 1;
      draft = applyEdit(draft, { kind: 'set', at: ['seats', index, 'kind'], value: 'thrust-washer' });
      draft = applyEdit(draft, { kind: 'set', at: ['seats', index, 'faces', seenFace(draft, index), 'mark'], value: 'grooves' });
      draft = applyEdit(draft, { kind: 'set', at: ['seats', index, 'faces', hiddenFace(draft, index), 'mark'], value: 'plain' });
    }
    const { missing, found } = checkDraft(draft);
    expect([...missing, ...found].filter(({ place, severity }) => severity === 'error' && /seat|shaftLine/.test(place.pointer))).toEqual([]);
  }); // biome-ignore format: edits read across
});
