import { describe, expect, test } from 'vitest';
import type { DeckDraft } from '../../../src/core/workshop/draft.ts';
import { kindFrom, takeChart } from '../../../src/core/workshop/take-chart.ts';
import { readChart, writeChart } from '../../../src/exchange/csv/chart.ts';
import { PUBLISHED, shippedDecks } from '../../units.ts';

const pasted = (draft: DeckDraft, text: string): DeckDraft => {
  const read = readChart(text);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return takeChart(draft, read.value);
};

describe('what an element is by its letters', () => {
  test.each([
    ['B1', false, 'brake'],
    ['b2 ', false, 'brake'],
    ['2-4 band', false, 'brake'],
    ['Low brake', false, 'brake'],
    ['C1', false, 'clutch'],
    ['K1', false, 'clutch'],
    ['E2', false, 'clutch'],
    ['direct clutch', false, 'clutch'],
    ['F1', false, 'one-way'],
    ['OWC', false, 'one-way'],
    ['low one-way clutch', false, 'one-way'],
    ['sprag', false, 'one-way'],
    ['C1', true, 'one-way'],
    ['A', false, null],
    ['', false, null],
    ['UD', false, null],
  ])('%j, in brackets %s: %s', (words, bracketed, kind) => {
    expect(kindFrom(words, bracketed)).toBe(kind);
  });

  test('published trains letter theirs so; where nothing tells it is left open, never wrong', () => {
    for (const { elements, chart } of PUBLISHED)
      for (const { id, kind } of elements) {
        const oneWay = kind === 'one-way' && chart.some(({ applied }) => applied.includes(id));
        expect([kind, null]).toContain(kindFrom(id, oneWay));
      }
  });
});

describe('a table taken into the draft', () => {
  const TABLE = 'Range\tB1\tC1\tF1\tRatio\n1\tX\t\t(X)\t3,48\n2\t\tX?\t\t1.0\nN\t\t\t\t';

  test('from nothing: elements, rows, what is not sure', () => {
    expect(pasted({}, TABLE)).toEqual({
      train: {
        elements: [
          { id: 'B1', kind: 'brake', between: ['', 'case'] },
          { id: 'C1', kind: 'clutch' },
          { id: 'F1', kind: 'one-way' },
        ],
      },
      chart: {
        ranges: [
          { id: '1', applied: ['B1', 'F1'], ratio: '3.48' },
          { id: '2', applied: ['C1'], unsureCells: ['C1'], ratio: '1.0' },
        ],
        neutral: [{ id: 'N', applied: [] }],
      },
    });
  });

  test('elements that are there stay as they are described, with those the table has not', () => {
    const draft: DeckDraft = { train: { elements: [{ id: 'C1', name: 'high clutch', kind: 'clutch', between: ['a', 'b'] }, { id: 'B9' }] } };
    expect(pasted(draft, TABLE).train?.elements).toEqual([
      ...draft.train!.elements!,
      { id: 'B1', kind: 'brake', between: ['', 'case'] },
      { id: 'F1', kind: 'one-way' },
    ]);
  }); // biome-ignore format: a draft reads across

  test('who verified a row stays with it only while the row is the same', () => {
    const verified = { by: 'I', on: '2026-09-14' };
    const draft: DeckDraft = {
      chart: { ranges: [{ id: '1', name: 'first', applied: ['F1', 'B1'], ratio: '3.48', verified }, { id: '2', name: 'second', applied: ['B1'], ratio: '1.0', verified }] },
    }; // biome-ignore format: a draft reads across
    expect(pasted(draft, TABLE).chart?.ranges).toEqual([
      { id: '1', name: 'first', applied: ['B1', 'F1'], ratio: '3.48', verified },
      { id: '2', name: 'second', applied: ['C1'], unsureCells: ['C1'], ratio: '1.0' },
    ]);
  });

  test('written out and pasted again, a shipped chart is what it was', () => {
    for (const deck of shippedDecks()) {
      const { chart } = pasted(deck as DeckDraft, writeChart(deck));
      const cells = (rows: DeckDraft['chart']) =>
        [...(rows?.ranges ?? []), ...(rows?.neutral ?? [])].map(({ id, applied = [], unsureCells = [], ...row }) => [
          id, applied.toSorted(), unsureCells, 'ratio' in row ? row.ratio : undefined, row.verified,
        ]);
      expect(cells(chart)).toEqual(cells(deck.chart as DeckDraft['chart']));
    } // biome-ignore format: a row reads across
  });
});
