/**
 * Which elements have pressure for given solenoid currents in a lever position. An element has it when the
 * manual valve feeds it by hand, or when its feed is open and its solenoid gives pressure, unless an interlock
 * keeps it off. Where the deck does not settle it the answer is null, never a guess: an element that nothing
 * recorded feeds, a current that is not given, or two solenoids on one element that disagree (a deck does not
 * say which of them wins).
 */
import type { Deck, Pressure } from '../unit/deck.ts';
import { feedsAt, frictionOf, isOpen } from './feeds.ts';
import { withInterlocks } from './interlocks.ts';
import { type Current, pressureAt } from './solenoid.ts';

/** Current by solenoid id; a solenoid left out is not known. */
export type Currents = Readonly<Record<string, Current | null>>;

/** Pressure on each friction element, in the order of the train. */
export function pressuresAt(
  deck: Deck,
  currents: Currents,
  position: string | null,
): Map<string, Pressure | null> {
  const feeds = feedsAt(deck, position);
  const handFed = new Set((deck.lever?.positions ?? []).flatMap((candidate) => candidate.feeds ?? []));
  const pressureOn = (element: string): Pressure | null => {
    if (!feeds) return null;
    if (feeds.byHand.includes(element)) return 'full';
    if (!isOpen(feeds, element)) return 'none';
    const solenoids = (deck.solenoids ?? []).filter((solenoid) => solenoid.feeds.includes(element));
    if (solenoids.length === 0) return handFed.has(element) ? 'none' : null;
    const given = solenoids.map((solenoid) => {
      const current = currents[solenoid.id];
      return current ? pressureAt(solenoid, current) : null;
    });
    return given.every((pressure) => pressure === given[0]) ? given[0]! : null;
  };
  return withInterlocks(deck, new Map(frictionOf(deck).map((element) => [element, pressureOn(element)])));
}

/** The elements with pressure; null when the deck leaves any element open. */
export function pressurised(deck: Deck, currents: Currents, position: string | null): string[] | null {
  const pressures = [...pressuresAt(deck, currents, position)];
  if (pressures.some(([, pressure]) => pressure === null)) return null;
  return pressures.filter(([, pressure]) => pressure === 'full').map(([element]) => element);
}

/** Every solenoid with no current: the connector is off or the supply is gone. */
export function noCurrents(deck: Deck): Currents {
  return Object.fromEntries((deck.solenoids ?? []).map((solenoid) => [solenoid.id, 'off']));
}

/** The elements with pressure when the connector is off; null when the deck leaves any element open. */
export function unpluggedAt(deck: Deck, position: string | null): string[] | null {
  return pressurised(deck, noCurrents(deck), position);
}
