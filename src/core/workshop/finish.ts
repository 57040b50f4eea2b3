/**
 * What a deck file would say of a draft: blanks left out, counts as numbers, decimal commas as points, the parts of
 * the deck in their order. What was typed stays as it is in the draft. The result is plain JSON and may still be
 * anything but a deck: src/content says what is missing.
 */
import type { DeckDraft } from './draft.ts';

/** The parts of a deck in the order of docs/deck-format.md. */
export const PARTS = [
  'detentDeck', 'id', 'title', 'unit', 'revision', 'language', 'variantOf', 'sources', 'train', 'chart', 'solenoids',
  'valveBody', 'lever', 'interlocks', 'sensors', 'shaftLine', 'seats', 'stacks', 'fits', 'sequences', 'electrical',
  'fluids', 'torques', 'weights', 'codes', 'aliases', 'cautions',
] as const satisfies readonly (keyof DeckDraft)[]; // biome-ignore format: names read across

/** Fields that a deck writes as a number. `rows` and `columns` of the lever are lists, and stay so. */
const NUMBERS = new Set([
  'detentDeck', 'revision', 'teeth', 'planets', 'place', 'frictions', 'count', 'row', 'column', 'rows', 'columns',
]); // biome-ignore format: names read across

/** Fields that hold a figure as text. */
const FIGURES = new Set(['value', 'ratio', 'friction']);

/** Lists that a deck needs though they are empty. */
const NEEDED = new Set([
  'gearsets', 'elements', 'ranges', 'applied', 'positions', 'rows', 'opens', 'items', 'parts', 'steps', 'needs',
  'closedBy',
]); // biome-ignore format: names read across

/** A figure with a point and a plain minus, however it was typed: "−1,800" → "-1.800". */
export const figureFrom = (typed: string): string =>
  typed
    .trim()
    .replace(',', '.')
    .replace(/^[−–]\s*/, '-');

function finishText(field: string, text: string): unknown {
  const bare = text.trim();
  if (bare === '') return undefined;
  if (NUMBERS.has(field) && /^\d{1,9}$/.test(bare)) return Number(bare);
  return FIGURES.has(field) ? figureFrom(bare) : bare;
}

function finish(field: string, value: unknown): unknown {
  if (typeof value === 'string') return finishText(field, value);
  if (Array.isArray(value)) {
    // Blank entries are forms that nobody has filled in.
    const list = value.map((entry) => finish('', entry)).filter((entry) => entry !== undefined);
    return list.length > 0 || NEEDED.has(field) ? list : undefined;
  }
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value)
    .map(([key, entry]) => [key, finish(key, entry)] as const)
    .filter(([, entry]) => entry !== undefined);
  return entries.length > 0 ? Object.fromEntries(entries) : undefined;
}

/** A deck id from words: "Kestrel 7 (shop)" → "kestrel-7-shop". Empty when no letter of it can be used. */
export const deckIdFrom = (words: string): string =>
  words
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '');

/**
 * The draft as a deck file would have it. A deck without a title is called like its unit, and one without an id gets
 * it from there. A manual valve opens nothing where no feed is named; with no valve there is nothing to open.
 */
export function finishDraft(draft: DeckDraft): Record<string, unknown> {
  const made = (finish('', draft) ?? {}) as Record<string, unknown>;
  const title = made.title ?? made.unit;
  const id = made.id ?? (typeof title === 'string' ? deckIdFrom(title) || undefined : undefined);
  const all: Record<string, unknown> = { ...made, title, id, lever: finishLever(made.lever) };
  const keys = [...PARTS, ...Object.keys(all).filter((key) => !(PARTS as readonly string[]).includes(key))];
  return Object.fromEntries(keys.flatMap((key) => (all[key] === undefined ? [] : [[key, all[key]]])));
}

function finishLever(lever: unknown): unknown {
  const { valve, positions } = (lever ?? {}) as { valve?: unknown; positions?: unknown };
  if (!Array.isArray(positions) || (valve !== 'manual' && valve !== 'none')) return lever;
  return {
    ...(lever as object),
    positions: positions.map((position: Record<string, unknown>) => {
      const { opens, feeds, ...others } = position;
      if (valve === 'none') return others;
      return { ...others, opens: opens ?? [], ...(feeds === undefined ? {} : { feeds }) };
    }),
  };
}

/** The text of a deck file. */
export const writeDeck = (deck: unknown): string => `${JSON.stringify(deck, null, 2)}\n`;
