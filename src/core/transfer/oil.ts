/**
 * Solenoids and lever of a never-seen unit: one solenoid for each brake and clutch, and a polarity that is safe
 * with the connector off. With a manual valve the unit then drives in D, where it can; with none it stands.
 */
import { settle } from '../gears/one-way.ts';
import type { Random } from '../random.ts';
import type { DeckLever, DeckLeverPosition, DeckSolenoid } from '../unit/deck.ts';
import type { Chart, Charted, ChartRow } from './train.ts';

export interface Oil {
  readonly solenoids: readonly DeckSolenoid[];
  readonly lever: DeckLever;
}

type Position = DeckLeverPosition & { readonly opens: readonly string[] };

/** A row held by a brake in a one-way's place is had in a lever position of its own. */
const isByHand = ({ id }: ChartRow) => id.endsWith('m');

function positionsOf({ train, chart }: Charted, random: Random): Position[] {
  const friction = train.elements.filter(({ kind }) => kind !== 'one-way').map(({ id }) => id);
  const used = (rows: readonly ChartRow[]) =>
    friction.filter((id) => rows.some(({ applied }) => applied.includes(id)));
  const low = chart.forward.filter(isByHand);
  const drive = chart.forward.filter((row) => !isByHand(row));
  const still = used([{ id: 'N', applied: chart.neutral }]);
  const rear = used([chart.reverse]);
  const byHand = random.int(0, 2) === 0 ? random.sample(rear, 1) : [];
  return [
    { id: 'P', rows: ['P'], opens: still },
    {
      id: 'R',
      rows: ['R'],
      opens: rear.filter((id) => !byHand.includes(id)),
      ...(byHand.length > 0 ? { feeds: byHand } : {}),
    },
    { id: 'N', rows: ['N'], opens: still },
    { id: 'D', rows: drive.map(({ id }) => id), opens: used(drive) },
    ...(low.length > 0 ? [{ id: 'L', rows: low.map(({ id }) => id), opens: used(low) }] : []),
  ];
}

/** How good it is that these have pressure unplugged: below 0 unsafe, more for each position that drives on. */
function worthOf({ train }: Charted, positions: readonly Position[], full: readonly string[]): number {
  let worth = 0;
  for (const { id, opens, feeds = [] } of positions) {
    const on = [...opens.filter((element) => full.includes(element)), ...feeds];
    const { state, ratio } = settle(train, on).solution;
    if (state === 'tied-up' || state === 'output-held') return -1;
    if (!ratio) continue;
    const way = id === 'R' ? -1n : id === 'P' || id === 'N' ? 0n : 1n;
    if (way === 0n || ratio.s !== way) return -1;
    worth += id === 'D' ? 2 : 1;
  }
  return worth;
}

function polarityOf(charted: Charted, positions: readonly Position[], random: Random): readonly string[] {
  const friction = charted.train.elements.filter(({ kind }) => kind !== 'one-way').map(({ id }) => id);
  const sets = Array.from({ length: 2 ** friction.length - 2 }, (_, index) =>
    friction.filter((_, bit) => (index + 1) & (1 << bit)),
  );
  const ranked = random
    .shuffle(sets)
    .map((full) => ({ full, worth: worthOf(charted, positions, full) }))
    .sort((a, b) => b.worth - a.worth);
  return ranked[0]!.worth < 0 ? [] : ranked[0]!.full;
}

const LETTERS = ['S', 'L', 'V', 'E'];

/** Solenoids in the order of the elements, and a lever with or without a manual valve. */
export function drawOil(charted: Charted, random: Random): Oil {
  const positions = positionsOf(charted, random);
  const manual = random.int(0, 3) > 0;
  const every = charted.train.elements.filter(({ kind }) => kind !== 'one-way').map(({ id }) => id);
  const bare = positions.map(
    (position): Position => ({ id: position.id, rows: position.rows, opens: every }),
  );
  const full = polarityOf(charted, manual ? positions : bare, random);
  const letter = random.pick(LETTERS);
  const solenoids = every.map(
    (element, index): DeckSolenoid => ({
      id: `${letter}${index + 1}`,
      kind: random.pick(['linear', 'linear', 'on-off']),
      feeds: [element],
      whenUnplugged: full.includes(element) ? 'full' : 'none',
    }),
  );
  const lever: DeckLever = manual
    ? { valve: 'manual', positions }
    : { valve: 'none', positions: bare.map(({ id, rows }) => ({ id, rows })) };
  return { solenoids, lever };
}

/** What a chart's neutral rows are called. */
export const neutralRows = ({ neutral }: Chart) => [
  { id: 'P', applied: neutral },
  { id: 'N', applied: neutral },
];
