/**
 * An apply chart as a table: a line a range, a column an element, or the other way round. "X" is on, blank is off,
 * "(X)" is on as one-ways are charted, "?" is not sure. A column "ratio" holds what plate or book states. The chart
 * is read, not solved: whether it can be right is for the checks of src/content.
 */
import { fail, type Result } from '../../core/result.ts';
import type { Deck } from '../../core/unit/deck.ts';
import { cellsOf, idFrom, Problems, type TableProblem } from './records.ts';
import { type Cells, writeTable } from './table.ts';

export interface ChartRow {
  readonly id: string;
  readonly name?: string;
  readonly applied: readonly string[];
  /** Of those, the ones in brackets. */
  readonly bracketed: readonly string[];
  /** Elements whose cell, on or off, is marked with "?". */
  readonly unsure: readonly string[];
  /** Decimal text with a point. */
  readonly ratio?: string;
}

export interface ReadChart {
  readonly elements: readonly { readonly id: string; readonly name?: string }[];
  readonly ranges: readonly ChartRow[];
  /** Rows called neutral or park. */
  readonly neutral: readonly ChartRow[];
  /** The table had a line an element; it was turned round. */
  readonly transposed: boolean;
}

const ON = ['x', '×', '✓', '✔', '●', '•', 'on', '1'];
const OFF = ['', '-', '–', '—', 'off', '0'];
const RATIO = /^(ratio|i)$/i;
const NEUTRAL = /^(n|p|neutral|park)$/i;
/** How ranges are called when nothing is known: 1 to 12, 1st, R, R1, D, L, N, P, reverse. */
const RANGE = /^(\d{1,2}(st|nd|rd|th)?|R(ev(erse)?)?\.?\d?|[DLNP]\d?|neutral|park|ratio|i)$/i;

interface Mark {
  readonly on: boolean;
  readonly bracketed: boolean;
  readonly unsure: boolean;
}

function readMark(text: string): Mark | null {
  const unsure = text.includes('?');
  const bare = text.replaceAll('?', '').trim().toLowerCase();
  const inside = /^[([](.*)[)\]]$/.exec(bare)?.[1]?.trim();
  if (inside !== undefined) return ON.includes(inside) ? { on: true, bracketed: true, unsure } : null;
  if (ON.includes(bare)) return { on: true, bracketed: false, unsure };
  return OFF.includes(bare) ? { on: false, bracketed: false, unsure } : null;
}

/** Whether a line is an element: by names that are known, else by which edge looks more like ranges. */
function isTransposed(cells: Cells, known: Pick<Known, 'elements' | 'ranges'>): boolean {
  const [top, side] = [cells[0]!.slice(1), cells.slice(1).map((row) => row[0]!)];
  const share = (edge: readonly string[], is: (title: string) => boolean) =>
    edge.filter(is).length / Math.max(1, edge.length);
  const among = (names: readonly string[]) => (title: string) => names.includes(idFrom(title).id);
  const [elements, ranges] = [among(known.elements), among(known.ranges)];
  const upright = share(top, elements) + share(side, ranges);
  const lying = share(side, elements) + share(top, ranges);
  if (upright !== lying) return lying > upright;
  return share(top, (title) => RANGE.test(title)) > share(side, (title) => RANGE.test(title));
}

const turned = (cells: Cells): Cells => cells[0]!.map((_, column) => cells.map((row) => row[column]!));

export interface Known {
  /** Ids the deck has already: they tell which way round the table lies. */
  readonly elements: readonly string[];
  readonly ranges: readonly string[];
}

/** Every problem at once, with line and column of the table as it was given. */
export function readChart(
  text: string,
  known: Known = { elements: [], ranges: [] },
): Result<ReadChart, readonly TableProblem[]> {
  const table = cellsOf(text);
  if (!table.ok) return table;
  if (table.value.length < 2 || table.value[0]!.length < 2)
    return fail([{ code: 'no-rows', line: 1, column: 1, text: '' }]);
  const transposed = isTransposed(table.value, known);
  const cells = transposed ? turned(table.value) : table.value;
  const problems = new Problems();
  const wrong = (code: TableProblem['code'], row: number, column: number) =>
    problems.add(
      code,
      (transposed ? column : row) + 1,
      (transposed ? row : column) + 1,
      cells[row]![column]!,
    );

  const [header, ...rows] = cells as [readonly string[], ...(readonly string[])[]];
  const columns = header.map((title, column) => ({ title, column, ...idFrom(title) })).slice(1);
  const filled = (column: number) => rows.some((row) => row[column] !== '');
  const ratioColumn = columns.find(({ title }) => RATIO.test(title))?.column;
  const elements = columns.filter(
    ({ column, title }) => column !== ratioColumn && (title !== '' || filled(column)),
  );
  const seen = { elements: new Set<string>(), rows: new Set<string>() };
  const claim = (ids: Set<string>, id: string, row: number, column: number) => {
    if (id === '') wrong('id-missing', row, column);
    else if (ids.has(id)) wrong('id-twice', row, column);
    ids.add(id);
  };
  for (const { id, column } of elements) claim(seen.elements, id, 0, column);

  const read = rows.map((row, index): ChartRow => {
    const { id, name } = idFrom(row[0]!);
    claim(seen.rows, id, index + 1, 0);
    const marks = elements.map(({ id: element, column }) => {
      const mark = readMark(row[column]!);
      if (!mark) wrong('mark-unknown', index + 1, column);
      return { element, mark };
    });
    const with_ = (is: (mark: Mark) => boolean) =>
      marks.flatMap(({ element, mark }) => (mark && is(mark) ? [element] : []));
    const ratio = ratioColumn === undefined ? '' : row[ratioColumn]!.replace(',', '.').replace('−', '-');
    if (ratio !== '' && !/^-?\d{1,6}(\.\d{1,9})?$/.test(ratio))
      wrong('number-wrong', index + 1, ratioColumn!);
    return {
      id,
      ...(name !== undefined && { name }),
      applied: with_(({ on }) => on),
      bracketed: with_(({ bracketed }) => bracketed),
      unsure: with_(({ unsure }) => unsure),
      ...(ratio !== '' && { ratio }),
    };
  });
  return problems.unless({
    elements: elements.map(({ id, name }) => ({ id, ...(name !== undefined && { name }) })),
    ranges: read.filter(({ id }) => !NEUTRAL.test(id)),
    neutral: read.filter(({ id }) => NEUTRAL.test(id)),
    transposed,
  });
}

/** The deck's chart as a table that `readChart` reads back: a line a row, one-ways in brackets, "?" where unsure. */
export function writeChart({ train, chart }: Pick<Deck, 'train' | 'chart'>): string {
  const rows = [...chart.ranges, ...(chart.neutral ?? [])];
  const mark = (on: boolean, oneWay: boolean, unsure: boolean) =>
    `${on ? (oneWay ? '(X)' : 'X') : ''}${unsure ? '?' : ''}`;
  return writeTable(
    ['range', ...train.elements.map(({ id }) => id), 'ratio'],
    rows.map((row) => [
      row.id,
      ...train.elements.map(({ id, kind }) =>
        mark(row.applied.includes(id), kind === 'one-way', row.unsureCells?.includes(id) ?? false),
      ),
      'ratio' in row && typeof row.ratio === 'string' ? row.ratio : null,
    ]),
  );
}
