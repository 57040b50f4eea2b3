/**
 * Until when a measurement or check can still be made: after what it needs is in place, and before a step that
 * buries it.
 */
import { fail, pass, type Result } from '../result.ts';
import { checkOrder, type OrderError } from './order.ts';
import { beforeOf, mustPrecede, type Precedence } from './precedence.ts';

export interface Check {
  /** Steps that must be done for it. */
  readonly needs: readonly string[];
  /** Steps any of which makes it impossible. */
  readonly closedBy: readonly string[];
}

export type CheckError =
  | { readonly code: 'step-unknown'; readonly step: string }
  /** What it needs cannot be reached without a step that closes it. */
  | { readonly code: 'never-possible'; readonly step: string };

function unknownIn(precedence: Precedence, { needs, closedBy }: Check): CheckError | null {
  const step = [...needs, ...closedBy].find((id) => !precedence.before.has(id));
  return step === undefined ? null : { code: 'step-unknown', step };
}

/**
 * The steps that, whichever order is chosen, can be the one to close the check: those of `closedBy` with no
 * other before them. One alone is the point of no return of every order; none means it stays open.
 */
export function closingSteps(precedence: Precedence, check: Check): Result<string[], CheckError> {
  const unknown = unknownIn(precedence, check);
  if (unknown) return fail(unknown);
  const closes = new Set(check.closedBy);
  const needed = new Set(check.needs.flatMap((id) => [id, ...beforeOf(precedence, id)]));
  const early = [...needed].find((id) => closes.has(id));
  if (early !== undefined) return fail({ code: 'never-possible', step: early });
  return pass([...closes].filter((id) => ![...closes].some((other) => mustPrecede(precedence, other, id))));
}

export interface LastChance {
  /** The step after which it is first possible; null when it is from the start. */
  readonly opens: string | null;
  /** The last step that can be done with the check still possible; null when none can. */
  readonly last: string | null;
  /** The step that closes it; null when nothing does. */
  readonly closes: string | null;
}

/** In one legal order of all steps: the last step at which the check can still be made. */
export function lastChance(
  precedence: Precedence,
  order: readonly string[],
  check: Check,
): Result<LastChance, CheckError | OrderError> {
  const unknown = unknownIn(precedence, check);
  if (unknown) return fail(unknown);
  const legal = checkOrder(precedence, order);
  if (!legal.ok) return legal;
  const closing = order.findIndex((id) => check.closedBy.includes(id));
  const end = closing < 0 ? order.length : closing;
  const opening = Math.max(-1, ...check.needs.map((id) => order.indexOf(id)));
  if (opening >= end) return fail({ code: 'never-possible', step: order[end]! });
  return pass({
    opens: order[opening] ?? null,
    last: order[end - 1] ?? null,
    closes: order[closing] ?? null,
  });
}
