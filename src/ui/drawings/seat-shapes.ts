/** What lies in a pocket, in half section: outlines along the axis and out from it (seat-layout.ts). */
import type { ShownSeat } from '../../core/questions/describe/seats.ts';
import type { End } from '../../core/unit/record.ts';
import { type Along, type Patch, patch } from './seat-layout.ts';

export interface Piece {
  readonly outline: readonly Along[];
  /** solid: closed metal. lined: cut metal. blank: a roller or cage. */
  readonly look: 'solid' | 'lined' | 'blank';
}

/** Which way along the axis this end lies. */
export const sense = (end: End): -1 | 1 => (end === 'front' ? -1 : 1);

const endWith = ({ sides }: ShownSeat, what: 'isRace' | 'isLip'): End | null =>
  sides.front[what] ? 'front' : sides.rear[what] ? 'rear' : null;

/** A bearing: a closed race over one face, needles bare on the other; a plate on both where there is no race. */
function bearing(shown: ShownSeat, { from, to }: Patch): Piece[] {
  const half = (to.a - from.a) / 2;
  const radial = to.r - from.r;
  const plate = Math.max(4, half * 0.36);
  const race = endWith(shown, 'isRace');
  const plates = (race ? [race] : (['front', 'rear'] as const)).map((end): Piece => {
    const face = sense(end) * half;
    return { outline: patch(face, from.r, face - sense(end) * plate, to.r), look: 'solid' };
  });
  const [front, rear] = race
    ? [race === 'front' ? -half + plate : -half, race === 'rear' ? half - plate : half]
    : [-half + plate, half - plate];
  const cage = radial * 0.12;
  return [
    ...plates,
    { outline: patch(front + 3, from.r, rear - 3, from.r + cage), look: 'lined' },
    { outline: patch(front + 3, to.r - cage, rear - 3, to.r), look: 'lined' },
    { outline: patch(front, from.r + cage + 4, rear, to.r - cage - 4), look: 'blank' },
  ];
}

/** A lip seal: a shell with its flat wall away from the lip, the lip running to the shaft. */
function seal(shown: ShownSeat, { from, to }: Patch): Piece[] {
  const half = (to.a - from.a) / 2;
  const radial = to.r - from.r;
  const lip = endWith(shown, 'isLip') ?? 'front';
  const s = sense(lip);
  const wall = Math.max(4, half * 0.3);
  const back = -s * half;
  const middle = from.r + radial * 0.42;
  return [
    // The shaft it runs on.
    { outline: patch(from.a - 5, from.r - 10, to.a + 5, from.r), look: 'lined' },
    {
      outline: [
        { a: s * half, r: to.r },
        { a: back, r: to.r },
        { a: back, r: middle },
        { a: back + s * wall, r: middle },
        { a: back + s * wall, r: to.r - wall },
        { a: s * half, r: to.r - wall },
      ],
      look: 'lined',
    },
    {
      outline: [
        { a: back, r: middle },
        { a: back + s * wall, r: middle },
        { a: s * half * 0.7, r: from.r + radial * 0.16 },
        { a: s * half * 0.55, r: from.r },
        { a: s * half * 0.3, r: from.r + radial * 0.1 },
      ],
      look: 'solid',
    },
  ];
}

export function piecesOf(shown: ShownSeat, room: Patch): Piece[] {
  const { from, to } = room;
  switch (shown.seat.kind) {
    case 'thrust-bearing':
      return bearing(shown, room);
    case 'lip-seal':
      return seal(shown, room);
    case 'sealing-ring': {
      // A ring of square section in the outer part of its groove.
      const radial = to.r - from.r;
      return [{ outline: patch(from.a, from.r + radial * 0.55, to.a, to.r), look: 'solid' }];
    }
    case 'thrust-washer':
      return [{ outline: patch(from.a, from.r, to.a, to.r), look: 'lined' }];
  }
}
