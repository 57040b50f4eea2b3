/**
 * The same question as `settle`, answered without torques: a second route, so that neither is its own proof.
 * A one-way carries load when, with the output stalled and that one-way alone let go, the input would turn it
 * the way it blocks: the work the input puts in has then nowhere else to go (docs/sources.md [ONE-WAY-STALL]).
 * Brute force over all one-ways.
 */
import { type Solution, solveSpeeds } from '../gears/solve.ts';
import { CASE, type Element, type Train } from '../gears/train.ts';

/** Which way the one-way turns in its free sense: 1, 0, or -1 for the way it blocks; null where left open. */
function turnOf(oneWay: Element, { speeds }: Solution): number | null {
  const [first, second] = oneWay.between.map((shaft) => (shaft === CASE ? 0n : speeds.get(shaft)));
  if (first === undefined || second === undefined || first === null || second === null) return null;
  const turn = first === 0n ? (second === 0n ? 0 : -second.compare(0n)) : first.compare(second);
  return oneWay.overruns === 'backward' ? -turn : turn;
}

/** State and ratio with these brakes and clutches on, the input driving and the one-ways acting. */
export function solveBySpeeds(train: Train, friction: readonly string[]): Pick<Solution, 'state' | 'ratio'> {
  const oneWays = train.elements.filter((element) => element.kind === 'one-way');
  const stalled: Train = {
    ...train,
    elements: [...train.elements, { id: ' stall', kind: 'brake', between: [train.output, CASE] }],
  };
  const solve = (held: readonly Element[]) =>
    solveSpeeds(train, [...friction, ...held.map((oneWay) => oneWay.id)]);

  /** Whether the input can turn with these locked: what is left open may come to rest, nothing may be forced. */
  const canTurn = (held: readonly Element[]): boolean => {
    const solution = solve(held);
    if (solution.state === 'tied-up') return false;
    const others = oneWays.filter((oneWay) => !held.includes(oneWay));
    if (others.some((oneWay) => turnOf(oneWay, solution) === -1)) return false;
    const open = others.filter((oneWay) => turnOf(oneWay, solution) === null);
    return open.length === 0 || open.some((oneWay) => canTurn([...held, oneWay]));
  };
  const loads = (oneWay: Element, held: readonly Element[]) => {
    const others = held.filter((other) => other !== oneWay).map((other) => other.id);
    return turnOf(oneWay, solveSpeeds(stalled, [...friction, ...others, ' stall'])) === -1;
  };

  if (!canTurn([])) return { state: 'tied-up', ratio: null };
  for (let mask = 0; mask < 2 ** oneWays.length; mask++) {
    const held = oneWays.filter((_, bit) => mask & (1 << bit));
    const solution = solve(held);
    if (solution.state === 'drives' && canTurn(held) && held.every((oneWay) => loads(oneWay, held)))
      return solution;
  }
  return solve([]);
}
