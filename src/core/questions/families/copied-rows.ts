/**
 * A chart was copied by hand. Each row is as it should be or has one cell wrong; the ratios are right. Which
 * cell, in each row? From memory of the rows, or from the teeth: with the right cell put right, and no other,
 * the row drives at its ratio.
 */
import { behaviourOf, commandedIn } from '../../faults/behaviour.ts';
import { solveSpeeds } from '../../gears/solve.ts';
import type { Random } from '../../random.ts';
import { type Range, trainRefs, type Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { Answer, Family, Lure, Option } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import { distinctLures, oneWayIds, rangeFact, rowInWords } from './chart-parts.ts';
import { decimalText, reckonableRanges, together } from './gear-parts.ts';
import { perUnit } from './per-unit.ts';

const ROWS = 3;
const RIGHT = 'as-copied';
/** Two floats that should be the same fraction. */
const SAME = 1e-9;

interface Copy {
  readonly range: Range;
  readonly copied: readonly string[];
  /** The element whose cell is wrong; null when the row is as it should be. */
  readonly wrong: string | null;
}

const elementIds = (unit: Unit): string[] => unit.deck.train.elements.map(({ id }) => id);

const flip = (unit: Unit, on: readonly string[], element: string): string[] =>
  elementIds(unit).filter((id) => on.includes(id) !== (id === element));

const drivesAs = (unit: Unit, on: readonly string[], range: Range): boolean =>
  solveSpeeds(unit.deck.train, on).ratio?.equals(range.ratio) ?? false;

/** Cells that can be copied wrong so that one cell alone, that one, brings the ratio back. */
const cells = perUnit((unit: Unit): ReadonlyMap<Range, readonly string[]> => {
  const tellable = (range: Range, element: string) => {
    const copied = flip(unit, range.applied, element);
    if (copied.length === 0 || drivesAs(unit, copied, range)) return false;
    const cures = elementIds(unit).filter((id) => drivesAs(unit, flip(unit, copied, id), range));
    return cures.length === 1 && cures[0] === element;
  };
  if (!trainRefs(unit.deck).every((ref) => unit.sure(ref))) return new Map();
  return new Map(
    reckonableRanges(unit)
      .map((range) => [range, elementIds(unit).filter((id) => tellable(range, id))] as const)
      .filter(([, ids]) => ids.length > 0),
  );
});

/** The row asked about and others in chart order, one wrong at least. */
function draw(unit: Unit, asked: Range, random: Random): Copy[] {
  const able = [...cells(unit).keys()];
  const others = random.sample(
    able.filter((range) => range !== asked),
    ROWS - 1,
  );
  const rows = able.filter((range) => range === asked || others.includes(range));
  const wrong = random.sample(rows, random.int(1, rows.length - 1));
  return rows.map((range) => {
    const element = wrong.includes(range) ? random.pick(cells(unit).get(range)!) : null;
    return {
      range,
      wrong: element,
      copied: element === null ? range.applied : flip(unit, range.applied, element),
    };
  });
}

function luresFor(unit: Unit, copies: readonly Copy[]): Lure[] {
  const told = (rule: (copy: Copy) => string | null | undefined): Answer => ({
    form: 'pair',
    pairs: Object.fromEntries(copies.map((copy) => [copy.range.id, rule(copy) ?? RIGHT])),
  });
  const { train } = unit.deck;
  const charted = new Set(unit.ranges.map((range) => range.applied.join('+')));
  const makesAnother = ({ copied, range }: Copy) =>
    elementIds(unit).find((id) => {
      const row = flip(unit, copied, id).join('+');
      return charted.has(row) && row !== range.applied.join('+');
    });
  return [
    {
      answer: told(({ copied, wrong }) =>
        behaviourOf(unit, commandedIn(train, copied)).does === 'drives' ? null : wrong,
      ),
      slipUp: 'driving-means-right',
    },
    {
      answer: told((copy) => copy.wrong && (makesAnother(copy) ?? copy.wrong)),
      slipUp: 'other-range-made',
    },
    {
      answer: told((copy) => copy.wrong ?? copy.copied.find((id) => oneWayIds(unit).includes(id))),
      slipUp: 'one-way-left-out',
    },
    ...copies
      .filter(({ wrong }) => wrong !== null)
      .map(
        (missed): Lure => ({
          answer: told((copy) => (copy === missed ? null : copy.wrong)),
          slipUp: 'copy-trusted',
          fact: rangeFact(missed.range.id),
        }),
      ),
  ];
}

/**
 * By the second solver: the marks after which the row drives at its ratio. A copy that does so already needs
 * none, though another cell changed might leave the ratio as it is.
 */
function curesOf(unit: Unit, { range, copied }: Copy): ReadonlySet<string> {
  const { train } = unit.deck;
  const drives = (on: readonly string[]) => {
    const output = floatOutput(train, on);
    return output !== null && Math.abs(output - 1 / range.ratio.valueOf()) < SAME;
  };
  if (drives(copied)) return new Set([RIGHT]);
  return new Set(elementIds(unit).filter((id) => drives(flip(unit, copied, id))));
}

const ratioOf = (range: Range) => decimalText(range.ratio, range.decimals);

function lineFor({ range, copied, wrong }: Copy): Phrase {
  if (wrong === null) return rowInWords(range);
  return say(copied.includes(wrong) ? 'copied-rows.too-many' : 'copied-rows.too-few', {
    range: thing('range', range.id),
    element: thing('element', wrong),
    ratio: ratioOf(range),
  });
}

export const copiedRows: Family = {
  id: 'copied-rows',
  level: 'apply',
  form: 'pair',
  facts: (unit) => {
    const ranges = [...cells(unit).keys()];
    return ranges.length >= ROWS ? ranges.map(({ id }) => rangeFact(id)) : [];
  },
  pose(unit, fact, random) {
    const asked = [...cells(unit).keys()].find(({ id }) => rangeFact(id) === fact);
    if (!asked || cells(unit).size < ROWS) return undefined;
    const copies = draw(unit, asked, random);
    const wrong = copies.filter((copy) => copy.wrong !== null);
    const answer: Answer = {
      form: 'pair',
      pairs: Object.fromEntries(copies.map((copy) => [copy.range.id, copy.wrong ?? RIGHT])),
    };
    const marks: Option[] = [
      { id: RIGHT, label: say('copied-rows.as-copied') },
      ...elementIds(unit).map((id) => ({
        id,
        label: say('copied-rows.cell', { element: thing('element', id) }),
      })),
    ];
    let cures: ReadonlyMap<string, ReadonlySet<string>> | undefined;
    return {
      facts: [fact, ...copies.filter(({ range }) => range !== asked).map(({ range }) => rangeFact(range.id))],
      uses: [...trainRefs(unit.deck), ...copies.map(({ range }) => range.ref)],
      prompt: say('copied-rows.prompt'),
      drawing: { kind: 'train', showTeeth: true },
      space: {
        form: 'pair',
        left: copies.map(({ range, copied }) => ({
          id: range.id,
          label: say('copied-rows.row', {
            range: thing('range', range.id),
            ratio: ratioOf(range),
            elements: together(copied),
          }),
        })),
        right: marks,
      },
      answers: [answer],
      lures: distinctLures(luresFor(unit, copies)),
      explanation: {
        row: lineFor(wrong[0]!),
        reason: say('copied-rows.reason'),
        more: copies.map(lineFor),
        drawing: { kind: 'chart', rows: copies.map(({ range }) => range.id), showRatios: true },
      },
      isRight(given) {
        cures ??= new Map(copies.map((copy) => [copy.range.id, curesOf(unit, copy)]));
        return given.form === 'pair' && [...cures].every(([id, marks]) => marks.has(given.pairs[id]!));
      },
    };
  },
};
