/** Keys of a row beside one another: how many, so that no word is broken on a phone of 320 px. */

/** Letters of the longest word that a key has room for, by columns. */
const ROOM: readonly (readonly [columns: 2 | 3, letters: number])[] = [
  [3, 9],
  [2, 15],
];

/** The most columns that these labels can stand in; null where the look's own number will do. */
export function mostColumns(labels: readonly string[]): 1 | 2 | null {
  const longest = Math.max(0, ...labels.flatMap((label) => label.split(/[\s-]+/)).map((word) => word.length));
  /** As in look.css: two or four keys stand in twos, more in threes. */
  const usual = labels.length === 2 || labels.length === 4 ? 2 : 3;
  const fitting = ROOM.find(([columns, letters]) => columns <= usual && longest <= letters)?.[0] ?? 1;
  if (fitting === usual || fitting === 3) return null;
  // Three keys come out even one below the other, not as two and one.
  return labels.length === 3 ? 1 : fitting;
}
