/**
 * The unit is turned: which way does a face look now? The drawing shows how everything lies; what is asked is to
 * turn it in the mind, each part seen another way.
 */
import type { End } from '../../../unit/record.ts';
import { type DeckSeat, SIDES, type Side } from '../../../unit/seats.ts';
import { say } from '../../phrase.ts';
import type { Answer, FactId, Family } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import {
  endByBodies,
  endName,
  endOf,
  faceName,
  oneSidedSeats,
  otherEnd,
  seatLine,
  seatRefs,
} from './seat-parts.ts';

const FACT: FactId = 'skill:view-flip';
const FEWEST = 3;
const MOST = 4;

/** How the unit is held: standing with an end up, or looked into from an end. */
const VIEWS = {
  standing: { towards: 'up', away: 'down' },
  looking: { towards: 'seen', away: 'hidden' },
} as const;
type View = keyof typeof VIEWS;

interface Asked {
  readonly id: string;
  readonly seat: DeckSeat;
  readonly side: Side;
  /** The end that is up, or that is looked at. */
  readonly end: End;
}

export const seatView: Family = {
  id: 'seat-view',
  level: 'apply',
  form: 'pair',
  facts: (unit) => (oneSidedSeats(unit).length < FEWEST ? [] : [FACT]),
  pose(unit, fact, random) {
    const { deck } = unit;
    const seats = oneSidedSeats(unit);
    if (fact !== FACT || seats.length < FEWEST) return undefined;
    const view = random.pick(Object.keys(VIEWS) as View[]);
    const drawn = random.sample(seats, MOST);
    // Both ends are met, so that the answer is more than one turn for all.
    const ends = random.shuffle<End>([
      'front',
      'rear',
      ...drawn.slice(2).map(() => random.pick(['front', 'rear'] as const)),
    ]);
    const asked = drawn.map(
      (seat, index): Asked => ({ id: seat.id, seat, side: random.pick(SIDES), end: ends[index]! }),
    );
    const up = random.pick(['front', 'rear'] as const);
    const told = (rule: (asked: Asked) => boolean): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(asked.map((each) => [each.id, VIEWS[view][rule(each) ? 'towards' : 'away']])),
    });
    const facing = ({ seat, side }: Asked) => endOf(deck, seat, side);
    const [towards, away] = [VIEWS[view].towards, VIEWS[view].away];
    return {
      facts: [fact],
      uses: [...new Set(asked.flatMap(({ seat }) => seatRefs(unit, seat)))],
      prompt: say(`seat-view.${view}`),
      drawing: { kind: 'shaft-line', front: up === 'front' ? 'up' : 'down', lit: asked.map(({ id }) => id) },
      space: {
        form: 'pair',
        left: asked.map(({ id, seat, side, end }) => ({
          id,
          label: say(`seat-view.${view}-row`, { face: faceName(seat, side), end: endName(end) }),
        })),
        right: [towards, away].map((id) => ({ id, label: say(`seat-view.${id}`) })),
      },
      answers: [told((each) => facing(each) === each.end)],
      lures: distinctLures([
        { answer: told((each) => facing(each) !== each.end), slipUp: 'mirror-view' },
        { answer: told((each) => facing(each) === up), slipUp: 'as-drawn' },
      ]),
      explanation: {
        row: say(`seat-view.${view}-rule`),
        reason: say('seat-view.reason', {
          faces: asked.map((each) =>
            say('seat-view.faces', { face: faceName(each.seat, each.side), end: endName(facing(each)) }),
          ),
        }),
        more: asked.map(({ seat }) => seatLine(unit, seat)),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        asked.every(({ id, seat, side, end }) => {
          const looks = endByBodies(deck, seat, side);
          return answer.pairs[id] === (looks === otherEnd(end) ? away : towards);
        }),
    };
  },
};
