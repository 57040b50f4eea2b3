/**
 * Work in steps, some of which must be done before others. A checked `Precedence` has no circle, and knows for
 * every step all that must come before it, directly or through others. Any order that respects this is right.
 * Source: docs/sources.md [ORDER-1].
 */
import { fail, pass, type Result } from '../result.ts';

/** A step and those that must be done before it, as a deck holds them. */
export interface Step {
  readonly id: string;
  readonly after?: readonly { readonly step: string }[] | undefined;
}

export interface Precedence {
  /** Every step once, as given. */
  readonly ids: readonly string[];
  /** Steps directly named as before. */
  readonly direct: ReadonlyMap<string, ReadonlySet<string>>;
  /** All steps that must come before, directly or not. */
  readonly before: ReadonlyMap<string, ReadonlySet<string>>;
}

export type PrecedenceError =
  | { readonly code: 'step-twice'; readonly step: string }
  | { readonly code: 'step-unknown'; readonly step: string; readonly after: string }
  /** Each must be done before the next, and the last before the first. */
  | { readonly code: 'circle'; readonly circle: readonly string[] };

/** A circle among these relations, the first found in the order of the steps; null when there is none. */
function circleIn(ids: readonly string[], direct: Precedence['direct']): string[] | null {
  const cleared = new Set<string>();
  const follow = (id: string, trail: readonly string[]): string[] | null => {
    const start = trail.indexOf(id);
    if (start >= 0) return trail.slice(start).reverse();
    if (cleared.has(id)) return null;
    for (const earlier of direct.get(id)!) {
      const circle = follow(earlier, [...trail, id]);
      if (circle) return circle;
    }
    cleared.add(id);
    return null;
  };
  for (const id of ids) {
    const circle = follow(id, []);
    if (circle) return circle;
  }
  return null;
}

export function checkPrecedence(steps: readonly Step[]): Result<Precedence, PrecedenceError> {
  const ids = steps.map((step) => step.id);
  const twice = ids.find((id, index) => ids.indexOf(id) !== index);
  if (twice !== undefined) return fail({ code: 'step-twice', step: twice });
  const direct = new Map(
    steps.map((step) => [step.id, new Set((step.after ?? []).map(({ step: id }) => id))]),
  );
  for (const [step, earlier] of direct)
    for (const after of earlier) if (!direct.has(after)) return fail({ code: 'step-unknown', step, after });
  const circle = circleIn(ids, direct);
  if (circle) return fail({ code: 'circle', circle });

  const before = new Map<string, Set<string>>();
  const collect = (id: string): Set<string> => {
    const known = before.get(id);
    if (known) return known;
    const all = new Set([...direct.get(id)!].flatMap((earlier) => [earlier, ...collect(earlier)]));
    before.set(id, all);
    return all;
  };
  for (const id of ids) collect(id);
  return pass({ ids, direct, before });
}

/** What must come before this step. An unknown step is a mistake of ours and throws. */
export function beforeOf({ before }: Precedence, id: string): ReadonlySet<string> {
  const found = before.get(id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
}

/** Whether one must be done before the other, whichever order is chosen. */
export const mustPrecede = (precedence: Precedence, earlier: string, later: string): boolean =>
  beforeOf(precedence, later).has(earlier);

/** Whether the two have a fixed order at all. */
export const comparable = (precedence: Precedence, one: string, other: string): boolean =>
  one === other || mustPrecede(precedence, one, other) || mustPrecede(precedence, other, one);
