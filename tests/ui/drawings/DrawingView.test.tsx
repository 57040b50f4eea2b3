// @vitest-environment jsdom
import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { say as phrase } from '../../../src/core/questions/phrase.ts';
import type { Drawing } from '../../../src/core/questions/question.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { DrawingView } from '../../../src/ui/drawings/DrawingView.tsx';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';

afterEach(cleanup);

const plain = deckOf(PUBLISHED.find((train) => train.id === 'four-range-two-crossed-sets')!);
const sourced: Deck = {
  ...plain,
  unit: 'Crossed four',
  revision: 7,
  sources: [
    { id: 'sheet', title: 'Shop sheet 4' },
    { id: 'count', title: 'Teeth counted at the bench' },
    { id: 'other', title: 'Not drawn from' },
  ],
  chart: { ...plain.chart, ranges: plain.chart.ranges.map((row) => ({ ...row, source: 'sheet' })) },
  train: { ...plain.train, gearsets: plain.train.gearsets.map((set) => ({ ...set, source: 'count' })) },
};
const text = (words: string) => phrase('text', { text: words });

const show = (drawing: Drawing, deck: Deck = sourced) =>
  render(<DrawingView drawing={drawing} unit={makeUnit(deck)} say={makeSay(deck)} />);

const TABLE: Drawing = {
  kind: 'table',
  columns: [text('Before'), text('After')],
  rows: [
    { head: text('OD'), cells: [text('off'), text('on')], lit: true },
    { head: text('UD'), cells: [text('on'), text('on')] },
  ],
};

describe('title block', () => {
  test.each([
    ['Apply chart', { kind: 'chart' } as const, ['Crossed four', '7', 'Shop sheet 4']],
    [
      'Gear train, half section',
      { kind: 'train' } as const,
      ['Crossed four', '7', 'Teeth counted at the bench'],
    ],
    ['Table', TABLE, ['Crossed four', '7']],
  ])('%s: unit, revision and the sources of what is drawn', (title, drawing, values) => {
    show(drawing);
    const caption = screen.getByText(title, { selector: 'figcaption *' }).closest('figcaption')!;
    expect(caption.parentElement!.tagName).toBe('FIGURE');
    expect(
      within(caption)
        .getAllByRole('definition')
        .map((value) => value.textContent),
    ).toEqual(values);
  });

  test('says so when no source is stated', () => {
    show({ kind: 'chart' }, plain);
    expect(screen.getByText('not stated')).toBeTruthy();
  });

  test('names only sources of the rows shown', () => {
    const ranges = sourced.chart.ranges.map((row, index) =>
      index === 0 ? { ...row, source: 'other' } : row,
    );
    show({ kind: 'chart', rows: ['2', '3'] }, { ...sourced, chart: { ...sourced.chart, ranges } });
    expect(screen.queryByText(/Not drawn from/)).toBeNull();
  });
});

describe('a table of words', () => {
  test('has heads for columns and rows, and a word for the lit row', () => {
    show(TABLE);
    expect(screen.getAllByRole('columnheader').map((head) => head.textContent)).toEqual(['Before', 'After']);
    expect(screen.getByRole('rowheader', { name: 'OD, marked' })).toBeTruthy();
    const row = screen.getByRole('rowheader', { name: 'UD' }).closest('tr')!;
    expect(
      within(row)
        .getAllByRole('cell')
        .map((cell) => cell.textContent),
    ).toEqual(['on', 'on']);
  });

  test('the column of row heads may be named as well', () => {
    show({ ...TABLE, columns: [text('Element'), ...TABLE.columns] } as Drawing);
    const heads = screen.getAllByRole('columnheader').map((head) => head.textContent);
    expect(heads).toEqual(['Element', 'Before', 'After']);
    expect(document.querySelector('thead td')).toBeNull();
  });
});

describe('a drawing wider than the page', () => {
  test('becomes a stop for the keyboard, with a visible edge and a name, only then', () => {
    show({ kind: 'chart' });
    expect(screen.queryByRole('region')).toBeNull();
    cleanup();
    const wide = (key: 'scrollWidth' | 'clientWidth', width: number) =>
      Object.defineProperty(HTMLElement.prototype, key, { configurable: true, get: () => width });
    wide('scrollWidth', 500);
    wide('clientWidth', 300);
    try {
      show({ kind: 'chart' });
      const region = screen.getByRole('region', {
        name: 'Apply chart, wider than the screen: scroll sideways',
      });
      expect(region.tabIndex).toBe(0);
      expect(region.parentElement!.classList.contains('dr-more-right')).toBe(true);
    } finally {
      Reflect.deleteProperty(HTMLElement.prototype, 'scrollWidth');
      Reflect.deleteProperty(HTMLElement.prototype, 'clientWidth');
    }
  });
});
