/** What lies on either side of a seat? From memory: the body to its front and the one to its rear. */
import type { Deck } from '../../../unit/deck.ts';
import { ENDS, type End } from '../../../unit/record.ts';
import type { DeckSeat } from '../../../unit/seats.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import {
  besideOf,
  endName,
  gapOf,
  onePerGap,
  placeFact,
  seatLine,
  seatName,
  seatRefs,
  sureSeats,
  touchedAt,
} from './seat-parts.ts';

/** Bodies to choose from, the seat's own among them. */
const FEWEST = 4;
const MOST = 6;

const sureBodies = (unit: Unit): string[] =>
  (unit.deck.shaftLine ?? []).map(({ id }) => id).filter((id) => unit.sure(`part:${id}`));

const askable = perUnit((unit) => (sureBodies(unit).length < FEWEST ? [] : sureSeats(unit)));

export const seatNeighbours: Family = {
  id: 'seat-neighbours',
  level: 'read',
  form: 'pair',
  facts: (unit) => askable(unit).map(placeFact),
  pose(unit, fact, random) {
    const { deck } = unit;
    const seat = askable(unit).find((candidate) => placeFact(candidate) === fact);
    if (!seat) return undefined;
    const bodies = sureBodies(unit);
    const own = gapOf(deck, seat);
    const count = Math.min(MOST, bodies.length);
    const [front, rear] = own.map((id) => bodies.indexOf(id));
    if (rear! - front! >= count) return undefined;
    const first = random.int(Math.max(0, rear! - count + 1), Math.min(front!, bodies.length - count));
    const shown = bodies.slice(first, first + count);
    const told = (bodiesTold: readonly [string, string]): Answer => ({
      form: 'pair',
      pairs: { front: bodiesTold[0], rear: bodiesTold[1] },
    });
    const lures: Lure[] = [
      { answer: told([own[1], own[0]]), slipUp: 'mirror-view', fact },
      ...besideOf(onePerGap(deck, sureSeats(unit), seat), seat)
        .map((other) => gapOf(deck, other))
        .filter((gap) => gap.every((id) => shown.includes(id)))
        .map((gap): Lure => ({ answer: told(gap), slipUp: 'neighbour-seat', fact })),
    ];
    return {
      facts: [fact],
      uses: [...seatRefs(unit, seat), ...shown.map((id) => `part:${id}` as const)].filter(
        (ref, index, all) => all.indexOf(ref) === index,
      ),
      prompt: say('seat-neighbours.prompt', { seat: seatName(seat) }),
      space: {
        form: 'pair',
        left: ENDS.map((end) => ({ id: end, label: say('seat-neighbours.side', { end: endName(end) }) })),
        right: shown.map((id) => ({ id, label: thing('part', id) })),
      },
      answers: [told(own)],
      lures,
      explanation: {
        row: seatLine(unit, seat),
        reason: say('seat-neighbours.reason', {
          bodies: shown.map((id) => thing('part', id)),
        }),
        more: besideOf(sureSeats(unit), seat).map((other) => seatLine(unit, other)),
        drawing: { kind: 'shaft-line', lit: [seat.id] },
      },
      // From seat to seat towards one end, until a body is met.
      isRight: (answer) =>
        answer.form === 'pair' && ENDS.every((end) => answer.pairs[end] === bodyTowards(deck, seat, end)),
    };
  },
};

function bodyTowards(deck: Deck, seat: DeckSeat, end: End): string {
  const id = touchedAt(deck, seat, end);
  const next = deck.seats!.find((other) => other.id === id);
  return next ? bodyTowards(deck, next, end) : id;
}
