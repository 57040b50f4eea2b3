/**
 * One-ways decide for themselves whether they hold. Given the friction elements that are applied, this finds
 * which one-ways carry load and which overrun. Every combination is tried (a train has few): the right one
 * pushes, at each one-way that holds, the way that one-way can push, and lets every other one slip the way it
 * can slip. At most one ratio satisfies that (docs/spec/solver.md S17).
 */
import { type Rational, ZERO } from '../rational.ts';
import { type Solution, solveSpeeds, TIED_UP } from './solve.ts';
import { solveTorques } from './torque.ts';
import { CASE, type Element, type Train } from './train.ts';

/**
 * drive: the input pushes the output. coast: the output pushes the input, so every torque turns round; it
 * turns the way it turns in drive, or forward where nothing drives it.
 */
export const LOADS = ['drive', 'coast'] as const;
export type Load = (typeof LOADS)[number];

export interface Settled {
  readonly solution: Solution;
  /** The friction elements given, then the one-ways that hold. */
  readonly applied: readonly string[];
  /** One-ways that carry load; none unless the train drives. */
  readonly holding: readonly string[];
}

/** How fast the one-way overruns, in its free sense; below 0 it would have to lock. Null where left open. */
export function overrunOf(element: Element, solution: Solution): Rational | null {
  const speedOf = (shaft: string) => (shaft === CASE ? ZERO : (solution.speeds.get(shaft) ?? null));
  const [first, second] = element.between;
  const [speed, other] = [speedOf(first), speedOf(second)];
  if (!speed || !other) return null;
  return element.overruns === 'backward' ? other.sub(speed) : speed.sub(other);
}

/**
 * What a holding one-way carries, positive when it can carry it (it opposes the sense it blocks); null when
 * indeterminate. `torque` is what it puts on its first shaft, as `solveTorques` says.
 */
export function holdOf(element: Element, torque: Rational | null, load: Load): Rational | null {
  const turned = (element.overruns === 'backward') !== (load === 'coast');
  return torque && turned ? torque.neg() : torque;
}

interface Trial extends Settled {
  /** No other one-way is asked to turn the way it blocks, and none is left open. */
  readonly rests: boolean;
}

/** The train with exactly these one-ways locked. */
function lock(
  train: Train,
  friction: readonly string[],
  oneWays: readonly Element[],
  held: Element[],
): Trial {
  const holding = held.map((element) => element.id);
  const applied = [...friction, ...holding];
  const solution = solveSpeeds(train, applied);
  const rests =
    solution.state !== 'tied-up' &&
    oneWays.every((element) => {
      if (held.includes(element)) return true;
      const slip = overrunOf(element, solution);
      return slip?.gte(0n);
    });
  return { solution, applied, holding, rests };
}

/** True when every one-way of a driving trial is loaded in the sense it blocks. */
function holdsFirmly(train: Train, trial: Trial, load: Load): boolean {
  const torques = solveTorques(train, trial.applied)!;
  return train.elements
    .filter((element) => trial.holding.includes(element.id))
    .every((element) => holdOf(element, torques.elements.get(element.id)!, load)?.gt(0n));
}

/**
 * Lets the train's one-ways act beside these friction elements (one-ways among `friction` are ignored: they
 * cannot be applied, only loaded). Where the one-ways leave the input no way to turn, the train is tied up.
 */
export function settle(train: Train, friction: readonly string[], load: Load = 'drive'): Settled {
  const oneWays = train.elements.filter((element) => element.kind === 'one-way');
  const commanded = friction.filter((id) => !oneWays.some((element) => element.id === id));
  const trials = Array.from({ length: 1 << oneWays.length }, (_, mask) =>
    oneWays.filter((_, bit) => mask & (1 << bit)),
  )
    .sort((a, b) => a.length - b.length)
    .map((held) => lock(train, commanded, oneWays, held));

  // A trial can be had when it, or it with further one-ways at rest, asks nothing of a one-way it cannot do.
  const canBe = ({ holding }: Trial) =>
    trials.some((other) => other.rests && holding.every((id) => other.holding.includes(id)));
  const idle = trials[0]!;
  if (!canBe(idle)) return { solution: TIED_UP, applied: commanded, holding: [] };
  const driving = trials.filter((trial) => trial.solution.state === 'drives' && canBe(trial));
  const inDrive = driving.find((trial) => holdsFirmly(train, trial, 'drive'));
  const backward = inDrive?.solution.ratio?.lt(0n) ?? false;
  const acting =
    load === 'drive'
      ? inDrive
      : driving.find(
          (trial) => trial.solution.ratio!.lt(0n) === backward && holdsFirmly(train, trial, 'coast'),
        );
  const { solution, applied, holding } = acting ?? idle;
  return { solution, applied, holding };
}
