/**
 * Torques in a train that drives, per 1 of torque on the input, without losses, at steady speed.
 * Positive acts the way the input turns; a torque is what acts on the shaft named (docs/conventions.md).
 * The members of a gearset share torque as its Willis coefficients (docs/sources.md [T1]); every shaft is in
 * balance. Where the balance leaves a torque open (a redundant element shares the load in a way that only
 * stiffness settles) it is null: indeterminate, not guessed.
 */
import type { Rational } from '../rational.ts';
import { eliminate } from './elimination.ts';
import { CASE, elementOf, MEMBERS, type Member, shaftsOf, type Train, willis } from './train.ts';

export interface Torques {
  /** What each applied element puts on the first of its two shafts; the second gets the opposite. */
  readonly elements: ReadonlyMap<string, Rational | null>;
  /** What each gearset puts on the shafts of its members. */
  readonly members: ReadonlyMap<string, Readonly<Record<Member, Rational | null>>>;
  /** What the load puts on the output shaft: the ratio with the other sign. */
  readonly output: Rational;
  /** What the case puts on the train in all, through brakes and gears fixed to it: the ratio less 1. */
  readonly reaction: Rational;
}

/** Torques with these elements applied; null when the train does not drive (no steady torque can pass). */
export function solveTorques(train: Train, applied: readonly string[]): Torques | null {
  const shafts = shaftsOf(train);
  const rowOf = new Map(shafts.map((shaft, row) => [shaft, row]));
  const sets = train.gearsets.length;
  const unknowns = sets + applied.length + 1;
  const rows = shafts.map(() => new Array<bigint>(unknowns + 1).fill(0n));
  const add = (shaft: string, column: number, coefficient: bigint) => {
    if (shaft !== CASE) rows[rowOf.get(shaft)!]![column]! += coefficient;
  };
  train.gearsets.forEach((set, column) => {
    const coefficients = willis(set);
    for (const member of MEMBERS) add(set[member].shaft, column, coefficients[member]);
  });
  applied.forEach((id, index) => {
    const [first, second] = elementOf(train, id).between;
    add(first, sets + index, 1n);
    add(second, sets + index, -1n);
  });
  add(train.output, unknowns - 1, 1n);
  add(train.input, unknowns, -1n);

  const reading = eliminate(rows, unknowns);
  const output = reading?.[unknowns - 1];
  if (!reading || !output || output.n === 0n) return null;

  const members = new Map(
    train.gearsets.map((set, column) => {
      const scale = reading[column]!;
      const coefficients = willis(set);
      const share = (member: Member) => scale?.mul(coefficients[member]) ?? null;
      return [set.id, { sun: share('sun'), ring: share('ring'), carrier: share('carrier') }] as const;
    }),
  );
  return {
    elements: new Map(applied.map((id, index) => [id, reading[sets + index]!])),
    members,
    output,
    reaction: output.add(1n).neg(),
  };
}
