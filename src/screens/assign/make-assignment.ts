/**
 * Makes an assignment, or the next issue of one, and keeps it: with the revision of the deck it is on, and with
 * the correction between that and the revision it was handed out with before.
 */
import type { Assignment } from '../../core/assign/assignment.ts';
import { type Correction, correctionBetween } from '../../core/assign/corrections.ts';
import { pass, type Result } from '../../core/result.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { writeAssignment } from '../../exchange/message.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Services } from '../services.ts';
import { type AssignFields, type readFields, rosterOf } from './fields.ts';

type Read = Extract<ReturnType<typeof readFields>, { ok: true }>['value'];

export interface MakeRequest {
  readonly services: Services;
  readonly unit: Unit;
  readonly deckText: string;
  readonly fields: AssignFields;
  readonly read: Read;
  /** The issue before, when it is handed out again. */
  readonly last: Assignment | null;
  /** The correction since the issue before is kept already. */
  readonly corrected?: boolean;
}

export type Made =
  | { readonly kind: 'other-text' }
  | {
      readonly kind: 'made';
      readonly assignment: Assignment;
      /** The message to hand over. */
      readonly text: string;
      /** The correction it carries new; null where the revision is the same or nothing comes out otherwise. */
      readonly correction: Correction | null;
      readonly compared: boolean;
    };

async function correctionOf({ services, unit, fields, last, corrected = false }: MakeRequest) {
  const { deck } = unit;
  if (!last || corrected || last.deck.revision >= deck.revision)
    return pass({ correction: null, compared: false });
  const revisions = await services.store.classroom.revisionsOf(deck.id);
  if (!revisions.ok) return revisions;
  const before = revisions.value.find(({ revision }) => revision === last.deck.revision);
  if (!before) return pass({ correction: null, compared: false });
  const said = { id: services.newId(), note: fields.wrong.trim().slice(0, 2000), at: services.now().at };
  const correction = correctionBetween(services.unitOf(before.text), unit, said);
  return pass({ correction: correction.facts.length > 0 ? correction : null, compared: true });
}

export async function makeAssignment(request: MakeRequest): Promise<Result<Made, StoreTrouble>> {
  const { services, unit, deckText, fields, read, last } = request;
  const { classroom } = services.store;
  const { id: deck, revision } = unit.deck;
  const { at } = services.now();
  const corrected = await correctionOf(request);
  if (!corrected.ok) return corrected;
  const { correction, compared } = corrected.value;
  const kept = await classroom.keepRevision({ deck, revision, text: deckText, savedAt: at });
  if (!kept.ok) return kept;
  if (!kept.value) return pass({ kind: 'other-text' });
  if (correction) {
    const keptCorrection = await classroom.keepCorrections([correction]);
    if (!keptCorrection.ok) return keptCorrection;
  }
  const corrections = await classroom.correctionsOf(deck);
  if (!corrections.ok) return corrections;
  const assignment: Assignment = {
    ...read,
    id: last?.id ?? services.newId(),
    issue: (last?.issue ?? 0) + 1,
    deck: { id: deck, revision },
    corrections: corrections.value,
    madeAt: at,
  };
  const text = writeAssignment(assignment, fields.withDeck ? deckText : null);
  const saved = await classroom.saveAssignment({
    id: assignment.id,
    issue: assignment.issue,
    madeAt: at,
    deck,
    role: 'made',
    text,
    roster: rosterOf(fields),
    savedAt: at,
  });
  return saved.ok ? pass({ kind: 'made', assignment, text, correction, compared }) : saved;
}
