/** Whatever text comes, loading tells or loads, and never throws. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveAsData, solveDeck, solveInWords } from '../../src/cli/solve.ts';
import { loadDeck, parseDeck } from '../../src/content/load.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { makeSay } from '../../src/words/words.ts';
import { shippedDecks } from '../units.ts';
import { baseDeck, type Loose, sentence } from './base.ts';

const say = makeSay(null);

/** Loads a text and has everything said that comes of it. */
function survive(text: string): boolean {
  const loaded = loadDeck(text);
  const findings = loaded.ok ? loaded.value.warnings : loaded.error;
  if (!loaded.ok) expect(findings.some(({ severity }) => severity === 'error')).toBe(true);
  for (const finding of findings) {
    expect(sentence(finding)).not.toContain('undefined');
    expect(finding.found.key).not.toBe('finding.shape.other.found');
  }
  const parsed = parseDeck(text);
  if (parsed.ok) {
    const solved = solveDeck(parsed.value.deck);
    expect(solveInWords(solved, say)).not.toBe('');
    expect(solveAsData(solved).ranges).toHaveLength(parsed.value.deck.chart.ranges.length);
  }
  return loaded.ok;
}

describe('text of any kind', () => {
  test('characters', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => void survive(text)));
  });

  test('JSON', () => {
    fc.assert(fc.property(fc.json({ maxDepth: 6 }), (text) => void survive(text)));
  });

  test('a deck cut off anywhere is not JSON, and the place is within the text', () => {
    const text = JSON.stringify(baseDeck(), null, 2);
    fc.assert(
      fc.property(fc.nat(text.length - 1), (length) => {
        const loaded = loadDeck(text.slice(0, length));
        expect(!loaded.ok && loaded.error.map(({ rule }) => rule)).toEqual(['json']);
        const line = loaded.ok ? null : loaded.error[0]!.place.line;
        expect(line ?? 1).toBeLessThanOrEqual(text.slice(0, length).split('\n').length);
      }),
    );
  });
});

/** Every place in a value, as the object that holds it and the key in it. */
function placesIn(value: Loose): [Loose, string][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((key) => [[value, key] as [Loose, string], ...placesIn(value[key])]);
}

/** Strings that stand somewhere in the deck: swapping them makes wrong references of the right shape. */
const textsIn = (deck: Loose): string[] => [
  ...new Set(
    placesIn(deck)
      .map(([holder, key]) => holder[key])
      .filter((value) => typeof value === 'string'),
  ),
];

type Change =
  | { readonly kind: 'drop' | 'double' | 'reverse'; readonly at: number }
  | { readonly kind: 'put'; readonly at: number; readonly value: Loose }
  | { readonly kind: 'swap'; readonly at: number; readonly text: number };

const changes: fc.Arbitrary<Change> = fc.oneof(
  fc.record({ kind: fc.constantFrom('drop' as const, 'double' as const, 'reverse' as const), at: fc.nat() }),
  fc.record({ kind: fc.constant('put' as const), at: fc.nat(), value: fc.jsonValue({ maxDepth: 2 }) }),
  fc.record({ kind: fc.constant('put' as const), at: fc.nat(), value: fc.integer({ min: -2, max: 1100 }) }),
  fc.record({
    kind: fc.constant('put' as const),
    at: fc.nat(),
    value: fc.constantFrom('case', 'in', '__proto__', 'constructor', 'line-pressure', [], {}, ''),
  }),
  fc.record({ kind: fc.constant('swap' as const), at: fc.nat(), text: fc.nat() }),
);

function apply(deck: Loose, change: Change): void {
  const places = placesIn(deck);
  if (places.length === 0) return;
  const [holder, key] = places[change.at % places.length]!;
  const texts = textsIn(deck);
  if (change.kind === 'drop') Array.isArray(holder) ? holder.splice(Number(key), 1) : delete holder[key];
  else if (change.kind === 'double' && Array.isArray(holder))
    holder.push(structuredClone(holder[Number(key)]));
  else if (change.kind === 'reverse' && Array.isArray(holder)) holder.reverse();
  else if (change.kind === 'put')
    Object.defineProperty(holder, key, {
      value: change.value,
      enumerable: true,
      configurable: true,
      writable: true,
    });
  else if (change.kind === 'swap' && typeof holder[key] === 'string' && texts.length > 0)
    holder[key] = texts[change.text % texts.length];
}

/** The base deck has a little of everything; of the shipped ones the smallest is enough, and quick. */
const [smallest] = shippedDecks().sort((a, b) => JSON.stringify(a).length - JSON.stringify(b).length);
const BASES: readonly Loose[] = [baseDeck(), smallest];
const copyOf = (base: number) => structuredClone(BASES[base % BASES.length]!);

describe('decks changed at random', () => {
  test('any changes', () => {
    fc.assert(
      fc.property(fc.nat(2), fc.array(changes, { minLength: 1, maxLength: 6 }), (base, list) => {
        const deck = copyOf(base);
        for (const change of list) apply(deck, change);
        survive(JSON.stringify(deck));
      }),
      { numRuns: 80 },
    );
  });

  test('names exchanged, so that the shape stays right and the rules have to cope', () => {
    let shaped = 0;
    const swaps = changes.filter(({ kind }) => kind === 'swap');
    fc.assert(
      fc.property(fc.nat(2), fc.array(swaps, { minLength: 1, maxLength: 12 }), (base, list) => {
        const deck = copyOf(base);
        for (const change of list) apply(deck, change);
        const text = JSON.stringify(deck);
        survive(text);
        if (parseDeck(text).ok) shaped++;
      }),
      { numRuns: 160 },
    );
    expect(shaped).toBeGreaterThan(8);
  });

  test('rows of any elements: a range is told not to drive exactly when no unit can be made', () => {
    const ids = baseDeck().train.elements.map((element: Loose) => element.id);
    fc.assert(
      fc.property(fc.array(fc.subarray<string>(ids), { minLength: 6, maxLength: 6 }), (rows) => {
        const deck = baseDeck();
        for (const [index, applied] of rows.entries()) {
          deck.chart.ranges[index].applied = applied;
          delete deck.chart.ranges[index].ratio;
        }
        const text = JSON.stringify(deck);
        survive(text);
        const parsed = parseDeck(text);
        const told = parsed.ok && parsed.value.findings.some(({ rule }) => rule === 'range-drives');
        let made = true;
        try {
          makeUnit(deck);
        } catch {
          made = false;
        }
        expect(told).toBe(!made);
      }),
      { numRuns: 40 },
    );
  });
});
