/**
 * On which side of which gap does a bearing's closed race lie? Tapped on the shaft line, where the seats are
 * covered and both sides of each are numbered: place and face are needed, so that no two-way guess is left.
 */
import { ENDS, type End } from '../../../unit/record.ts';
import type { DeckSeat } from '../../../unit/seats.ts';
import { say, thing } from '../../phrase.ts';
import type { Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import {
  besideOf,
  endByBodies,
  endOf,
  faceFact,
  gapOf,
  onePerGap,
  otherEnd,
  placeFact,
  seatLine,
  seatName,
  seatRefs,
  sureSeats,
} from './seat-parts.ts';

/** Seats in view, one to a gap: two sides each. */
const MOST = 5;
const FEWEST = 2;

const spotOf = (seat: DeckSeat, end: End) => `${seat.id}/${end}`;

const askable = perUnit((unit) =>
  sureSeats(unit).filter((seat) => seat.race && onePerGap(unit.deck, sureSeats(unit), seat).length >= FEWEST),
);

export const raceSide: Family = {
  id: 'race-side',
  level: 'apply',
  form: 'place',
  facts: (unit) => askable(unit).map(faceFact),
  pose(unit, fact, random) {
    const { deck } = unit;
    const seat = askable(unit).find((candidate) => faceFact(candidate) === fact);
    if (!seat) return undefined;
    const seats = onePerGap(deck, sureSeats(unit), seat);
    const place = seats.indexOf(seat);
    const count = Math.min(MOST, seats.length);
    const first = random.int(Math.max(0, place - count + 1), Math.min(place, seats.length - count));
    const view = seats.slice(first, first + count);
    const [from, to] = [gapOf(deck, view[0]!)[0], gapOf(deck, view.at(-1)!)[1]];
    const race = endOf(deck, seat, seat.race!);
    const spots = view.flatMap((each) => ENDS.map((end) => ({ seat: each, end })));
    const at = (each: DeckSeat, end: End) => ({ form: 'place' as const, spot: spotOf(each, end) });
    const lures: Lure[] = [
      { answer: at(seat, otherEnd(race)), slipUp: 'seat-turned-round', fact },
      ...besideOf(view, seat).map(
        (other): Lure => ({ answer: at(other, race), slipUp: 'neighbour-seat', fact: placeFact(seat) }),
      ),
    ];
    return {
      facts: [fact, placeFact(seat)],
      uses: [...new Set(view.flatMap((each) => seatRefs(unit, each)))],
      prompt: say('race-side.prompt', { seat: seatName(seat) }),
      drawing: {
        kind: 'shaft-line',
        from,
        to,
        covered: view.map(({ id }) => id),
        hideSeatNames: true,
        places: spots.map((each) => spotOf(each.seat, each.end)),
      },
      space: {
        form: 'place',
        spots: spots.map((each) => ({
          id: spotOf(each.seat, each.end),
          label: say(`race-side.${each.end}`, {
            body: thing('part', gapOf(deck, each.seat)[each.end === 'front' ? 0 : 1]),
          }),
        })),
      },
      answers: [at(seat, race)],
      lures,
      explanation: {
        row: seatLine(unit, seat),
        reason: say('seat.by-neighbour'),
        more: view.filter((each) => each !== seat).map((each) => seatLine(unit, each)),
        drawing: { kind: 'shaft-line', from, to, lit: [seat.id] },
      },
      isRight: (answer) =>
        answer.form === 'place' && answer.spot === `${seat.id}/${endByBodies(deck, seat, seat.race!)}`,
    };
  },
};
