/**
 * Plates in a drum: height, clearance, sliding faces. A waved plate counts at its flat height where the maker
 * measures under load and at its free height where he does not; the unit's data must say which. Waved separators
 * outside the frictions' diameter take no room in the stack and are left out of it. Any one unit of length.
 * Source: docs/sources.md [PLAY-1].
 */
import { parseRational, type Rational, ZERO } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

export const PLATE_KINDS = ['friction', 'steel', 'apply', 'backing', 'cushion', 'ring'] as const;
export type PlateKind = (typeof PLATE_KINDS)[number];

export interface Plate {
  readonly id: string;
  readonly kind: PlateKind;
  /** Flat thickness. */
  readonly thickness: Rational;
  /** Height of a waved or dished plate with no load on it. */
  readonly free?: Rational | undefined;
}

/** How waved plates are counted. */
export const WAVES = ['flat', 'free'] as const;
export type Waves = (typeof WAVES)[number];

export type StackError =
  | { readonly code: 'thickness-not-positive' | 'free-below-flat'; readonly plate: string }
  | { readonly code: 'depth-not-positive' }
  /** The plates are higher than the room for them. */
  | { readonly code: 'does-not-assemble'; readonly by: Rational };

export function stackHeight(plates: readonly Plate[], waves: Waves): Result<Rational, StackError> {
  for (const { id, thickness, free } of plates) {
    if (thickness.lte(0n)) return fail({ code: 'thickness-not-positive', plate: id });
    if (free?.lt(thickness)) return fail({ code: 'free-below-flat', plate: id });
  }
  return pass(
    plates.reduce(
      (sum, { thickness, free }) => sum.add(waves === 'free' ? (free ?? thickness) : thickness),
      ZERO,
    ),
  );
}

/** Room between the snap ring's far face and the piston's stop, less every plate and ring in it. */
export function packClearance(
  depth: Rational,
  plates: readonly Plate[],
  waves: Waves,
): Result<Rational, StackError> {
  if (depth.lte(0n)) return fail({ code: 'depth-not-positive' });
  const height = stackHeight(plates, waves);
  if (!height.ok) return height;
  return height.value.gt(depth)
    ? fail({ code: 'does-not-assemble', by: height.value.sub(depth) })
    : pass(depth.sub(height.value));
}

const REACTS: ReadonlySet<PlateKind> = new Set(['steel', 'apply', 'backing']);

/**
 * Faces that slide: a friction's face against a plate it can turn against. Order matters here and not in the
 * clearance, so a clearance check cannot find two plates that changed places.
 */
export function slidingFaces(plates: readonly Plate[]): number {
  return plates.slice(1).filter((plate, index) => {
    const kinds = [plates[index]!.kind, plate.kind];
    return kinds.includes('friction') && kinds.some((kind) => REACTS.has(kind));
  }).length;
}

export interface CountSlip {
  readonly plate: string;
  readonly slip: 'left-out' | 'doubled';
}

/** Which single plate, left out or put in twice, explains this height to within the tolerance. */
export function slipsThatExplain(
  plates: readonly Plate[],
  waves: Waves,
  height: Rational,
  tolerance: Rational,
): Result<CountSlip[], StackError> {
  const right = stackHeight(plates, waves);
  if (!right.ok) return right;
  const over = height.sub(right.value);
  return pass(
    plates.flatMap((plate) => {
      const own = waves === 'free' ? (plate.free ?? plate.thickness) : plate.thickness;
      const off = (slip: CountSlip['slip']) => over.sub(slip === 'doubled' ? own : own.neg()).abs();
      return (['left-out', 'doubled'] as const)
        .filter((slip) => off(slip).lte(tolerance))
        .map((slip) => ({ plate: plate.id, slip }));
    }),
  );
}

/** 0.010 in for each friction. Common practice, no source: to warn with, never to answer with. */
const USUAL_PER_FRICTION_MM = parseRational('0.254')!;

/** A usual clearance in mm, to warn of figures far from it. */
export const usualClearanceMm = (frictions: number): Rational => USUAL_PER_FRICTION_MM.mul(BigInt(frictions));
