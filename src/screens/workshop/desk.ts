/** What every section of the workshop works with: the draft, how it is changed, and what the checks say of it. */
import type { DraftCheck } from '../../content/draft.ts';
import type { DeckDraft, Edit, Place } from '../../core/workshop/draft.ts';
import type { StoredNote } from '../../storage/workshop.ts';
import type { Say } from '../../words/words.ts';

export interface Desk {
  readonly draft: DeckDraft;
  /** The draft as it stood a moment ago: what is drawn and checked, so that typing never waits for it. */
  readonly settled: DeckDraft;
  /** Of `settled`. */
  readonly check: DraftCheck;
  /** Changes with the same run, one after the other, are one step back. */
  edit(edit: Edit, run?: string): void;
  /** The whole draft anew, as one step or as part of a run. */
  replace(draft: DeckDraft, run?: string): void;
  /** What comes next is a step of its own. */
  endRun(): void;
  readonly say: Say;
  /** Who writes, for "verified by"; empty until somebody is named. */
  readonly writer: string;
  nameWriter(name: string): void;
  /** YYYY-MM-DD. */
  readonly today: string;
  /** Id of the draft on this device. */
  readonly draftId: string;
  /** Bench notes of this device, earliest first. */
  readonly notes: readonly StoredNote[];
  notesChanged(): void;
  /** The record that somebody came for: it stands open. */
  readonly focus: Place | null;
}

export interface SectionProps {
  readonly desk: Desk;
}
