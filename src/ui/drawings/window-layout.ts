/** A band of limits over a list of values: each in a row of its own, its place along the scale to be seen. */
import type { WindowDrawing } from '../../core/questions/drawing.ts';
import { parseRational } from '../../core/rational.ts';

export interface WindowRow {
  readonly lines: readonly string[];
  readonly y: number;
  readonly x: number;
  readonly isLit: boolean;
}

export interface WindowLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  /** The band's edges along the scale. */
  readonly low: number;
  readonly high: number;
  readonly aim: number | null;
  readonly rows: readonly WindowRow[];
  readonly names: number;
}

const WIDTH = 276;
const ROW = 26;
const LINE = 13;

export function layoutWindow(
  { low, high, aim, parts }: WindowDrawing,
  labels: readonly (readonly string[])[],
): WindowLayout {
  const read = (text: string) => parseRational(text)?.valueOf() ?? 0;
  const [from, to] = [read(low), read(high)];
  const values = parts.map(({ at }) => read(at));
  const least = Math.min(from, ...values);
  const most = Math.max(to, ...values);
  const span = most - least || 1;
  const longest = Math.max(0, ...labels.flat().map((line) => line.length * 6.4));
  const left = 8 + Math.min(130, longest) + 14;
  const right = WIDTH - 14;
  const xOf = (value: number) => left + ((value - least) / span) * (right - left);
  const top = aim === undefined ? 8 : 24;
  let y = top + 4;
  const rows = parts.map((part, index): WindowRow => {
    const lines = labels[index]!;
    const height = Math.max(ROW, lines.length * LINE + 8);
    y += height;
    return { lines, y: y - height / 2, x: xOf(values[index]!), isLit: part.lit ?? false };
  });
  const foot = y + 6;
  return {
    width: WIDTH,
    height: foot + 24,
    left,
    right,
    top,
    foot,
    low: xOf(from),
    high: xOf(to),
    aim: aim === undefined ? null : xOf(read(aim)),
    rows,
    names: 8,
  };
}
