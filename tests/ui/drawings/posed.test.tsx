/** Every drawing that a family poses for the shipped units can be drawn, with each of its places once. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import type { Drawing } from '../../../src/core/questions/drawing.ts';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { DrawingView } from '../../../src/ui/drawings/DrawingView.tsx';
import { makeSay } from '../../../src/words/words.ts';
import { shippedDecks } from '../../units.ts';

const SEEDS = [1, 2];

const units = shippedDecks().map((deck) => ({ unit: makeUnit(deck), say: makeSay(deck) }));

/** One fact of the family at each seed, in turn. */
const posed = FAMILIES.flatMap((family) =>
  units.flatMap(({ unit, say }) => {
    const facts = family.facts(unit);
    return SEEDS.flatMap((seed) => {
      const fact = facts[(seed * 7) % Math.max(1, facts.length)];
      const question = fact && ask(unit, family, seed, fact);
      return question ? [{ family: family.id, question, unit, say }] : [];
    });
  }),
);

const draw = (drawing: Drawing, { unit, say }: (typeof posed)[number]) =>
  renderToStaticMarkup(
    <DrawingView
      drawing={drawing}
      unit={unit}
      say={say}
      tapped={{ picked: null, right: null, onPick: () => {} }}
    />,
  );

describe('what families pose', () => {
  test('is drawn as a figure that has something in it, question and explanation', () => {
    const kinds = new Set<string>();
    for (const one of posed) {
      const { drawing, explanation } = one.question;
      for (const shown of [drawing, explanation.drawing])
        if (shown) {
          const text = draw(shown, one);
          expect(text, one.family).toMatch(/<svg|<table|<ol/);
          expect(text, one.family).not.toMatch(/NaN|undefined|Infinity/);
          kinds.add(shown.kind);
        }
    }
    // Not one drawing of a kind would prove nothing about it.
    expect([...kinds]).toEqual(
      expect.arrayContaining([
        'stack',
        'shaft-line',
        'dial',
        'micrometer',
        'depth-gauge',
        'connector',
        'window',
      ]),
    );
  });

  test('has each place that can be answered once, in the order of its number', () => {
    const asked = posed.filter(({ question }) => question.space.form === 'place');
    expect(asked.length).toBeGreaterThan(0);
    for (const one of asked) {
      const { space, drawing } = one.question;
      if (space.form !== 'place' || !drawing) throw new Error(one.family);
      const rings = [...draw(drawing, one).matchAll(/data-spot="([^"]+)"[^>]*><span>(\d+)</g)]
        .map(([, id, number]) => ({ id, number: Number(number) }))
        .sort((a, b) => a.number - b.number);
      expect(
        rings.map(({ id }) => id),
        one.family,
      ).toEqual(space.spots.map(({ id }) => id));
      expect(rings.map(({ number }) => number)).toEqual(space.spots.map((_, index) => index + 1));
    }
  });
});
