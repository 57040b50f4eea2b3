/** What costs something to find out about a unit is found out once: units never change. */
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
