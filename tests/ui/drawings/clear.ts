/** What every drawing keeps: words clear of each other and of the edge, targets a thumb can hit one of. */
import { expect } from 'vitest';
import { type Spot, TARGET } from '../../../src/ui/drawings/spots.ts';

/** Widest that a drawing may be so that it does not scroll on a page 320 px wide. */
export const NARROW = 320 - 2 * 15 - 2 * 2 - 2 * 4.25;

export interface Box {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The room kept for words, by where they stand. */
export const boxOf = (text: string, x: number, middle: number, anchor: 'start' | 'middle' | 'end'): Box => {
  // Half an em a letter, as wide as the condensed face ever needs.
  const width = text.length * 6;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { text, left, right: left + width, top: middle - 6, bottom: middle + 6 };
};

export function expectClear(
  boxes: readonly Box[],
  { width, height }: { width: number; height: number },
): void {
  for (const [index, box] of boxes.entries()) {
    expect(box.left, box.text).toBeGreaterThanOrEqual(0);
    expect(box.right, box.text).toBeLessThanOrEqual(width);
    expect(box.top, box.text).toBeGreaterThanOrEqual(0);
    expect(box.bottom, box.text).toBeLessThanOrEqual(height);
    for (const other of boxes.slice(index + 1)) {
      const clear =
        box.right <= other.left ||
        other.right <= box.left ||
        box.bottom <= other.top + 0.001 ||
        other.bottom <= box.top + 0.001;
      expect(clear, `"${box.text}" lies on "${other.text}"`).toBe(true);
    }
  }
}

/** Squares of 44 px round the numbered places, on the drawing and apart. */
export function expectTappable(
  spots: readonly Spot[],
  { width, height }: { width: number; height: number },
): void {
  for (const [index, spot] of spots.entries()) {
    expect(spot.x).toBeGreaterThanOrEqual(TARGET / 2 - 0.001);
    expect(spot.x).toBeLessThanOrEqual(width - TARGET / 2 + 0.001);
    expect(spot.y).toBeGreaterThanOrEqual(TARGET / 2 - 0.001);
    expect(spot.y).toBeLessThanOrEqual(height - TARGET / 2 + 0.001);
    for (const other of spots.slice(index + 1))
      expect(
        Math.max(Math.abs(spot.x - other.x), Math.abs(spot.y - other.y)),
        `${spot.label} and ${other.label}`,
      ).toBeGreaterThanOrEqual(TARGET - 0.001);
  }
}
