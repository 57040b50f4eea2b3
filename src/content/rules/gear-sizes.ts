/** What planets ask of tooth counts. Only a plain simple set is held to it; see docs/deck-format.md. */
import { CASE } from '../../core/gears/train.ts';
import type { Deck, DeckGearset } from '../../core/unit/deck.ts';
import type { Path } from '../finding.ts';

/**
 * Simple sets whose planets are theirs alone. Sets that share a carrier and another member (a Ravigneaux set
 * written as two) may run on the same planets, and then other rules hold.
 */
export function plainSets(deck: Deck): { readonly set: DeckGearset; readonly at: Path }[] {
  const sharesPlanets = (set: DeckGearset, other: DeckGearset) =>
    set !== other &&
    set.carrier.shaft === other.carrier.shaft &&
    (set.ring.shaft === other.ring.shaft || set.sun.shaft === other.sun.shaft) &&
    set.carrier.shaft !== CASE;
  return deck.train.gearsets
    .map((set, index) => ({ set, at: ['train', 'gearsets', index] }))
    .filter(
      ({ set }) => set.kind === 'simple' && !deck.train.gearsets.some((other) => sharesPlanets(set, other)),
    );
}
