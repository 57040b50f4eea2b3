/**
 * Interlocks: valves that keep pressure from elements while others have it. Whether one acts goes by the pressure
 * that really is there, so an element that another interlock blocks sets nothing off.
 */
import type { Deck } from '../unit/deck.ts';

/**
 * The pressures that are left once the interlocks have acted. Null stays open, and opens what it might block;
 * so does anything between none and full. A circle of interlocks, which a checked deck does not have, is open too.
 */
export function withInterlocks<P extends string>(
  deck: Pick<Deck, 'interlocks'>,
  given: ReadonlyMap<string, P | null>,
): Map<string, P | 'none' | null> {
  const interlocks = deck.interlocks ?? [];
  const settled = new Map<string, P | 'none' | null>();
  const asked = new Set<string>();
  const pressureOn = (element: string): P | 'none' | null => {
    const known = settled.get(element);
    if (known !== undefined) return known;
    if (asked.has(element)) return null;
    asked.add(element);
    let pressure: P | 'none' | null = given.get(element) ?? null;
    for (const { whenApplied, blocks } of interlocks) {
      if (pressure === 'none' || !blocks.includes(element)) continue;
      const setting = whenApplied.map(pressureOn);
      if (setting.every((other) => other === 'full')) pressure = 'none';
      else if (setting.every((other) => other !== 'none')) pressure = null;
    }
    settled.set(element, pressure);
    return pressure;
  };
  return new Map([...given.keys()].map((element) => [element, pressureOn(element)]));
}

/** Elements that get no pressure while these, and no others, have it. */
export function blockedBy(deck: Pick<Deck, 'interlocks'>, applied: readonly string[]): string[] {
  return (deck.interlocks ?? [])
    .filter(({ whenApplied }) => whenApplied.every((element) => applied.includes(element)))
    .flatMap(({ blocks }) => blocks);
}
