import { describe, expect, test } from 'vitest';
import { type Fault, faultId, sameFault } from '../../../src/core/faults/fault.ts';
import { figuresFrom, figuresLostWith, SPEED_FIGURES } from '../../../src/core/faults/readings.ts';
import { faultSpace } from '../../../src/core/faults/space.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { fullUnit, fullUnits } from './decks.ts';

const DECK = deckOf(PUBLISHED.find(({ id }) => id === 'ravigneaux-4-a')!);

describe('F14 figures lost with a sensor', () => {
  test.each([
    ['input-speed', ['input-speed', 'ratio', 'slip', 'shift-time', 'converter-slip']],
    ['output-speed', ['output-speed', 'ratio', 'slip', 'shift-time', 'road-speed']],
  ])('%s: %o', (sensor, lost) => {
    expect(figuresLostWith(DECK, sensor)).toEqual(lost);
  });

  test('a second sensor on the same shaft keeps them', () => {
    const deck: Deck = { ...DECK, sensors: [...DECK.sensors!, { id: 'spare', reads: 'in', teeth: 12 }] };
    expect(figuresLostWith(deck, 'input-speed')).toEqual([]);
    expect(figuresLostWith(deck, 'output-speed')).toContain('ratio');
  });

  test('a sensor on another shaft gives none of them', () => {
    const deck: Deck = { ...DECK, sensors: [{ id: 'middle', reads: 's2', teeth: 12 }] };
    expect(figuresFrom(deck)).toEqual([]);
    expect(figuresFrom(DECK)).toEqual(SPEED_FIGURES);
  });
});

describe('F19 the space of single faults', () => {
  test('counted by hand for the Ravigneaux', () => {
    // 6 elements × 2, 1 one-way reversed, 5 feeds, 5 plates, 2 gearsets, 5 solenoids × 3, 2 supplies, connector,
    // 2 sensors, low pressure
    expect(faultSpace(fullUnit('ravigneaux-4-a'))).toHaveLength(12 + 1 + 5 + 5 + 2 + 15 + 2 + 1 + 2 + 1);
  });

  test('no fault twice, and an id says which', () => {
    for (const unit of fullUnits()) {
      const space = faultSpace(unit);
      expect(new Set(space.map(faultId)).size).toBe(space.length);
      expect(space.every((fault) => space.filter((other) => sameFault(fault, other)).length === 1)).toBe(
        true,
      );
    }
  });

  test('kinds pick from it, in the same order', () => {
    const unit = fullUnit('ravigneaux-4-a');
    const kinds: Fault['kind'][] = ['supply-lost', 'element-fails'];
    const picked = faultSpace(unit, kinds);
    expect(picked).toEqual(faultSpace(unit).filter(({ kind }) => kinds.includes(kind)));
    expect(picked).toHaveLength(8);
  });
});
