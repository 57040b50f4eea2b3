/**
 * Codes with a fault in the unit: those that set, those that could, those that cannot. What a code watches comes
 * from the deck; when a maker's controller guesses a stuck part from how the unit drives, the deck does not say,
 * so such codes only ever could set (docs/spec/diagnosis.md D14, D15).
 */

import { rowsOf } from '../faults/chart.ts';
import type { Fault } from '../faults/fault.ts';
import { partOf } from '../faults/fault.ts';
import { outcomeOf } from '../faults/outcome.ts';
import { actsAs, pressuresWith } from '../faults/pressure.ts';
import { figuresFrom } from '../faults/readings.ts';
import { elementsFedBy } from '../hydraulics/feeds.ts';
import type { DeckCode } from '../unit/service.ts';
import { rangeOf, type Unit } from '../unit/unit.ts';
import { isBroken, isHeard } from './predict.ts';

export const CODE_STATES = ['sets', 'could', 'cannot'] as const;
export type CodeState = (typeof CODE_STATES)[number];

/** The strongest of several: one that sets is enough. */
const strongest = (states: readonly CodeState[]): CodeState =>
  states.includes('sets') ? 'sets' : states.includes('could') ? 'could' : 'cannot';

/** A ratio can be had while both speeds are; null where it is not settled which sensors are heard. */
function hasRatio(unit: Unit, fault: Fault | null): boolean | null {
  const heard = (unit.deck.sensors ?? []).map(({ id }) => ({ id, heard: isHeard(unit.deck, fault, id) }));
  const ratioWithout = (lost: (state: boolean | null) => boolean) =>
    figuresFrom(
      unit.deck,
      heard.filter((sensor) => lost(sensor.heard)).map(({ id }) => id),
    ).includes('ratio');
  const [sure, perhaps] = [ratioWithout((state) => state !== true), ratioWithout((state) => state === false)];
  return sure ? true : perhaps ? null : false;
}

function ratioState(unit: Unit, fault: Fault | null, watches: readonly string[]): CodeState {
  const known = hasRatio(unit, fault);
  if (known === false) return 'cannot';
  const named = watches.flatMap((watched) =>
    watched.startsWith('range:') ? (rangeOf(unit, watched.slice('range:'.length)) ?? []) : [],
  );
  return strongest(
    (named.length > 0 ? named : unit.ranges).map((range): CodeState => {
      const { kind } = outcomeOf(unit, fault, range);
      if (kind === 'works') return 'cannot';
      return known && (kind === 'becomes' || kind === 'other-ratio') ? 'sets' : 'could';
    }),
  );
}

/** A guess that this solenoid is at fault: it can only be made where it, or what it feeds, is not as commanded. */
function guessState(unit: Unit, fault: Fault | null, solenoidId: string): CodeState {
  const solenoid = unit.deck.solenoids?.find(({ id }) => id === solenoidId);
  if (!solenoid || !fault) return 'cannot';
  if (actsAs(unit.deck, fault, solenoid)) return 'could';
  const fed = elementsFedBy(unit.deck, solenoid);
  if ('element' in fault && fed.includes(fault.element)) return 'could';
  const short = rowsOf(unit).some((row) => {
    const pressures = pressuresWith(unit.deck, fault, row);
    return fed.some((element) => {
      const charted = row.applied.includes(element) ? 'full' : 'none';
      return pressures.get(element) !== charted;
    });
  });
  return short ? 'could' : 'cannot';
}

function stateOf(unit: Unit, fault: Fault | null, { kind, watches }: DeckCode): CodeState {
  if (kind === 'ratio') return ratioState(unit, fault, watches);
  return strongest(
    watches.map((watched): CodeState => {
      const broken = isBroken(unit.deck, fault, watched);
      switch (kind) {
        case 'circuit':
        case 'electrical':
          return broken ? 'sets' : broken === null ? 'could' : 'cannot';
        case 'intermittent':
          return broken === false ? 'cannot' : 'could';
        default:
          return watched.startsWith('solenoid:')
            ? guessState(unit, fault, watched.slice('solenoid:'.length))
            : broken === false
              ? 'cannot'
              : 'could';
      }
    }),
  );
}

export interface CodeVerdict {
  readonly code: DeckCode;
  readonly state: CodeState;
  /** It watches the very part at fault; else, when it sets, it is a consequence. */
  readonly own: boolean;
}

/** Every code of the deck with this fault in the unit, in the deck's order. */
export function codesWith(unit: Unit, fault: Fault | null): CodeVerdict[] {
  const part = fault && partOf(fault);
  const kind = fault && ['solenoid', 'sensor', 'supply', 'element', 'gearset'].find((name) => name in fault);
  return (unit.deck.codes ?? []).map((code) => ({
    code,
    state: stateOf(unit, fault, code),
    own: part !== null && code.watches.includes(`${kind}:${part}`),
  }));
}
