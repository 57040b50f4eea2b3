/**
 * Which way do these parts face? Several at once, because one alone is a toss-up: for a face of each, the end of
 * the unit it looks to. From memory, the parts covered on the shaft line.
 */
import type { End } from '../../../unit/record.ts';
import { type DeckSeat, SIDES, type Side } from '../../../unit/seats.ts';
import { say } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import {
  endByBodies,
  endOf,
  endOptions,
  faceFact,
  faceName,
  oneSidedSeats,
  otherEnd,
  seatLine,
  seatRefs,
  seatsWith,
} from './seat-parts.ts';

/** Three two-way parts are guessed once in eight; four once in sixteen. */
const FEWEST = 3;
const MOST = 4;

interface Asked {
  readonly seat: DeckSeat;
  readonly side: Side;
}

export const seatFaces: Family = {
  id: 'seat-faces',
  level: 'read',
  form: 'pair',
  facts: (unit) => (oneSidedSeats(unit).length < FEWEST ? [] : oneSidedSeats(unit).map(faceFact)),
  pose(unit, fact, random) {
    const { deck } = unit;
    const seats = oneSidedSeats(unit);
    const seat = seats.find((candidate) => faceFact(candidate) === fact);
    if (!seat || seats.length < FEWEST) return undefined;
    const asked: Asked[] = seatsWith(seats, seat, MOST, random.sample).map((each) => ({
      seat: each,
      side: random.pick(SIDES),
    }));
    const told = (rule: (asked: Asked) => End): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(asked.map((each) => [each.seat.id, rule(each)])),
    });
    const right = ({ seat: each, side }: Asked) => endOf(deck, each, side);
    const lures: Lure[] = [
      { answer: told((each) => otherEnd(right(each))), slipUp: 'mirror-view' },
      ...(['front', 'rear'] as const).map(
        (end): Lure => ({ answer: told(() => end), slipUp: 'all-face-alike' }),
      ),
      ...asked.map(
        (odd): Lure => ({
          answer: told((each) => (each === odd ? otherEnd(right(each)) : right(each))),
          slipUp: 'seat-turned-round',
          fact: faceFact(odd.seat),
        }),
      ),
    ];
    const own = asked.find((each) => each.seat === seat)!;
    const others = asked.filter((each) => each !== own);
    return {
      facts: [fact, ...others.map((each) => faceFact(each.seat))],
      uses: [...new Set(asked.flatMap((each) => seatRefs(unit, each.seat)))],
      prompt: say('seat-faces.prompt'),
      drawing: {
        kind: 'shaft-line',
        covered: asked.map((each) => each.seat.id),
        lit: asked.map((each) => each.seat.id),
      },
      space: {
        form: 'pair',
        left: asked.map((each) => ({ id: each.seat.id, label: faceName(each.seat, each.side) })),
        right: endOptions(),
      },
      answers: [told(right)],
      lures: distinctLures(lures),
      explanation: {
        row: seatLine(unit, seat),
        reason: say('seat.by-neighbour'),
        more: others.map((each) => seatLine(unit, each.seat)),
        drawing: { kind: 'shaft-line', lit: asked.map((each) => each.seat.id) },
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        asked.every((each) => answer.pairs[each.seat.id] === endByBodies(deck, each.seat, each.side)),
    };
  },
};
