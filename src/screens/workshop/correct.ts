/**
 * A correction on its way: assignments made here whose learners have an earlier revision of the deck, and the next
 * issue of each of them with the correction in it.
 */
import type { Correction } from '../../core/assign/corrections.ts';
import { pass, type Result } from '../../core/result.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { fieldsOf, readFields } from '../assign/fields.ts';
import { makeAssignment } from '../assign/make-assignment.ts';
import { type OpenedAssignment, openAssignments } from '../handing/assignments.ts';
import type { Services } from '../services.ts';

export interface Behind {
  readonly deckText: string;
  readonly revision: number;
  readonly assignments: readonly OpenedAssignment[];
}

/** Null when there is no such deck here. */
export async function assignmentsBehind(
  { store }: Services,
  deckId: string,
): Promise<Result<Behind | null, StoreTrouble>> {
  const [decks, made] = await Promise.all([store.decks(), openAssignments(store, 'made')]);
  if (!decks.ok) return decks;
  if (!made.ok) return made;
  const stored = decks.value.find(({ id }) => id === deckId);
  if (!stored) return pass(null);
  const { revision, text } = stored;
  return pass({
    deckText: text,
    revision,
    assignments: made.value.filter(
      ({ assignment: { deck } }) => deck.id === deckId && deck.revision < revision,
    ),
  });
}

export interface Reissued {
  readonly group: string;
  readonly issue: number;
  readonly text: string;
  readonly roster: number;
}

export interface Corrected {
  readonly corrections: readonly Correction[];
  readonly reissued: readonly Reissued[];
}

/** The next issue of every assignment that is behind; one correction for each revision its learners have. */
export async function handOutCorrection(
  services: Services,
  { deckText, assignments }: Behind,
  note: string,
): Promise<Result<Corrected, StoreTrouble>> {
  const unit = services.unitOf(deckText);
  const corrections: Correction[] = [];
  const reissued: Reissued[] = [];
  const from = new Set<number>();
  for (const { stored, assignment } of assignments) {
    const fields = { ...fieldsOf(assignment, stored.roster), wrong: note };
    const read = readFields(fields);
    if (!read.ok) continue;
    const before = assignment.deck.revision;
    const made = await makeAssignment({
      services,
      unit,
      deckText,
      fields,
      read: read.value,
      last: assignment,
      corrected: from.has(before),
    });
    if (!made.ok) return made;
    if (made.value.kind !== 'made') continue;
    from.add(before);
    const { correction, text } = made.value;
    if (correction) corrections.push(correction);
    const { group, issue } = made.value.assignment;
    reissued.push({ group, issue, text, roster: stored.roster.length });
  }
  return pass({ corrections, reissued });
}
