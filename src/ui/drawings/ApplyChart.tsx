/** The apply chart: ranges down, elements across. A covered cell holds nothing but its question mark. */
import { Fragment } from 'react';
import { nameAlone, say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Drawing } from '../../core/questions/question.ts';
import { makeDecimal } from '../../core/rational.ts';
import type { DeckElement } from '../../core/unit/deck.ts';
import type { Range, Row, Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { ChartMark, type Mark } from './marks.tsx';
import { Scroller } from './Scroller.tsx';

export type ChartDrawing = Extract<Drawing, { kind: 'chart' }>;

interface Props {
  readonly drawing: ChartDrawing;
  readonly unit: Unit;
  readonly say: Say;
}

type ChartRow = Row & Partial<Pick<Range, 'ratio' | 'decimals'>>;

interface Cell {
  readonly state: Mark | 'off' | 'covered';
  readonly isUnsure: boolean;
}

/** Ids up to this long stand level in their heads. */
const SHORT_ID = 4;

function rowsOf({ ranges, neutrals }: Unit, ids: readonly string[] | undefined): ChartRow[] {
  const all: ChartRow[] = [...ranges, ...neutrals];
  return ids ? ids.flatMap((id) => all.find((row) => row.id === id) ?? []) : all;
}

function cellOf(drawing: ChartDrawing, unit: Unit, row: ChartRow, element: DeckElement): Cell {
  if (drawing.hiddenRows?.includes(row.id) || drawing.hiddenColumns?.includes(element.id)) {
    return { state: 'covered', isUnsure: false };
  }
  const on = element.kind === 'one-way' ? 'one-way' : 'on';
  return {
    state: row.applied.includes(element.id) ? on : 'off',
    isUnsure: !unit.sure(`cell:${row.id}/${element.id}`),
  };
}

const CELL_WORDS = {
  on: 'drawing.on',
  'one-way': 'drawing.one-way-holds',
  off: 'drawing.off',
  covered: 'drawing.covered',
} as const;

function CellContent({ cell, say }: { cell: Cell; say: Say }) {
  const { state, isUnsure } = cell;
  return (
    <>
      {state === 'covered' && <span aria-hidden="true">?</span>}
      {state === 'off' && <span className="dr-off" aria-hidden="true" />}
      {(state === 'on' || state === 'one-way') && <ChartMark mark={state} />}
      {isUnsure && <span aria-hidden="true">*</span>}
      <span className="dr-unseen">
        {say(phrase(CELL_WORDS[state]))}
        {isUnsure && `, ${say(phrase('drawing.unsure'))}`}
      </span>
    </>
  );
}

function RatioCell({ row, isCovered, say }: { row: ChartRow; isCovered: boolean; say: Say }) {
  if (isCovered) return <CellContent cell={{ state: 'covered', isUnsure: false }} say={say} />;
  if (!row.ratio) {
    return (
      <>
        <span aria-hidden="true">–</span>
        <span className="dr-unseen">{say(phrase('drawing.no-ratio'))}</span>
      </>
    );
  }
  const ratio = makeDecimal(row.ratio, row.decimals ?? 3).replace('-', '−');
  return <>{say(phrase('text', { text: ratio }))}</>;
}

/** Says which mark means what, only for marks that are there. */
function Key({ cells, say }: { cells: readonly Cell[]; say: Say }) {
  const has = (state: Cell['state']) => cells.some((cell) => cell.state === state);
  return (
    <ul className="dr-key" aria-hidden="true">
      {has('on') && (
        <li>
          <ChartMark mark="on" /> {say(phrase('drawing.on'))}
        </li>
      )}
      {has('one-way') && (
        <li>
          <ChartMark mark="one-way" /> {say(phrase('drawing.one-way-holds'))}
        </li>
      )}
      {has('covered') && <li>? {say(phrase('drawing.covered'))}</li>}
      {cells.some((cell) => cell.isUnsure) && <li>* {say(phrase('drawing.unsure'))}</li>}
    </ul>
  );
}

export function ApplyChart({ drawing, unit, say }: Props) {
  const { elements } = unit.deck.train;
  const rows = rowsOf(unit, drawing.rows);
  const isLitRow = (row: ChartRow) => drawing.litRows?.includes(row.id) ?? false;
  const isLitColumn = (element: DeckElement) => drawing.litColumns?.includes(element.id) ?? false;
  const marked = <span className="dr-unseen">, {say(phrase('drawing.marked'))}</span>;
  const grid = rows.map((row) => elements.map((element) => cellOf(drawing, unit, row, element)));
  const named = elements.filter((element) => element.name && element.name !== element.id);
  const turned = elements.some((element) => element.id.length > SHORT_ID);
  const title = say(phrase('drawing.chart'));
  return (
    <>
      <Scroller label={say(phrase('drawing.scroll', { drawing: title }))}>
        <table className={`dr-chart${turned ? ' dr-chart-turned' : ''}`}>
          <thead>
            <tr>
              <th scope="col">{say(phrase('drawing.range'))}</th>
              {elements.map((element) => (
                <th
                  scope="col"
                  key={element.id}
                  className={isLitColumn(element) ? 'dr-lit-column' : undefined}
                >
                  <span className="dr-head">{element.id}</span>
                  {isLitColumn(element) && marked}
                </th>
              ))}
              {drawing.showRatios && (
                <th scope="col" className="dr-ratio">
                  {say(phrase('drawing.ratio'))}
                </th>
              )}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              <tr key={row.id} className={isLitRow(row) ? 'dr-lit-row' : undefined}>
                <th scope="row">
                  {say(thing('range', row.id))}
                  {isLitRow(row) && marked}
                </th>
                {elements.map((element, column) => (
                  <td key={element.id} className={isLitColumn(element) ? 'dr-lit-column' : undefined}>
                    <CellContent cell={grid[index]![column]!} say={say} />
                  </td>
                ))}
                {drawing.showRatios && (
                  <td className="dr-ratio">
                    <RatioCell
                      row={row}
                      isCovered={drawing.hiddenRows?.includes(row.id) ?? false}
                      say={say}
                    />
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
      <Key cells={grid.flat()} say={say} />
      {named.length > 0 && (
        <details className="dr-more">
          <summary>{say(phrase('drawing.element-names'))}</summary>
          <dl className="dr-names">
            {named.map((element) => (
              <Fragment key={element.id}>
                <dt>{element.id}</dt>
                <dd>{say(nameAlone('element', element.id))}</dd>
              </Fragment>
            ))}
          </dl>
        </details>
      )}
    </>
  );
}
