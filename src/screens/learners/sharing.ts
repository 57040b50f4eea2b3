/** Who is at this device, for screens that tell of it. src/app gives the real one; without it a page has one learner. */
import { createContext, useContext } from 'react';
import type { KnownLearner, Listing, Registry } from '../../storage/learners/registry.ts';

export interface Sharing {
  /** The one who is in; null at the names, and where nobody is named. */
  readonly learner: KnownLearner | null;
  /** Null where no name was ever kept. */
  readonly listing: Listing | null;
  /** Loaded when it is first asked for. */
  registry(): Promise<Registry>;
  /** From now on this tab is that learner's. */
  enter(id: string): void;
  /** Back to the names. */
  leave(): void;
}

const SharingContext = createContext<Sharing | null>(null);

export const SharingProvider = SharingContext.Provider;

export const useSharing = (): Sharing | null => useContext(SharingContext);

/** Whether somebody has to say who he is: one learner without a PIN need not. */
export const asksWho = ({ learners, unreadable }: Listing): boolean =>
  learners.length > 1 || unreadable > 0 || learners.some(({ hasPin }) => hasPin);
