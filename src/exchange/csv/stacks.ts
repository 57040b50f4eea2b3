/** Packs of plates as a table, a line a plate from the floor up. What a table has no column for stays in the deck. */
import type { Result } from '../../core/result.ts';
import { ENDS, LENGTH_UNITS, type Length } from '../../core/unit/record.ts';
import {
  type DeckStack,
  type DeckStackItem,
  FEATURES,
  STACK_KINDS,
  TOWARDS,
} from '../../core/unit/stacks.ts';
import { figureOf, type Line, type Problems, readRecords, type TableProblem, wordOf } from './records.ts';
import { freeText, writeTable } from './table.ts';

const NEEDED = ['stack', 'plate', 'kind'];
const OTHERS = [
  'element',
  'floor',
  'floorAt',
  'thickness',
  'free',
  'unit',
  'identical',
  'feature',
  'towards',
  'name',
];

/** A length of a line, in the unit of its column "unit": millimetres when that is blank. */
export function lengthOf(line: Line, column: string, problems: Problems): Length | undefined {
  const value = figureOf(line, column, problems);
  const unit = wordOf(line, 'unit', LENGTH_UNITS, problems) ?? 'mm';
  return value === undefined ? undefined : { value, unit };
}

function plateOf(line: Line, problems: Problems): DeckStackItem {
  const kind = wordOf(line, 'kind', STACK_KINDS, problems) ?? 'steel';
  if (line.text('kind') === '') problems.add('word-unknown', line.line, line.place('kind'), '', STACK_KINDS);
  const [thickness, free] = [lengthOf(line, 'thickness', problems), lengthOf(line, 'free', problems)];
  const feature = wordOf(line, 'feature', FEATURES, problems);
  const towards = wordOf(line, 'towards', TOWARDS, problems);
  if ((feature === undefined) !== (towards === undefined))
    problems.add('word-unknown', line.line, line.place('towards'), line.text('towards'), TOWARDS);
  const [identical, name] = [line.text('identical'), line.text('name')];
  return {
    id: line.text('plate'),
    kind,
    ...(name !== '' && { name }),
    ...(thickness && { thickness }),
    ...(free && { free }),
    ...(feature && towards && { looks: { feature, towards } }),
    ...(identical !== '' && { identical }),
  };
}

/** Stacks of a table; with the deck's own, what the table does not say stays as it is there. */
export function readStacks(
  text: string,
  existing: readonly DeckStack[] = [],
): Result<readonly DeckStack[], readonly TableProblem[]> {
  const read = readRecords(text, NEEDED, OTHERS);
  if (!read.ok) return read;
  const { lines, problems } = read.value;
  const stacks = new Map<string, DeckStack>();
  for (const line of lines) {
    const [id, plate] = [line.text('stack'), line.text('plate')];
    if (id === '') problems.add('id-missing', line.line, line.place('stack'), '');
    if (plate === '') problems.add('id-missing', line.line, line.place('plate'), '');
    const known = existing.find((stack) => stack.id === id);
    const stack = stacks.get(id) ?? { floor: 'floor', floorAt: 'rear' as const, ...known, id, items: [] };
    if (stack.items.some((item) => item.id === plate))
      problems.add('id-twice', line.line, line.place('plate'), plate);
    const [element, floor] = [line.text('element'), line.text('floor')];
    const floorAt = wordOf(line, 'floorAt', ENDS, problems);
    const before = known?.items.find((item) => item.id === plate);
    stacks.set(id, {
      ...stack,
      ...(element !== '' && { element }),
      ...(floor !== '' && { floor }),
      ...(floorAt && { floorAt }),
      items: [...stack.items, { ...keptOf(before), ...plateOf(line, problems) }],
    });
  }
  return problems.unless([...stacks.values()]);
}

/** Of a plate that was there before: what no column holds. */
const keptOf = (plate: DeckStackItem | undefined) => {
  const { thickness: _t, free: _f, looks: _l, identical: _i, name: _n, ...kept } = plate ?? {};
  return kept;
};

export function writeStacks(stacks: readonly DeckStack[]): string {
  return writeTable(
    [
      'stack',
      'element',
      'floor',
      'floorAt',
      'plate',
      'kind',
      'thickness',
      'free',
      'unit',
      'identical',
      'feature',
      'towards',
      'name',
    ],
    stacks.flatMap(({ id, element, floor, floorAt, items }) =>
      items.map((item) => [
        id,
        element ?? null,
        freeText(floor),
        floorAt,
        item.id,
        item.kind,
        item.thickness?.value ?? null,
        item.free?.value ?? null,
        item.thickness?.unit ?? item.free?.unit ?? null,
        item.identical ?? null,
        item.looks?.feature ?? null,
        item.looks?.towards ?? null,
        item.name === undefined ? null : freeText(item.name),
      ]),
    ),
  );
}
