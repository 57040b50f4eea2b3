/** Fits as a table, a line a fit; its selective parts in one cell: "A=1.60 B=1.65", in the unit of the line. */

import { EFFECTS, METHODS } from '../../core/measure/play.ts';
import { fail, type Result } from '../../core/result.ts';
import { type DeckFit, type DeckSelectivePart, FIT_KINDS, INSTRUMENTS } from '../../core/unit/fits.ts';
import { LENGTH_UNITS, type Length } from '../../core/unit/record.ts';
import { type Line, type Problems, readRecords, type TableProblem, wordOf } from './records.ts';
import { lengthOf } from './stacks.ts';
import { freeText, writeTable } from './table.ts';

const NEEDED = ['fit', 'kind', 'where', 'method', 'instrument', 'low', 'high', 'effect', 'parts'];
const OTHERS = ['unit', 'aim', 'spread', 'bar', 'gasket', 'name', 'seat', 'stack', 'item'];
function needed<T extends string>(line: Line, column: string, words: readonly T[], problems: Problems): T {
  const found = wordOf(line, column, words, problems);
  if (line.text(column) === '') problems.add('word-unknown', line.line, line.place(column), '', words);
  return found ?? words[0]!;
}

function partsOf(
  line: Line,
  unit: Length['unit'],
  existing: readonly DeckSelectivePart[],
  problems: Problems,
) {
  return line
    .text('parts')
    .split(/[\s|]+/)
    .filter(Boolean)
    .flatMap((entry): DeckSelectivePart[] => {
      const match = /^([^=]+)=(\d{1,6}(?:[.,]\d{1,6})?)$/.exec(entry);
      if (!match) {
        problems.add('number-wrong', line.line, line.place('parts'), entry);
        return [];
      }
      const [id, value] = [match[1]!, match[2]!.replace(',', '.')];
      return [{ ...existing.find((part) => part.id === id), id, thickness: { value, unit } }];
    });
}

/** Fits of a table; with the deck's own, what the table does not say stays as it is there. */
export function readFits(
  text: string,
  existing: readonly DeckFit[] = [],
): Result<readonly DeckFit[], readonly TableProblem[]> {
  const read = readRecords(text, NEEDED, OTHERS);
  if (!read.ok) return fail(read.error);
  const { lines, problems } = read.value;
  const fits = new Map<string, DeckFit>();
  for (const line of lines) {
    const id = line.text('fit');
    if (id === '') problems.add('id-missing', line.line, line.place('fit'), '');
    if (fits.has(id)) problems.add('id-twice', line.line, line.place('fit'), id);
    const known = existing.find((fit) => fit.id === id);
    const { aim: _a, spread: _s, bar: _b, gasket: _g, ...kept } = known ?? ({} as Partial<DeckFit>);
    const unit = wordOf(line, 'unit', LENGTH_UNITS, problems) ?? 'mm';
    const [low, high] = ['low', 'high'].map((end) => {
      if (line.text(end) === '') problems.add('number-wrong', line.line, line.place(end), '');
      return lengthOf(line, end, problems) ?? { value: '0', unit };
    }) as [Length, Length];
    const lengths = ['aim', 'spread', 'bar', 'gasket'].flatMap((field) => {
      const length = lengthOf(line, field, problems);
      return length ? [[field, length]] : [];
    });
    const texts = ['name', 'seat', 'stack', 'item'].flatMap((field) =>
      line.text(field) === '' ? [] : [[field, line.text(field)]],
    );
    fits.set(id, {
      ...kept,
      id,
      kind: needed(line, 'kind', FIT_KINDS, problems),
      where: line.text('where'),
      method: needed(line, 'method', METHODS, problems),
      instrument: needed(line, 'instrument', INSTRUMENTS, problems),
      limits: { low, high },
      effect: needed(line, 'effect', EFFECTS, problems),
      parts: partsOf(line, unit, known?.parts ?? [], problems),
      ...Object.fromEntries(lengths),
      ...Object.fromEntries(texts),
    });
  }
  return problems.unless([...fits.values()]);
}

/** Every length of a line in one unit: a fit with mixed units is left to the deck file. */
export const hasOneUnit = ({ limits, aim, spread, bar, gasket, parts }: DeckFit): boolean =>
  new Set(
    [limits.low, limits.high, aim, spread, bar, gasket, ...parts.map((part) => part.thickness)].flatMap(
      (length) => length?.unit ?? [],
    ),
  ).size === 1;

export function writeFits(fits: readonly DeckFit[]): string {
  const text = (words: string | undefined) => (words === undefined ? null : freeText(words));
  return writeTable(
    [
      'fit',
      'name',
      'kind',
      'where',
      'method',
      'instrument',
      'low',
      'high',
      'unit',
      'aim',
      'spread',
      'effect',
      'bar',
      'gasket',
      'parts',
      'seat',
      'stack',
      'item',
    ],
    fits
      .filter(hasOneUnit)
      .map((fit) => [
        fit.id,
        text(fit.name),
        fit.kind,
        freeText(fit.where),
        fit.method,
        fit.instrument,
        fit.limits.low.value,
        fit.limits.high.value,
        fit.limits.low.unit,
        fit.aim?.value ?? null,
        fit.spread?.value ?? null,
        fit.effect,
        fit.bar?.value ?? null,
        fit.gasket?.value ?? null,
        fit.parts.map(({ id, thickness }) => `${id}=${thickness.value}`).join(' '),
        fit.seat ?? null,
        fit.stack ?? null,
        fit.item ?? null,
      ]),
  );
}
