/**
 * From a train to its stick drawing: the half section above the axis, input at the left, every shaft a set of
 * level and upright lines that meet exactly the parts it joins. Lines of different shafts only ever cross.
 * Pure and without chance; natural size is chosen for a small phone.
 */
import { CASE, type Element, type Gearset, type Train } from '../../core/gears/train.ts';
import { columnOf, rowOf } from './train-grid.ts';
import { type Placement, placeTrain } from './train-place.ts';
import { type Run, shaftRuns } from './train-runs.ts';
import {
  type ElementShape,
  type GroundShape,
  labelAt,
  level,
  type Segment,
  type SetShape,
  SIZE,
  type TrainLayout,
  textWidth,
  upright,
} from './train-shapes.ts';
import { type ClutchPlace, inputNode, outputNode } from './train-sheet.ts';
import { spaceColumns, spaceRows } from './train-spacing.ts';

export interface LayoutWords {
  readonly input: string;
  readonly output: string;
  /** Lines to stand under a gearset's id. */
  readonly under?: (set: Gearset) => readonly string[];
}

/** Where rows and columns came to lie. */
interface Frame {
  readonly placement: Placement;
  readonly x: (column: number) => number;
  readonly y: (row: number) => number;
}

export function layoutTrain(train: Train, words: LayoutWords): TrainLayout {
  const placement = placeTrain(train);
  const { grid } = placement;
  const runs = shaftRuns(placement);
  const captions = train.gearsets.map((set) => [set.id, ...(words.under?.(set) ?? [])]);
  const heights = spaceRows(placement, runs);
  const columns = spaceColumns(
    placement,
    runs,
    captions.map((lines) => Math.max(...lines.map(textWidth))),
  );
  const top =
    placement.brakes.size > 0 ? SIZE.margin + SIZE.line + SIZE.hatch + 2 + SIZE.gap : SIZE.margin + 4;
  const lead = Math.max(SIZE.arrow, textWidth(words.input) + 2, columns.left);
  const tail = Math.max(SIZE.arrow, textWidth(words.output) + 2, columns.right);
  const frame: Frame = {
    placement,
    x: (column) => SIZE.margin + lead + columns.x.get(column)!,
    y: (row) => top + heights.get(row)! - heights.values().next().value!,
  };
  const { x, y } = frame;
  const lowest = Math.max(
    y(grid.rows.bottom) + 7,
    y(grid.rows.sun) + 20,
    ...placement.clutches.map(({ row }) => y(row) + SIZE.bar + 5),
    ...placement.grounds.map(({ at }) => y(rowOf(grid, at)) + SIZE.bar + 5),
  );
  const width = x(grid.width - 1) + tail + SIZE.margin;
  const start = y(rowOf(grid, inputNode(grid)));
  const finish = y(rowOf(grid, outputNode(grid)));
  const captionLines = Math.max(...captions.map((lines) => lines.length));
  return {
    width,
    height: lowest + 4 + captionLines * SIZE.line + SIZE.margin,
    axis: level(SIZE.margin, width - SIZE.margin, lowest),
    housing: placement.brakes.size > 0 ? level(SIZE.margin, width - SIZE.margin, top - SIZE.gap) : null,
    sets: train.gearsets.map((set, index) => setShape(frame, set, index, captions[index]!, lowest + 4)),
    shafts: runs.map((shaft) => ({
      shaft: shaft.shaft,
      lines: shaft.runs.flatMap((run) => linesOf(frame, train, run)),
      dots: shaft.branches.map((at) => ({ x: x(columnOf(grid, at)), y: y(rowOf(grid, at)) })),
    })),
    elements: train.elements.map((element) => elementShape(frame, element, top)),
    grounds: placement.grounds.map(({ set, member, at }): GroundShape => {
      const [middle, height] = [x(columnOf(grid, at)), y(rowOf(grid, at))];
      const side = columnOf(grid, at) < grid.sets[set]! ? -1 : 1;
      return { set, member, side, bar: upright(middle, height - SIZE.bar, height + SIZE.bar) };
    }),
    input: level(SIZE.margin, x(0), start),
    output: level(x(grid.width - 1), width - SIZE.margin, finish),
    inputShaft: train.input,
    outputShaft: train.output,
    inputLabel: labelAt(words.input, SIZE.margin + textWidth(words.input) / 2, start - SIZE.line - 5),
    outputLabel: labelAt(
      words.output,
      width - SIZE.margin - textWidth(words.output) / 2,
      finish - SIZE.line - 5,
    ),
  };
}

/** Where the bars of a clutch stand: in the middle of the room they have. */
function barsOf(place: ClutchPlace, x: Frame['x']): [number, number] {
  const middle = (x(place.column) + x(place.column + 1)) / 2;
  return [middle - SIZE.gap / 2, middle + SIZE.gap / 2];
}

/** A level run reaches to the very bar of the clutch it ends at. */
function levelEnds({ clutches }: Placement, x: Frame['x'], run: Run): { from: number; to: number } {
  const inRow = clutches.filter((place) => place.row === run.on);
  const onLeft = inRow.find((place) => place.column === run.to);
  const onRight = inRow.find((place) => place.column + 1 === run.from);
  return {
    from: onRight ? barsOf(onRight, x)[1] : x(run.from),
    to: onLeft ? barsOf(onLeft, x)[0] : x(run.to),
  };
}

/** A run as a line. The carrier of a double-pinion set goes round the mesh of its planets, by the cheeks. */
function linesOf({ placement, x, y }: Frame, train: Train, run: Run): Segment[] {
  if (!run.isLevel) return [upright(x(run.on), y(run.from), y(run.to))];
  const { grid } = placement;
  const { from, to } = levelEnds(placement, x, run);
  let lines = [level(from, to, y(run.on))];
  if (run.on !== grid.rows.carrier) return lines;
  for (const [index, set] of train.gearsets.entries()) {
    const column = grid.sets[index]!;
    if (set.kind !== 'double-pinion' || column < run.from || column > run.to) continue;
    const [left, right] = [x(column) - SIZE.pin, x(column) + SIZE.pin];
    lines = lines.flatMap((line) => [
      ...(line.x1 < left ? [level(line.x1, Math.min(left, line.x2), line.y1)] : []),
      ...(line.x2 > right ? [level(Math.max(right, line.x1), line.x2, line.y1)] : []),
    ]);
  }
  return lines;
}

function setShape(frame: Frame, set: Gearset, index: number, captions: string[], under: number): SetShape {
  const { placement, x, y } = frame;
  const { rows, sets } = placement.grid;
  const middle = x(sets[index]!);
  const pin = y(rows.carrier);
  const top = y(rows.ring) + SIZE.mesh;
  const bottom = y(rows.sun) - SIZE.mesh;
  const half = SIZE.mesh / 2;
  const planets =
    set.kind === 'simple'
      ? [{ top, bottom, pin }]
      : [
          { top, bottom: pin - half, pin: (top + pin - half) / 2 },
          { top: pin + half, bottom, pin: (pin + half + bottom) / 2 },
        ];
  const pins = planets.map((planet) => level(middle - SIZE.pin, middle + SIZE.pin, planet.pin));
  const cheeks = [middle - SIZE.pin, middle + SIZE.pin].map((at) =>
    upright(at, planets[0]!.pin, planets.at(-1)!.pin),
  );
  return {
    set,
    x: middle,
    ring: level(middle - SIZE.ring, middle + SIZE.ring, y(rows.ring)),
    sun: level(middle - SIZE.ring, middle + SIZE.ring, y(rows.sun)),
    carrier: planets.length === 1 ? pins : [...pins, ...cheeks],
    planets,
    captions: captions.map((text, line) => labelAt(text, middle, under + line * SIZE.line)),
  };
}

function elementShape({ placement, x, y }: Frame, element: Element, top: number): ElementShape {
  const { grid, clutches, brakes } = placement;
  const clutch = clutches.find((place) => place.element.id === element.id);
  if (clutch) {
    const middle = y(clutch.row);
    const [left, right] = barsOf(clutch, x);
    const bar = (at: number) => upright(at, middle - SIZE.bar, middle + SIZE.bar);
    return {
      element,
      shafts: [clutch.left, clutch.right],
      bars: [bar(left), bar(right)],
      label: labelAt(element.id, (left + right) / 2, middle - SIZE.bar - SIZE.line - 2),
    };
  }
  const middle = x(columnOf(grid, brakes.get(element.id)!));
  const bar = (at: number) => level(middle - SIZE.bar, middle + SIZE.bar, at);
  return {
    element,
    shafts: [CASE, element.between.find((shaft) => shaft !== CASE) ?? CASE],
    bars: [bar(top - SIZE.gap), bar(top)],
    label: labelAt(element.id, middle, SIZE.margin),
  };
}
