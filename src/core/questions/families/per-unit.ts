/** What costs something to find out about a unit is found out once: units never change. */
import type { Deck } from '../../unit/deck.ts';
import type { Unit } from '../../unit/unit.ts';

/** The same function, reckoned once for each unit. */
export function perUnit<T>(find: (unit: Unit) => T): (unit: Unit) => T {
  const found = new WeakMap<Unit, { readonly value: T }>();
  return (unit) => {
    const known = found.get(unit) ?? { value: find(unit) };
    found.set(unit, known);
    return known.value;
  };
}

/** The same, kept with the deck: only for plain data that holds no object of the unit it was found on. */
export function perDeck<T>(find: (unit: Unit) => T): (unit: Unit) => T {
  const found = new WeakMap<Deck, { readonly value: T }>();
  return (unit) => {
    const known = found.get(unit.deck) ?? { value: find(unit) };
    found.set(unit.deck, known);
    return known.value;
  };
}
