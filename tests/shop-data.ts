/**
 * Shop data made up for some of the published trains, so that families about seats, packs and steps have
 * something to ask. No unit is built like this; figures and sides are drawn from the train's id.
 */

import { randomFrom, seedOf } from '../src/core/random.ts';
import { makeDecimal, parseRational, type Rational } from '../src/core/rational.ts';
import type { Deck } from '../src/core/unit/deck.ts';
import type { DeckSeat, Side } from '../src/core/unit/seats.ts';
import type { DeckSequence } from '../src/core/unit/sequences.ts';
import type { DeckStack, DeckStackItem } from '../src/core/unit/stacks.ts';

const FURNISHED = ['four-range-two-crossed-sets', 'lepelletier-6-a', 'seven-speed-reversed-ravigneaux'];

interface TrainLike {
  readonly id: string;
  readonly elements: readonly { readonly id: string; readonly kind: string }[];
}

/** Seats, packs and steps of a furnished train; nothing for the others. */
export const handsOf = (train: TrainLike): Partial<Deck> =>
  FURNISHED.includes(train.id)
    ? { ...orientationOf(train), stacks: stacksOf(train), sequences: [sequenceOf()] }
    : {};

const mm = (value: string) => ({ value, unit: 'mm' as const });

const BODIES = [
  ['pump', 'pump'],
  ['front-drum', 'front drum'],
  ['front-hub', 'front hub'],
  ['front-sun', 'front sun'],
  ['front-carrier', 'front carrier'],
  ['rear-sun', 'rear sun'],
  ['rear-carrier', 'rear carrier'],
  ['output-hub', 'output hub'],
  ['rear-cover', 'rear cover'],
] as const;

/** A shaft line of nine bodies; bearings, washers and seals between them, sides drawn from the id. */
export function orientationOf({ id }: Pick<TrainLike, 'id'>): Pick<Deck, 'shaftLine' | 'seats'> {
  const random = randomFrom(seedOf('seats', id));
  const side = (): Side => random.pick(['A', 'B'] as const);
  /** `at` counts bodies: the seat lies between that body and the next. */
  const seat = (place: number, at: number, own: Pick<DeckSeat, 'id' | 'name' | 'kind'>): DeckSeat => {
    const front = side();
    const [first, second] = [BODIES[at]![0], BODIES[at + 1]![0]];
    const base = {
      ...own,
      place,
      faces: {
        A: { touches: front === 'A' ? first : second },
        B: { touches: front === 'A' ? second : first },
      },
      viewedFrom: random.pick(['front', 'rear'] as const),
      size: {
        inner: mm(`${30 + 3 * place}.0`),
        outer: mm(`${50 + 3 * place}.5`),
        thickness: mm(`${3 + (place % 3)}.2`),
      },
    };
    return base;
  };
  const marked = (bare: DeckSeat, a: string, b: string, rest: Partial<DeckSeat>): DeckSeat => ({
    ...bare,
    ...rest,
    faces: { A: { ...bare.faces.A, mark: a }, B: { ...bare.faces.B, mark: b } },
  });
  const bearing = (place: number, at: number, number: number): DeckSeat => {
    const bare = seat(place, at, { id: `T${number}`, name: 'thrust bearing', kind: 'thrust-bearing' });
    const race = side();
    const [a, b] = race === 'A' ? ['closed race', 'needles in view'] : ['needles in view', 'closed race'];
    const goesIn = random.unit() < 0.7;
    const effect = goesIn
      ? `The needles run on the rim of body ${number}.`
      : 'It stands proud and will not seat.';
    const whole = marked(bare, a, b, { race, turned: { goesIn, effect } });
    const [centred, at2] = [side(), random.pick(['inner', 'outer'] as const)];
    const { size, faces } = whole;
    const pilot = { at: at2, diameter: at2 === 'inner' ? size!.inner : size!.outer };
    return { ...whole, faces: { ...faces, [centred]: { ...faces[centred], pilot } } };
  };
  const lipSeal = (place: number, at: number, number: number): DeckSeat => {
    const bare = seat(place, at, { id: `S${number}`, name: 'lip seal', kind: 'lip-seal' });
    const lip = side();
    return marked(
      bare,
      ...((lip === 'A' ? ['lip', 'flat back'] : ['flat back', 'lip']) as [string, string]),
      {
        lip,
        pressure: lip,
        turned: { goesIn: true, effect: `Oil passes seal ${number} and the pressure is lost.` },
      },
    );
  };
  const washer = (place: number, at: number, number: number): DeckSeat =>
    seat(place, at, { id: `T${number}`, name: 'thrust washer', kind: 'thrust-washer' });
  return {
    shaftLine: BODIES.map(([bodyId, name]) => ({ id: bodyId, name })),
    seats: [
      lipSeal(1, 0, 1),
      bearing(2, 0, 1),
      lipSeal(3, 1, 2),
      bearing(4, 1, 2),
      bearing(5, 2, 3),
      washer(6, 3, 4),
      bearing(7, 4, 5),
      marked(washer(8, 5, 6), 'grooves', 'bare steel', {}),
      bearing(9, 6, 7),
      bearing(10, 7, 8),
    ],
  };
}

/** Packs of the first four brakes and clutches, each with its own counts and thicknesses. */
export function stacksOf({ elements }: TrainLike): DeckStack[] {
  const friction = elements.filter(({ kind }) => kind !== 'one-way').slice(0, 4);
  return friction.map(({ id }, k) => {
    const frictions = 3 + (k % 3);
    const [thin, thick] = [`2.${k}`, `1.${5 + k}`];
    const waved = k % 2 === 0;
    const plates = Array.from({ length: frictions }, (_, index): DeckStackItem[] => [
      ...(waved || index > 0
        ? [{ id: `steel-${index + 1}`, kind: 'steel', thickness: mm(thick), identical: 'steel' } as const]
        : []),
      { id: `friction-${index + 1}`, kind: 'friction', thickness: mm(thin), identical: 'friction' },
    ]).flat();
    const items: DeckStackItem[] = [
      { id: 'piston', kind: 'piston' },
      { id: 'spring', kind: 'return-spring' },
      waved
        ? { id: 'waved', kind: 'waved', thickness: mm(`1.${8 - k}`), free: mm(`2.${9 - k}`) }
        : {
            id: 'apply',
            kind: 'apply',
            thickness: mm(`4.${k}`),
            looks: { feature: 'bevel', towards: 'floor' },
          },
      ...plates,
      {
        id: 'backing',
        kind: 'backing',
        thickness: mm(`5.${k}`),
        looks: { feature: 'step', towards: waved ? 'opening' : 'floor' },
      },
      { id: 'ring', kind: 'snap-ring', thickness: mm(`2.${5 + k}`) },
    ];
    const height = items.reduce<Rational>(
      (sum, { thickness }) => (thickness ? sum.add(parseRational(thickness.value)!) : sum),
      parseRational('1.2')!,
    );
    return {
      id,
      name: `pack of ${id}`,
      element: id,
      floor: 'drum floor',
      floorAt: k % 2 === 0 ? 'front' : 'rear',
      items,
      room: mm(makeDecimal(height, 1)),
      waves: k === 2 ? 'free' : 'flat',
    };
  });
}

/** Stripping in 16 steps, its assembly with exceptions, and two checks. */
export const sequenceOf = (): DeckSequence => ({
  id: 'strip',
  name: 'strip the unit',
  steps: [
    { id: 'drain', text: 'Drain the fluid.', ifSkipped: 'Litres of fluid end up on the floor.' },
    {
      id: 'pan-off',
      text: 'Take the pan off.',
      turned: 'Put the pan on.',
      after: [{ step: 'drain', reason: 'The pan is full.' }],
    },
    {
      id: 'filter-out',
      text: 'Pull the filter.',
      turned: 'Press the filter in.',
      after: [{ step: 'pan-off', reason: 'The filter sits inside the pan.' }],
      ifSkipped: 'The filter neck breaks off in the bore.',
    },
    {
      id: 'harness-off',
      text: 'Unplug the inner harness.',
      turned: 'Plug the inner harness in.',
      after: [{ step: 'pan-off', reason: 'The plugs lie under the pan.' }],
      ifSkipped: 'A plug is torn off its wires.',
    },
    {
      id: 'valve-body-off',
      text: 'Take the valve body down.',
      turned: 'Bolt the valve body up.',
      after: [
        { step: 'filter-out', reason: 'The filter neck holds the valve body.' },
        { step: 'harness-off', reason: 'Its wires are too short to lower it.' },
      ],
    },
    {
      id: 'converter-off',
      text: 'Pull the converter.',
      turned: 'Slide the converter on.',
      after: [{ step: 'drain', reason: 'The converter pours out over the shaft.' }],
    },
    {
      id: 'measure',
      text: 'Measure the end play.',
      after: [{ step: 'converter-off', reason: 'The dial stands on the input shaft.' }],
      ifSkipped: 'Nobody knows which shim was worn.',
    },
    {
      id: 'pump-bolts-out',
      text: 'Take the pump bolts out.',
      turned: 'Tighten the pump bolts.',
      after: [{ step: 'converter-off', reason: 'The converter covers the pump bolts.' }],
    },
    {
      id: 'pump-off',
      text: 'Lift the pump out.',
      turned: 'Set the pump in.',
      after: [
        { step: 'pump-bolts-out', reason: 'The bolts hold it.' },
        { step: 'measure', reason: 'The play is gone once the pump is off.' },
      ],
    },
    {
      id: 'drum-out',
      text: 'Lift the input drum out.',
      turned: 'Set the input drum in.',
      after: [{ step: 'pump-off', reason: 'The pump closes the front of the case.' }],
    },
    {
      id: 'front-set-out',
      text: 'Lift the front set out.',
      turned: 'Set the front set in.',
      after: [{ step: 'drum-out', reason: 'The drum sits on the front sun.' }],
    },
    {
      id: 'ring-out',
      text: 'Take the brake ring out.',
      turned: 'Set the brake ring in.',
      after: [{ step: 'valve-body-off', reason: 'The valve body covers its gap.' }],
      ifSkipped: 'The pack cannot come out past the groove.',
    },
    {
      id: 'pack-out',
      text: 'Lift the brake pack out.',
      turned: 'Set the brake pack in.',
      after: [{ step: 'ring-out', reason: 'The ring keeps the pack in.' }],
    },
    {
      id: 'rear-set-out',
      text: 'Lift the rear set out.',
      turned: 'Set the rear set in.',
      after: [
        { step: 'front-set-out', reason: 'The front set lies on top of it.' },
        { step: 'pack-out', reason: 'The brake plates grip its drum.' },
      ],
    },
    {
      id: 'cover-off',
      text: 'Take the rear cover off.',
      turned: 'Put the rear cover on.',
      after: [{ step: 'drain', reason: 'The rear bore runs out over the bench.' }],
    },
    {
      id: 'output-out',
      text: 'Draw the output shaft out.',
      turned: 'Slide the output shaft in.',
      after: [
        { step: 'rear-set-out', reason: 'Its splines carry the rear set.' },
        { step: 'cover-off', reason: 'The cover bearing holds the shaft.' },
      ],
      ifSkipped: 'The worn bush stays unseen.',
    },
  ],
  assembly: {
    name: 'put the unit together',
    leftOut: [
      { step: 'drain', reason: 'There is nothing in it.' },
      { step: 'measure', reason: 'It is measured at another point.' },
    ],
    added: [
      { id: 'soak', text: 'Soak the new friction plates.' },
      {
        id: 'measure-again',
        text: 'Measure the end play anew.',
        after: [{ step: 'pump-bolts-out', reason: 'The play counts with the pump tightened.' }],
      },
      {
        id: 'fill',
        text: 'Fill in fluid.',
        after: [
          { step: 'pan-off', reason: 'It would run straight out.' },
          { step: 'converter-off', reason: 'The converter takes half of it.' },
        ],
      },
    ],
    lifted: [
      { earlier: 'output-out', later: 'cover-off', reason: 'The cover goes on over the shaft or before it.' },
    ],
    imposed: [
      { earlier: 'soak', later: 'pack-out', reason: 'Dry plates burn.' },
      { earlier: 'measure-again', later: 'converter-off', reason: 'The converter hides the shaft.' },
      {
        earlier: 'pump-bolts-out',
        later: 'valve-body-off',
        reason: 'The pump sets the height of its pipes.',
      },
    ],
  },
  checks: [
    {
      id: 'end-play',
      text: 'the end play as found',
      during: 'strip',
      needs: ['converter-off'],
      closedBy: ['pump-bolts-out', 'pump-off'],
    },
    {
      id: 'pack-clearance',
      text: 'the clearance of the brake pack',
      during: 'assembly',
      needs: ['ring-out'],
      closedBy: ['valve-body-off', 'pan-off'],
    },
  ],
});
