/**
 * What centres these bearings? For each, the part to its front or its rear, at the inner or the outer rim: a
 * bearing piloted by a hub cannot be laid into the drum.
 */
import { ENDS, type End } from '../../../unit/record.ts';
import { type DeckSeat, PILOTS, SIDES } from '../../../unit/seats.ts';
import type { Unit } from '../../../unit/unit.ts';
import { type Phrase, say } from '../../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import {
  endByBodies,
  endName,
  endOf,
  otherEnd,
  seatName,
  seatRefs,
  seatsWith,
  sureSeats,
  touchedAt,
  touchedName,
} from './seat-parts.ts';

type Rim = (typeof PILOTS)[number];

const FEWEST = 2;
const MOST = 3;

const factOf = (seat: DeckSeat): FactId => `seat:${seat.id}/pilot`;

/** The one face that is piloted; undefined where none or both are. */
function pilotSide({ faces }: DeckSeat) {
  const sides = SIDES.filter((side) => faces[side].pilot);
  return sides.length === 1 ? sides[0] : undefined;
}

function askable(unit: Unit): DeckSeat[] {
  const seats = sureSeats(unit).filter((seat) => pilotSide(seat));
  return seats.length < FEWEST ? [] : seats;
}

export const seatPilot: Family = {
  id: 'seat-pilot',
  level: 'read',
  form: 'pair',
  facts: (unit) => askable(unit).map(factOf),
  pose(unit, fact, random) {
    const { deck } = unit;
    const seats = askable(unit);
    const seat = seats.find((candidate) => factOf(candidate) === fact);
    if (!seat) return undefined;
    const asked = seatsWith(seats, seat, MOST, random.sample);
    const end = (each: DeckSeat): End => endOf(deck, each, pilotSide(each)!);
    const rim = (each: DeckSeat): Rim => each.faces[pilotSide(each)!].pilot!.at;
    const otherRim = (each: DeckSeat): Rim => (rim(each) === 'inner' ? 'outer' : 'inner');
    const told = (rule: (each: DeckSeat) => string): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(asked.map((each) => [each.id, rule(each)])),
    });
    const right = (each: DeckSeat) => `${end(each)}/${rim(each)}`;
    const turned = (each: DeckSeat) => `${otherEnd(end(each))}/${rim(each)}`;
    const swapped = (each: DeckSeat) => `${end(each)}/${otherRim(each)}`;
    const oddOne = (odd: DeckSeat, wrong: (each: DeckSeat) => string) =>
      told((each) => (each === odd ? wrong(each) : right(each)));
    const lures: Lure[] = [
      { answer: told(turned), slipUp: 'mirror-view' },
      { answer: told(swapped), slipUp: 'pilot-rim-swapped' },
      ...asked.flatMap((odd): Lure[] => [
        { answer: oddOne(odd, turned), slipUp: 'seat-turned-round', fact: factOf(odd) },
        { answer: oddOne(odd, swapped), slipUp: 'pilot-rim-swapped', fact: factOf(odd) },
      ]),
    ];
    const line = (each: DeckSeat): Phrase =>
      say('seat-pilot.line', {
        seat: seatName(each),
        by: touchedName(deck, touchedAt(deck, each, end(each))),
        end: endName(end(each)),
        rim: rim(each),
        diameter: each.faces[pilotSide(each)!].pilot!.diameter.value,
        unit: each.faces[pilotSide(each)!].pilot!.diameter.unit,
      });
    const others = asked.filter((each) => each !== seat);
    return {
      facts: [fact, ...others.map(factOf)],
      uses: [...new Set(asked.flatMap((each) => seatRefs(unit, each)))],
      prompt: say('seat-pilot.prompt'),
      drawing: { kind: 'shaft-line', covered: asked.map(({ id }) => id), lit: asked.map(({ id }) => id) },
      space: {
        form: 'pair',
        left: asked.map((each) => ({ id: each.id, label: seatName(each) })),
        right: ENDS.flatMap((each) =>
          PILOTS.map((at) => ({
            id: `${each}/${at}`,
            label: say('seat-pilot.by', { end: each, rim: at }),
          })),
        ),
      },
      answers: [told(right)],
      lures: distinctLures(lures),
      explanation: {
        row: line(seat),
        reason: say('seat-pilot.reason'),
        more: others.map(line),
        drawing: { kind: 'shaft-line', lit: asked.map(({ id }) => id) },
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        asked.every((each) => {
          const [given, at] = (answer.pairs[each.id] ?? '').split('/');
          return SIDES.every((side) => {
            const { pilot } = each.faces[side];
            return (
              (pilot !== undefined) === (endByBodies(deck, each, side) === given) && (pilot?.at ?? at) === at
            );
          });
        }),
    };
  },
};
