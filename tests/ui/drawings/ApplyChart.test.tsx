// @vitest-environment jsdom
import { cleanup, render, screen, within } from '@testing-library/react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, test } from 'vitest';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { ApplyChart, type ChartDrawing } from '../../../src/ui/drawings/ApplyChart.tsx';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, everyUnit, PUBLISHED } from '../../units.ts';

afterEach(cleanup);

const ravigneaux = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);

function draw(drawing: Partial<ChartDrawing>, deck: Deck = ravigneaux) {
  return <ApplyChart drawing={{ kind: 'chart', ...drawing }} unit={makeUnit(deck)} say={makeSay(deck)} />;
}

/** The words a screen reader gets for each cell of a row, head first. */
function spoken(range: string): string[] {
  const row = screen.getByRole('rowheader', { name: new RegExp(`^${range}\\b`) }).closest('tr')!;
  return [...row.children].map((cell) => {
    const copy = cell.cloneNode(true) as Element;
    for (const silent of copy.querySelectorAll('[aria-hidden]')) silent.remove();
    return copy.textContent ?? '';
  });
}

describe('a whole chart', () => {
  test('has the elements across and the rows down, neutral last', () => {
    render(draw({}));
    const heads = screen.getAllByRole('columnheader').map((head) => head.textContent);
    expect(heads).toEqual(['Range', 'C1', 'C2', 'C3', 'B1', 'B2', 'F2']);
    const rows = screen.getAllByRole('rowheader').map((head) => head.textContent);
    expect(rows).toEqual(['1', '1m', '2', '3', '4', 'R', 'N']);
  });

  // Range 1 on the one-way, 1m on the brake: the published chart of this train (tests/published).
  test.each([
    ['1', ['1', 'on', 'off', 'off', 'off', 'off', 'one-way holds']],
    ['1m', ['1m', 'on', 'off', 'off', 'off', 'on', 'off']],
    ['4', ['4', 'off', 'on', 'off', 'on', 'off', 'off']],
    ['N', ['N', 'off', 'off', 'off', 'off', 'off', 'off']],
  ])('row %s reads %j', (range, words) => {
    render(draw({}));
    expect(spoken(range)).toEqual(words);
  });

  test('a one-way has a mark of its own', () => {
    const { container } = render(draw({ rows: ['1'] }));
    expect(container.querySelectorAll('td .dr-mark-on')).toHaveLength(1);
    expect(container.querySelectorAll('td .dr-mark-one-way')).toHaveLength(1);
  });

  test('ratios on request, with a true minus, none where nothing drives', () => {
    render(draw({ showRatios: true, rows: ['R', '4', 'N'] }));
    const last = (range: string) => spoken(range).at(-1);
    // The published ratios of this train (tests/published).
    expect(last('R')).toBe('−2.300');
    expect(last('4')).toBe('0.697');
    expect(last('N')).toBe('none');
  });

  test('only the rows asked for, in the order asked for', () => {
    render(draw({ rows: ['3', '1'] }));
    expect(screen.getAllByRole('rowheader').map((head) => head.textContent)).toEqual(['3', '1']);
  });

  test('lit rows and columns say so without colour', () => {
    render(draw({ litRows: ['2'], litColumns: ['C2'] }));
    expect(screen.getByRole('rowheader', { name: '2, marked' })).toBeTruthy();
    expect(screen.getByRole('columnheader', { name: 'C2, marked' })).toBeTruthy();
    expect(screen.queryAllByText(/marked/)).toHaveLength(2);
  });

  test('a cell that is not verified is starred and said', () => {
    const [first, ...others] = ravigneaux.chart.ranges;
    const ranges = [{ ...first!, unsureCells: ['C2'] }, ...others];
    const { container } = render(draw({}, { ...ravigneaux, chart: { ...ravigneaux.chart, ranges } }));
    expect(spoken('1')[2]).toBe('off, not verified');
    expect(container.querySelectorAll('td')[1]!.textContent).toContain('*');
  });

  test('names of elements stand in a list of their own, heads stay short', () => {
    const elements = ravigneaux.train.elements.map((element) =>
      element.id === 'C1' ? { ...element, name: 'forward clutch' } : element,
    );
    render(draw({}, { ...ravigneaux, train: { ...ravigneaux.train, elements } }));
    expect(screen.getByRole('columnheader', { name: 'C1' })).toBeTruthy();
    const names = screen.getByText('Element names').closest('details')!;
    expect(within(names).getByText('forward clutch').previousElementSibling!.textContent).toBe('C1');
  });
});

describe('covered cells', () => {
  test('hold a question mark and nothing else', () => {
    render(draw({ hiddenRows: ['2'], hiddenColumns: ['B1'], showRatios: true }));
    const row = screen.getByRole('rowheader', { name: '2' }).closest('tr')!;
    const cells = within(row).getAllByRole('cell');
    expect(cells).toHaveLength(7);
    for (const cell of cells) expect(cell.innerHTML).toBe(cells[0]!.innerHTML);
    expect(cells[0]!.textContent).toBe('?covered');
    expect(spoken('3')).toEqual(['3', 'on', 'on', 'off', 'covered', 'off', 'off', '1.000']);
  });

  test('the page is the same whatever a covered row holds, for every unit and row', () => {
    for (const { deck } of everyUnit()) {
      for (const row of deck.chart.ranges) {
        const other = deck.chart.ranges.find((one) => one.applied.join() !== row.applied.join());
        if (!other) continue;
        const { ratio: _, ...unstated } = row;
        const swapped = { ...unstated, applied: other.applied, unsureCells: [] };
        const altered: Deck = {
          ...deck,
          chart: { ...deck.chart, ranges: deck.chart.ranges.map((one) => (one === row ? swapped : one)) },
        };
        const covered = { hiddenRows: [row.id], litRows: [row.id], showRatios: true };
        expect(renderToStaticMarkup(draw(covered, altered)), `${deck.id} ${row.id}`).toBe(
          renderToStaticMarkup(draw(covered, deck)),
        );
      }
    }
  });

  test('the page is the same whatever a covered column holds', () => {
    const neutral = (applied: string[]) => ({
      ...ravigneaux,
      chart: { ...ravigneaux.chart, neutral: [{ id: 'N', applied }] },
    });
    const page = (deck: Deck) => renderToStaticMarkup(draw({ hiddenColumns: ['C1'] }, deck));
    expect(page(neutral(['C1']))).toBe(page(neutral([])));
    expect(page(neutral(['C2']))).not.toBe(page(neutral([])));
    expect(page(ravigneaux).match(/\?<\/span>/g)).toHaveLength(ravigneaux.chart.ranges.length + 1);
  });
});
