/** What the board of one assignment stands on: its deck in every revision that was handed out, digests, flags. */
import { type Assignment, assignedFacts } from '../../core/assign/assignment.ts';
import type { Correction } from '../../core/assign/corrections.ts';
import { dueDay } from '../../core/assign/due.ts';
import type { Flag } from '../../core/assign/report.ts';
import { type Board, openBoard } from '../../core/group/board.ts';
import type { LearnerDigest } from '../../core/group/digest.ts';
import { type Fact, factsOf } from '../../core/questions/facts.ts';
import { pass, type Result } from '../../core/result.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { type OpenedAssignment, openAssignments } from '../handing/assignments.ts';
import type { Services } from '../services.ts';
import { freshDigests } from './digests.ts';

export interface OpenedGroup {
  readonly assignment: Assignment;
  readonly roster: readonly string[];
  /** The deck as it is now on this device. */
  readonly unit: Unit;
  /** The assigned facts of it. */
  readonly facts: readonly Fact[];
  readonly corrections: readonly Correction[];
  readonly digests: readonly LearnerDigest[];
  readonly flags: readonly Flag[];
  readonly board: Board;
}

/** Units of the deck by revision; the one on the device stands for a revision that is not known. */
async function unitsOf(services: Services, deck: string) {
  const { store } = services;
  const [decks, revisions] = await Promise.all([store.decks(), store.classroom.revisionsOf(deck)]);
  if (!decks.ok) return decks;
  if (!revisions.ok) return revisions;
  const texts = new Map(revisions.value.map(({ revision, text }) => [revision, text]));
  const here = decks.value.find(({ id }) => id === deck);
  const text = here?.text ?? revisions.value[0]?.text;
  if (text === undefined) return pass(undefined);
  const unit = services.unitOf(text);
  const unitOf = (revision: number) => {
    const known = texts.get(revision);
    return known === undefined ? unit : services.unitOf(known);
  };
  return pass({ unit, unitOf });
}

/** Undefined when the deck is no longer on this device. */
export async function openGroup(
  services: Services,
  { assignment, stored }: OpenedAssignment,
): Promise<Result<OpenedGroup | undefined, StoreTrouble>> {
  const { classroom } = services.store;
  const deck = assignment.deck.id;
  const units = await unitsOf(services, deck);
  if (!units.ok) return units;
  if (!units.value) return pass(undefined);
  const { unit, unitOf } = units.value;
  const [corrections, flags] = await Promise.all([classroom.correctionsOf(deck), classroom.flagsOf(deck)]);
  if (!corrections.ok) return corrections;
  if (!flags.ok) return flags;
  const digests = await freshDigests(services, { assignment, unitOf, corrections: corrections.value });
  if (!digests.ok) return digests;
  const { facts } = assignedFacts(assignment, factsOf(unit));
  const board = openBoard({
    assignment,
    facts,
    digests: digests.value,
    today: services.now().day,
    classDay: dueDay(assignment.classAt),
    roster: stored.roster,
  });
  return pass({
    assignment,
    roster: stored.roster,
    unit,
    facts,
    corrections: corrections.value,
    digests: digests.value,
    flags: flags.value,
    board,
  });
}

/** The assignments made here, and the board of one of them: the named one, or the latest. */
export async function openGroups(services: Services, wanted: string | undefined) {
  const made = await openAssignments(services.store, 'made');
  if (!made.ok) return made;
  const chosen = made.value.find(({ stored }) => stored.id === wanted) ?? made.value[0];
  if (!chosen) return pass({ made: made.value, chosen: undefined, group: undefined });
  const group = await openGroup(services, chosen);
  return group.ok ? pass({ made: made.value, chosen, group: group.value }) : group;
}
