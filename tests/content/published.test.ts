import { describe, expect, test } from 'vitest';
import { loadDeck } from '../../src/content/load.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { type Loose, sentence } from './base.ts';

/**
 * What the checks say of the published trains with their published ratios (tests/published names each
 * source). The oil of these decks is made up (tests/units.ts), so an unplugged state may well be a bad one.
 */
const WARNINGS: Record<string, string[]> = {
  'four-range-simpson-overdrive': [
    // front set 42 and 79, recalled: the planets would have half a tooth
    'planets-whole gearset F',
    // printed 1.531 and 2.393, cut and not rounded
    'ratio-cut range 2',
    'ratio-cut range R',
    'unplugged-safe position D',
  ],
  'lepelletier-6-a': ['unplugged-safe position D'],
  // these charts list no one-ways
  'five-speed-3sets-a': ['one-ways-used element F1', 'one-ways-used element F2'],
  'seven-speed-reversed-ravigneaux': ['unplugged-safe position D', 'unplugged-safe position R'],
  'eight-speed-dp-ravigneaux-b': ['one-ways-used element F1', 'unplugged-safe position D'],
};

describe('published trains pass the checks', () => {
  test.each(PUBLISHED.map((train) => [train.id, train] as const))('%s', (id, train) => {
    const deck: Loose = structuredClone(deckOf(train));
    for (const [index, row] of train.chart.entries())
      deck.chart.ranges[index].ratio = row.publishedRatio.toFixed(row.decimals);
    const loaded = loadDeck(JSON.stringify(deck));
    expect(loaded.ok ? [] : loaded.error.map(sentence)).toEqual([]);
    const warnings = loaded.ok ? loaded.value.warnings : [];
    expect(warnings.map(({ rule, place }) => `${rule} ${place.kind} ${place.id}`)).toEqual(
      WARNINGS[id] ?? [],
    );
  });

  test('one digit off in any published ratio is an error', () => {
    for (const train of PUBLISHED)
      for (const [index, row] of train.chart.entries()) {
        const deck: Loose = structuredClone(deckOf(train));
        const unit = 10 ** -row.decimals;
        // two units off, so that a printed cut value cannot become the rounded one
        deck.chart.ranges[index].ratio = (row.publishedRatio + 2 * unit).toFixed(row.decimals);
        const loaded = loadDeck(JSON.stringify(deck));
        expect(loaded.ok ? 'loaded' : loaded.error.filter(({ rule }) => rule === 'ratio-agrees').length).toBe(
          1,
        );
      }
  });
});
