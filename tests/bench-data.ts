/**
 * What the bench adds to a published train: fits, a pack, windings, sensors, torques, capacities. Every value is
 * made up, so that the families on measuring, electrics and pressure have something to ask; every other train
 * has it in inches and pounds.
 */
import type { Element } from '../src/core/gears/train.ts';
import type { DeckCapacity } from '../src/core/unit/capacity.ts';
import type { Deck, DeckElement, DeckSolenoid } from '../src/core/unit/deck.ts';
import type { DeckElectrical, DeckPin } from '../src/core/unit/electrical.ts';
import type { DeckFit } from '../src/core/unit/fits.ts';
import type { Band } from '../src/core/unit/record.ts';
import type { DeckStack, DeckStackItem } from '../src/core/unit/stacks.ts';

const mm = (value: string) => ({ value, unit: 'mm' as const });
const inch = (value: string) => ({ value, unit: 'in' as const });
const ohm = (value: string) => ({ value, unit: 'Ω' as const });
const celsius = (value: string) => ({ value, unit: '°C' as const });
const band = <A>(of: (value: string) => A, low: string, high: string): Band<A> => ({
  low: of(low),
  high: of(high),
});

const parts = (of: typeof mm | typeof inch, letter: string, ...thicknesses: string[]) =>
  thicknesses.map((thickness, index) => ({ id: `${letter}${index + 1}`, thickness: of(thickness) }));

const METRIC_FITS: readonly DeckFit[] = [
  {
    id: 'turbine-end-play',
    name: 'turbine shaft end play',
    kind: 'end-play',
    where: 'at the turbine shaft, pump bolted on',
    method: 'part-fitted',
    instrument: 'dial',
    limits: band(mm, '0.20', '0.45'),
    effect: 'closes',
    spread: mm('0.05'),
    parts: parts(mm, 'W', '1.20', '1.35', '1.50', '1.65', '1.80', '1.95', '2.10', '2.25'),
  },
  {
    id: 'pump-washer',
    name: 'pump washer',
    kind: 'end-play',
    where: 'case face to drum, pump off',
    method: 'depths',
    instrument: 'depth-gauge',
    limits: band(mm, '0.25', '0.55'),
    effect: 'closes',
    spread: mm('0.04'),
    bar: mm('25.00'),
    gasket: mm('0.35'),
    parts: parts(mm, 'P', '0.80', '1.00', '1.20', '1.40', '1.60', '1.80'),
    readings: [
      {
        id: 'first',
        seat: { reading: mm('63.42'), overBar: true },
        standOff: { reading: mm('37.01') },
      },
    ],
  },
  {
    id: 'pack-clearance',
    name: 'forward pack clearance',
    kind: 'clutch-clearance',
    where: 'between backing plate and snap ring',
    method: 'part-fitted',
    instrument: 'feeler',
    limits: band(mm, '1.10', '1.50'),
    aim: mm('1.25'),
    effect: 'closes',
    spread: mm('0.10'),
    parts: parts(mm, 'R', '5.60', '5.80', '6.00', '6.20', '6.40', '6.60'),
    stack: 'bench-pack',
    item: 'backing',
  },
  {
    id: 'rear-shim',
    name: 'rear bearing play',
    kind: 'end-play',
    where: 'at the output flange',
    method: 'bare',
    instrument: 'dial',
    limits: band(mm, '0.40', '0.55'),
    effect: 'opens',
    parts: parts(mm, 'S', '0.10', '0.18', '0.26', '0.34', '0.42'),
  },
];

const INCH_FITS: readonly DeckFit[] = [
  {
    id: 'input-end-play',
    name: 'input shaft end play',
    kind: 'end-play',
    where: 'at the input shaft',
    method: 'part-fitted',
    instrument: 'dial',
    limits: band(inch, '0.005', '0.025'),
    effect: 'closes',
    spread: inch('0.002'),
    parts: parts(inch, 'I', '0.039', '0.047', '0.055', '0.063', '0.071', '0.079'),
  },
  {
    id: 'front-shim',
    name: 'front shim',
    kind: 'end-play',
    where: 'case face to drum',
    method: 'depths',
    instrument: 'depth-gauge',
    limits: band(inch, '0.010', '0.022'),
    effect: 'closes',
    bar: inch('1.000'),
    parts: parts(inch, 'F', '0.030', '0.038', '0.046', '0.054', '0.062'),
  },
  {
    id: 'drum-play',
    name: 'drum play',
    kind: 'end-play',
    where: 'at the drum, no washer in',
    method: 'bare',
    instrument: 'dial',
    limits: band(inch, '0.006', '0.016'),
    effect: 'closes',
    spread: inch('0.003'),
    parts: parts(inch, 'D', '0.020', '0.028', '0.036', '0.044', '0.052'),
  },
];

/** Steels and frictions in turn, a waved plate under them, backing plate and ring over them. */
function pack(of: typeof mm | typeof inch, sizes: Readonly<Record<string, string>>): DeckStack {
  const pairs = [1, 2, 3, 4, 5].flatMap((n): DeckStackItem[] => [
    { id: `steel-${n}`, kind: 'steel', thickness: of(sizes.steel!), identical: 'steel' },
    { id: `friction-${n}`, kind: 'friction', thickness: of(sizes.friction!), identical: 'friction' },
  ]);
  return {
    id: 'bench-pack',
    name: 'forward pack',
    floor: 'drum floor',
    floorAt: 'rear',
    items: [
      { id: 'piston', kind: 'piston' },
      { id: 'wave', kind: 'waved', thickness: of(sizes.wave!), free: of(sizes.free!) },
      ...pairs,
      { id: 'backing', kind: 'backing', thickness: of(sizes.backing!) },
      { id: 'ring', kind: 'snap-ring', thickness: of(sizes.ring!) },
    ],
    room: of(sizes.room!),
    waves: 'flat',
  };
}

const METRIC_PACK = pack(mm, {
  steel: '1.80',
  friction: '1.60',
  wave: '2.00',
  free: '2.60',
  backing: '6.00',
  ring: '1.60',
  room: '28.00',
});

const INCH_PACK = pack(inch, {
  steel: '0.069',
  friction: '0.063',
  wave: '0.080',
  free: '0.105',
  backing: '0.236',
  ring: '0.062',
  room: '1.095',
});

/** The first half of the solenoids hang on one supply and are switched low, the others high. */
function electricalOf(solenoids: readonly DeckSolenoid[]): DeckElectrical {
  const half = Math.ceil(solenoids.length / 2);
  const isLow = (index: number) => index < half;
  const serves = [
    ...solenoids.map(({ id }) => `solenoid:${id}`),
    'supply:low-group',
    'ground',
    'sensor:input-speed',
    'sensor:output-speed',
    'thermistor:oil',
    'spare',
  ];
  const columns = Math.ceil(serves.length / 2);
  const pins: DeckPin[] = serves.map((of, index) => ({
    id: String(index + 1),
    row: index < columns ? 1 : 2,
    column: (index % columns) + 1,
    serves: of,
  }));
  return {
    supplies: [
      { id: 'low-group', name: 'solenoid supply' },
      { id: 'high-group', name: 'high-side drivers' },
    ],
    windings: solenoids.map(({ id }, index) => ({
      solenoid: id,
      at20: index % 3 === 2 ? band(ohm, '11.0', '15.0') : band(ohm, '5.0', '5.6'),
      supply: isLow(index) ? 'low-group' : 'high-group',
      switched: isLow(index) ? 'low' : 'high',
    })),
    pickups: [
      { sensor: 'input-speed', kind: 'coil', at20: band(ohm, '560', '680') },
      { sensor: 'output-speed', kind: 'hall', supply: 'low-group' },
    ],
    thermistors: [
      {
        id: 'oil',
        name: 'fluid temperature sensor',
        sense: 'falls',
        points: [
          { at: celsius('0'), ohms: band(ohm, '9000', '11000') },
          { at: celsius('20'), ohms: band(ohm, '4100', '4900') },
          { at: celsius('40'), ohms: band(ohm, '1900', '2300') },
          { at: celsius('60'), ohms: band(ohm, '950', '1150') },
          { at: celsius('80'), ohms: band(ohm, '470', '570') },
          { at: celsius('110'), ohms: band(ohm, '210', '260') },
        ],
      },
    ],
    connectors: [{ id: 'case-plug', name: 'case connector', rows: 2, columns, seenFrom: 'unit', pins }],
  };
}

const METRIC_CAPACITY: DeckCapacity = {
  piston: { outer: mm('140'), inner: mm('80') },
  spring: { value: '900', unit: 'N' },
  frictions: 5,
  lining: { outer: mm('145'), inner: mm('115') },
  friction: '0.13',
  pressure: { value: '1600', unit: 'kPa' },
};

const INCH_CAPACITY: DeckCapacity = {
  piston: { outer: inch('5.5'), inner: inch('3.0') },
  spring: { value: '200', unit: 'lbf' },
  frictions: 4,
  lining: { outer: inch('5.5'), inner: inch('4.5') },
  friction: '0.12',
  pressure: { value: '250', unit: 'psi' },
};

/** Elements with a capacity: brakes and clutches. */
export const withCapacity = (elements: readonly Element[], metric: boolean): DeckElement[] =>
  elements.map((element) =>
    element.kind === 'one-way' ? element : { ...element, capacity: metric ? METRIC_CAPACITY : INCH_CAPACITY },
  );

/** The records beside the train. */
export function benchData(
  solenoids: readonly DeckSolenoid[],
  metric: boolean,
): Pick<Deck, 'fits' | 'electrical' | 'torques' | 'fluids'> & { readonly packs: readonly DeckStack[] } {
  return {
    fits: metric ? METRIC_FITS : INCH_FITS,
    packs: [metric ? METRIC_PACK : INCH_PACK],
    electrical: electricalOf(solenoids),
    torques: metric
      ? [
          { id: 'pump-bolts', name: 'pump bolts', torque: { value: '25', unit: 'N·m' }, count: 8 },
          { id: 'pan-bolts', name: 'pan bolts', torque: { value: '8', unit: 'N·m' }, count: 20 },
          { id: 'case-bolts', name: 'case bolts', torque: { value: '50', unit: 'N·m' } },
        ]
      : [
          { id: 'pump-bolts', name: 'pump bolts', torque: { value: '20', unit: 'lbf·ft' }, count: 8 },
          { id: 'pan-bolts', name: 'pan bolts', torque: { value: '106', unit: 'lbf·in' }, count: 20 },
        ],
    fluids: [
      {
        id: 'oil',
        name: 'transmission fluid',
        type: 'low viscosity',
        dryFill: metric ? { value: '8.5', unit: 'L' } : { value: '9.0', unit: 'US qt' },
        levelAt: metric
          ? band(celsius, '35', '45')
          : { low: { value: '95', unit: '°F' }, high: { value: '113', unit: '°F' } },
      },
    ],
  };
}
