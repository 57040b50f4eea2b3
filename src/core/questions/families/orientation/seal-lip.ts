/** Which way does a seal's lip look, and is the pressure there? Both at once, since one alone is a toss-up. */
import { ENDS, type End } from '../../../unit/record.ts';
import type { DeckSeat, Side } from '../../../unit/seats.ts';
import { say } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import {
  endByBodies,
  endName,
  endOf,
  gapOf,
  oneSidedSeats,
  otherEnd,
  seatLine,
  seatName,
  seatRefs,
  touchedAt,
  touchedName,
} from './seat-parts.ts';

const factOf = (seat: DeckSeat): FactId => `seat:${seat.id}/lip`;

const TO_PRESSURE = ['pressure', 'away'] as const;

const askable = perUnit((unit) => oneSidedSeats(unit).filter(({ lip, pressure }) => lip && pressure));

export const sealLip: Family = {
  id: 'seal-lip',
  level: 'read',
  form: 'one',
  facts: (unit) => askable(unit).map(factOf),
  pose(unit, fact, random) {
    const { deck } = unit;
    const seat = askable(unit).find((candidate) => factOf(candidate) === fact);
    if (!seat) return undefined;
    const [lip, pressure] = [endOf(deck, seat, seat.lip!), endOf(deck, seat, seat.pressure!)];
    const [from, to] = gapOf(deck, seat);
    const pick = (lipTo: End, pressureFrom: End) => ({
      form: 'one' as const,
      pick: `${lipTo}/${lipTo === pressureFrom ? 'pressure' : 'away'}`,
    });
    const lures: Lure[] = [
      { answer: pick(otherEnd(lip), pressure), slipUp: 'lip-away-from-pressure', fact },
      { answer: pick(lip, otherEnd(pressure)), slipUp: 'pressure-side-mistaken', fact },
      { answer: pick(otherEnd(lip), otherEnd(pressure)), slipUp: 'mirror-view' },
    ];
    return {
      facts: [fact],
      uses: seatRefs(unit, seat),
      prompt: say('seal-lip.prompt', { seat: seatName(seat) }),
      // On the line: a seal in its pocket is drawn with its pressure.
      drawing: { kind: 'shaft-line', from, to, covered: [seat.id], lit: [seat.id] },
      space: {
        form: 'one',
        options: random.shuffle(
          ENDS.flatMap((end) =>
            TO_PRESSURE.map((side) => ({
              id: `${end}/${side}`,
              label: say(`seal-lip.${side}`, { touches: touchedName(deck, touchedAt(deck, seat, end)) }),
            })),
          ),
        ),
      },
      answers: [pick(lip, pressure)],
      lures,
      explanation: {
        row: say('seal-lip.row', {
          seat: seatName(seat),
          lip: endName(lip),
          touches: touchedName(deck, touchedAt(deck, seat, lip)),
          pressure: endName(pressure),
        }),
        reason: say(lip === pressure ? 'seal-lip.rule' : 'seal-lip.exception'),
        more: [seatLine(unit, seat)],
        drawing: { kind: 'seat', seat: seat.id, front: 'up' },
      },
      isRight: (answer) => {
        const [end, side] = answer.form === 'one' ? answer.pick.split('/') : [];
        const looks = (face: Side) => endByBodies(deck, seat, face);
        return end === looks(seat.lip!) && (side === 'pressure') === (seat.lip === seat.pressure);
      },
    };
  },
};
