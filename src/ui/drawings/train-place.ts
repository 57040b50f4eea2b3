/**
 * Decides where the parts of a train go and how its shafts run: clutches are set down in several orders, each
 * where both of its shafts come near, then every line and clutch is taken up and laid once more; the cheapest
 * sheet is kept. No chance is involved: the same train is always drawn the same.
 */
import type { Train } from '../../core/gears/train.ts';
import type { Grid } from './train-grid.ts';
import type { Step } from './train-route.ts';
import { type ClutchPlace, type Grounded, IMPOSSIBLE, joinsCase, Sheet } from './train-sheet.ts';

/** The lines of one shaft; a member fixed to the case has lines of its own, under the shaft "case". */
export interface Lines {
  readonly shaft: string;
  readonly steps: readonly Step[];
}

export interface Ground extends Grounded {
  readonly at: number;
}

export interface Placement {
  readonly grid: Grid;
  readonly lines: readonly Lines[];
  readonly clutches: readonly ClutchPlace[];
  /** Node at the top for each element that joins a shaft to the case. */
  readonly brakes: ReadonlyMap<string, number>;
  readonly grounds: readonly Ground[];
  readonly cost: number;
}

function placementOf(sheet: Sheet): Placement {
  const { nets, laid } = sheet;
  return {
    grid: sheet.grid,
    lines: nets.map(({ shaft }, net) => ({ shaft, steps: laid[net]!.steps })),
    clutches: [...sheet.places.values()],
    brakes: new Map(laid.flatMap((lines) => [...lines.brakes])),
    grounds: nets.flatMap(({ grounded }, net) => (grounded ? [{ ...grounded, at: laid[net]!.ground }] : [])),
    cost: sheet.cost(),
  };
}

/** Sheets to try, in turn: their size, and whether clutches may stand right beside a gear. */
const SHEETS = [
  [1, true],
  [1, false],
  [2, true],
  [2, false],
  [4, false],
] as const;

/** A first try this much dearer than the best is not worked on. */
const HOPELESS = 1.12;

/** Each rotation of the list, and each turned round. */
function ordersOf<T>(items: readonly T[]): T[][] {
  if (items.length < 2) return [[...items]];
  const rotations = items.map((_, shift) => [...items.slice(shift), ...items.slice(0, shift)]);
  return items.length === 2 ? rotations : [...rotations, ...rotations.map((order) => order.toReversed())];
}

/** Places every part of a train. A train that our largest sheet cannot hold throws: a mistake of ours. */
export function placeTrain(train: Train): Placement {
  const clutches = train.elements.filter((element) => !joinsCase(element));
  for (const [size, isClose] of SHEETS) {
    const room = { lanes: 6 + 3 * size, outside: 3 + 3 * size, between: 2, inside: 2 + 2 * size };
    let best: Placement | undefined;
    const keep = (sheet: Sheet) => {
      const cost = sheet.cost();
      if (sheet.places.size === clutches.length && cost < IMPOSSIBLE && (!best || cost < best.cost))
        best = placementOf(sheet);
    };
    for (const order of ordersOf(clutches)) {
      const sheet = new Sheet(train, room, isClose);
      for (const net of sheet.nets.keys()) sheet.lay(net);
      for (const element of order) sheet.settle(element);
      keep(sheet);
      if (best && sheet.cost() > best.cost * HOPELESS) continue;
      for (const net of sheet.nets.keys()) {
        sheet.takeUp(net);
        sheet.lay(net);
      }
      keep(sheet);
      for (const element of order) sheet.settle(element);
      keep(sheet);
    }
    if (best) return best;
  }
  throw new Error(`no way to draw gearsets ${train.gearsets.map((set) => set.id).join(', ')}`);
}
