/** What the solenoid families say alike: fact ids, the solenoids that may be asked, a solenoid in words. */
import { elementsFedBy, feedsAt, isOpen } from '../../hydraulics/feeds.ts';
import type { Current } from '../../hydraulics/solenoid.ts';
import type { DeckLeverPosition, DeckSolenoid } from '../../unit/deck.ts';
import type { Ref, Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { FactId, Option } from '../question.ts';
import { elementNames } from './chart-parts.ts';

/** What a solenoid gives with no current. */
export const pressureFact = (solenoid: string): FactId => `solenoid:${solenoid}/pressure`;

/** Lever position as a family sees it: null where no manual valve stands between solenoids and elements. */
export type Position = DeckLeverPosition | null;

/** Positions that differ in what the solenoids reach, unverified ones left out. */
export function valvePositions(unit: Unit): Position[] {
  const { lever } = unit.deck;
  if (lever?.valve !== 'manual') return [null];
  return lever.positions.filter((position) => unit.sure(`position:${position.id}`));
}

export const positionRef = (position: Position): Ref[] => (position ? [`position:${position.id}`] : []);

/**
 * Solenoids that decide their elements here: every element they feed is within reach, has no other feed, and
 * nothing about them is unverified.
 */
export function decidingSolenoids(unit: Unit, position: Position): DeckSolenoid[] {
  const { deck } = unit;
  const feeds = feedsAt(deck, position?.id ?? null);
  if (!feeds) return [];
  return (deck.solenoids ?? []).filter((solenoid) => {
    const elements = elementsFedBy(deck, solenoid);
    return (
      elements.length > 0 &&
      unit.sure(`solenoid:${solenoid.id}`) &&
      elements.every(
        (element) =>
          unit.sure(`element:${element}`) &&
          isOpen(feeds, element) &&
          !feeds.byHand.includes(element) &&
          deck.solenoids!.every((other) => other === solenoid || !other.feeds.includes(element)),
      )
    );
  });
}

export function solenoidRefs(unit: Unit, solenoids: readonly DeckSolenoid[]): Ref[] {
  return solenoids.flatMap((solenoid): Ref[] => [
    `solenoid:${solenoid.id}`,
    ...elementsFedBy(unit.deck, solenoid).map((element): Ref => `element:${element}`),
  ]);
}

export const CURRENT_MARKS: readonly Option[] = [
  { id: 'on', label: say('solenoid.on') },
  { id: 'off', label: say('solenoid.off') },
];

/** "feeds B1 and C2" */
export const feedsInWords = (unit: Unit, solenoid: DeckSolenoid): Phrase =>
  say('solenoid.elements', { elements: elementNames(elementsFedBy(unit.deck, solenoid)) });

/** "SA: no current leaves full pressure, so current takes it away." */
export const senseInWords = (solenoid: DeckSolenoid): Phrase =>
  say('solenoid.sense', { solenoid: thing('solenoid', solenoid.id), unplugged: solenoid.whenUnplugged });

/** "SA: current off, so full pressure to B1." */
export const solenoidInWords = (
  unit: Unit,
  solenoid: DeckSolenoid,
  current: Current,
  pressure: string,
): Phrase =>
  say('solenoid.line', {
    solenoid: thing('solenoid', solenoid.id),
    current,
    pressure,
    elements: elementNames(elementsFedBy(unit.deck, solenoid)),
  });
