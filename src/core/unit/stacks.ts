/** Plates in order: every pack from its floor up, with what a clearance is computed from. */
import { type Plate, packClearance, type StackError, stackHeight, type Waves } from '../measure/stack.ts';
import type { Rational } from '../rational.ts';
import type { Result } from '../result.ts';
import { type End, exactIn, type Length, type Named, type Provenance } from './record.ts';

export const STACK_KINDS = [
  'piston',
  'return-spring',
  'apply',
  'friction',
  'steel',
  'waved',
  'dished',
  'separator',
  'backing',
  'washer',
  'snap-ring',
] as const;
export type StackKind = (typeof STACK_KINDS)[number];

/**
 * What takes no room between piston stop and snap-ring groove: the piston and its spring lie under it, and waved
 * separators lie outside the frictions.
 */
export const OUTSIDE_PACK: readonly StackKind[] = ['piston', 'return-spring', 'separator'];

export const FEATURES = ['step', 'bevel', 'dish', 'lip', 'tab'] as const;
/** Where counting starts (the floor of the pack), and where it ends. */
export const TOWARDS = ['floor', 'opening'] as const;

export interface DeckStackItem extends Named, Provenance {
  readonly kind: StackKind;
  /** Thickness; of waved and dished plates when pressed flat. Needed unless it lies outside the pack. */
  readonly thickness?: Length | undefined;
  /** Waved and dished plates: height with no load on it. */
  readonly free?: Length | undefined;
  /** What is one-sided about it and which way that looks. */
  readonly looks?:
    | { readonly feature: (typeof FEATURES)[number]; readonly towards: (typeof TOWARDS)[number] }
    | undefined;
  /** Items of one stack with the same word here are alike: any of them may take the place of another. */
  readonly identical?: string | undefined;
}

export interface DeckStack extends Named, Provenance {
  /** The element it is the pack of. */
  readonly element?: string | undefined;
  /** What counting starts from: "drum floor". */
  readonly floor: string;
  /** The end of the unit that the floor is at. */
  readonly floorAt: End;
  /** In order from the floor up. */
  readonly items: readonly DeckStackItem[];
  /** From the piston's stop to the far face of the snap-ring groove. */
  readonly room?: Length | undefined;
  /** How waved and dished plates count when the clearance is measured. */
  readonly waves?: Waves | undefined;
}

export const isInPack = ({ kind }: DeckStackItem): boolean => !OUTSIDE_PACK.includes(kind);

const PLATE_KIND_OF: Partial<Record<StackKind, Plate['kind']>> = {
  friction: 'friction',
  steel: 'steel',
  apply: 'apply',
  backing: 'backing',
  waved: 'cushion',
  dished: 'cushion',
};

/** The plates that take room in the pack, in mm, from the floor up. One without a thickness is left out. */
export const platesOf = ({ items }: DeckStack): Plate[] =>
  items.filter(isInPack).flatMap(({ id, kind, thickness, free }) =>
    thickness
      ? [
          {
            id,
            kind: PLATE_KIND_OF[kind] ?? 'ring',
            thickness: exactIn(thickness, 'mm'),
            free: free && exactIn(free, 'mm'),
          },
        ]
      : [],
  );

export const countOf = ({ items }: DeckStack, kind: StackKind): number =>
  items.filter((item) => item.kind === kind).length;

/** Height of the plates, waved ones counted as the stack says (flat when it does not). */
export const heightMm = (stack: DeckStack): Result<Rational, StackError> =>
  stackHeight(platesOf(stack), stack.waves ?? 'flat');

/** Room less height; null where the deck states no room. */
export const clearanceMm = (stack: DeckStack): Result<Rational, StackError> | null =>
  stack.room ? packClearance(exactIn(stack.room, 'mm'), platesOf(stack), stack.waves ?? 'flat') : null;

/** Whether two items may change places. */
export const interchangeable = (one: DeckStackItem, other: DeckStackItem): boolean =>
  one.id === other.id || (one.identical !== undefined && one.identical === other.identical);
