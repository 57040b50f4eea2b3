/**
 * Electrical, hydraulic or mechanical? The way from the controller's command to the gear, link by link, for one
 * element in one row. Each link of the faulty unit is held against the sound one; the first that differs says
 * where the fault is (docs/spec/diagnosis.md D12, D13).
 */
import { conditionWith } from '../faults/condition.ts';
import type { Fault } from '../faults/fault.ts';
import { outcomeOf } from '../faults/outcome.ts';
import { actsAs, type FaultRow, isDead, pressuresWith, usualPosition } from '../faults/pressure.ts';
import { feedsAt, isOpen } from '../hydraulics/feeds.ts';
import { type Current, currentFor, pressureAt } from '../hydraulics/solenoid.ts';
import type { Unit } from '../unit/unit.ts';

export const LINKS = ['command', 'driver', 'winding', 'valve', 'feed', 'element', 'gear'] as const;
/**
 * command: the controller asks for the current the row needs. driver: voltage reaches the winding. winding:
 * current flows. valve: the solenoid lets pressure through, or none, as the row needs. feed: the element's port
 * has the pressure it should. element: it holds, or lets go. gear: the row does what it is charted to do.
 */
export type Link = (typeof LINKS)[number];

export const SIDES = ['electrical', 'hydraulic', 'mechanical'] as const;
export type Side = (typeof SIDES)[number];

export const sideOf = (link: Link): Side =>
  link === 'valve' || link === 'feed'
    ? 'hydraulic'
    : link === 'element' || link === 'gear'
      ? 'mechanical'
      : 'electrical';

export interface Chain {
  readonly solenoid: string;
  /** Current the row asks of the solenoid. */
  readonly commanded: Current;
  /** Whether each link is as in a sound unit; null where the deck does not settle it. */
  readonly sound: Readonly<Record<Link, boolean | null>>;
  /** Null when every link is sound. */
  readonly firstBreak: Link | null;
}

/** The chain to a brake or clutch in a row; null where no one solenoid commands it there. */
export function chainOf(
  unit: Unit,
  fault: Fault | null,
  element: string,
  row: FaultRow,
  position: string | null = usualPosition(unit.deck, row),
): Chain | null {
  const { deck } = unit;
  const feeding = (deck.solenoids ?? []).filter(({ feeds }) => feeds.includes(element));
  const feeds = feedsAt(deck, position);
  const [solenoid] = feeding;
  if (!solenoid || feeding.length > 1 || !feeds) return null;
  if (feeds.byHand.includes(element) || !isOpen(feeds, element)) return null;

  const applied = row.applied.includes(element);
  const commanded = currentFor(solenoid, applied ? 'full' : 'none');
  const acting = actsAs(deck, fault, solenoid) ?? commanded;
  const dead = commanded === 'on' && isDead(deck, fault, solenoid);
  const port = pressuresWith(deck, fault, row, position).get(element) ?? null;
  const condition = conditionWith(unit, fault, row, position);
  const outcome = outcomeOf(unit, fault, row, position);
  const slips = outcome.kind === 'slips' && outcome.elements.includes(element);
  const sound: Record<Link, boolean | null> = {
    command: true,
    driver: !(dead && fault?.kind !== 'solenoid-unplugged'),
    winding: !dead,
    valve: pressureAt(solenoid, acting) === pressureAt(solenoid, commanded),
    feed: port && port === (applied ? 'full' : 'none'),
    element: condition && condition.friction.includes(element) === applied && !slips,
    gear: outcome.kind === 'unsettled' ? null : outcome.kind === 'works',
  };
  return {
    solenoid: solenoid.id,
    commanded,
    sound,
    firstBreak: LINKS.find((link) => sound[link] === false) ?? null,
  };
}
