/**
 * Opens what practice stands on: the chosen deck solved, its log folded, its settings, the drill under way. On a new
 * device the demo decks are put into the store first.
 */
import type { Assignment } from '../core/assign/assignment.ts';
import type { Drill } from '../core/memory/drill.ts';
import { pass, type Result } from '../core/result.ts';
import { askedIn } from '../screens/drill/asked.ts';
import type { Services } from '../screens/services.ts';
import type { StoreTrouble } from '../storage/trouble.ts';
import type { Opened } from './App.tsx';
import { demoDecks } from './demo-decks.ts';

/** Undefined when there is no deck on the device. */
export async function openPractice(services: Services): Promise<Result<Opened | undefined, StoreTrouble>> {
  const { store } = services;
  const [decks, chosen, drill] = await Promise.all([store.decks(), store.chosenDeck(), store.currentDrill()]);
  if (!decks.ok) return decks;
  if (!chosen.ok) return chosen;
  if (!drill.ok) return drill;
  if (decks.value.length === 0 && chosen.value === undefined) {
    const first = await putDemoDecks(services);
    return first.ok ? openPractice(services) : first;
  }
  const stored = decks.value.find((deck) => deck.id === chosen.value) ?? decks.value[0];
  if (!stored) return pass(undefined);
  const [ledger, practice] = await Promise.all([store.ledgerOf(stored.id), store.practiceOf(stored.id)]);
  if (!ledger.ok) return ledger;
  if (!practice.ok) return practice;
  const assignment = await assignmentOf(services, stored.id);
  if (!assignment.ok) return assignment;
  const unit = services.unitOf(stored.text);
  return pass({
    unit,
    ledger: ledger.value,
    assignment: assignment.value,
    practice: practice.value,
    ...(await drillOn(services, unit, drill.value)),
  });
}

/** The assignment on this deck that was taken in last. */
async function assignmentOf(
  { store }: Services,
  deck: string,
): Promise<Result<Assignment | undefined, StoreTrouble>> {
  const stored = await store.classroom.assignments();
  if (!stored.ok) return stored;
  const taken = stored.value.find((row) => row.role === 'taken' && row.deck === deck);
  if (!taken) return pass(undefined);
  // Most devices have none: what reads messages is loaded only where there is one.
  const { readMessage } = await import('../exchange/message.ts');
  const read = await readMessage(taken.text);
  return pass(read.ok && read.value.kind === 'assignment' ? read.value.assignment : undefined);
}

/** A drill of another deck or revision is not gone on with; questions that this version cannot make are left out. */
async function drillOn(
  services: Services,
  unit: Opened['unit'],
  drill: Drill | undefined,
): Promise<Pick<Opened, 'drill' | 'asked'>> {
  const { id, revision } = unit.deck;
  if (drill?.deck !== id || drill.revision !== revision) return { drill: undefined, asked: null };
  return askedIn(services, unit, drill);
}

/** The first demo deck is the chosen one. */
async function putDemoDecks({ store, now }: Services): Promise<Result<void, StoreTrouble>> {
  const decks = await demoDecks();
  for (const deck of decks) {
    const saved = await store.saveDeck({ ...deck, loadedAt: now().at });
    if (!saved.ok) return saved;
  }
  return store.chooseDeck(decks[0]!.id);
}
