/**
 * Sequences as a table, a line a step in the order it was done. "after" names the steps that must come before,
 * blanks between; "reason" says why, one reason for all or one each, "|" between. Without a column "after" each
 * step follows the one above it.
 */
import { fail, type Result } from '../../core/result.ts';
import { HAZARDS, type Hazard } from '../../core/unit/cautions.ts';
import { TORQUE_UNITS } from '../../core/unit/record.ts';
import type { DeckSequence, DeckStep } from '../../core/unit/sequences.ts';
import { figureOf, type Line, type Problems, readRecords, type TableProblem, wordOf } from './records.ts';
import { freeText, writeTable } from './table.ts';

const NEEDED = ['sequence', 'text'];
const OTHERS = ['step', 'turned', 'after', 'reason', 'tool', 'torque', 'torqueUnit', 'hazards', 'ifSkipped'];

/** Of many steps the ones just above are named. */
const MAX_CHOICES = 20;

/** Said of a step that follows the one above it with nothing said. */
export const AS_DONE = 'It was done in this order.';

function afterOf(line: Line, steps: readonly DeckStep[], problems: Problems): DeckStep['after'] {
  const names = line.text('after').split(/\s+/).filter(Boolean);
  const reasons = line
    .text('reason')
    .split('|')
    .map((reason) => reason.trim());
  const known = new Set(steps.map(({ id }) => id));
  const choices = [...known].slice(-MAX_CHOICES);
  for (const name of names)
    if (!known.has(name)) problems.add('word-unknown', line.line, line.place('after'), name, choices);
  return names.map((step, index) => ({ step, reason: (reasons[index] ?? reasons[0]) || AS_DONE }));
}

function hazardsOf(line: Line, problems: Problems): readonly Hazard[] {
  return line
    .text('hazards')
    .split(/\s+/)
    .filter(Boolean)
    .flatMap((name) => {
      const hazard = HAZARDS.find((known) => known === name.toLowerCase());
      if (!hazard) problems.add('word-unknown', line.line, line.place('hazards'), name, HAZARDS);
      return hazard ? [hazard] : [];
    });
}

/** Sequences of a table; with the deck's own, what the table does not say stays as it is there. */
export function readSequences(
  text: string,
  existing: readonly DeckSequence[] = [],
): Result<readonly DeckSequence[], readonly TableProblem[]> {
  const read = readRecords(text, NEEDED, OTHERS);
  if (!read.ok) return fail(read.error);
  const { lines, problems } = read.value;
  const said = lines.some((line) => line.text('after') !== '');
  const sequences = new Map<string, DeckSequence>();
  for (const line of lines) {
    const id = line.text('sequence');
    if (id === '') problems.add('id-missing', line.line, line.place('sequence'), '');
    if (line.text('text') === '') problems.add('id-missing', line.line, line.place('text'), '');
    const known = existing.find((sequence) => sequence.id === id);
    const sequence = sequences.get(id) ?? { ...known, id, steps: [] };
    const stepId = line.text('step') || `step-${sequence.steps.length + 1}`;
    if (sequence.steps.some((step) => step.id === stepId))
      problems.add('id-twice', line.line, line.place('step'), stepId);
    const { after: _, ...kept } = known?.steps.find((step) => step.id === stepId) ?? {};
    const previous = sequence.steps.at(-1);
    const after = said
      ? afterOf(line, sequence.steps, problems)
      : previous && [{ step: previous.id, reason: AS_DONE }];
    const value = figureOf(line, 'torque', problems);
    const unit = wordOf(line, 'torqueUnit', TORQUE_UNITS, problems);
    if (value !== undefined && unit === undefined)
      problems.add(
        'word-unknown',
        line.line,
        line.place('torqueUnit'),
        line.text('torqueUnit'),
        TORQUE_UNITS,
      );
    const hazards = hazardsOf(line, problems);
    const texts = ['turned', 'tool', 'ifSkipped'].flatMap((field) =>
      line.text(field) === '' ? [] : [[field, line.text(field)]],
    );
    const step: DeckStep = {
      ...kept,
      id: stepId,
      text: line.text('text'),
      ...Object.fromEntries(texts),
      ...(after && after.length > 0 && { after }),
      ...(value !== undefined && unit && { torque: { value, unit } }),
      ...(hazards.length > 0 && { hazards }),
    };
    sequences.set(id, { ...sequence, steps: [...sequence.steps, step] });
  }
  return problems.unless([...sequences.values()]);
}

export function writeSequences(sequences: readonly DeckSequence[]): string {
  const text = (words: string | undefined) => (words === undefined ? null : freeText(words));
  return writeTable(
    [
      'sequence',
      'step',
      'text',
      'turned',
      'after',
      'reason',
      'tool',
      'torque',
      'torqueUnit',
      'hazards',
      'ifSkipped',
    ],
    sequences.flatMap(({ id, steps }) =>
      steps.map((step) => [
        id,
        step.id,
        freeText(step.text),
        text(step.turned),
        (step.after ?? []).map((before) => before.step).join(' '),
        freeText((step.after ?? []).map((before) => before.reason.replaceAll('|', '/')).join(' | ')),
        text(step.tool),
        step.torque?.value ?? null,
        step.torque?.unit ?? null,
        (step.hazards ?? []).join(' '),
        text(step.ifSkipped),
      ]),
    ),
  );
}
