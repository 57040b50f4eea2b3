/**
 * Work in steps with must-be-before relations. A stripping sequence can say how it is turned round: assembly is
 * derived from it (src/core/sequence/assembly.ts) with the exceptions stored here.
 */
import { fail, type Result } from '../result.ts';
import { type AssemblyError, type AssemblyExceptions, assemblyOf } from '../sequence/assembly.ts';
import { checkPrecedence, type Precedence, type PrecedenceError } from '../sequence/precedence.ts';
import type { Hazard } from './cautions.ts';
import type { Named, Provenance, Torque } from './record.ts';

export interface DeckStep extends Provenance {
  readonly id: string;
  /** What is done, in the shop's words. */
  readonly text: string;
  /** What is done when the sequence is turned round: "Set the pump in." */
  readonly turned?: string | undefined;
  /** Steps of the same sequence that must be done before this one, each with the reason. */
  readonly after?: readonly { readonly step: string; readonly reason: string }[] | undefined;
  readonly tool?: string | undefined;
  /** Tightening torque as it is printed. It belongs to the assembly where the sequence can be turned round. */
  readonly torque?: Torque | undefined;
  /** Id of one of the deck's torques, in place of `torque`. */
  readonly tightens?: string | undefined;
  readonly hazards?: readonly Hazard[] | undefined;
  /** What comes of it when the step is left out. */
  readonly ifSkipped?: string | undefined;
}

/** Both steps named as in the assembly: `earlier` is done before `later`. */
export interface DeckRelation {
  readonly earlier: string;
  readonly later: string;
  readonly reason: string;
}

/** Where putting together is not stripping turned round. */
export interface DeckAssembly {
  readonly name?: string | undefined;
  /** Steps done only when stripping. */
  readonly leftOut?: readonly { readonly step: string; readonly reason: string }[] | undefined;
  /** Steps done only when assembling; `after` names steps of the assembly. */
  readonly added?: readonly DeckStep[] | undefined;
  /** Relations of the stripping that do not turn round. */
  readonly lifted?: readonly DeckRelation[] | undefined;
  /** Relations that only the assembly has. */
  readonly imposed?: readonly DeckRelation[] | undefined;
}

/** Something that can be measured or looked at only for part of the work. */
export interface DeckCheck extends Provenance {
  readonly id: string;
  readonly text: string;
  readonly during: 'strip' | 'assembly';
  /** Id of the fit it measures. */
  readonly fit?: string | undefined;
  /** Steps that must be done for it. */
  readonly needs: readonly string[];
  /** Steps any of which makes it impossible. */
  readonly closedBy: readonly string[];
}

/** Steps with must-be-before relations. The order in the file is one way to do it, not the only one. */
export interface DeckSequence extends Named, Provenance {
  readonly steps: readonly DeckStep[];
  readonly assembly?: DeckAssembly | undefined;
  readonly checks?: readonly DeckCheck[] | undefined;
}

/** The precedence of the steps as they are listed. */
export const precedenceOf = ({ steps }: DeckSequence): Result<Precedence, PrecedenceError> =>
  checkPrecedence(steps);

/** The stored exceptions as the derivation takes them. */
export const exceptionsOf = ({ leftOut, added, lifted, imposed }: DeckAssembly): AssemblyExceptions => ({
  leftOut: leftOut?.map(({ step }) => step),
  added,
  lifted,
  imposed,
});

/** The precedence of the assembly; refused as `not-turned` where the sequence cannot be turned round. */
export function assemblyPrecedenceOf(
  sequence: DeckSequence,
): Result<Precedence, AssemblyError | { readonly code: 'not-turned' }> {
  if (!sequence.assembly) return fail({ code: 'not-turned' });
  const strip = precedenceOf(sequence);
  return strip.ok ? assemblyOf(strip.value, exceptionsOf(sequence.assembly)) : strip;
}

/** A step of the sequence or of its assembly. */
export const stepOf = ({ steps, assembly }: DeckSequence, id: string): DeckStep | undefined =>
  [...steps, ...(assembly?.added ?? [])].find((step) => step.id === id);

/** What the assembly says at this step: its own words where stripping and assembly differ. */
export const assemblyTextOf = ({ text, turned }: DeckStep): string => turned ?? text;

/**
 * Why one step directly comes before another, in the stripping or in the assembly; undefined when it does not.
 * A relation that was turned round gives the reason it has in the stripping.
 */
export function reasonOf(
  sequence: DeckSequence,
  during: DeckCheck['during'],
  earlier: string,
  later: string,
): string | undefined {
  const stated = (before: string, step: string) =>
    stepOf(sequence, step)?.after?.find((relation) => relation.step === before)?.reason;
  if (during === 'strip') return stated(earlier, later);
  const imposed = sequence.assembly?.imposed?.find(
    (relation) => relation.earlier === earlier && relation.later === later,
  );
  const added = sequence.assembly?.added?.some(({ id }) => id === later);
  return imposed?.reason ?? (added ? stated(earlier, later) : stated(later, earlier));
}
