/** Tables with a header, a record a line: which columns there are, and what is wrong with a cell, line by line. */
import { type Phrase, say } from '../../core/questions/phrase.ts';
import { fail, pass, type Result } from '../../core/result.ts';
import { type Cells, fromFreeText, readTable } from './table.ts';

/** What is wrong in a table: at this line and column (from 1, the header is line 1), with this text there. */
export interface TableProblem {
  readonly code:
    | 'unreadable'
    | 'no-rows'
    | 'column-missing'
    | 'column-unknown'
    | 'column-twice'
    | 'id-missing'
    | 'id-twice'
    | 'mark-unknown'
    | 'word-unknown'
    | 'number-wrong';
  readonly line: number;
  readonly column: number;
  readonly text: string;
  /** What it might be, where there are only so many. */
  readonly choices?: readonly string[];
}

export const problemPhrase = ({ code, line, column, text, choices }: TableProblem): Phrase =>
  say(`table.${code}`, { line, column, text, choices: choices ?? [] });

/** More than these are not told: nobody reads them, and a table can hold a hundred thousand. */
export const MAX_PROBLEMS = 200;

export class Problems {
  readonly all: TableProblem[] = [];

  add(
    code: TableProblem['code'],
    line: number,
    column: number,
    text: string,
    choices?: readonly string[],
  ): void {
    if (this.all.length >= MAX_PROBLEMS) return;
    this.all.push({ code, line, column, text, ...(choices && { choices }) });
  }

  /** The value, unless something was wrong. */
  unless<T>(value: T): Result<T, readonly TableProblem[]> {
    return this.all.length > 0 ? fail(this.all) : pass(value);
  }
}

export function cellsOf(text: string): Result<Cells, readonly TableProblem[]> {
  const cells = readTable(text);
  return cells.ok ? cells : fail([{ code: 'unreadable', line: 1, column: 1, text: cells.error.code }]);
}

/** One line of a table with a header. */
export interface Line {
  readonly line: number;
  /** Text of a column; '' when it is not there or blank. */
  text(column: string): string;
  /** Where the column stands, from 1. */
  place(column: string): number;
}

/** Lines under a header that has all `needed` columns and none but `needed` and `others`, in any order and case. */
export function readRecords(
  text: string,
  needed: readonly string[],
  others: readonly string[],
): Result<{ readonly lines: readonly Line[]; readonly problems: Problems }, readonly TableProblem[]> {
  const cells = cellsOf(text);
  if (!cells.ok) return cells;
  const problems = new Problems();
  const known = [...needed, ...others];
  const places = new Map<string, number>();
  const [header = [], ...rows] = cells.value;
  for (const [index, title] of header.entries()) {
    const column = known.find((name) => name.toLowerCase() === title.toLowerCase());
    if (column === undefined && title !== '') problems.add('column-unknown', 1, index + 1, title, known);
    if (column === undefined) continue;
    if (places.has(column)) problems.add('column-twice', 1, index + 1, title);
    places.set(column, index);
  }
  for (const column of needed) if (!places.has(column)) problems.add('column-missing', 1, 1, column);
  if (rows.length === 0) problems.add('no-rows', 1, 1, '');
  if (problems.all.length > 0) return fail(problems.all);
  const lines = rows.map((row, index): Line => {
    const place = (column: string) => (places.get(column) ?? 0) + 1;
    return {
      line: index + 2,
      text: (column) => fromFreeText(row[places.get(column) ?? -1] ?? ''),
      place,
    };
  });
  return pass({ lines, problems });
}

/** One of a closed set of words, in any case; a problem and undefined for another, undefined alone for a blank. */
export function wordOf<T extends string>(
  { line, text, place }: Line,
  column: string,
  words: readonly T[],
  problems: Problems,
): T | undefined {
  const written = text(column);
  if (written === '') return undefined;
  const found = words.find((word) => word.toLowerCase() === written.toLowerCase());
  if (found === undefined) problems.add('word-unknown', line, place(column), written, words);
  return found;
}

/** A decimal figure as text, a comma in it made a point: "1,78" → "1.78". Undefined for a blank. */
export function figureOf(
  { line, text, place }: Line,
  column: string,
  problems: Problems,
): string | undefined {
  const written = text(column);
  if (written === '') return undefined;
  const figure = written.replace(',', '.');
  if (/^-?\d{1,6}(\.\d{1,9})?$/.test(figure)) return figure;
  problems.add('number-wrong', line, place(column), written);
  return undefined;
}

/** Ids hold no blanks, colons, slashes or quotes; a title that does becomes one, and stays as the name. */
export function idFrom(title: string): { readonly id: string; readonly name?: string } {
  const id = title
    .trim()
    .replace(/\s+/g, '-')
    .replace(/[^\p{L}\p{M}\p{N}._+'′*#&()-]/gu, '')
    .replace(/^[^\p{L}\p{N}]+/u, '')
    .slice(0, 40);
  return id === title.trim() ? { id } : { id, name: title.trim() };
}
