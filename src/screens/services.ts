/** What screens reach the world through: the store, the clock, fresh ids. src/app gives the real ones. */
import { createContext, useContext } from 'react';
import type { OutlookPart, OutlookRequest } from '../core/plan/outlook.ts';
import type { Family } from '../core/questions/question.ts';
import type { Unit } from '../core/unit/unit.ts';
import type { AtHand } from '../storage/at-hand.ts';
import type { Store } from '../storage/store.ts';
import type { Language } from '../words/speak.ts';
import type { Say } from '../words/words.ts';

export interface Moment {
  /** Milliseconds since 1970-01-01 UTC. */
  readonly at: number;
  /** Whole local days since 1970-01-01. */
  readonly day: number;
  /** IANA time zone. */
  readonly zone: string;
}

/** A newer Detent that was fetched beside the one in use. */
export interface NewVersion {
  /** Whether one waits to be taken. */
  isWaiting(): boolean;
  /** Tells of changes; gives back how to stop that. */
  subscribe(listener: () => void): () => void;
  /** False when a drill is open in some tab: then nothing was done. Else the page opens anew. */
  take(): Promise<boolean>;
}

export interface Services {
  readonly store: Store;
  now(): Moment;
  newId(): string;
  /** Names this build of the program. */
  readonly build: string;
  /** The unit of a stored deck; solved once and kept. */
  unitOf(deckText: string): Unit;
  /** A speaker with the deck's own names. */
  sayFor(unit: Unit | null): Say;
  /** Loads what a drill can say: a kept question stands on the page before. */
  loadWords(): Promise<void>;
  /** Says what was said of a kept question, and the rest with the deck's names. */
  sayKept(atHand: Pick<AtHand, 'said' | 'names'>): Say;
  readonly newVersion: NewVersion;
  readonly language: Language;
  /** Keeps the choice, and opens the page anew in that language. */
  speak(language: Language): void;
  /** Loads the family of this id and no other; undefined where there is none. */
  familyOf(id: string): Promise<Family | undefined>;
  /**
   * Plans beside the page. `tell` hears each part as it is ready, and null when no more will come: all is told,
   * another request took over, or this browser cannot. Requests of one course (deck and class) build on each
   * other.
   */
  planFor(course: string, request: OutlookRequest, tell: (part: OutlookPart | null) => void): void;
}

const ServicesContext = createContext<Services | null>(null);

export const ServicesProvider = ServicesContext.Provider;

export function useServices(): Services {
  const services = useContext(ServicesContext);
  if (!services) throw new Error('a screen outside its services');
  return services;
}
