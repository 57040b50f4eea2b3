/** What the look-up is narrowed to: the whole deck, or what somebody looks for. */
import { createContext, useContext } from 'react';
import type { Found } from '../../core/unit/find.ts';
import type { Ref, RefKind } from '../../core/unit/refs.ts';

/** The part of the page on which things of a kind stand. */
const PART_OF: Readonly<Partial<Record<RefKind, string>>> = {
  range: 'chart',
  neutral: 'chart',
  gearset: 'train',
  element: 'elements',
  solenoid: 'solenoids',
  position: 'lever',
  sensor: 'sensors',
  part: 'shaft-line',
  seat: 'shaft-line',
  stack: 'stacks',
  plate: 'stacks',
  fit: 'fits',
  winding: 'wires',
  pickup: 'wires',
  thermistor: 'wires',
  connector: 'wires',
  supply: 'wires',
  sequence: 'sequences',
  step: 'sequences',
  interlock: 'interlocks',
  fluid: 'service',
  torque: 'service',
  weight: 'service',
  code: 'codes',
};

export const kindOf = (ref: Ref): RefKind => ref.split(':')[0] as RefKind;

/** Undefined for what the page does not show. */
export const partOf = (ref: Ref): string | undefined => PART_OF[kindOf(ref)];

export interface Narrowed {
  readonly isSearching: boolean;
  shows(ref: Ref): boolean;
}

/** All of it while nothing is looked for (null). */
export function narrowedTo(found: readonly Found[] | null): Narrowed {
  const refs = found && new Set(found.map(({ ref }) => ref));
  return { isSearching: refs !== null, shows: (ref) => refs?.has(ref) ?? true };
}

const NarrowedContext = createContext<Narrowed>(narrowedTo(null));

export const NarrowedProvider = NarrowedContext.Provider;

export const useNarrowed = (): Narrowed => useContext(NarrowedContext);
