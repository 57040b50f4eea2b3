/**
 * Any JSON as a draft that can be edited: lists where a deck has lists, objects where it has objects, texts and
 * numbers in between. What has another make is left out, and counted; all else stays, right or wrong, for the checks
 * to speak of.
 */
import type { DeckDraft } from '../core/workshop/draft.ts';
import { type Finding, type Path, valueAt } from './finding.ts';
import { FORMAT } from './schema.ts';
import { checkShape } from './shape.ts';

export interface OpenedDraft {
  readonly draft: DeckDraft;
  /** Values that had to be left out. */
  readonly dropped: number;
}

const CONTAINERS: Readonly<Record<string, unknown>> = { array: [], tuple: [], object: {} };

/** Every round mends all that is found; what lies beneath shows in the next. A deck is less deep than this. */
const ROUNDS = 20;

function pathOf({ place }: Finding, root: unknown): Path {
  const path: (string | number)[] = [];
  for (const part of place.pointer.split('/').slice(1)) {
    const name = part.replaceAll('~1', '/').replaceAll('~0', '~');
    path.push(Array.isArray(valueAt(root, path)) ? Number(name) : name);
  }
  return path;
}

/** What the value must become; `keep` when it may stay, undefined when it goes. */
function mended(finding: Finding, value: unknown): unknown | typeof KEEP {
  const expected = finding.expected.values?.type;
  const type = typeof expected === 'object' && 'key' in expected ? expected.key.slice('type.'.length) : null;
  if (value === undefined) return KEEP;
  if (type !== null && type in CONTAINERS) return undefined;
  if (type === 'string') return typeof value === 'number' ? String(value) : undefined;
  // A text may stand for a number while it is typed, and any text for one of a few words.
  return typeof value === 'string' || (type !== 'boolean' && typeof value === 'number') ? KEEP : undefined;
}
const KEEP = Symbol('keep');

function write(root: unknown, path: Path, value: unknown, empty: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(root)) {
    const next = rest.length === 0 ? (value ?? empty) : write(root[Number(step)], rest, value, empty);
    return root.with(Number(step), next);
  }
  const { [String(step)]: was, ...others } = root as Record<string, unknown>;
  const next = write(was, rest, value, empty);
  return next === undefined ? others : { ...(root as object), [String(step)]: next };
}

/** Null when it is no deck of this format at all. */
export function openDraft(value: unknown): OpenedDraft | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return null;
  const { $schema: _, ...deck } = value as Record<string, unknown>;
  if (deck.detentDeck !== FORMAT) return null;
  let [root, dropped]: [unknown, number] = [deck, 0];
  for (let round = 0; round < ROUNDS; round++) {
    const shape = checkShape(root);
    if (shape.ok) break;
    let changed = false;
    for (const finding of shape.error) {
      if (finding.rule !== 'shape' || finding.found.key.includes('unknown-key')) continue;
      const path = pathOf(finding, root);
      const was = valueAt(root, path);
      const is = mended(finding, was);
      if (is === KEEP) continue;
      const expected = finding.expected.values?.type;
      const type =
        typeof expected === 'object' && 'key' in expected ? expected.key.slice('type.'.length) : '';
      // An entry of a list keeps its place, so that what was found after it is still there.
      root = write(root, path, is, type in CONTAINERS ? CONTAINERS[type] : '');
      if (is === undefined) dropped++;
      changed = true;
    }
    if (!changed) break;
  }
  return { draft: root as DeckDraft, dropped };
}
