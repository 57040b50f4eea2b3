/** An invented unit with a pack, a shaft line and a connector, for drawings of what hands work on. */
import type { Deck } from '../../../src/core/unit/deck.ts';
import type { DeckPart, DeckSeat } from '../../../src/core/unit/seats.ts';
import type { DeckStackItem } from '../../../src/core/unit/stacks.ts';
import { shippedDecks } from '../../units.ts';

const mm = (value: string) => ({ value, unit: 'mm' as const });

const pairs = (count: number): DeckStackItem[] =>
  Array.from({ length: count }, (_, index) => index + 1).flatMap((n) => [
    { id: `friction-${n}`, kind: 'friction', thickness: mm('1.60'), identical: 'friction' },
    { id: `steel-${n}`, kind: 'steel', thickness: mm('1.80'), identical: 'steel' },
  ]);

const line: DeckPart[] = [
  { id: 'pump', name: 'pump body' },
  { id: 'drum', name: 'input drum', belongsTo: ['element:C1'] },
  { id: 'hub', name: 'clutch hub' },
  { id: 'p1-sun', name: 'front sun gear', belongsTo: ['gearset:P1'] },
  { id: 'p1-carrier', name: 'front carrier', belongsTo: ['gearset:P1'] },
  { id: 'p2-ring', name: 'rear ring gear with flange' },
  { id: 'p2-carrier', name: 'rear carrier' },
  { id: 'case', name: 'rear of the case' },
];

const seat = (
  place: number,
  front: string,
  rear: string,
  more: Partial<DeckSeat> & { at?: 'inner' | 'outer'; race?: 'A' | 'B' } = {},
): DeckSeat => ({
  id: `T${place}`,
  kind: 'thrust-bearing',
  place,
  viewedFrom: 'front',
  faces: {
    A: {
      touches: front,
      mark: 'closed race, needles hidden',
      pilot: { at: more.at ?? 'inner', diameter: mm(more.at === 'outer' ? '64.0' : '42.0') },
    },
    B: { touches: rear, mark: 'needles seen' },
  },
  race: 'A',
  size: { inner: mm('42.0'), outer: mm('64.0'), thickness: mm('4.2') },
  turned: { goesIn: true, effect: 'The needles run on the hub and end play is lost.' },
  ...more,
});

/** Front at the left as the notes were taken; T3 and T6 are the odd ones. */
const seats: DeckSeat[] = [
  seat(1, 'pump', 'drum'),
  seat(2, 'drum', 'hub', { at: 'outer' }),
  seat(3, 'hub', 'p1-sun', {
    race: 'B',
    faces: {
      A: { touches: 'hub', mark: 'needles seen' },
      B: {
        touches: 'p1-sun',
        mark: 'closed race, needles hidden',
        pilot: { at: 'inner', diameter: mm('30.0') },
      },
    },
    size: { inner: mm('30.0'), outer: mm('48.0'), thickness: mm('3.6') },
  }),
  {
    id: 'T4',
    name: 'thrust washer',
    kind: 'thrust-washer',
    place: 4,
    viewedFrom: 'rear',
    faces: {
      A: { touches: 'p1-sun', mark: 'oil grooves' },
      B: { touches: 'p1-carrier', mark: 'tabs' },
    },
    size: { inner: mm('36.0'), outer: mm('58.0'), thickness: mm('1.8') },
  },
  seat(5, 'p1-carrier', 'p2-ring'),
  {
    id: 'T6',
    kind: 'sealing-ring',
    place: 6,
    viewedFrom: 'front',
    faces: { A: { touches: 'p2-ring' }, B: { touches: 'p2-carrier' } },
  },
  {
    id: 'T7',
    name: 'output seal',
    kind: 'lip-seal',
    place: 7,
    viewedFrom: 'rear',
    lip: 'A',
    pressure: 'A',
    faces: {
      A: { touches: 'p2-carrier', mark: 'lip with spring' },
      B: { touches: 'case', mark: 'flat shell' },
    },
    size: { inner: mm('40.0'), outer: mm('60.0'), thickness: mm('9.0') },
  },
];

const base = shippedDecks()[0]!;
const solenoidIds = (base.solenoids ?? []).map(({ id }) => id);

export const BENCH: Deck = {
  ...base,
  sources: [...(base.sources ?? []), { id: 'sheet-12', title: 'Bench sheet 12' }],
  shaftLine: line,
  seats,
  stacks: [
    {
      id: 'C1',
      name: 'direct clutch pack',
      element: 'C1',
      floor: 'drum floor',
      floorAt: 'front',
      source: 'sheet-12',
      room: mm('30.10'),
      waves: 'free',
      items: [
        { id: 'piston', kind: 'piston' },
        { id: 'spring', kind: 'return-spring' },
        {
          id: 'dish',
          kind: 'dished',
          thickness: mm('1.50'),
          free: mm('2.60'),
          looks: { feature: 'dish', towards: 'opening' },
        },
        {
          id: 'apply',
          kind: 'apply',
          thickness: mm('2.40'),
          looks: { feature: 'step', towards: 'floor' },
        },
        ...pairs(4),
        { id: 'friction-5', kind: 'friction', thickness: mm('1.60'), identical: 'friction' },
        {
          id: 'backing',
          name: 'selective backing plate',
          kind: 'backing',
          thickness: mm('5.20'),
          looks: { feature: 'bevel', towards: 'opening' },
        },
        { id: 'ring', kind: 'snap-ring', thickness: mm('1.60') },
      ],
    },
    {
      id: 'B2',
      name: 'low brake pack',
      floor: 'case floor',
      floorAt: 'rear',
      items: [
        { id: 'wave', kind: 'waved', thickness: mm('2.00'), free: mm('3.20') },
        { id: 'steel-1', kind: 'steel', thickness: mm('2.00'), identical: 'steel' },
        { id: 'friction-1', kind: 'friction', thickness: mm('1.80'), identical: 'friction' },
        { id: 'sep-1', kind: 'separator', thickness: mm('0.50') },
        { id: 'steel-2', kind: 'steel', thickness: mm('2.00'), identical: 'steel' },
        { id: 'friction-2', kind: 'friction', thickness: mm('1.80'), identical: 'friction' },
        { id: 'sep-2', kind: 'separator', thickness: mm('0.50') },
        { id: 'steel-3', kind: 'steel', thickness: mm('2.00'), identical: 'steel' },
        {
          id: 'backing',
          kind: 'backing',
          thickness: mm('4.00'),
          looks: { feature: 'lip', towards: 'floor' },
        },
        { id: 'ring', kind: 'snap-ring', thickness: mm('1.80') },
      ],
    },
  ],
  electrical: {
    supplies: [{ id: 'main', name: 'solenoid supply' }],
    thermistors: [{ id: 'oil', name: 'fluid temperature', sense: 'falls', points: [] }],
    windings: solenoidIds.map((solenoid) => ({
      solenoid,
      at20: { low: { value: '5.0', unit: 'Ω' }, high: { value: '5.6', unit: 'Ω' } },
      supply: 'main',
      switched: 'low',
    })),
    connectors: [
      {
        id: 'case',
        name: 'case connector',
        rows: 2,
        columns: 6,
        seenFrom: 'unit',
        pins: [
          ...solenoidIds.slice(0, 5).map((id, index) => ({
            id: String(index + 1),
            row: 1,
            column: index + 1,
            serves: `solenoid:${id}`,
          })),
          { id: '6', row: 1, column: 6, serves: 'supply:main' },
          { id: '7', row: 2, column: 1, serves: 'thermistor:oil' },
          { id: '8', row: 2, column: 2, serves: 'ground' },
          { id: '9', row: 2, column: 4, serves: 'spare' },
          { id: '10', row: 2, column: 6, serves: 'spare' },
        ],
      },
    ],
  },
};
