import { describe, expect, test } from 'vitest';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { LEVELS } from '../../../src/core/questions/question.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { AREA_OF, AREAS, type Area, familiesOf } from '../../../src/core/self-check/areas.ts';
import {
  type Blueprint,
  checkBlueprint,
  shareOut,
  USUAL_BLUEPRINT,
} from '../../../src/core/self-check/blueprint.ts';
import { drawForm, type FormItem, openItem } from '../../../src/core/self-check/form.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED, shippedDecks } from '../../units.ts';

const unit = makeUnit(shippedDecks().find(({ id }) => id === 'kestrel-7')!);
const strangers = PUBLISHED.slice(3, 6).map((train) => makeUnit(deckOf(train)));
const unseenUnit = (seed: number) => strangers[seed % strangers.length];

const draw = (
  seed: number,
  blueprint: Blueprint = USUAL_BLUEPRINT,
  recent: ReadonlySet<string> = new Set(),
) => drawForm({ blueprint, unit, families: FAMILIES, unseenUnit, recent, seed });

const able = new Set(
  AREAS.filter((area) => familiesOf(FAMILIES, area).some((family) => family.facts(unit).length > 0)),
);

const countBy = (items: readonly FormItem[], key: (item: FormItem) => string) => {
  const counts: Record<string, number> = {};
  for (const item of items) counts[key(item)] = (counts[key(item)] ?? 0) + 1;
  return counts;
};

test('every family belongs to an area, and no entry is left over', () => {
  expect(Object.keys(AREA_OF).sort()).toEqual(FAMILIES.map(({ id }) => id).sort());
});

describe('how many questions each area gets', () => {
  const weigh = (weights: Partial<Record<Area, number>>): Blueprint => ({
    ...USUAL_BLUEPRINT,
    questions: 10,
    weights: { ...(Object.fromEntries(AREAS.map((area) => [area, 0])) as Record<Area, number>), ...weights },
  });
  // Worked by hand: largest remainders.
  test.each<[string, Partial<Record<Area, number>>, Area[], Partial<Record<Area, number>>]>([
    ['even', { diagnosis: 1, electrical: 1 }, ['diagnosis', 'electrical'], { diagnosis: 5, electrical: 5 }],
    [
      'quotas 6.25, 2.5, 1.25: the largest remainder gets the one left',
      { diagnosis: 5, electrical: 2, measuring: 1 },
      ['diagnosis', 'electrical', 'measuring'],
      { diagnosis: 6, electrical: 3, measuring: 1 },
    ],
    [
      'safety without weight still comes, from the largest area',
      { diagnosis: 3, electrical: 1 },
      ['diagnosis', 'electrical', 'safety'],
      { diagnosis: 7, electrical: 2, safety: 1 },
    ],
    [
      'what cannot be asked leaves its share to the others',
      { diagnosis: 1, safety: 1 },
      ['diagnosis'],
      { diagnosis: 10 },
    ],
    [
      'weight only on what cannot be asked: all that can be is alike',
      { safety: 1 },
      ['diagnosis', 'electrical'],
      { diagnosis: 5, electrical: 5 },
    ],
  ])('%s', (_, weights, open, expected) => {
    expect(Object.fromEntries(shareOut(weigh(weights), new Set(open)))).toEqual(expected);
  });

  test('every fault of a blueprint is told at once', () => {
    const faulty = { ...weigh({}), questions: 3, minutes: 0, threshold: 0 };
    expect(checkBlueprint(faulty)).toEqual({
      ok: false,
      error: ['questions-out-of-range', 'minutes-out-of-range', 'threshold-out-of-range', 'weights-unusable'],
    });
    expect(checkBlueprint({ ...USUAL_BLUEPRINT, minutes: null }).ok).toBe(true);
  });
});

describe('a form', () => {
  test('holds what the blueprint says, area by area, over seeds', () => {
    const shares = Object.fromEntries(shareOut(USUAL_BLUEPRINT, able));
    for (let seed = 0; seed < 12; seed++)
      expect(countBy(draw(seed), ({ area }) => area)).toEqual(
        Object.fromEntries(Object.entries(shares).filter(([, count]) => count > 0)),
      );
  });

  test('asks a fact twice only in an area that has no other left, never the same question; opens every item, and is the same for the same seed', () => {
    for (let seed = 0; seed < 6; seed++) {
      const items = draw(seed);
      const asked = items.map(({ unseen, family, fact, seed: own }) => `${unseen} ${family} ${fact} ${own}`);
      expect(new Set(asked).size).toBe(asked.length);
      for (const area of able) {
        const own = items
          .filter((item) => item.area === area && item.unseen === null)
          .map(({ fact }) => fact);
        const all = new Set(familiesOf(FAMILIES, area).flatMap((family) => family.facts(unit)));
        if (new Set(own).size < own.length) expect(new Set(own).size).toBeGreaterThanOrEqual(all.size - 1);
      }
      for (const item of items)
        expect(openItem({ unit, families: FAMILIES, unseenUnit }, item)).toBeDefined();
      expect(draw(seed)).toEqual(items);
    }
    expect(draw(1)).not.toEqual(draw(2));
  });

  test('asks on units never studied, and only what their chart lets a person reason out', () => {
    const away = draw(3).filter(({ unseen }) => unseen !== null);
    expect(away.length).toBeGreaterThan(0);
    for (const { family } of away) expect(FAMILIES.find(({ id }) => id === family)!.level).toBe('reason');
    expect(draw(3, { ...USUAL_BLUEPRINT, unseenShare: 0 }).every(({ unseen }) => unseen === null)).toBe(true);
  });

  test('takes facts of recent checks only when nothing else is left', () => {
    const first = draw(1, { ...USUAL_BLUEPRINT, questions: 12, unseenShare: 0 });
    const recent = new Set(first.map(({ fact }) => fact));
    const second = draw(2, { ...USUAL_BLUEPRINT, questions: 12, unseenShare: 0 }, recent);
    const shared = (items: readonly FormItem[]) => items.filter(({ fact }) => recent.has(fact)).length;
    expect(shared(second)).toBeLessThan(
      shared(draw(2, { ...USUAL_BLUEPRINT, questions: 12, unseenShare: 0 })) + 1,
    );
    expect(shared(second)).toBeLessThan(first.length / 2);
  });

  test('two forms are equally hard: expected scores differ by under 2 points on average, under 6 at most', () => {
    // Difficulty of a question: its family's level, and a spread of its own by fact that no blueprint can see.
    const hardness = (item: FormItem) => {
      const level = LEVELS.indexOf(FAMILIES.find(({ id }) => id === item.family)!.level);
      return level + 1.2 * (randomFrom(item.fact.length * 7919 + item.fact.charCodeAt(0)).unit() - 0.5);
    };
    const expectedShare = (items: readonly FormItem[]) =>
      items.reduce((sum, item) => sum + 1 / (1 + Math.exp(hardness(item) - 1.8)), 0) / items.length;
    const shares = Array.from({ length: 16 }, (_, seed) => expectedShare(draw(seed)));
    const gaps = shares.slice(1).map((share, i) => Math.abs(share - shares[i]!));
    expect(gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length).toBeLessThan(0.02);
    expect(Math.max(...gaps)).toBeLessThan(0.06);
  });
});
