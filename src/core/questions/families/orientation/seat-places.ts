/**
 * Bearings and washers as they lie on the bench, told by what they measure: into which gap does each belong? Only
 * parts that a hand can tell apart are asked together.
 */
import { parseRational } from '../../../rational.ts';
import { exactIn } from '../../../unit/record.ts';
import type { DeckSeat } from '../../../unit/seats.ts';
import type { Unit } from '../../../unit/unit.ts';
import { type Phrase, say } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import { gapName, gapOf, placeFact, seatLine, seatName, seatRefs, sureSeats } from './seat-parts.ts';

const FEWEST = 3;
const MOST = 4;

/** Diameters nearer than this look alike, and thicknesses nearer than the second; common practice, no source. */
const WIDTH_MM = parseRational('0.5')!;
const THICKNESS_MM = parseRational('0.3')!;

const SIZES = ['inner', 'outer', 'thickness'] as const;

function distinct(a: DeckSeat, b: DeckSeat): boolean {
  if (a.kind !== b.kind) return true;
  return SIZES.some((size) => {
    const apart = exactIn(a.size![size], 'mm').sub(exactIn(b.size![size], 'mm')).abs();
    return apart.gte(size === 'thickness' ? THICKNESS_MM : WIDTH_MM);
  });
}

const measured = (unit: Unit): DeckSeat[] => sureSeats(unit).filter(({ size }) => size);

/** Seats that enough others differ from. */
const askable = perUnit((unit) => {
  const seats = measured(unit);
  return seats.filter((seat) => rivals(unit, seats, seat).length >= FEWEST - 1);
});

/** Others that differ from it and from each other, the first of those that look alike. */
function rivals(unit: Unit, seats: readonly DeckSeat[], seat: DeckSeat): DeckSeat[] {
  const found: DeckSeat[] = [];
  for (const other of seats)
    if ([seat, ...found].every((each) => distinct(each, other) && !sameGap(unit, each, other)))
      found.push(other);
  return found;
}

function sameGap({ deck }: Unit, one: DeckSeat, other: DeckSeat): boolean {
  const [a, b] = [gapOf(deck, one), gapOf(deck, other)];
  return a[0] === b[0] && a[1] === b[1];
}

const sizeName = ({ kind, size }: DeckSeat): Phrase =>
  say('seat-places.part', {
    kind: say(`seat.kind-${kind}`),
    inner: size!.inner.value,
    outer: size!.outer.value,
    thickness: size!.thickness.value,
    unit: size!.thickness.unit,
  });

export const seatPlaces: Family = {
  id: 'seat-places',
  level: 'read',
  form: 'pair',
  facts: (unit) => askable(unit).map(placeFact),
  pose(unit, fact, random) {
    const { deck } = unit;
    const seat = askable(unit).find((candidate) => placeFact(candidate) === fact);
    if (!seat) return undefined;
    const drawn = random.sample(rivals(unit, random.shuffle(measured(unit)), seat), MOST - 1);
    const asked = sureSeats(unit).filter((each) => each === seat || drawn.includes(each));
    if (asked.length < FEWEST) return undefined;
    // On the bench they lie in no order; gaps go by number along the line.
    const bench = random.shuffle(asked);
    const told = (rule: (place: number) => number): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(bench.map((each) => [each.id, asked[rule(asked.indexOf(each))]!.id])),
    });
    const swaps = asked.slice(1).flatMap((later, index): Lure[] => {
      const answer = told((place) => (place === index ? index + 1 : place === index + 1 ? index : place));
      return [asked[index]!, later].map((each) => ({
        answer,
        slipUp: 'neighbour-seats-swapped',
        fact: placeFact(each),
      }));
    });
    const others = asked.filter((each) => each !== seat);
    return {
      facts: [fact, ...others.map(placeFact)],
      uses: [...new Set(asked.flatMap((each) => seatRefs(unit, each)))],
      prompt: say('seat-places.prompt'),
      drawing: {
        kind: 'shaft-line',
        covered: asked.map(({ id }) => id),
        hideSeatNames: true,
        places: asked.map(({ id }) => id),
      },
      space: {
        form: 'pair',
        left: bench.map((each) => ({ id: each.id, label: sizeName(each) })),
        right: asked.map((each, index) => ({
          id: each.id,
          label: say('seat-places.place', { number: String(index + 1), gap: gapName(deck, each) }),
        })),
      },
      answers: [told((place) => place)],
      lures: [...swaps, { answer: told((place) => asked.length - 1 - place), slipUp: 'counted-from-rear' }],
      explanation: {
        row: say('seat-places.row', { seat: seatName(seat), part: sizeName(seat), gap: gapName(deck, seat) }),
        reason: say('seat-places.reason'),
        more: asked.map((each) => seatLine(unit, each)),
        drawing: { kind: 'shaft-line', lit: asked.map(({ id }) => id) },
      },
      // By the bodies on both sides, not by the seat's id.
      isRight: (answer) =>
        answer.form === 'pair' &&
        asked.every((each) => {
          const gap = deck.seats!.find(({ id }) => id === answer.pairs[each.id]);
          return gap !== undefined && sameGap(unit, each, gap);
        }),
    };
  },
};
