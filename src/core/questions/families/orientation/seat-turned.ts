/**
 * A part is put in the wrong way round: does it go in at all, and what comes of it? What comes of it is the
 * deck's own note; notes of other parts are offered only where they cannot be true of this one as well.
 */
import type { DeckSeat } from '../../../unit/seats.ts';
import type { Unit } from '../../../unit/unit.ts';
import { type Phrase, say } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import { oneSidedSeats, seatLine, seatName, seatRefs } from './seat-parts.ts';

/** Notes of other parts beside the two fixed lures. */
const FEWEST_OTHERS = 1;
const MOST_OTHERS = 2;

const NOTHING = 'nothing';
const KEYED = 'keyed';

const factOf = (seat: DeckSeat): FactId => `seat:${seat.id}/turned`;

const plain = (text: string) => text.trim().toLowerCase();

/**
 * Parts whose note can stand as a wrong answer: another note, and either this part does not go in at all, so that
 * nothing can come of it, or the other is of another kind.
 */
const contrasts = (seats: readonly DeckSeat[], seat: DeckSeat): DeckSeat[] =>
  seats.filter(
    (other) =>
      other !== seat &&
      other.turned!.goesIn &&
      plain(other.turned!.effect) !== plain(seat.turned!.effect) &&
      (!seat.turned!.goesIn || other.kind !== seat.kind),
  );

const noted = (unit: Unit): DeckSeat[] => oneSidedSeats(unit).filter(({ turned }) => turned);

const askable = perUnit((unit) =>
  noted(unit).filter(
    (seat) => contrasts(noted(unit), seat).length >= (seat.turned!.goesIn ? FEWEST_OTHERS : MOST_OTHERS),
  ),
);

const effect = (seat: DeckSeat): Phrase => say('text', { text: seat.turned!.effect });

export const seatTurned: Family = {
  id: 'seat-turned',
  level: 'reason',
  form: 'one',
  facts: (unit) => askable(unit).map(factOf),
  pose(unit, fact, random) {
    const seat = askable(unit).find((candidate) => factOf(candidate) === fact);
    if (!seat) return undefined;
    const { goesIn } = seat.turned!;
    const others = random.sample(contrasts(noted(unit), seat), MOST_OTHERS);
    const right = goesIn ? seat.id : KEYED;
    const options = [
      { id: NOTHING, label: say('seat-turned.nothing') },
      { id: KEYED, label: say('seat-turned.keyed') },
      ...others.map((other) => ({ id: other.id, label: effect(other) })),
      ...(goesIn ? [{ id: seat.id, label: effect(seat) }] : []),
    ];
    const pick = (id: string) => ({ form: 'one' as const, pick: id });
    const lures: Lure[] = [
      { answer: pick(NOTHING), slipUp: 'turned-is-harmless', fact },
      ...(goesIn ? [{ answer: pick(KEYED), slipUp: 'taken-for-keyed' as const, fact }] : []),
      ...others.map((other): Lure => ({ answer: pick(other.id), slipUp: 'other-seat-effect', fact })),
    ];
    return {
      facts: [fact],
      uses: [...new Set([seat, ...others].flatMap((each) => seatRefs(unit, each)))],
      prompt: say('seat-turned.prompt', { seat: seatName(seat) }),
      drawing: { kind: 'seat', seat: seat.id, front: 'up', covered: true },
      space: { form: 'one', options: random.shuffle(options) },
      answers: [pick(right)],
      lures,
      explanation: {
        row: say(goesIn ? 'seat-turned.goes-in' : 'seat-turned.stays-out', {
          seat: seatName(seat),
          effect: effect(seat),
        }),
        reason: seatLine(unit, seat),
        more: others.map((other) =>
          say('seat-turned.other', { seat: seatName(other), effect: effect(other) }),
        ),
        drawing: { kind: 'seat', seat: seat.id, front: 'up' },
      },
      isRight: (answer) => {
        if (answer.form !== 'one') return false;
        const raw = unit.deck.seats!.find(({ id }) => id === seat.id)!.turned!;
        if (!raw.goesIn) return answer.pick === KEYED;
        const told = unit.deck.seats!.find(({ id }) => id === answer.pick)?.turned?.effect;
        return told !== undefined && plain(told) === plain(raw.effect);
      },
    };
  },
};
