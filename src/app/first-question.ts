/**
 * The question of the drill under way, made with as little as can be: a look into the database, one family, no
 * log, no schemas. Where that does not suffice the page opens the usual way (open-practice.ts).
 */
import type { Drill } from '../core/memory/drill.ts';
import type { Unit } from '../core/unit/unit.ts';
import { type Asked, askedIn } from '../screens/drill/asked.ts';
import type { Services } from '../screens/services.ts';
import type { Peeked } from '../storage/peek.ts';
import type { Store } from '../storage/store.ts';

export interface FirstQuestion {
  /** Whose drill it is. */
  readonly store: Store;
  readonly unit: Unit;
  readonly drill: Drill;
  readonly asked: Asked;
}

export async function firstQuestion(services: Services, peeked: Peeked): Promise<FirstQuestion | undefined> {
  const unit = services.unitOf(peeked.deckText);
  if (unit.deck.revision !== peeked.drill.revision) return undefined;
  const { drill, asked } = await askedIn(services, unit, peeked.drill);
  return asked ? { store: services.store, unit, drill, asked } : undefined;
}
