/**
 * Work in steps with must-be-before relations. A stripping sequence can say how it is turned round: assembly is
 * derived from it (src/core/sequence/assembly.ts) with the exceptions stored here.
 */
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
