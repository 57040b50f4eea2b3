/** Text for a terminal: aligned columns and wrapped paragraphs. */

const WIDTH = 100;

/**
 * Columns as wide as their widest cell, two spaces between; numbers line up on the right. A table wider than
 * the page is told row by row, each cell behind the head of its column.
 */
export function table(rows: readonly (readonly string[])[], indent = ''): string {
  const aligned = columns(rows, indent);
  return aligned.split('\n').some((line) => line.length > WIDTH) ? records(rows, indent) : aligned;
}

function records([heads = [], ...rows]: readonly (readonly string[])[], indent: string): string {
  return rows
    .flatMap(([first = '', ...cells]) => [
      ...(first === '' ? [] : [wrap(first, indent)]),
      ...cells.map((cell, index) => labelled('', `${heads[index + 1] ?? ''}: ${cell}`, 2, indent)),
    ])
    .join('\n');
}

function columns(rows: readonly (readonly string[])[], indent: string): string {
  const widths: number[] = [];
  for (const row of rows)
    for (const [column, cell] of row.entries())
      widths[column] = Math.max(widths[column] ?? 0, [...cell].length);
  const numeric = widths.map((_, column) =>
    rows.slice(1).every((row) => /^(-?\d[\d.]*|[·?]|open|)$/.test(row[column] ?? '')),
  );
  return rows
    .map((row) =>
      row
        .map((cell, column) => {
          const room = ' '.repeat(widths[column]! - [...cell].length);
          return numeric[column] && column > 0 ? room + cell : cell + room;
        })
        .join('  ')
        .trimEnd(),
    )
    .map((line) => indent + line)
    .join('\n');
}

/** Lines no longer than the page, every one behind `indent`. */
export function wrap(text: string, indent = ''): string {
  const room = WIDTH - indent.length;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    if (line !== '' && line.length + 1 + word.length > room) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].map((each) => indent + each).join('\n');
}

/** A label at the left and a paragraph beside it. */
export function labelled(label: string, text: string, width: number, indent = ''): string {
  const body = wrap(text, ' '.repeat(indent.length + width + 2));
  return indent + label.padEnd(width) + body.slice(indent.length + width);
}
