/**
 * Tables as text. Written as RFC 4180 says (comma, CRLF, quotes doubled), with a mark at the start so that
 * spreadsheets know it for UTF-8. Read more kindly: tabs, semicolons or commas, whichever divides the lines most
 * evenly. Parsing and quoting are papaparse's.
 */
import Papa from 'papaparse';
import { fail, pass, type Result } from '../../core/result.ts';
import { type ExchangeTrouble, trouble } from '../trouble.ts';

export type Cells = readonly (readonly string[])[];

/** Letters, lines, columns and cells of the largest table that is read; a whole deck has less in each. */
export const MAX_LETTERS = 1_000_000;
export const MAX_LINES = 5000;
export const MAX_COLUMNS = 500;
export const MAX_CELLS = 100_000;

/** The first of equally even ones is taken. */
const DIVIDERS = ['\t', ';', ','] as const;

const BYTE_ORDER_MARK = '\uFEFF';

function divided(text: string, delimiter: string): string[][] {
  const { data } = Papa.parse<string[]>(text, { delimiter, skipEmptyLines: 'greedy' });
  return data.map((row) => row.map((cell) => cell.trim()));
}

/** How well a divider fits: the share of lines with the most common width, and that width; 0 for a single column. */
function evenness(rows: readonly (readonly string[])[]): readonly [share: number, width: number] {
  const widths = new Map<number, number>();
  for (const { length } of rows) widths.set(length, (widths.get(length) ?? 0) + 1);
  const [[width, times] = [0, 0]] = [...widths].sort((a, b) => b[1] - a[1] || b[0] - a[0]);
  return width < 2 ? [0, width] : [times / rows.length, width];
}

/** The cells of a table, as wide as its widest line, blanks around them taken off; blank lines left out. */
export function readTable(text: string): Result<Cells, ExchangeTrouble> {
  if (text.length > MAX_LETTERS) return fail(trouble('too-large'));
  const bare = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  if (bare.trim() === '') return fail(trouble('empty'));
  const readings = DIVIDERS.map((divider) => divided(bare, divider));
  const best = readings.reduce((a, b) => {
    const [[shareA, widthA], [shareB, widthB]] = [evenness(a), evenness(b)];
    return shareB > shareA || (shareB === shareA && widthB > widthA) ? b : a;
  });
  const width = best.reduce((most, { length }) => Math.max(most, length), 0);
  if (best.length > MAX_LINES || width > MAX_COLUMNS || width * best.length > MAX_CELLS)
    return fail(trouble('too-large'));
  return pass(best.map((row) => [...row, ...new Array<string>(width - row.length).fill('')]));
}

export type Cell = string | number | boolean | null;

/**
 * Words a person wrote, made harmless for spreadsheets: what starts like a formula gets an apostrophe before it.
 * Only for free text: a number may well start with a minus.
 */
export const freeText = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);

/** Takes back what `freeText` put before it. */
export const fromFreeText = (text: string): string => (/^'[=+\-@\t\r]/.test(text) ? text.slice(1) : text);

export function writeTable(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const data = [header, ...rows].map((row) => row.map((cell) => (cell === null ? '' : String(cell))));
  return `${BYTE_ORDER_MARK}${Papa.unparse(data, { delimiter: ',', newline: '\r\n' })}\r\n`;
}
