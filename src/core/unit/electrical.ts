/** Windings, supplies, sensors and the connector they come out at (src/core/electrical computes with them). */
import type { Side as SwitchedSide } from '../electrical/driver.ts';
import { GROUND, type Harness } from '../electrical/harness.ts';
import type { HeatSense } from '../electrical/heat-sense.ts';
import {
  type Band,
  limitsIn,
  type Named,
  type Provenance,
  type Resistance,
  type Temperature,
} from './record.ts';

/** A feed that several windings share: one fuse or one high-side driver. */
export interface DeckSupply extends Named, Provenance {}

export interface DeckWinding extends Provenance {
  /** Id of the solenoid. */
  readonly solenoid: string;
  /** Resistance at 20 °C. */
  readonly at20: Band<Resistance>;
  /** Id of the supply it hangs on. */
  readonly supply: string;
  /** Which side of the winding the controller switches. */
  readonly switched: SwitchedSide;
}

export const PICKUP_KINDS = ['hall', 'coil'] as const;

/** The electrical side of a speed sensor. */
export interface DeckPickup extends Provenance {
  /** Id of the sensor. */
  readonly sensor: string;
  readonly kind: (typeof PICKUP_KINDS)[number];
  /** Coils: resistance at 20 °C. */
  readonly at20?: Band<Resistance> | undefined;
  /** Hall sensors: id of the supply they need. */
  readonly supply?: string | undefined;
}

/** A resistor that tells the fluid's temperature. */
export interface DeckThermistor extends Named, Provenance {
  /** What the resistance does as it gets hotter. */
  readonly sense: HeatSense;
  readonly points: readonly { readonly at: Temperature; readonly ohms: Band<Resistance> }[];
}

export interface DeckPin extends Provenance {
  /** Its number or letter as moulded. */
  readonly id: string;
  /** Place on the face, from 1, as seen from `seenFrom`. */
  readonly row: number;
  readonly column: number;
  /** "solenoid:S1", "sensor:input-speed", "thermistor:oil", "supply:main", or "ground" or "spare". */
  readonly serves: string;
}

export interface DeckConnector extends Named, Provenance {
  readonly rows: number;
  readonly columns: number;
  /** Whether the face is drawn as seen on the unit or on the plug of the harness. */
  readonly seenFrom: 'unit' | 'harness';
  readonly pins: readonly DeckPin[];
}

export interface DeckElectrical {
  readonly supplies?: readonly DeckSupply[] | undefined;
  readonly windings?: readonly DeckWinding[] | undefined;
  readonly pickups?: readonly DeckPickup[] | undefined;
  readonly thermistors?: readonly DeckThermistor[] | undefined;
  readonly connectors?: readonly DeckConnector[] | undefined;
}

/** A group of windings as a meter sees it at a connector, and what each pin of it serves. */
export interface PinnedHarness extends Harness {
  readonly connector: string;
  /** Solenoid id by pin. */
  readonly solenoids: ReadonlyMap<string, string>;
}

/**
 * The windings that hang on one supply and come out at one connector, at 20 °C. Switched at the low side they
 * meet at the supply's pin; at the high side at the ground pin, or at the case where there is none. Undefined
 * when fewer than two have a pin there, when their sides differ or when the common pin is missing.
 */
export function harnessOf(
  { windings = [], connectors = [] }: DeckElectrical,
  supply: string,
): PinnedHarness | undefined {
  const group = windings.filter((winding) => winding.supply === supply);
  const [side] = new Set(group.map(({ switched }) => switched));
  if (!side || group.some(({ switched }) => switched !== side)) return undefined;
  for (const { id, pins } of connectors) {
    const pinned = group.flatMap(({ solenoid, at20 }) =>
      pins
        .filter(({ serves }) => serves === `solenoid:${solenoid}`)
        .map((pin) => ({ solenoid, pin: pin.id, ohms: limitsIn(at20, 'Ω') })),
    );
    const served = side === 'low' ? `supply:${supply}` : 'ground';
    const common = pins.find(({ serves }) => serves === served)?.id ?? (side === 'high' ? GROUND : undefined);
    if (pinned.length < 2 || common === undefined) continue;
    return {
      connector: id,
      common,
      windings: pinned.map(({ pin, ohms }) => ({ pin, ohms })),
      solenoids: new Map(pinned.map(({ pin, solenoid }) => [pin, solenoid])),
    };
  }
  return undefined;
}
