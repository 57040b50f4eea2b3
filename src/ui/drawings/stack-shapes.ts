/** Outlines of plates in section, as SVG paths. "Up" is towards the opening of the pack. */
import type { DeckStackItem } from '../../core/unit/stacks.ts';

export interface Outline {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Length of one wave. */
const WAVE = 30;
const SAMPLES = 36;

/** A waved plate: metal of one thickness all along, as high as it stands free. */
export function wavedPath({ left, right, top, bottom }: Outline, metal: number): string {
  const middle = (top + bottom) / 2;
  const waves = Math.max(1, Math.round((right - left) / WAVE));
  const rise = (bottom - top - metal) / 2;
  const along = (side: -1 | 1) =>
    Array.from({ length: SAMPLES + 1 }, (_, step) => {
      const part = step / SAMPLES;
      const y = middle - rise * Math.sin(part * waves * 2 * Math.PI) + (side * metal) / 2;
      return `${(left + part * (right - left)).toFixed(2)} ${y.toFixed(2)}`;
    });
  return `M${along(-1).join('L')}L${along(1).reverse().join('L')}Z`;
}

/** A thin waved separator from the side: one line. */
export function ripplePath({ left, right, top, bottom }: Outline): string {
  const step = (right - left) / 4;
  const middle = (top + bottom) / 2;
  const rise = (bottom - top) * 0.9;
  return `M${left} ${middle}q${step / 2} ${-rise} ${step} 0t${step} 0t${step} 0t${step} 0`;
}

/** A dished plate: a cone, whose hollow looks up when its outer rim, on the right, stands higher. */
export function dishedPath(
  { left, right, top, bottom }: Outline,
  metal: number,
  hollow: 'up' | 'down',
): string {
  const [inner, outer] = hollow === 'up' ? [bottom - metal, top] : [top, bottom - metal];
  return `M${left} ${inner}L${right} ${outer}v${metal}L${left} ${inner + metal}Z`;
}

/** A coil spring from the side. */
export function springPath({ left, right, top, bottom }: Outline): string {
  const coils = Math.max(3, Math.round((right - left) / 12));
  const apart = (right - left) / coils;
  return Array.from({ length: coils }, (_, coil) => {
    const x = left + coil * apart;
    return `M${x} ${bottom}L${x + apart / 2} ${top}L${x + apart} ${bottom}`;
  }).join('');
}

/** An outline whose ends are broken off: its height means nothing. */
export const brokenPath = ({ left, right, top, bottom }: Outline): string => {
  const step = (bottom - top) / 4;
  const down = `l4 ${step}l-8 ${step}l8 ${step}l-4 ${step}`;
  const up = `l4 ${-step}l-8 ${-step}l8 ${-step}l-4 ${-step}`;
  return `M${left} ${top}${down}H${right}${up}Z`;
};

/** A flat plate whose one-sided feature sits at its free end: the toothed one, clear of its neighbours. */
export function platePath(
  { left, right, top, bottom }: Outline,
  looks: DeckStackItem['looks'],
  freeEnd: 'left' | 'right',
): string {
  const height = bottom - top;
  const up = looks?.towards === 'opening';
  // Drawn for a feature up at the right end, then mirrored into place.
  const x = (fromEnd: number) => (freeEnd === 'right' ? right - fromEnd : left + fromEnd);
  const y = (fromFace: number) => (up ? top + fromFace : bottom - fromFace);
  const far = freeEnd === 'right' ? left : right;
  const plain = (end: string) => `M${far} ${y(0)}${end}L${x(0)} ${y(height)}L${far} ${y(height)}Z`;
  switch (looks?.feature) {
    case 'bevel': {
      const cut = Math.min(height * 0.75, 9);
      return plain(`L${x(cut * 1.5)} ${y(0)}L${x(0)} ${y(cut)}`);
    }
    case 'step':
      return plain(`L${x(11)} ${y(0)}L${x(11)} ${y(height * 0.5)}L${x(0)} ${y(height * 0.5)}`);
    case 'lip':
      return plain(`L${x(6)} ${y(0)}L${x(6)} ${y(-5)}L${x(0)} ${y(-5)}`);
    case 'tab':
      return plain(`L${x(3)} ${y(0)}L${x(3)} ${y(-9)}L${x(0)} ${y(-9)}`);
    default:
      return plain(`L${x(0)} ${y(0)}`);
  }
}

/** A small solid arrow at the free end that shows which way a feature looks. */
export function arrowPath(x: number, { top, bottom }: Outline, up: boolean): string {
  const middle = (top + bottom) / 2;
  const half = Math.min(5, Math.max(4, (bottom - top) / 2));
  const tip = up ? middle - half : middle + half;
  const foot = up ? middle + half : middle - half;
  return `M${x} ${tip}L${x - 4.5} ${foot}H${x + 4.5}Z`;
}
