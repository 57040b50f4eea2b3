/**
 * Which combinations of elements tie the train up, so that the input cannot turn? Combinations of as many
 * elements as a range uses, of one more and (where two are left) of one fewer, each judged on its own.
 */
import { behaviourOf } from '../../faults/behaviour.ts';
import { solveSpeeds } from '../../gears/solve.ts';
import { workOutClash } from '../../gears/working.ts';
import type { Random } from '../../random.ts';
import { trainRefs, type Unit } from '../../unit/unit.ts';
import { say } from '../phrase.ts';
import type { Family, Lure } from '../question.ts';
import { floatSpeeds } from '../second-route.ts';
import { behaviourInWords } from './behaviour-words.ts';
import { distinctLures, elementInWords, frictionIds, setAnswer, sureRanges } from './chart-parts.ts';
import { stepsInWords, together } from './gear-parts.ts';

const FACT = 'skill:tie-up';
const OPTIONS = 6;
const FEWEST_OPTIONS = 4;
/** Of those that do not tie up, so that both sorts are among them where there are both. */
const MOST_OF_A_KIND = 3;
const FEWEST_ELEMENTS = 4;

interface Combination {
  readonly id: string;
  readonly elements: readonly string[];
  /** The brakes and clutches of a range are just these. */
  readonly charted: boolean;
}

type Kind = 'charted' | 'tied' | 'other';

function combinations(ids: readonly string[], size: number): string[][] {
  if (size === 0) return [[]];
  return ids.flatMap((id, place) =>
    combinations(ids.slice(place + 1), size - 1).map((rest) => [id, ...rest]),
  );
}

/** The brakes and clutches of every range. */
function rowsOf(unit: Unit): string[][] {
  const friction = frictionIds(unit);
  return sureRanges(unit).map((range) => friction.filter((id) => range.applied.includes(id)));
}

/** How many brakes and clutches most ranges use. */
function usualSize(rows: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const row of rows) counts.set(row.length, (counts.get(row.length) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0;
}

function everyCombination(unit: Unit): Combination[] {
  const rows = rowsOf(unit);
  const charted = new Set(rows.map((row) => row.join('+')));
  const size = usualSize(rows);
  const counts = size > 2 ? [size - 1, size, size + 1] : [size, size + 1];
  return counts.flatMap((count) =>
    combinations(frictionIds(unit), count).map((elements) => {
      const id = elements.join('+');
      return { id, elements, charted: charted.has(id) };
    }),
  );
}

/** Null where a one-way has a say: such a combination would be a question of its own. */
function kindOf(unit: Unit, { elements, charted }: Combination): Kind | null {
  const { state } = solveSpeeds(unit.deck.train, elements);
  const { does } = behaviourOf(unit, elements);
  if (does !== (state === 'free' ? 'no-drive' : state)) return null;
  return charted ? 'charted' : state === 'tied-up' ? 'tied' : 'other';
}

/** One to three that tie up among ranges and others that do not, in the order of the train's elements. */
function draw(unit: Unit, random: Random): { options: Combination[]; tied: Combination[] } | undefined {
  const all = everyCombination(unit);
  const tiedWanted = random.int(1, 3);
  const room: Record<Kind, number> = { tied: tiedWanted, charted: MOST_OF_A_KIND, other: MOST_OF_A_KIND };
  const taken: Record<Kind, Combination[]> = { tied: [], charted: [], other: [] };
  const size = usualSize(rowsOf(unit));
  const shuffled = random.shuffle(all);
  const usual = shuffled.filter(({ elements }) => elements.length === size);
  const unusual = shuffled.filter(({ elements }) => elements.length !== size);
  // mostly the usual number first: nearly all larger ones tie up, which is soon learnt
  const order = random.int(0, 2) === 0 ? [...unusual, ...usual] : [...usual, ...unusual];
  for (const combination of order) {
    const kind = kindOf(unit, combination);
    if (kind && taken[kind].length < room[kind]) taken[kind].push(combination);
    if (
      taken.tied.length === room.tied &&
      taken.charted.length === room.charted &&
      taken.other.length === room.other
    )
      break;
  }
  const { tied, charted, other } = taken;
  const harmless = [...charted.slice(0, 2), ...other, ...charted.slice(2)];
  const chosen = [...tied, ...harmless.slice(0, OPTIONS - tied.length)];
  if (tied.length === 0 || chosen.length < FEWEST_OPTIONS) return undefined;
  const options = all.filter((combination) => chosen.includes(combination));
  return { options, tied: options.filter((combination) => tied.includes(combination)) };
}

export const tieUps: Family = {
  id: 'tie-ups',
  level: 'reason',
  form: 'set',
  facts: (unit) => {
    const sure = trainRefs(unit.deck).every((ref) => unit.sure(ref));
    return sure && frictionIds(unit).length >= FEWEST_ELEMENTS && sureRanges(unit).length > 1 ? [FACT] : [];
  },
  pose(unit, fact, random) {
    const drawn = fact === FACT ? draw(unit, random) : undefined;
    if (!drawn) return undefined;
    const { options, tied } = drawn;
    const { train } = unit.deck;
    const does = new Map(options.map(({ id, elements }) => [id, behaviourOf(unit, elements)]));
    const rows = rowsOf(unit);
    const picking = (rule: (combination: Combination) => boolean) =>
      setAnswer(options.filter(rule).map(({ id }) => id));
    const isTied = (combination: Combination) => tied.includes(combination);
    const addsToRow = ({ elements }: Combination) =>
      rows.some((row) => row.length < elements.length && row.every((id) => elements.includes(id)));
    const lures: Lure[] = [
      {
        answer: picking((c) => isTied(c) || does.get(c.id)!.does === 'output-held'),
        slipUp: 'held-output-counted',
        fact,
      },
      { answer: picking((c) => !c.charted), slipUp: 'uncharted-tied-up', fact },
      { answer: picking((c) => isTied(c) && !addsToRow(c)), slipUp: 'extra-element-harmless', fact },
      ...options
        .filter(({ charted }) => charted)
        .map(
          (row): Lure => ({
            answer: picking((c) => isTied(c) || c === row),
            slipUp: 'pair-from-chart',
            fact,
          }),
        ),
    ];
    const shown = tied[0]!;
    const clash = workOutClash(train, shown.elements);
    return {
      facts: [fact],
      uses: [...trainRefs(unit.deck), ...sureRanges(unit).map((range) => range.ref)],
      prompt: say('tie-ups.prompt'),
      drawing: { kind: 'train' },
      space: {
        form: 'set',
        options: options.map(({ id, elements }) => ({
          id,
          label: together(elements),
        })),
      },
      answers: [setAnswer(tied.map(({ id }) => id))],
      lures: distinctLures(lures),
      explanation: {
        row: say('tie-ups.row', {
          combinations: tied.map(({ elements }) => together(elements)),
        }),
        reason: say('tie-ups.reason'),
        more: [
          ...options.map(({ id, elements }) => behaviourInWords(unit, elements, does.get(id)!)),
          say('tie-ups.proof', { elements: together(shown.elements) }),
          ...(clash
            ? stepsInWords(unit, shown.elements, clash)
            : [...shown.elements.map((id) => elementInWords(unit, id)), say('tie-ups.input-held')]),
        ],
        drawing: { kind: 'train', applied: shown.elements, showTeeth: true },
      },
      isRight: (answer) =>
        answer.form === 'set' &&
        options.every(
          ({ id, elements }) => answer.picks.includes(id) === (floatSpeeds(train, elements) === null),
        ),
    };
  },
};
