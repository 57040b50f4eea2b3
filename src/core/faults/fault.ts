/**
 * Faults: one thing wrong with a unit. Each names what is wrong and nothing else; what follows from it is always
 * computed (outcome.ts). A solenoid is *stuck off* when it gives what it gives with no current, whatever its
 * current, and *stuck on* when it gives what it gives with full current: which of the two is pressure is up to
 * the solenoid (docs/spec/faults.md F5).
 */

/** A brake or clutch that never takes hold or never lets go; a one-way that never holds or is locked. */
export const ELEMENT_FAULTS = ['element-fails', 'element-stuck'] as const;
export interface ElementFault {
  readonly kind: (typeof ELEMENT_FAULTS)[number];
  readonly element: string;
}

export type Fault =
  | ElementFault
  /** The passage to a brake or clutch is blocked or leaks: no pressure comes to it. */
  | { readonly kind: 'feed-lost'; readonly element: string }
  /** A brake or clutch built with one friction plate too few. */
  | { readonly kind: 'friction-short'; readonly element: string }
  /** A one-way fitted the wrong way round. */
  | { readonly kind: 'one-way-reversed'; readonly element: string }
  /** Teeth gone: the gearset passes nothing on. */
  | { readonly kind: 'gearset-stripped'; readonly gearset: string }
  | { readonly kind: 'solenoid-stuck-off' | 'solenoid-stuck-on'; readonly solenoid: string }
  /** Its own plug off, or its winding open. */
  | { readonly kind: 'solenoid-unplugged'; readonly solenoid: string }
  /** Every solenoid of a supply group has no current. */
  | { readonly kind: 'supply-lost'; readonly supply: string }
  /** The connector of the unit is off: no solenoid has current, no sensor in the unit is heard. */
  | { readonly kind: 'connector-off' }
  | { readonly kind: 'sensor-lost'; readonly sensor: string }
  /** Full pressure is only this share of what it should be: whole percent, 1 to 99. */
  | { readonly kind: 'low-pressure'; readonly percent: number };

export type FaultKind = Fault['kind'];

/** The part a fault is about; undefined where it is about the whole unit. */
export function partOf(fault: Fault): string | undefined {
  if ('element' in fault) return fault.element;
  if ('gearset' in fault) return fault.gearset;
  if ('solenoid' in fault) return fault.solenoid;
  if ('supply' in fault) return fault.supply;
  if ('sensor' in fault) return fault.sensor;
  return fault.kind === 'low-pressure' ? String(fault.percent) : undefined;
}

/** "element-fails:C1", "connector-off", "low-pressure:70": one text for each fault, stable for ever. */
export function faultId(fault: Fault): string {
  const part = partOf(fault);
  return part === undefined ? fault.kind : `${fault.kind}:${part}`;
}

export const sameFault = (a: Fault, b: Fault): boolean => faultId(a) === faultId(b);
