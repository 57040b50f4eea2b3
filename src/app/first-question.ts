/**
 * The question of the drill under way, made with as little as can be: a look into the database, and what was kept
 * there of the question or else one family; no log, no schemas. Where that does not suffice the page opens the
 * usual way (open-practice.ts).
 */
import type { Drill } from '../core/memory/drill.ts';
import type { Unit } from '../core/unit/unit.ts';
import { type Asked, askedIn } from '../screens/drill/asked.ts';
import { loadDrawings } from '../screens/drill/DrawingLater.tsx';
import type { Services } from '../screens/services.ts';
import type { Peeked } from '../storage/peek.ts';
import type { Store } from '../storage/store.ts';
import type { Say } from '../words/words.ts';

export interface FirstQuestion {
  /** Whose drill it is. */
  readonly store: Store;
  readonly say: Say;
  /** Left out where the question is shown without it. */
  readonly unit?: Unit;
  readonly drill: Drill;
  readonly asked: Asked;
}

export async function firstQuestion(
  services: Services,
  { drill: under, atHand, deckText }: Peeked,
): Promise<FirstQuestion | undefined> {
  const { store } = services;
  const kept = atHand && { question: atHand.question };
  if (deckText === undefined)
    return kept && { store, say: services.sayKept(atHand), drill: under, asked: kept };
  const unit = services.unitOf(deckText);
  if (unit.deck.revision !== under.revision) return undefined;
  if (kept) await loadDrawings();
  const { drill, asked } = kept ? { drill: under, asked: kept } : await askedIn(services, unit, under);
  return asked
    ? { store, say: atHand ? services.sayKept(atHand) : services.sayFor(unit), unit, drill, asked }
    : undefined;
}
