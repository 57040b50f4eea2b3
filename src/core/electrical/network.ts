/**
 * Resistance between two nodes of any network of resistors, exact. Wires of 0 Ω make their ends one node; then
 * every other node is taken out in turn, each pair of its neighbours getting the conductance that replaces it
 * (star-mesh transformation, docs/sources.md [NETWORK-1]). No case formulas, so a fault is only another network.
 */
import type { Rational } from '../rational.ts';
import { ZERO } from '../rational.ts';

export interface Resistor {
  readonly between: readonly [string, string];
  /** Not negative; 0 joins the two nodes. */
  readonly ohms: Rational;
}

/** The node that stands for each, after wires of 0 Ω. */
function merged(resistors: readonly Resistor[]): (node: string) => string {
  const parent = new Map<string, string>();
  const find = (node: string): string => {
    const above = parent.get(node);
    return above === undefined ? node : find(above);
  };
  for (const { between, ohms } of resistors) {
    const [a, b] = [find(between[0]), find(between[1])];
    if (ohms.n === 0n && a !== b) parent.set(a, b);
  }
  return find;
}

/** Ohms between two nodes; null where no path joins them: the meter shows open. */
export function resistanceBetween(resistors: readonly Resistor[], from: string, to: string): Rational | null {
  if (resistors.some(({ ohms }) => ohms.lt(0n))) throw new Error('a resistance below zero');
  const find = merged(resistors);
  const [start, end] = [find(from), find(to)];
  if (start === end) return ZERO;

  const conductances = new Map<string, Map<string, Rational>>();
  const at = (node: string) => {
    const found = conductances.get(node) ?? new Map<string, Rational>();
    conductances.set(node, found);
    return found;
  };
  const join = (a: string, b: string, conductance: Rational) => {
    if (a === b) return;
    at(a).set(b, (at(a).get(b) ?? ZERO).add(conductance));
    at(b).set(a, (at(b).get(a) ?? ZERO).add(conductance));
  };
  for (const { between, ohms } of resistors)
    if (ohms.n !== 0n) join(find(between[0]), find(between[1]), ohms.inverse());

  for (const node of [...conductances.keys()]) {
    if (node === start || node === end) continue;
    const neighbours = [...at(node)];
    const total = neighbours.reduce((sum, [, conductance]) => sum.add(conductance), ZERO);
    for (const [neighbour] of neighbours) at(neighbour).delete(node);
    conductances.delete(node);
    neighbours.forEach(([a, one], index) => {
      for (const [b, other] of neighbours.slice(index + 1)) join(a, b, one.mul(other).div(total));
    });
  }
  return conductances.get(start)?.get(end)?.inverse() ?? null;
}
