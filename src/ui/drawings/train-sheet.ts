/**
 * A sheet on which the shafts of one train are laid, taken up and laid again. Every shaft is a net of nodes to
 * join: its gears, the clutches on it, the input or output arrow, and for a brake any free place at the case
 * along the top. A member fixed to the case is a small net of its own that ends at a ground.
 */
import { CASE, type Element, MEMBERS, type Member, type Train } from '../../core/gears/train.ts';
import {
  columnOf,
  FREE,
  type Grid,
  isEmpty,
  makeGrid,
  memberNode,
  node,
  type Room,
  rowOf,
} from './train-grid.ts';
import { costOfStub, type Field, isReachable, occupy, type Step, spread, stepsTo } from './train-route.ts';

/** Added to the cost of a shaft that could not be joined. */
export const IMPOSSIBLE = 100_000;

const MOST_TRIES = 12;

/** Drawing a lane or a track costs room. */
const USED_LANE = 4;
const USED_ROW = 2;

/** An element between two shafts: its left bar stands in this column, the right bar in the next. */
export interface ClutchPlace {
  readonly element: Element;
  readonly column: number;
  readonly row: number;
  readonly left: string;
  readonly right: string;
}

/** A member fixed to the case, as set and member. */
export interface Grounded {
  readonly set: number;
  readonly member: Member;
}

interface Net {
  readonly shaft: string;
  readonly fixed: readonly number[];
  /** Elements that join the shaft to the case. */
  readonly brakes: readonly string[];
  readonly grounded?: Grounded;
}

export interface Laid {
  readonly steps: readonly Step[];
  /** Nodes where a part is joined; nobody else's line may pass there. */
  readonly ends: readonly number[];
  /** Node at the top for each brake. */
  readonly brakes: ReadonlyMap<string, number>;
  /** Node of the ground, or -1. */
  readonly ground: number;
  readonly cost: number;
}

const NOT_LAID: Laid = { steps: [], ends: [], brakes: new Map(), ground: -1, cost: 0 };

export const joinsCase = (element: Element): boolean => element.between.includes(CASE);

export const inputNode = (grid: Grid): number => node(grid, 0, grid.rows.bottom);
export const outputNode = (grid: Grid): number => node(grid, grid.width - 1, grid.rows.bottom);

function netsOf(train: Train, grid: Grid): Net[] {
  const fixed = new Map<string, number[]>();
  const join = (shaft: string, at: number) => fixed.set(shaft, [...(fixed.get(shaft) ?? []), at]);
  join(train.input, inputNode(grid));
  join(train.output, outputNode(grid));
  const grounded: Net[] = [];
  for (const [set, gearset] of train.gearsets.entries()) {
    for (const member of MEMBERS) {
      const { shaft } = gearset[member];
      const at = memberNode(grid, set, member);
      if (shaft === CASE) grounded.push({ shaft, fixed: [at], brakes: [], grounded: { set, member } });
      else join(shaft, at);
    }
  }
  for (const element of train.elements) {
    for (const shaft of element.between) if (shaft !== CASE && !fixed.has(shaft)) fixed.set(shaft, []);
  }
  const shafts = [...fixed].map(([shaft, ends]): Net => {
    const brakes = train.elements.filter((one) => joinsCase(one) && one.between.includes(shaft));
    return { shaft, fixed: ends, brakes: brakes.map((element) => element.id) };
  });
  return [...grounded, ...shafts];
}

/** The nodes that bars and label of a clutch keep free. */
function bodyOf(grid: Grid, column: number, row: number): number[] {
  const rows = [row + 1, row, row - 1, row - 2].filter((at) => at > 0 && at < grid.height);
  return rows.flatMap((at) => [node(grid, column, at), node(grid, column + 1, at)]);
}

export class Sheet {
  readonly grid: Grid;
  readonly nets: readonly Net[];
  readonly laid: Laid[];
  readonly places = new Map<string, ClutchPlace>();

  private readonly isClose: boolean;

  /** `isClose`: clutches may stand right beside a gear, which reads best but can shut its shaft in. */
  constructor(train: Train, room: Room, isClose: boolean) {
    this.isClose = isClose;
    this.grid = makeGrid(train.gearsets.length, room);
    this.nets = netsOf(train, this.grid);
    this.laid = this.nets.map(() => NOT_LAID);
    for (const net of this.nets.keys()) this.takeUp(net);
  }

  /** Takes a net's lines off the sheet; the nodes it must join stay reserved. */
  takeUp(net: number): void {
    const { level, upright } = this.grid;
    for (let at = 0; at < level.length; at++) {
      if (level[at] === net) level[at] = FREE;
      if (upright[at] === net) upright[at] = FREE;
    }
    this.laid[net] = NOT_LAID;
    occupy(this.grid, net, [], this.terminals(net));
  }

  /** Joins all of a net, nearest part first. */
  lay(net: number): void {
    const { grid } = this;
    const { brakes, grounded } = this.nets[net]!;
    const ends = this.terminals(net);
    const open = new Set(ends);
    const hanging = new Map<string, number>();
    const steps: Step[] = [];
    let cost = 0;
    let ground = -1;
    if (ends.length === 0 && brakes.length === 0) return;
    const first = ends[0] ?? node(grid, 1, 1);
    const joined = new Set([first]);
    open.delete(first);
    while (open.size > 0 || hanging.size < brakes.length || (grounded && ground < 0)) {
      const wantsTop = hanging.size < brakes.length;
      const wantsGround = grounded && ground < 0;
      const found = spread(
        grid,
        net,
        joined,
        (at, level) =>
          open.has(at) ||
          (wantsTop && at < grid.width && isEmpty(grid, at)) ||
          (wantsGround === true && level && this.canGround(at)),
      );
      if (found.goal < 0) {
        cost += IMPOSSIBLE;
        break;
      }
      const at = found.goal >> 2;
      const path = stepsTo(found, found.goal);
      steps.push(...path);
      cost += found.distance[found.goal]!;
      for (const step of path) for (const end of step) joined.add(end);
      if (!open.delete(at)) {
        ends.push(at);
        if (at < grid.width) hanging.set(brakes[hanging.size]!, at);
        else {
          ground = at;
          ends.push(at - grid.width, at + grid.width);
        }
      }
      occupy(grid, net, steps, ends);
    }
    this.laid[net] = { steps, ends, brakes: hanging, ground, cost };
  }

  /**
   * Lays both shafts of a clutch anew, with the clutch where that is cheapest. A place that shuts a line in is
   * given up for the next.
   */
  settle(element: Element): void {
    const nets = element.between.map((shaft) => this.nets.findIndex((net) => net.shaft === shaft));
    const relay = () => {
      for (const net of nets) this.takeUp(net);
      for (const net of new Set(nets)) this.lay(net);
    };
    const givenUp: ClutchPlace[] = [];
    while (givenUp.length < MOST_TRIES) {
      this.remove(element);
      relay();
      const place = this.cheapest(element, nets, givenUp);
      if (!place) return;
      this.places.set(element.id, place);
      for (const net of nets) this.takeUp(net);
      for (const at of bodyOf(this.grid, place.column, place.row)) this.grid.blocked[at] = 1;
      relay();
      if (nets.every((net) => this.laid[net]!.cost < IMPOSSIBLE)) return;
      givenUp.push(place);
    }
  }

  /** Cost of all lines and of the room they take. */
  cost(): number {
    const lanes = new Set<number>();
    const rows = new Set<number>();
    for (const { steps } of this.laid) {
      for (const [from, to] of steps) {
        if (Math.abs(from - to) === 1) rows.add(rowOf(this.grid, from));
        else lanes.add(columnOf(this.grid, from));
      }
    }
    for (const place of this.places.values()) lanes.add(place.column).add(place.column + 1);
    const lines = this.laid.reduce((sum, net) => sum + net.cost, 0);
    return lines + lanes.size * USED_LANE + rows.size * USED_ROW;
  }

  /** The nodes a net must join. */
  private terminals(net: number): number[] {
    const { shaft, fixed } = this.nets[net]!;
    if (shaft === CASE) return [...fixed];
    const ports = [...this.places.values()].flatMap((place) => [
      ...(place.left === shaft ? [node(this.grid, place.column - 1, place.row)] : []),
      ...(place.right === shaft ? [node(this.grid, place.column + 2, place.row)] : []),
    ]);
    return [...fixed, ...ports];
  }

  private canGround(at: number): boolean {
    const { grid } = this;
    const row = rowOf(grid, at);
    if (grid.setAt[columnOf(grid, at)] !== -1 || row < 2 || row > grid.height - 2) return false;
    return [at - grid.width, at, at + grid.width].every((near) => isEmpty(grid, near));
  }

  private remove(element: Element): void {
    const place = this.places.get(element.id);
    if (!place) return;
    this.places.delete(element.id);
    for (const at of bodyOf(this.grid, place.column, place.row)) this.grid.blocked[at] = 0;
  }

  private cheapest(
    element: Element,
    nets: readonly number[],
    givenUp: readonly ClutchPlace[],
  ): ClutchPlace | undefined {
    const { grid } = this;
    const fields = nets.map((net) => this.fieldOf(net));
    let best: ClutchPlace | undefined;
    let bestCost = Number.POSITIVE_INFINITY;
    for (let column = 1; column + 2 < grid.width; column++) {
      const lanes = this.isClose ? [0, 1] : [-1, 0, 1, 2];
      if (lanes.some((side) => grid.setAt[column + side] !== -1)) continue;
      for (let row = 3; row < grid.height; row++) {
        if (!isEmpty(grid, node(grid, column, row)) || !isEmpty(grid, node(grid, column + 1, row))) continue;
        if (!bodyOf(grid, column, row).every((at) => isEmpty(grid, at))) continue;
        for (const [left, right] of [
          [0, 1],
          [1, 0],
        ] as const) {
          const cost =
            this.stub(fields[left], node(grid, column - 1, row), true) +
            this.stub(fields[right], node(grid, column + 2, row), false);
          if (cost >= bestCost || !isReachable(cost)) continue;
          const place = { element, column, row, left: element.between[left], right: element.between[right] };
          if (givenUp.some((one) => one.column === column && one.row === row && one.left === place.left))
            continue;
          bestCost = cost;
          best = place;
        }
      }
    }
    return best;
  }

  /** How far every node is from a net; undefined for a shaft that has no part on the sheet yet. */
  private fieldOf(net: number): Field | undefined {
    const { ends, steps } = this.laid[net]!;
    const starts = new Set([...ends, ...steps.flat()]);
    return starts.size > 0 ? spread(this.grid, net, starts) : undefined;
  }

  /** Cost for a shaft to come to the node beside a clutch; nothing when it ends there already. */
  private stub(field: Field | undefined, at: number, goesRight: boolean): number {
    if (!field) return isEmpty(this.grid, at) ? 0 : Number.POSITIVE_INFINITY;
    const { level, upright } = this.grid;
    if (level[at] === field.net && upright[at] === field.net) return 0;
    return costOfStub(this.grid, field, at, goesRight);
  }
}
