/**
 * Work in steps as questions need it. What must come before what is taken only from verified steps (`known`); that
 * nothing more must, only where the unverified ones would not change it either (`full`).
 */
import { beforeOf, checkPrecedence, type Precedence } from '../../../sequence/precedence.ts';
import {
  assemblyPrecedenceOf,
  assemblyTextOf,
  type DeckCheck,
  type DeckSequence,
  precedenceOf,
  reasonOf,
  stepOf,
} from '../../../unit/sequences.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { FactId } from '../../question.ts';
import { perUnit } from '../per-unit.ts';

export interface Work {
  readonly sequence: DeckSequence;
  readonly during: DeckCheck['during'];
  readonly known: Precedence;
  readonly full: Precedence;
  /** Verified steps that no other step is worded like, in the order of `full`. */
  readonly askable: readonly string[];
}

export const stepRef = ({ sequence }: Pick<Work, 'sequence'>, id: string): Ref => `step:${sequence.id}/${id}`;

export const beforeFact = ({ sequence }: Pick<Work, 'sequence'>, id: string): FactId =>
  `step:${sequence.id}/${id}/before`;

const wordsOf = (sequence: DeckSequence, during: Work['during'], id: string): string => {
  const step = stepOf(sequence, id)!;
  return during === 'assembly' ? assemblyTextOf(step) : step.text;
};

function workOf(
  unit: Unit,
  sequence: DeckSequence,
  during: Work['during'],
  known: Precedence,
  full: Precedence,
): Work {
  const texts = full.ids.map((id) => wordsOf(sequence, during, id).trim().toLowerCase());
  const askable = full.ids.filter(
    (id, index) =>
      unit.sure(stepRef({ sequence }, id)) &&
      texts.indexOf(texts[index]!) === texts.lastIndexOf(texts[index]!),
  );
  return { sequence, during, known, full, askable };
}

/** Stripping, or any other work that is recorded as it is done. */
export const stripWorks = perUnit((unit): Work[] =>
  (unit.deck.sequences ?? []).flatMap((sequence) => {
    if (!unit.sure(`sequence:${sequence.id}`)) return [];
    const full = precedenceOf(sequence);
    const known = checkPrecedence(verifiedOf(unit, sequence).steps);
    return full.ok && known.ok ? [workOf(unit, sequence, 'strip', known.value, full.value)] : [];
  }),
);

/** What the sequence says with the relations of unverified steps, and the exceptions to them, left out. */
function verifiedOf(unit: Unit, sequence: DeckSequence): DeckSequence {
  const sure = (id: string) => unit.sure(stepRef({ sequence }, id));
  const only = <T extends { readonly id: string }>(steps: readonly T[]) =>
    steps.map((step) => (sure(step.id) ? step : { ...step, after: [] }));
  const { steps, assembly } = sequence;
  return {
    ...sequence,
    steps: only(steps),
    assembly: assembly && {
      ...assembly,
      added: only(assembly.added ?? []),
      // A lifted relation stands in the record of the step that stripping does later.
      lifted: assembly.lifted?.filter(({ earlier }) => sure(earlier)),
    },
  };
}

/** Assemblies, derived from the strippings and their exceptions. */
export const assemblyWorks = perUnit((unit): Work[] =>
  (unit.deck.sequences ?? []).flatMap((sequence) => {
    if (!unit.sure(`sequence:${sequence.id}`)) return [];
    const full = assemblyPrecedenceOf(sequence);
    const known = assemblyPrecedenceOf(verifiedOf(unit, sequence));
    return full.ok && known.ok ? [workOf(unit, sequence, 'assembly', known.value, full.value)] : [];
  }),
);

/** What is done at the step, in the shop's words. */
export const stepText = (work: Work, id: string): Phrase =>
  say('text', { text: wordsOf(work.sequence, work.during, id) });

/** Everything that is done when these steps are, themselves included. */
export const doneWith = (precedence: Precedence, ids: readonly string[]): Set<string> =>
  new Set(ids.flatMap((id) => [id, ...beforeOf(precedence, id)]));

/** Steps from the earlier to the later, each a reason for the next; both ends included. */
export function pathBetween({ known }: Work, earlier: string, later: string): string[] {
  const trails: string[][] = [[later]];
  const met = new Set([later]);
  for (const trail of trails) {
    if (trail[0] === earlier) return trail;
    for (const id of known.direct.get(trail[0]!)!)
      if (!met.has(id) && (id === earlier || beforeOf(known, id).has(earlier))) {
        met.add(id);
        trails.push([id, ...trail]);
      }
  }
  return [];
}

/** "“Pull the converter.” before “Lift the pump out.”: the converter covers the bolts." for each link. */
export const pathReasons = (work: Work, earlier: string, later: string): Phrase[] => {
  const path = pathBetween(work, earlier, later);
  return path.slice(1).map((id, index) => reasonLine(work, path[index]!, id));
};

/** The two steps and the recorded reason; without one where the relation is only implied. */
export function reasonLine(work: Work, earlier: string, later: string): Phrase {
  const reason = reasonOf(work.sequence, work.during, earlier, later);
  const steps = { earlier: stepText(work, earlier), later: stepText(work, later) };
  return reason === undefined
    ? say('step.before', steps)
    : say('step.because', { ...steps, reason: say('text', { text: reason }) });
}

/** Whether the recorded steps say that one comes before another: by their own list, not by `Precedence`. */
export function rawBefore({ steps }: DeckSequence, earlier: string, later: string): boolean {
  const open = [later];
  const met = new Set<string>();
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (met.has(id)) continue;
    met.add(id);
    for (const { step } of steps.find((each) => each.id === id)?.after ?? []) {
      if (step === earlier) return true;
      open.push(step);
    }
  }
  return false;
}

/** "strip the unit" */
export const workName = ({ sequence, during }: Work): Phrase =>
  during === 'assembly' && sequence.assembly?.name !== undefined
    ? say('text', { text: sequence.assembly.name })
    : thing('sequence', sequence.id);
