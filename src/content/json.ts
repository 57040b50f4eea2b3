/**
 * Reads JSON text so that every finding can be given a line: syntax errors are located, and a key written
 * twice in one object (the second would silently win) is told. Text too large, too deeply nested or with too
 * many values to be a deck is refused before it is parsed.
 */
import { createScanner, type Node, type ParseError, parseTree } from 'jsonc-parser';
import { fail, pass, type Result } from '../core/result.ts';
import { type Finding, makeFinding, type Path } from './finding.ts';

/** Characters of the largest deck text that is read; a full deck has some tens of thousands. */
export const MAX_LENGTH = 4_000_000;
export const MAX_DEPTH = 32;
/** Values, lists and objects included, empty ones twice; a full deck has some five thousand. What is made of each costs more than it. */
export const MAX_VALUES = 20_000;

export interface JsonText {
  readonly value: unknown;
  /** Adds line and column to each finding, from the place it points at. */
  locate(findings: readonly Finding[]): Finding[];
  readonly repeatedKeys: readonly Path[];
}

/** Kinds of syntax error, by jsonc-parser's number for them. */
const SYNTAX: Readonly<Record<number, string>> = {
  1: 'symbol',
  2: 'number',
  3: 'key',
  4: 'value',
  5: 'colon',
  6: 'comma',
  9: 'end',
  10: 'comment',
  11: 'comment',
  12: 'quote',
  13: 'number',
  14: 'unicode',
  15: 'escape',
  16: 'character',
};

const OPENS = new Set([1, 3]);
const CLOSES = new Set([2, 4]);
const COMMA = 5;
const EOF = 17;

/** What is too much about a text, told before anything is made of it; null when nothing is. */
function tooMuch(text: string): 'too-deep' | 'too-many' | null {
  const scanner = createScanner(text, true);
  let [depth, values] = [0, 0];
  for (let token: number = scanner.scan(); token !== EOF; token = scanner.scan()) {
    if (OPENS.has(token) && ++depth > MAX_DEPTH) return 'too-deep';
    if (CLOSES.has(token)) depth--;
    if ((OPENS.has(token) || token === COMMA) && ++values > MAX_VALUES) return 'too-many';
  }
  return null;
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (const match of text.matchAll(/\r\n|\r|\n/g)) starts.push(match.index + match[0].length);
  return starts;
}

function positionIn(starts: readonly number[], offset: number): { line: number; column: number } {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: offset - starts[low]! + 1 };
}

/** The node a pointer leads to, its key included, or the nearest one around it. Of repeated keys the last. */
function nodeAt(tree: Node, pointer: string): Node {
  let node = tree;
  for (const part of pointer.split('/').slice(1)) {
    const name = part.replaceAll('~1', '/').replaceAll('~0', '~');
    const within: Node = node.type === 'property' ? node.children![1]! : node;
    const next: Node | undefined =
      within.type === 'array'
        ? within.children?.[Number(name)]
        : within.children?.findLast((child) => child.children?.[0]?.value === name && child.children[1]);
    if (!next) return node;
    node = next;
  }
  return node;
}

function findRepeatedKeys(node: Node, path: Path, into: Path[]): void {
  const seen = new Set<string>();
  for (const [index, child] of (node.children ?? []).entries()) {
    if (node.type === 'array') findRepeatedKeys(child, [...path, index], into);
    else {
      const key = String(child.children?.[0]?.value);
      if (seen.has(key)) into.push([...path, key]);
      seen.add(key);
      if (child.children?.[1]) findRepeatedKeys(child.children[1], [...path, key], into);
    }
  }
}

/** Text of a file, as much of it as can be told to be too large: a letter has at most four bytes. */
export const textOfFile = (file: Blob): Promise<string> => file.slice(0, 4 * MAX_LENGTH + 1).text();

/** Parses JSON text; the one finding says where it stops being JSON. */
export function readJson(source: string): Result<JsonText, Finding> {
  const text = source.startsWith('\uFEFF') ? source.slice(1) : source;
  const refuse = (kind: string, values: Record<string, string | number>, offset: number | null) => {
    const finding = makeFinding('json', 'error', null, { at: [], case: kind, values });
    const position = offset === null ? {} : positionIn(lineStarts(text), offset);
    return fail({ ...finding, place: { ...finding.place, ...position } });
  };
  if (text.length > MAX_LENGTH) return refuse('too-large', { length: text.length, most: MAX_LENGTH }, null);
  if (text.trim() === '') return refuse('empty', {}, null);
  const much = tooMuch(text);
  if (much) return refuse(much, { most: much === 'too-deep' ? MAX_DEPTH : MAX_VALUES }, null);

  const errors: ParseError[] = [];
  const tree = parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    const [first] = errors;
    const offset = first?.offset ?? 0;
    const snippet = text.slice(offset, offset + Math.max(1, Math.min(first?.length ?? 1, 20)));
    const kind = offset >= text.trimEnd().length ? 'cut-off' : (SYNTAX[first?.error ?? 16] ?? 'character');
    return refuse(kind, { snippet }, offset);
  }
  const repeatedKeys: Path[] = [];
  if (tree) findRepeatedKeys(tree, [], repeatedKeys);
  return pass({
    value,
    repeatedKeys,
    locate: (findings) => {
      const starts = lineStarts(text);
      const located = findings.map((finding) => {
        const offset = tree ? nodeAt(tree, finding.place.pointer).offset : 0;
        return { ...finding, place: { ...finding.place, ...positionIn(starts, offset) } };
      });
      return located.sort((a, b) => a.place.line - b.place.line || a.place.column - b.place.column);
    },
  });
}
