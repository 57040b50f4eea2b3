/** `deck solve`: what the train does in every row of the chart, exactly. */
import { settleRow, solveRow } from '../content/rules/rows.ts';
import type { State } from '../core/gears/solve.ts';
import { solveTorques, type Torques } from '../core/gears/torque.ts';
import { CASE, shaftsOf } from '../core/gears/train.ts';
import { decimalsOf, makeDecimal, type Rational } from '../core/rational.ts';
import type { Deck, DeckElement, DeckRange } from '../core/unit/deck.ts';
import type { Say } from '../words/words.ts';
import { table, wrap } from './layout.ts';

interface SolvedRow {
  readonly id: string;
  readonly applied: readonly string[];
  /** One-ways that hold without being listed: only in rows that must not drive. */
  readonly holding: readonly string[];
  /** Null when the row names an element that the train does not have, or the train has no ends. */
  readonly state: State | null;
  readonly ratio: Rational | null;
  readonly decimals: number;
  readonly speeds: ReadonlyMap<string, Rational | null>;
  readonly torques: Torques | null;
}

function solveRange(deck: Deck, row: DeckRange): SolvedRow {
  const solution = solveRow(deck.train, row.applied);
  return {
    id: row.id,
    applied: row.applied,
    holding: [],
    state: solution?.state ?? null,
    ratio: solution?.ratio ?? null,
    decimals: row.ratio === undefined ? 3 : decimalsOf(row.ratio),
    speeds: solution?.speeds ?? new Map(),
    torques: solution?.ratio ? solveTorques(deck.train, row.applied) : null,
  };
}

export interface Solved {
  readonly deck: Deck;
  readonly ranges: readonly SolvedRow[];
  readonly neutral: readonly SolvedRow[];
}

/** Every row; a row that cannot be solved says so. Neutral rows leave the one-ways to themselves. */
export function solveDeck(deck: Deck): Solved {
  return {
    deck,
    ranges: deck.chart.ranges.map((row) => solveRange(deck, row)),
    neutral: (deck.chart.neutral ?? []).map((row) => {
      const settled = settleRow(deck.train, row.applied);
      return settled
        ? {
            ...solveRange(deck, { id: row.id, applied: settled.applied }),
            state: settled.solution.state,
            ratio: settled.solution.ratio,
            applied: row.applied,
            holding: settled.holding.filter((id) => !row.applied.includes(id)),
          }
        : solveRange(deck, row);
    }),
  };
}

/** The shaft an element's torque is told for: what a brake holds, the first of a clutch's two. */
function loadedShaft({ between: [first, second] }: DeckElement): string {
  return first === CASE ? second : first;
}

function torqueOf(element: DeckElement, torques: Torques): Rational | null | undefined {
  const torque = torques.elements.get(element.id);
  return torque && element.between[0] === CASE ? torque.neg() : torque;
}

const PLACES = 3;

export function solveInWords({ deck, ranges, neutral }: Solved, say: Say): string {
  const word = (key: string) => say({ key: `cli.solve.${key}` });
  const rows = [...ranges, ...neutral];
  const shafts = shaftsOf(deck.train);
  const states = rows.map((row) => [
    row.id,
    row.applied.join(' ') || '–',
    word(row.state ?? 'unsolved'),
    row.ratio ? makeDecimal(row.ratio, row.decimals) : '',
    row.ratio ? row.ratio.toFraction() : '',
    row.holding.length > 0 ? say({ key: 'cli.solve.holding', values: { holding: row.holding } }) : '',
  ]);
  const turning = rows.filter((row) => row.speeds.size > 0);
  const speeds = turning.map((row) => [
    row.id,
    ...shafts.map((shaft) => {
      const speed = row.speeds.get(shaft);
      return speed ? makeDecimal(speed, PLACES) : word('open');
    }),
  ]);
  const driving = rows.flatMap((row) => (row.torques ? [{ row, torques: row.torques }] : []));
  const torques = driving.map(({ row, torques }) => [
    row.id,
    ...deck.train.elements.map((element) => {
      const torque = torqueOf(element, torques);
      return torque === undefined ? '·' : torque === null ? '?' : makeDecimal(torque, PLACES);
    }),
    ...[torques.output, torques.reaction].map((torque) => (torque ? makeDecimal(torque, PLACES) : '?')),
  ]);
  const indeterminate = torques.some((row) => row.includes('?'));
  const heads = deck.train.elements.map((element) => `${element.id}:${loadedShaft(element)}`);
  return [
    `${deck.unit} (${deck.id}, ${say({ key: 'cli.revision', values: { revision: deck.revision } })})`,
    table([['row', 'on', 'state', 'ratio', 'exact', ''].map((head) => head && word(head)), ...states]),
    ...(speeds.length > 0
      ? [`${wrap(word('speeds'))}\n${table([[word('row'), ...shafts], ...speeds], '  ')}`]
      : []),
    ...(torques.length > 0
      ? [
          `${wrap(word('torques'))}\n${table(
            [[word('row'), ...heads, word('output'), word('case')], ...torques],
            '  ',
          )}`,
        ]
      : []),
    ...(indeterminate ? [wrap(word('indeterminate'))] : []),
  ].join('\n\n');
}

/** Whole numbers as JSON numbers, as text beyond what a JSON reader keeps exact. */
function whole(value: bigint): number | string {
  const number = Number(value);
  return Number.isSafeInteger(number) ? number : value.toString();
}

function numberAsData(value: Rational) {
  return { numerator: whole(value.s * value.n), denominator: whole(value.d), decimal: value.valueOf() };
}

const orNull = (value: Rational | null | undefined) => (value ? numberAsData(value) : null);

function rowAsData(deck: Deck, row: SolvedRow) {
  const elements = deck.train.elements.filter((element) => row.torques?.elements.has(element.id));
  const torques = elements.map((element) => [element.id, torqueOf(element, row.torques!)] as const);
  return {
    id: row.id,
    applied: row.applied,
    ...(row.holding.length > 0 ? { holding: row.holding } : {}),
    state: row.state ?? 'unsolved',
    ratio: orNull(row.ratio),
    speeds: Object.fromEntries([...row.speeds].map(([shaft, speed]) => [shaft, orNull(speed)])),
    open: [...row.speeds].flatMap(([shaft, speed]) => (speed === null ? [shaft] : [])),
    torques: row.torques && {
      elements: Object.fromEntries(torques.map(([id, torque]) => [id, orNull(torque)])),
      on: Object.fromEntries(elements.map((element) => [element.id, loadedShaft(element)])),
      indeterminate: torques.flatMap(([id, torque]) => (torque ? [] : [id])),
      output: orNull(row.torques.output),
      case: orNull(row.torques.reaction),
    },
  };
}

/** The same as data. Speeds are per turn of the input, torques per 1 N·m on it; null where indeterminate. */
export function solveAsData({ deck, ranges, neutral }: Solved) {
  return {
    deck: { id: deck.id, unit: deck.unit, revision: deck.revision },
    input: deck.train.input,
    output: deck.train.output,
    ranges: ranges.map((row) => rowAsData(deck, row)),
    neutral: neutral.map((row) => rowAsData(deck, row)),
  };
}
