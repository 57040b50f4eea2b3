/**
 * Takes a chart that was read from a table (src/exchange/csv) into a draft. Elements that the draft has not yet are
 * added; what they are is guessed from how shops and makers letter them, for somebody to look over, and left open
 * where nothing tells. What the table does not say of a row (who verified it, its note) stays only where the row is
 * the same as before.
 */
import type { ElementKind } from '../gears/train.ts';
import type { DeckDraft } from './draft.ts';

export interface TableRow {
  readonly id: string;
  readonly name?: string;
  readonly applied: readonly string[];
  readonly bracketed: readonly string[];
  readonly unsure: readonly string[];
  readonly ratio?: string;
}

export interface TableChart {
  readonly elements: readonly { readonly id: string; readonly name?: string }[];
  readonly ranges: readonly TableRow[];
  readonly neutral: readonly TableRow[];
}

type DraftElement = NonNullable<NonNullable<DeckDraft['train']>['elements']>[number];
type DraftRow = NonNullable<NonNullable<DeckDraft['chart']>['ranges']>[number];

const ONE_WAY = /^(f\d|owc|ow\b|sprag|roller)|one-?way|freewheel/i;
const BRAKE = /^b\d|brake|band/i;
const CLUTCH = /^[cke]\d|clutch/i;

/** What an element is by its letters, or by cells in brackets, as one-ways are charted; null where nothing tells. */
export function kindFrom(words: string, bracketed: boolean): ElementKind | null {
  if (bracketed || ONE_WAY.test(words)) return 'one-way';
  if (BRAKE.test(words)) return 'brake';
  return CLUTCH.test(words) ? 'clutch' : null;
}

const sameSet = (a: readonly string[] = [], b: readonly string[] = []) =>
  a.length === b.length && a.every((entry) => b.includes(entry));

function taken(row: TableRow, known: DraftRow | undefined): DraftRow {
  const { id, name, applied, unsure, ratio } = row;
  const same = known && sameSet(known.applied, applied) && (ratio ?? known.ratio) === known.ratio;
  const { unsureCells: _, ...kept } = same ? known : known?.name === undefined ? {} : { name: known.name };
  return {
    ...kept,
    id,
    ...(name !== undefined && { name }),
    applied,
    ...(unsure.length > 0 && { unsureCells: unsure }),
    ...(ratio !== undefined && { ratio }),
  };
}

/** The draft with the table's rows in place of its own. Elements that the table does not have stay. */
export function takeChart(draft: DeckDraft, table: TableChart): DeckDraft {
  const rows = [...table.ranges, ...table.neutral];
  const before = draft.train?.elements ?? [];
  const added = table.elements
    .filter(({ id }) => !before.some((element) => element.id === id))
    .map(({ id, name }): DraftElement => {
      const kind = kindFrom(
        `${id} ${name ?? ''}`,
        rows.some((row) => row.bracketed.includes(id)),
      );
      return {
        id,
        ...(name !== undefined && { name }),
        ...(kind && { kind }),
        ...(kind === 'brake' && { between: ['', 'case'] }),
      };
    });
  const known = [...(draft.chart?.ranges ?? []), ...(draft.chart?.neutral ?? [])];
  const take = (row: TableRow) =>
    taken(
      row,
      known.find(({ id }) => id === row.id),
    );
  return {
    ...draft,
    train: { ...draft.train, elements: [...before, ...added] },
    chart: { ...draft.chart, ranges: table.ranges.map(take), neutral: table.neutral.map(take) },
  };
}
