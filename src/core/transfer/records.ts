/**
 * The rest of a never-seen unit's data: what its elements hold, its windings, supplies, sensors and connector.
 * Made up, but so that it could be: each element has as many plates as its load asks, with some in hand.
 */
import { holdsNm } from '../faults/slip.ts';
import { solveTorques } from '../gears/torque.ts';
import type { Random } from '../random.ts';
import { type Rational, rational, ZERO } from '../rational.ts';
import type { DeckCapacity } from '../unit/capacity.ts';
import type { DeckElement, DeckSensor, DeckSolenoid } from '../unit/deck.ts';
import type { DeckElectrical, DeckPin } from '../unit/electrical.ts';
import type { Charted } from './train.ts';

/** Input torque the elements are sized for, N·m. */
const SIZED_FOR = 320n;
const MOST_PLATES = 12;

const mm = (value: number) => ({ value: String(value), unit: 'mm' as const });

/** The most torque an element carries in any range, per 1 on the input. */
function greatestShare({ train, chart }: Charted, id: string): Rational {
  return [...chart.forward, chart.reverse].reduce((most, { applied }) => {
    const share = solveTorques(train, applied)?.elements.get(id);
    return share?.abs().gt(most) ? share.abs() : most;
  }, ZERO);
}

/** Plates, piston and spring that hold what is asked and 15 to 70 % more. */
function capacityFor(element: DeckElement, share: Rational, random: Random): DeckCapacity {
  const outer = random.int(70, 88) * 2;
  const piston = { outer: mm(outer - 4), inner: mm(outer - random.int(22, 34)) };
  const lining = { outer: mm(outer), inner: mm(outer - random.int(9, 14) * 2) };
  const spring = { value: String(random.int(8, 16) * 100), unit: 'N' as const };
  const friction = random.pick(['0.12', '0.13', '0.14']);
  const inHand = rational(random.int(115, 170), 100);
  const made = (frictions: number, pressure: number): DeckCapacity => ({
    piston,
    spring,
    frictions,
    lining,
    friction,
    pressure: { value: String(pressure), unit: 'kPa' },
  });
  const asked = share.mul(SIZED_FOR).mul(inHand);
  for (const pressure of [1200, 1500, 1800, 2100])
    for (let frictions = 2; frictions <= MOST_PLATES; frictions++) {
      const capacity = made(frictions, pressure);
      if (holdsNm({ ...element, capacity })!.gte(asked)) return capacity;
    }
  return made(MOST_PLATES, 2400);
}

/** The elements with what they hold. */
export const withCapacities = (charted: Charted, random: Random): DeckElement[] =>
  charted.train.elements.map((element) =>
    element.kind === 'one-way'
      ? element
      : { ...element, capacity: capacityFor(element, greatestShare(charted, element.id), random) },
  );

export const SENSORS: readonly DeckSensor[] = [
  { id: 'input-speed', reads: 'in', teeth: 36 },
  { id: 'output-speed', reads: 'out', teeth: 48 },
];

const ohms = (value: string) => ({ value, unit: 'Ω' as const });

/** Two supplies, a winding for each solenoid, hall sensors on the first supply, and one connector for all of it. */
export function drawElectrical(solenoids: readonly DeckSolenoid[], random: Random): DeckElectrical {
  const switched = random.pick(['low', 'high'] as const);
  const at20 = random.pick([
    { low: ohms('4.9'), high: ohms('5.5') },
    { low: ohms('10.2'), high: ohms('11.4') },
    { low: ohms('15.0'), high: ohms('17.0') },
  ]);
  const second = random.sample(solenoids, Math.floor(solenoids.length / 2)).map(({ id }) => id);
  const serves = [
    'supply:A',
    'supply:B',
    ...solenoids.map(({ id }) => `solenoid:${id}`),
    ...SENSORS.map(({ id }) => `sensor:${id}`),
    'ground',
  ];
  const columns = Math.ceil(serves.length / 2);
  const pins = random.shuffle(serves).map(
    (what, index): DeckPin => ({
      id: String(index + 1),
      row: index < columns ? 1 : 2,
      column: (index % columns) + 1,
      serves: what,
    }),
  );
  return {
    supplies: [{ id: 'A' }, { id: 'B' }],
    windings: solenoids.map(({ id }) => ({
      solenoid: id,
      at20,
      supply: second.includes(id) ? 'B' : 'A',
      switched,
    })),
    pickups: SENSORS.map(({ id }) => ({ sensor: id, kind: 'hall', supply: 'A' })),
    connectors: [{ id: 'X1', rows: 2, columns, seenFrom: 'unit', pins }],
  };
}
