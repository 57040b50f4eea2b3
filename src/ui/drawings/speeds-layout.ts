/**
 * Levers of all gearsets on one scale of speed, which runs to the right: each stands upright, its members set apart
 * by tooth counts, and the ends of the speeds drawn from it lie on a straight line.
 */
import type { Lever, LeverNode } from '../../core/questions/describe/speeds.ts';
import { spread } from './spots.ts';
import type { Point, Segment } from './train-shapes.ts';
import { wrapText } from './wrap.ts';

export interface NodeShape {
  readonly node: LeverNode;
  /** On the lever, and where its speed ends; null where there is none to draw. */
  readonly at: Point;
  readonly tip: Point | null;
  /** Middle of the words to the left, and their lines. */
  readonly label: { readonly y: number; readonly lines: readonly string[] };
  readonly value: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'end' };
}

export interface LeverShape {
  readonly set: string;
  readonly top: number;
  readonly lever: Segment;
  /** Through the ends of the speeds; null unless all three are drawn. */
  readonly line: Segment | null;
  readonly nodes: readonly NodeShape[];
}

export interface SpeedsLayout {
  readonly width: number;
  readonly height: number;
  readonly zero: number;
  /** Speed 1: that of the input. */
  readonly input: number;
  readonly top: number;
  readonly levers: readonly LeverShape[];
  readonly names: number;
}

const WIDTH = 276;
const HEAD = 22;
const LEVER = 112;
/** Over a lever: its set's name; and room for the words beside it that reach beyond it. */
const TITLE = 40;
const SET = LEVER + TITLE + 34;
const NAMES = 92;
const LINE = 13;
/** Room for a speed that is written to the left. */
const VALUE = 44;

export function layoutSpeeds(
  levers: readonly Lever[],
  labelOf: (node: LeverNode) => readonly [string, string],
): SpeedsLayout {
  const drawn = levers.flatMap(({ nodes }) =>
    nodes.flatMap(({ speed, isCovered }) => (speed === null || isCovered ? [] : [speed.valueOf()])),
  );
  const least = Math.min(0, ...drawn);
  const most = Math.max(1, ...drawn);
  const left = NAMES + 22 + (least < 0 ? VALUE : 0);
  const right = WIDTH - 24;
  const xOf = (speed: number) => left + ((speed - least) / (most - least)) * (right - left);
  const zero = xOf(0);
  const shapes = levers.map(({ set, nodes }, index): LeverShape => {
    const top = HEAD + index * SET + TITLE;
    const words = nodes.map((node) => {
      const [member, shaft] = labelOf(node);
      return [member, ...wrapText(shaft, NAMES, 2)];
    });
    const levels = nodes.map(({ along }) => top + (1 - along) * LEVER);
    const rows = spread(
      levels,
      words.map((lines) => lines.length * LINE + 3),
      top - 14,
      top + LEVER + 32,
    );
    const placed = nodes.map((node, place): NodeShape => {
      const y = levels[place]!;
      const tip = node.speed === null || node.isCovered ? null : { x: xOf(node.speed.valueOf()), y };
      const end = tip ?? { x: zero, y };
      const isBackward = end.x < zero;
      const hasRoom = isBackward || WIDTH - end.x > VALUE;
      return {
        node,
        at: { x: zero, y },
        tip,
        label: { y: rows[place]!, lines: words[place]! },
        value: !hasRoom
          ? { x: end.x, y: y - 9, anchor: 'end' }
          : isBackward
            ? { x: end.x - 5, y, anchor: 'end' }
            : { x: end.x + 6, y, anchor: 'start' },
      };
    });
    const [first, last] = [placed[0]!, placed.at(-1)!];
    const whole = placed.every(({ tip }) => tip);
    return {
      set,
      top,
      lever: { x1: zero, x2: zero, y1: top, y2: top + LEVER },
      line: whole ? { x1: first.tip!.x, y1: first.tip!.y, x2: last.tip!.x, y2: last.tip!.y } : null,
      nodes: placed,
    };
  });
  return {
    width: WIDTH,
    height: HEAD + levers.length * SET + 8,
    zero,
    input: xOf(1),
    top: HEAD - 6,
    levers: shapes,
    names: 4,
  };
}
