/**
 * One-ways decide for themselves whether they hold. Given the friction elements that are applied, this finds
 * which one-ways carry load and which overrun, by trying every combination (a train has few) and keeping the
 * one where each holding one-way pushes the way it can and each other one slips the way it can.
 */
import { type Rational, ZERO } from '../rational.ts';
import { type Solution, solveSpeeds } from './solve.ts';
import { solveTorques } from './torque.ts';
import type { Element, Train } from './train.ts';

/** drive: the input pushes the output. coast: the output pushes the input, so every torque turns round. */
export type Load = 'drive' | 'coast';

export interface Settled {
  readonly solution: Solution;
  /** The friction elements given, then the one-ways that hold. */
  readonly applied: readonly string[];
  readonly holding: readonly string[];
}

/** How fast the one-way overruns, in its free sense; below 0 it would have to lock. Null where left open. */
export function overrunOf(element: Element, solution: Solution): Rational | null {
  const [first, second] = element.between.map((shaft) =>
    solution.speeds.has(shaft) ? solution.speeds.get(shaft)! : ZERO,
  ) as [Rational | null, Rational | null];
  if (!first || !second) return null;
  const slip = first.sub(second);
  return element.overruns === 'backward' ? slip.neg() : slip;
}

/**
 * What a holding one-way carries, positive when it can carry it (it opposes the sense it blocks); null when
 * indeterminate. `torque` is what it puts on its first shaft.
 */
export function holdOf(element: Element, torque: Rational | null, load: Load): Rational | null {
  const turned = (element.overruns === 'backward') !== (load === 'coast');
  return torque && (turned ? torque.neg() : torque);
}

/**
 * Lets the train's one-ways act beside these friction elements (one-ways among `friction` are ignored: they
 * cannot be applied, only loaded). With no consistent combination the train binds: tied up.
 */
export function settle(train: Train, friction: readonly string[], load: Load = 'drive'): Settled {
  const oneWays = train.elements.filter((element) => element.kind === 'one-way');
  const commanded = friction.filter((id) => !oneWays.some((element) => element.id === id));
  const subsets = Array.from({ length: 1 << oneWays.length }, (_, mask) =>
    oneWays.filter((_, bit) => mask & (1 << bit)),
  ).sort((a, b) => a.length - b.length);

  let idle: Settled | undefined;
  let bound: Settled | undefined;
  for (const held of subsets) {
    const holding = held.map((element) => element.id);
    const applied = [...commanded, ...holding];
    const solution = solveSpeeds(train, applied);
    const settled: Settled = { solution, applied, holding };
    if (solution.state === 'tied-up') {
      bound ??= settled;
      continue;
    }
    const slipsFreely = oneWays.every((element) => {
      if (held.includes(element)) return true;
      const slip = overrunOf(element, solution);
      return slip === null || slip.s >= 0n || slip.n === 0n;
    });
    if (solution.state !== 'drives') {
      if (holding.length === 0 && slipsFreely) idle ??= settled;
      continue;
    }
    const torques = solveTorques(train, applied)!;
    const holdsFirmly = held.every((element) => {
      const hold = holdOf(element, torques.elements.get(element.id)!, load);
      return hold !== null && hold.n !== 0n && hold.s > 0n;
    });
    if (slipsFreely && holdsFirmly) return settled;
  }
  return (
    idle ??
    bound ?? {
      solution: { state: 'tied-up', ratio: null, speeds: new Map() },
      applied: commanded,
      holding: [],
    }
  );
}
