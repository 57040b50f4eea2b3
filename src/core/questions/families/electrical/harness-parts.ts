/** Groups of windings on one supply, as they come out at a connector, that may be asked about. */

import { harnessOf, type PinnedHarness } from '../../../unit/electrical.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import { perUnit } from '../per-unit.ts';

export interface AskedHarness extends PinnedHarness {
  readonly supply: string;
  readonly uses: readonly Ref[];
}

/** Groups of two windings or more, with nothing unverified in them, that meet at a pin. */
export const askedHarnesses = perUnit((unit: Unit): AskedHarness[] => {
  const { electrical } = unit.deck;
  const supplies = new Set((electrical?.windings ?? []).map(({ supply }) => supply));
  return [...supplies].flatMap((supply): AskedHarness[] => {
    const harness = harnessOf(electrical!, supply);
    if (!harness?.windings.every(({ ohms }) => ohms.low.lte(ohms.high))) return [];
    const uses: Ref[] = [
      `connector:${harness.connector}`,
      `supply:${supply}`,
      ...[...harness.solenoids.values()].flatMap((id): Ref[] => [`winding:${id}`, `solenoid:${id}`]),
    ];
    return uses.every((ref) => unit.sure(ref)) ? [{ ...harness, supply, uses }] : [];
  });
});

/** "S1 (pin 3)" */
export const pinInWords = (harness: AskedHarness, pin: string): Phrase =>
  say('electrical.solenoid-pin', { solenoid: thing('solenoid', harness.solenoids.get(pin)!), pin });
