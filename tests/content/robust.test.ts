/** Whatever text comes, loading tells or loads, and never throws. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveAsData, solveDeck, solveInWords } from '../../src/cli/solve.ts';
import { loadDeck, parseDeck } from '../../src/content/load.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { makeSay } from '../../src/words/words.ts';
import { apply, changes, expectCleanPrototypes, runs, swaps } from '../hostile.ts';
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
  expectCleanPrototypes();
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
      runs(80),
    );
  });

  test('names exchanged, so that the shape stays right and the rules have to cope', () => {
    let shaped = 0;
    fc.assert(
      fc.property(fc.nat(2), fc.array(swaps, { minLength: 1, maxLength: 12 }), (base, list) => {
        const deck = copyOf(base);
        for (const change of list) apply(deck, change);
        const text = JSON.stringify(deck);
        survive(text);
        if (parseDeck(text).ok) shaped++;
      }),
      runs(160),
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
      runs(40),
    );
  });
});
