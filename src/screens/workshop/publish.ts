/**
 * Puts a written deck among the decks on the device, as a revision of its own. What was handed out stays as it was:
 * a change makes the next number. The deck passes the same door as a file (src/content/load.ts).
 */
import { loadDeck } from '../../content/load.ts';
import { differencesBetween } from '../../core/deck-merge/differences.ts';
import { pass, type Result } from '../../core/result.ts';
import type { Deck } from '../../core/unit/deck.ts';
import { type DeckDraft, freshId } from '../../core/workshop/draft.ts';
import { finishDraft, writeDeck } from '../../core/workshop/finish.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Services } from '../services.ts';

export interface Known {
  readonly revision: number;
  readonly text: string;
}

/** The next revision, or the last one when nothing has changed since. */
export function revisionFor(
  draft: DeckDraft,
  known: readonly Known[],
): { readonly revision: number; readonly changed: boolean } {
  const last = known.toSorted((a, b) => b.revision - a.revision)[0];
  const typed = Number(draft.revision ?? 1);
  const own = Number.isInteger(typed) && typed > 0 ? typed : 1;
  if (!last) return { revision: own, changed: true };
  // Both are decks but for what the checks may say of them: as plain data they can be compared.
  const changed = differencesBetween(deckIn(last.text), finishDraft(draft) as unknown as Deck).length > 0;
  return { revision: changed ? Math.max(own, last.revision + 1) : last.revision, changed };
}

/** The deck of a stored file, without what is for editors. */
export function deckIn(text: string): Deck {
  const { $schema: _, ...deck } = JSON.parse(text) as Deck & { $schema?: unknown };
  return deck;
}

/** Revisions of a deck that are on this device: those that were kept, and the one that is practised. */
export async function knownRevisions(
  { store }: Services,
  id: string,
): Promise<Result<Known[], StoreTrouble>> {
  const [kept, decks] = await Promise.all([store.classroom.revisionsOf(id), store.decks()]);
  if (!kept.ok) return kept;
  if (!decks.ok) return decks;
  const stored = decks.value.filter((deck) => deck.id === id);
  return pass([
    ...kept.value.map(({ revision, text }) => ({ revision, text })),
    ...stored
      .filter(({ revision }) => !kept.value.some((other) => other.revision === revision))
      .map(({ revision, text }) => ({ revision, text })),
  ]);
}

export type Published =
  | { readonly kind: 'refused' }
  | { readonly kind: 'published'; readonly deck: Deck; readonly draft: DeckDraft; readonly changed: boolean };

/** A deck that never had an id gets one that no other deck on the device has. */
async function named(services: Services, draft: DeckDraft): Promise<Result<DeckDraft, StoreTrouble>> {
  const { id, title } = finishDraft(draft);
  if (draft.id || typeof id !== 'string') return pass(draft);
  const decks = await services.store.decks();
  if (!decks.ok) return decks;
  const taken = decks.value.map((deck) => deck.id);
  return pass({
    ...draft,
    id: taken.includes(id) ? freshId(`${id}-`, [`${id}-1`, ...taken]) : id,
    title: String(title),
  });
}

export async function publish(
  services: Services,
  draft: DeckDraft,
): Promise<Result<Published, StoreTrouble>> {
  const { store, now } = services;
  const own = await named(services, draft);
  if (!own.ok) return own;
  const known = await knownRevisions(services, String(own.value.id ?? ''));
  if (!known.ok) return known;
  const { revision, changed } = revisionFor(own.value, known.value);
  const finished: DeckDraft = { ...own.value, revision };
  const text = writeDeck(finishDraft(finished));
  const loaded = loadDeck(text);
  if (!loaded.ok) return pass({ kind: 'refused' });
  const { deck } = loaded.value;
  if (changed) {
    const at = now().at;
    // The revision before is kept as well, so that it can be compared and a disputed question opened again.
    for (const before of known.value) {
      const kept = await store.classroom.keepRevision({ deck: deck.id, ...before, savedAt: at });
      if (!kept.ok) return kept;
    }
    const kept = await store.classroom.keepRevision({ deck: deck.id, revision, text, savedAt: at });
    if (!kept.ok) return kept;
    const saved = await store.saveDeck({ id: deck.id, revision, text, loadedAt: at });
    if (!saved.ok) return saved;
  }
  return pass({ kind: 'published', deck, draft: finished, changed });
}
