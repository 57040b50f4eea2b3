/** Fits words to a drawing: lines by the width kept for a text, the last one cut when there is no more room. */
import { SIZE } from './train-shapes.ts';

/** Room for a letter of the condensed face, with some to spare for another one. */
const LETTER = SIZE.font * 0.53;
const textWidth = (text: string): number => text.length * LETTER;

/** Lines no wider than this, at most so many; what does not fit ends in "…". */
export function wrapText(text: string, width: number, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(longer) > width) lines.push(word);
    else lines[Math.max(0, lines.length - 1)] = longer;
  }
  const cut = (line: string) => {
    if (textWidth(line) <= width) return line;
    let kept = line;
    while (kept.length > 1 && textWidth(`${kept}…`) > width) kept = kept.slice(0, -1);
    return `${kept.trimEnd()}…`;
  };
  if (lines.length <= most) return lines.map(cut);
  return [...lines.slice(0, most - 1).map(cut), cut(lines.slice(most - 1).join(' '))];
}
