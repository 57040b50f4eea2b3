/**
 * Half section of a pack, floor at the bottom, axis to the left. Heights are to scale, all of them by one factor;
 * what is covered, or has no thickness in the deck, is broken off at its ends. Frictions reach in to the hub, all else out to
 * the drum. Waved and dished plates stand free.
 */
import { type ShownPlate, thicknessMm, unitOf } from '../../core/questions/describe/stack.ts';
import { clearanceMm, type DeckStack, type StackKind } from '../../core/unit/stacks.ts';
import { type Spot, spread, TARGET } from './spots.ts';
import { wrapText } from './wrap.ts';

export const SHAPES = [
  'plate',
  'waved',
  'dished',
  'separator',
  'spring',
  'ring',
  'piston',
  'covered',
] as const;
export type Shape = (typeof SHAPES)[number];

export interface PlateShape {
  readonly plate: ShownPlate;
  readonly shape: Shape;
  readonly isFriction: boolean;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Height of the metal itself where the outline is higher: waved and dished plates. */
  readonly metal: number;
  /** False where the height is nominal. */
  readonly isToScale: boolean;
}

export interface SideLabel {
  readonly lines: readonly string[];
  /** Left end of the words and middle of their height. */
  readonly x: number;
  readonly y: number;
  /** Level of the plate it names. */
  readonly at: number;
  readonly from: number;
  readonly isLit: boolean;
}

export interface StackLayout {
  readonly width: number;
  readonly height: number;
  readonly plates: readonly PlateShape[];
  /** Inner corner of the drum, and how thick its wall and floor are drawn. */
  readonly drum: {
    readonly wall: number;
    readonly floor: number;
    readonly top: number;
    readonly thick: number;
  };
  readonly hub: number;
  readonly labels: readonly SideLabel[];
  readonly spots: readonly Spot[];
  /** Drawing units for a millimetre. */
  readonly perMm: number;
  /** A length to read the scale by. */
  readonly rule: { readonly x: number; readonly y: number; readonly length: number; readonly text: string };
  readonly caption: { readonly x: number; readonly y: number; readonly lines: readonly string[] };
}

export interface StackWords {
  /** What is said beside a plate; empty for nothing. */
  readonly beside: (plate: ShownPlate) => string;
  /** The same under its number. */
  readonly under: (plate: ShownPlate) => string;
  readonly floor: string;
}

const WIDTH = 276;
const NOMINAL = 18;
const LINE = 13;
/** Range of the scale, in units for a millimetre, and what it aims at. */
const THINNEST = 14;
const TALLEST = 340;
const LEAST = 3;
const MOST = 14;

function shapeOf(kind: StackKind): Shape {
  switch (kind) {
    case 'piston':
      return 'piston';
    case 'return-spring':
      return 'spring';
    case 'waved':
      return 'waved';
    case 'dished':
      return 'dished';
    case 'separator':
      return 'separator';
    case 'snap-ring':
      return 'ring';
    default:
      return 'plate';
  }
}

/** Heights in mm that the plates take as drawn; null for those that take none, or one that means nothing. */
const heightsMm = (plates: readonly ShownPlate[]): (number | null)[] =>
  plates.map((plate) =>
    plate.isCovered || plate.item.kind === 'separator' ? null : (thicknessMm(plate.item)?.free ?? null),
  );

/** A whole number of the deck's unit that is easy to see on the drawing. */
function ruleOf(stack: DeckStack, perMm: number): { length: number; text: string } {
  const unit = unitOf(stack);
  const mm = unit === 'in' ? 25.4 : 1;
  const sizes = unit === 'in' ? ['0.1', '0.25', '0.5', '1'] : ['2', '5', '10', '20'];
  const size = sizes.find((text) => Number(text) * mm * perMm >= 30) ?? sizes.at(-1)!;
  return { length: Number(size) * mm * perMm, text: `${size} ${unit}` };
}

export function layoutStack(stack: DeckStack, plates: readonly ShownPlate[], words: StackWords): StackLayout {
  const numbered = plates.some(({ place }) => place !== null);
  const inner = numbered ? 58 : 8;
  const wall = numbered ? 196 : 112;
  const reach = (wall - inner) * 0.17;
  const thick = 9;

  const sizes = heightsMm(plates);
  const total = sizes.reduce<number>((sum, size) => sum + (size ?? 0), 0);
  const least = Math.min(...sizes.filter((size) => size !== null));
  const perMm = Math.max(LEAST, Math.min(MOST, THINNEST / least, TALLEST / Math.max(total, 1)));
  const clearance = clearanceMm(stack);
  const isOwn = plates.length === stack.items.length;
  const slack = isOwn && clearance?.ok ? clearance.value.valueOf() : 0;
  const springy = plates.reduce((sum, plate) => {
    const size = plate.isCovered || stack.waves === 'free' ? null : thicknessMm(plate.item);
    return sum + (size && plate.item.kind !== 'separator' ? size.free - size.flat : 0);
  }, 0);
  const gap = Math.max(0, slack - springy) * perMm;

  // Heights above the floor; separators lie at the level of the friction beside them.
  let level = 0;
  const levels = plates.map((plate, index) => {
    if (plate.item.kind === 'separator' && !plate.isCovered) return { bottom: level, top: level };
    const isLastRing = plate.item.kind === 'snap-ring' && index === plates.length - 1;
    const bottom = level + (isLastRing ? gap : 0);
    const size = sizes[index];
    level = bottom + (size === null || size === undefined ? NOMINAL : size * perMm);
    return { bottom, top: level };
  });
  const high = Math.max(level, 40);
  const labelled = numbered ? [] : plates.map((plate) => wrapText(words.beside(plate), WIDTH - wall - 40, 3));
  const labelSizes = labelled.map((lines) => lines.length * LINE + 4);
  const labelsHigh = labelSizes.reduce((sum, size) => sum + size, 0);
  const perSide = Math.ceil(plates.filter(({ place }) => place !== null).length / 2);
  const inside = Math.max(high, labelsHigh, perSide * TARGET);
  const top = 12 + (inside - high) / 2;
  const ground = top + high;
  const bottomOfAll = 12 + inside;

  const beside = (index: number): { bottom: number; top: number } => {
    const next = [index - 1, index + 1].find((near) => plates[near]?.item.kind === 'friction');
    return next === undefined ? levels[index]! : levels[next]!;
  };
  const shapes = plates.map((plate, index): PlateShape => {
    const { kind } = plate.item;
    const isFriction = kind === 'friction' && !plate.isCovered;
    const shape = plate.isCovered ? 'covered' : shapeOf(kind);
    const at = shape === 'separator' ? beside(index) : levels[index]!;
    const size = plate.isCovered ? null : thicknessMm(plate.item);
    const left =
      shape === 'separator'
        ? wall - reach + 3
        : shape === 'ring'
          ? wall - 14
          : isFriction
            ? inner
            : inner + reach;
    const right =
      isFriction || shape === 'covered' ? wall - reach : shape === 'ring' ? wall + thick - 3 : wall;
    const height = at.top - at.bottom;
    return {
      plate,
      shape,
      isFriction,
      left,
      right,
      top: ground - at.top,
      bottom: ground - at.bottom,
      metal: size && size.free > 0 ? (height * size.flat) / size.free : height,
      isToScale: size !== null && shape !== 'separator',
    };
  });

  const middle = ({ top: above, bottom: below }: PlateShape) => (above + below) / 2;
  // From the top down, as the labels stand.
  const downward = shapes.map((shape, index) => ({ shape, index })).reverse();
  const labelTops = spread(
    downward.map(({ shape }) => middle(shape)),
    downward.map(({ index }) => labelSizes[index] ?? 0),
    12,
    bottomOfAll,
  );
  const labels = numbered
    ? []
    : downward.map(({ shape, index }, row) => ({
        lines: labelled[index]!,
        x: wall + 38,
        y: labelTops[row]!,
        at: middle(shape),
        from: shape.shape === 'ring' || shape.shape === 'separator' ? shape.right : wall,
        isLit: shape.plate.isLit,
      }));

  const places = downward.filter(({ shape }) => shape.plate.place !== null);
  const spots = (['left', 'right'] as const).flatMap((side, parity) => {
    const own = places.filter((_, index) => index % 2 === parity);
    const rows = spread(
      own.map(({ shape }) => middle(shape)),
      own.map(() => TARGET),
      12,
      bottomOfAll,
    );
    const [x, bend] = side === 'left' ? [24, inner - 5] : [WIDTH - 24, wall + thick + 12];
    return own.map(({ shape }, index): Spot => {
      const at = side === 'left' ? Math.max(shape.left, inner) + 4 : Math.min(shape.right, wall) - 4;
      return {
        id: shape.plate.id,
        label: String(shape.plate.place),
        ...(words.under(shape.plate) ? { under: words.under(shape.plate) } : {}),
        x,
        y: rows[index]!,
        via: { x: bend, y: middle(shape) },
        at: { x: at, y: middle(shape) },
      };
    });
  });

  const rule = ruleOf(stack, perMm);
  const foot = (numbered ? Math.max(ground + thick, bottomOfAll) : ground + thick) + 16;
  const captionLines = wrapText(words.floor, numbered ? WIDTH - 2 * inner : wall + thick, 5);
  const ruleAt = foot + (captionLines.length - 1) * LINE + 20;
  return {
    width: WIDTH,
    height: Math.max(ruleAt + 10, bottomOfAll + 6),
    plates: shapes,
    drum: { wall, floor: ground, top: top - 6, thick },
    hub: inner,
    labels,
    spots,
    perMm,
    rule: { x: inner, y: ruleAt, ...rule },
    caption: { x: inner, y: foot, lines: captionLines },
  };
}
