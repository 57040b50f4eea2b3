/**
 * Three packs small enough to work by hand, all in mm.
 *   C1 on the drum floor, front: piston, waved 1.8 (free 2.6), three times steel 2.0 and friction 1.9, backing 5.0,
 *      ring 2.2. Flat 20.7, free 21.5.
 *   B1 on the case shoulder, rear: apply 4.0, friction 2.1, steel 1.7, friction 2.1, backing 4.6, ring 1.5. 16.0 high.
 *   B2 on the cover, rear: apply 3.5, friction 1.6, backing 3.9, ring 1.3. 10.3 high.
 */
import type { Deck } from '../../../../src/core/unit/deck.ts';
import type { DeckStack, DeckStackItem } from '../../../../src/core/unit/stacks.ts';
import { makeUnit, type Unit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';

const mm = (value: string) => ({ value, unit: 'mm' as const });

export function plate(
  id: string,
  kind: DeckStackItem['kind'],
  thickness?: string,
  more: Partial<DeckStackItem> = {},
): DeckStackItem {
  return { id, kind, ...(thickness ? { thickness: mm(thickness) } : {}), ...more };
}

const steel = (n: number, thickness: string) => plate(`s${n}`, 'steel', thickness, { identical: 'steel' });
const friction = (n: number, thickness: string) =>
  plate(`f${n}`, 'friction', thickness, { identical: 'friction' });
const looks = (feature: 'step' | 'bevel', towards: 'floor' | 'opening') => ({ looks: { feature, towards } });

const C1: DeckStack = {
  id: 'C1',
  floor: 'drum floor',
  floorAt: 'front',
  waves: 'flat',
  items: [
    plate('piston', 'piston'),
    plate('wave', 'waved', '1.8', { free: mm('2.6') }),
    steel(1, '2.0'),
    friction(1, '1.9'),
    steel(2, '2.0'),
    friction(2, '1.9'),
    steel(3, '2.0'),
    friction(3, '1.9'),
    plate('backing', 'backing', '5.0', looks('step', 'opening')),
    plate('ring', 'snap-ring', '2.2'),
  ],
};

const B1: DeckStack = {
  id: 'B1',
  floor: 'case shoulder',
  floorAt: 'rear',
  items: [
    plate('apply', 'apply', '4.0', looks('bevel', 'floor')),
    friction(1, '2.1'),
    plate('s1', 'steel', '1.7'),
    friction(2, '2.1'),
    plate('backing', 'backing', '4.6', looks('step', 'floor')),
    plate('ring', 'snap-ring', '1.5'),
  ],
};

const B2: DeckStack = {
  id: 'B2',
  floor: 'cover',
  floorAt: 'rear',
  items: [
    plate('apply', 'apply', '3.5', looks('bevel', 'opening')),
    plate('f1', 'friction', '1.6'),
    plate('backing', 'backing', '3.9'),
    plate('ring', 'snap-ring', '1.3'),
  ],
};

export const PACKS = { C1, B1, B2 };

export function packDeck(stacks: readonly DeckStack[] = [C1, B1, B2]): Deck {
  const train = PUBLISHED.find(({ id }) => id === 'ravigneaux-4-a')!;
  return { ...deckOf(train), stacks };
}

export const packUnit = (stacks?: readonly DeckStack[]): Unit => makeUnit(packDeck(stacks));
