/**
 * Faults and readings as worked by hand: what rows do from tests/core/faults/worked.ts, ports from the published
 * chart. Undefined where nothing was worked.
 */
import { ask } from '../../../../src/core/questions/ask.ts';
import type { Phrase } from '../../../../src/core/questions/phrase.ts';
import type { Family, Question } from '../../../../src/core/questions/question.ts';
import { makeUnit, type Unit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';
import { WORKED } from '../../faults/worked.ts';

export const HAND_WORKED = WORKED.map(({ train }) => train);

const units = new Map<string, Unit>();

export function unitOn(train: string): Unit {
  const known = units.get(train) ?? makeUnit(deckOf(PUBLISHED.find(({ id }) => id === train)!));
  units.set(train, known);
  return known;
}

/** "none: 1 2 | as 1: 3", as in worked.ts, for one row. */
function doesIn(text: string, row: string): string {
  for (const part of text.split(' | ')) {
    const [what, rows] = part.split(': ') as [string, string | undefined];
    if (!rows?.split(' ').includes(row)) continue;
    return what === 'none' ? 'no-drive' : what === 'ties' ? 'tied-up' : `range:${what.slice(3)}`;
  }
  return 'works';
}

const oneWay = (train: string, element: string) =>
  PUBLISHED.find(({ id }) => id === train)!.elements.some(
    ({ id, kind }) => id === element && kind === 'one-way',
  );

/** A lost feed does on the road what the failed element does. */
export function roadByHand(train: string, fault: string, row: string): string | undefined {
  const [kind, part] = fault.split(':') as [string, string];
  const asked = kind === 'feed-lost' ? `element-fails:${part}` : fault;
  const found = WORKED.find((worked) => worked.train === train)?.rows.find(([id]) => id === asked);
  return found && doesIn(found[1], row);
}

/** Only a lost feed is seen at a port; plates, one-ways and teeth are behind it. */
export function portByHand(train: string, fault: string, element: string, row: string): string | undefined {
  const [kind, part] = fault.split(':') as [string, string];
  if (!['element-fails', 'element-stuck', 'feed-lost', 'gearset-stripped', 'one-way-reversed'].includes(kind))
    return undefined;
  if (oneWay(train, element)) return undefined;
  const on = PUBLISHED.find(({ id }) => id === train)!
    .chart.find(({ range }) => range === row)
    ?.applied.includes(element);
  return on && !(kind === 'feed-lost' && part === element) ? 'full' : 'none';
}

const idIn = (phrase: Phrase, value: string) => String((phrase.values![value] as Phrase).values!.id);

/** A row that must not drive works when it stays put. */
export function readingIn(phrase: Phrase): string {
  if (phrase.key === 'reading.range') return `range:${idIn(phrase, 'range')}`;
  const reading = phrase.key.slice('reading.'.length);
  return reading === 'stays-put' ? 'works' : reading;
}

/** The reading that a test, as a question words it, would show by hand. */
export function byHand(train: string, fault: string, test: Phrase): string | undefined {
  const row = test.values?.row === undefined ? undefined : idIn(test, 'row');
  if (row === undefined) return undefined;
  if (test.key.startsWith('test.road')) return roadByHand(train, fault, row);
  return test.key === 'test.gauge' ? portByHand(train, fault, idIn(test, 'element'), row) : undefined;
}

/** The id of the fault that a phrase names: "element-fails:UD". */
export function faultIn(phrase: Phrase): string {
  if (phrase.key.startsWith('suspects.')) return faultIn(phrase.values!.fault as Phrase);
  const kind = phrase.key.slice('fault.'.length).replace(/-one-way$/, '');
  const part = phrase.values?.part as Phrase | undefined;
  return part ? `${kind}:${part.values!.id}` : kind;
}

/** Every question of a family on the hand-worked trains, for so many seeds. */
export const questionsOf = (family: Family, seeds = 40): { train: string; question: Question }[] =>
  HAND_WORKED.flatMap((train) =>
    Array.from({ length: seeds }, (_, seed) => ask(unitOn(train), family, seed)).flatMap((question) =>
      question ? [{ train, question }] : [],
    ),
  );
