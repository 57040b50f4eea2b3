/** A connector's face on a grid, and a meter below it whose leads run in the gutters between the pins. */
import type { ShownPin } from '../../core/questions/describe/harness.ts';
import { type Spot, TARGET } from './spots.ts';
import type { Point } from './train-shapes.ts';

export interface PinShape extends Point {
  readonly pin: ShownPin;
}

export interface ConnectorLayout {
  readonly width: number;
  readonly height: number;
  readonly face: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly pins: readonly PinShape[];
  /** Places of the grid that hold no pin. */
  readonly blanks: readonly Point[];
  readonly spots: readonly Spot[];
  /** Radius of a pin. */
  readonly radius: number;
  readonly meter: Point | null;
  /** A path for each lead, from the meter to its pin. */
  readonly leads: readonly string[];
}

export const METER = 17;
/** From pin to pin: closer on a face of many columns, as long as a lead passes between. */
const PITCH = { widest: 42, closest: 32 } as const;
const EDGE = 6;
const NARROW = 276;

export function layoutConnector(
  { rows, columns }: { readonly rows: number; readonly columns: number },
  pins: readonly ShownPin[],
  probes: readonly [string, string] | undefined,
): ConnectorLayout {
  const isTappable = pins.some(({ place }) => place !== null);
  const edge = isTappable ? 3 : EDGE;
  const fitting = (NARROW - 6 - 2 * edge) / columns;
  const pitch = isTappable ? TARGET : Math.max(PITCH.closest, Math.min(PITCH.widest, fitting));
  const radius = Math.min(14, pitch / 2 - 4.5);
  const inner = columns * pitch + 2 * edge;
  const width = Math.max(NARROW, inner + 6);
  const left = (width - inner) / 2;
  const face = { x: left, y: 6, width: inner, height: rows * pitch + 2 * edge };
  const at = (row: number, column: number): Point => ({
    x: left + edge + (column - 0.5) * pitch,
    y: face.y + edge + (row - 0.5) * pitch,
  });
  const shapes = pins.map((pin) => ({ pin, ...at(pin.row, pin.column) }));
  const taken = new Set(pins.map(({ row, column }) => `${row}/${column}`));
  const blanks = Array.from({ length: rows * columns }, (_, index) => ({
    row: Math.floor(index / columns) + 1,
    column: (index % columns) + 1,
  }))
    .filter(({ row, column }) => !taken.has(`${row}/${column}`))
    .map(({ row, column }) => at(row, column));
  const foot = face.y + face.height;
  const meter = probes ? { x: width / 2, y: foot + 46 } : null;
  const ends = (probes ?? []).flatMap((id) => shapes.find(({ pin }) => pin.pin.id === id) ?? []);
  // The pin further left gets the lead from the meter's left, so that they do not cross below the face.
  const byColumn = ends.toSorted((a, b) => a.x - b.x);
  const leads = meter
    ? byColumn.map((end, index) => {
        const side = index === 0 ? -1 : 1;
        const start = { x: meter.x + side * METER, y: meter.y };
        const gutter = end.x + (side * pitch) / 2;
        const lane = foot + 12 + (index === 0 ? 0 : 6);
        const turn = `M${start.x} ${start.y}H${start.x + side * 10}V${lane}H${gutter}V${end.y}`;
        return `${turn}H${end.x + side * (radius - 1)}`;
      })
    : [];
  return {
    width,
    height: meter ? meter.y + METER + 8 : foot + 8,
    face,
    pins: shapes,
    blanks,
    spots: shapes.flatMap(({ pin, x, y }) =>
      pin.place === null ? [] : [{ id: pin.pin.id, label: String(pin.place), x, y }],
    ),
    radius,
    meter,
    leads,
  };
}
