/**
 * The gear train: rigid shafts, planetary gearsets that join three of them, and elements that hold or couple
 * them. Positive is the way the input turns. The case is a shaft that never turns.
 * A Ravigneaux set is two gearsets on one carrier and one ring; see docs/conventions.md.
 */

/** The shaft name kept for the housing: speed 0, in every train. */
export const CASE = 'case';

export const GEARSET_KINDS = ['simple', 'double-pinion'] as const;
export type GearsetKind = (typeof GEARSET_KINDS)[number];

export const ELEMENT_KINDS = ['brake', 'clutch', 'one-way'] as const;
export type ElementKind = (typeof ELEMENT_KINDS)[number];

export const MEMBERS = ['sun', 'ring', 'carrier'] as const;
export type Member = (typeof MEMBERS)[number];

export interface Gear {
  readonly shaft: string;
  /** Whole number, at least 1. */
  readonly teeth: number;
}

export interface Gearset {
  readonly id: string;
  readonly kind: GearsetKind;
  readonly sun: Gear;
  readonly ring: Gear;
  readonly carrier: { readonly shaft: string };
}

export interface Element {
  readonly id: string;
  readonly kind: ElementKind;
  /**
   * The two shafts it joins. A one-way lets the first turn forward past the second and locks when the first
   * would turn backward past it, unless `overruns` is "backward", which turns both senses round.
   */
  readonly between: readonly [string, string];
  readonly overruns?: 'forward' | 'backward' | undefined;
}

export interface Train {
  readonly input: string;
  readonly output: string;
  readonly gearsets: readonly Gearset[];
  readonly elements: readonly Element[];
}

/** Every shaft of the train by first mention, the case left out. */
export function shaftsOf(train: Train): string[] {
  const names = new Set<string>([train.input, train.output]);
  for (const set of train.gearsets) for (const member of MEMBERS) names.add(set[member].shaft);
  for (const element of train.elements) for (const shaft of element.between) names.add(shaft);
  names.delete(CASE);
  return [...names];
}

/** The element with this id; an unknown id is a mistake of the caller and throws. */
export function elementOf(train: Train, id: string): Element {
  const element = train.elements.find((candidate) => candidate.id === id);
  if (!element) throw new Error(`no element "${id}" in this train`);
  return element;
}

/**
 * The set's one equation, as a coefficient for each member: the sum of coefficient × speed is 0, and the
 * torques on the members stand to each other as the coefficients.
 * Willis (docs/sources.md [W1]): simple zs·ws + zr·wr = (zs+zr)·wc; double-pinion zr·wr − zs·ws = (zr−zs)·wc.
 */
export function willis(set: Gearset): Record<Member, bigint> {
  const ring = BigInt(set.ring.teeth);
  const sun = set.kind === 'simple' ? BigInt(set.sun.teeth) : -BigInt(set.sun.teeth);
  return { sun, ring, carrier: -(sun + ring) };
}
