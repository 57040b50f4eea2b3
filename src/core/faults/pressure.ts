/**
 * Pressure at the port of each element with a fault, in a row of the chart. The controller is taken to go on
 * commanding the row as charted: what a maker's controller does instead is not in a deck, so it is not guessed.
 * Null where the deck does not settle it (docs/spec/faults.md F4–F7).
 */
import { feedsAt, frictionOf, isOpen, positionsFor } from '../hydraulics/feeds.ts';
import { withInterlocks } from '../hydraulics/interlocks.ts';
import { type Current, pressureAt } from '../hydraulics/solenoid.ts';
import type { Deck, DeckSolenoid, Pressure } from '../unit/deck.ts';
import type { Row } from '../unit/unit.ts';
import type { Fault } from './fault.ts';

/** low: there, but only a share of full. */
export type PortPressure = Pressure | 'low';

/** A row as a fault needs it. */
export type FaultRow = Pick<Row, 'id' | 'applied' | 'solution'>;

/** The first lever position that can command the row; null where no lever is recorded. */
export const usualPosition = (deck: Deck, row: Pick<Row, 'id'>): string | null =>
  positionsFor(deck, row.id)[0]?.id ?? null;

/** Solenoids of a supply group, in the order of the deck. */
export function suppliedBy(deck: Deck, supply: string): DeckSolenoid[] {
  const windings = (deck.electrical?.windings ?? []).filter((winding) => winding.supply === supply);
  return (deck.solenoids ?? []).filter(({ id }) => windings.some(({ solenoid }) => solenoid === id));
}

/** Whether no current reaches this solenoid, whatever is commanded. */
export function isDead(deck: Deck, fault: Fault | null, solenoid: Pick<DeckSolenoid, 'id'>): boolean {
  switch (fault?.kind) {
    case 'connector-off':
      return true;
    case 'supply-lost':
      return suppliedBy(deck, fault.supply).some(({ id }) => id === solenoid.id);
    case 'solenoid-unplugged':
      return fault.solenoid === solenoid.id;
    default:
      return false;
  }
}

/** The current as which a solenoid acts whatever is commanded; null where it goes by its command. */
export function actsAs(deck: Deck, fault: Fault | null, solenoid: DeckSolenoid): Current | null {
  if (isDead(deck, fault, solenoid)) return 'off';
  if (fault?.kind === 'solenoid-stuck-off' && fault.solenoid === solenoid.id) return 'off';
  return fault?.kind === 'solenoid-stuck-on' && fault.solenoid === solenoid.id ? 'on' : null;
}

/** What a solenoid gives whatever is commanded; null where it goes by its command. */
function givesAnyway(deck: Deck, fault: Fault | null, solenoid: DeckSolenoid): Pressure | null {
  const current = actsAs(deck, fault, solenoid);
  return current && pressureAt(solenoid, current);
}

/**
 * What the solenoids that act by the fault make of an element's pressure. Where another solenoid feeds it too,
 * the deck does not say which of them wins; more of the pressure that is there already changes nothing.
 */
function underFault(deck: Deck, fault: Fault | null, element: string, charted: Pressure): Pressure | null {
  const given = (deck.solenoids ?? [])
    .filter(({ feeds }) => feeds.includes(element))
    .map((solenoid) => givesAnyway(deck, fault, solenoid));
  const acting = given.filter((pressure) => pressure !== null);
  if (acting.every((pressure) => pressure === charted)) return charted;
  return given.every((pressure) => pressure !== null && pressure === given[0]) ? given[0]! : null;
}

/** A solenoid that sets line pressure gives none of it: how little is left, the deck does not say. */
const lineUnknown = (deck: Deck, fault: Fault | null): boolean =>
  (deck.solenoids ?? []).some(
    (solenoid) => solenoid.feeds.includes('line-pressure') && givesAnyway(deck, fault, solenoid) === 'none',
  );

/** Pressure at each brake and clutch with this fault, in the order of the train. */
export function pressuresWith(
  deck: Deck,
  fault: Fault | null,
  row: FaultRow,
  position: string | null = usualPosition(deck, row),
): Map<string, PortPressure | null> {
  const feeds = feedsAt(deck, position);
  const unknownLine = lineUnknown(deck, fault);
  const pressureOn = (element: string): PortPressure | null => {
    const charted: Pressure = row.applied.includes(element) ? 'full' : 'none';
    if (fault?.kind === 'feed-lost' && fault.element === element) return 'none';
    const settled = underFault(deck, fault, element, charted);
    let pressure: Pressure | null = settled;
    if (settled !== charted) {
      if (!feeds) return null;
      if (feeds.byHand.includes(element)) pressure = 'full';
      else if (!isOpen(feeds, element)) pressure = 'none';
    }
    if (pressure !== 'full') return pressure;
    if (unknownLine) return null;
    return fault?.kind === 'low-pressure' ? 'low' : 'full';
  };
  return withInterlocks(deck, new Map(frictionOf(deck).map((element) => [element, pressureOn(element)])));
}
