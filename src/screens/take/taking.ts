/** What taking an assignment means on this device: which deck it is practised from, and what is kept. */
import { type Assignment, assignedFacts } from '../../core/assign/assignment.ts';
import { type Notice, noticesFor } from '../../core/assign/corrections.ts';
import { daysToClass, dueDay } from '../../core/assign/due.ts';
import { dateOfDay } from '../../core/memory/day.ts';
import { factsOf } from '../../core/questions/facts.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { fail, pass, type Result } from '../../core/result.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { type Received, writeAssignment } from '../../exchange/message.ts';
import type { StoredDeck } from '../../storage/rows.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Services } from '../services.ts';

export type ReceivedAssignment = Extract<Received, { kind: 'assignment' }>;

/** Why it cannot be taken: a sentence, and the findings of a deck that does not pass. */
export interface NotTaken {
  readonly why: Phrase;
  readonly findings: readonly Phrase[];
}

export interface Offer {
  readonly assignment: Assignment;
  readonly unit: Unit;
  /** The deck to be stored; null where the one on the device stays. */
  readonly deckText: string | null;
  /** Revision of the one on the device where that is later than the one that came. */
  readonly laterHere: number | null;
  readonly asked: number;
  readonly missing: number;
  /** Whole days by the learner's calendar; below 0 once it is over. */
  readonly days: number;
}

const notTaken = (why: Phrase, findings: readonly Phrase[] = []) => fail({ why, findings });

async function deckFor(
  services: Services,
  { assignment, deckText }: ReceivedAssignment,
  here: StoredDeck | undefined,
): Promise<Result<Pick<Offer, 'unit' | 'deckText' | 'laterHere'>, NotTaken>> {
  const { id, revision } = assignment.deck;
  const fromHere = (laterHere: number | null) =>
    pass({ unit: services.unitOf(here!.text), deckText: null, laterHere });
  if (deckText === null) {
    if (!here) return notTaken(phrase('take.no-deck', { deck: id, revision }));
    if (here.revision < revision)
      return notTaken(phrase('take.older-deck', { here: here.revision, revision }));
    return fromHere(null);
  }
  // Checking a deck is rare on a phone, so its code is only loaded here.
  const { loadDeck, sentenceOf } = await import('../../content/index.ts');
  const loaded = loadDeck(deckText);
  if (!loaded.ok)
    return notTaken(
      phrase('take.deck-refused', { count: loaded.error.length }),
      loaded.error.map(sentenceOf),
    );
  const { deck, unit } = loaded.value;
  if (deck.id !== id || deck.revision !== revision) return notTaken(phrase('take.other-deck'));
  return here && here.revision > revision
    ? fromHere(here.revision)
    : pass({ unit, deckText, laterHere: null });
}

/** What taking it would mean; nothing is stored. */
export async function offerOf(
  services: Services,
  received: ReceivedAssignment,
): Promise<Result<Offer, NotTaken>> {
  const decks = await services.store.decks();
  if (!decks.ok) return notTaken(phrase(`storage.${decks.error.code}`, { detail: decks.error.detail }));
  const here = decks.value.find(({ id }) => id === received.assignment.deck.id);
  const deck = await deckFor(services, received, here);
  if (!deck.ok) return deck;
  const { facts, missing } = assignedFacts(received.assignment, factsOf(deck.value.unit));
  return pass({
    ...deck.value,
    assignment: received.assignment,
    asked: facts.length,
    missing: missing.length,
    days: daysToClass(received.assignment.classAt, services.now()),
  });
}

export interface Taken {
  /** A later issue was here already, and counts. */
  readonly laterIssue: boolean;
  readonly notices: readonly Notice[];
}

/** Stores deck, assignment and corrections, and sets class date and minutes. */
export async function takeOffer(
  { store, now }: Services,
  { assignment, unit, deckText }: Offer,
): Promise<Result<Taken, StoreTrouble>> {
  const { classroom } = store;
  const { at, zone } = now();
  const { deck } = unit;
  const known = await classroom.correctionsOf(deck.id);
  if (!known.ok) return known;
  const fresh = assignment.corrections.filter(({ id }) => known.value.every((one) => one.id !== id));
  const log = await store.attemptsOf(deck.id);
  if (!log.ok) return log;
  const stored = await classroom.assignments();
  if (!stored.ok) return stored;
  const here = stored.value.find(({ id }) => id === assignment.id);
  const laterIssue = here !== undefined && here.issue > assignment.issue;
  const { id, issue, madeAt, minutes, classAt } = assignment;
  const text = writeAssignment(assignment, null);
  const kept = await store.takeIn({
    deckId: deck.id,
    deck: deckText === null ? null : { id: deck.id, revision: deck.revision, text: deckText, loadedAt: at },
    // Whoever made it here keeps it as his own, names and all.
    assignment:
      here?.role === 'made'
        ? null
        : { id, issue, madeAt, deck: deck.id, role: 'taken', text, roster: [], savedAt: at },
    corrections: assignment.corrections,
    practice: laterIssue ? null : { classDate: dateOfDay(dueDay(classAt, zone)), minutes },
  });
  if (!kept.ok) return kept;
  return pass({ laterIssue, notices: noticesFor(log.value.attempts, fresh) });
}
