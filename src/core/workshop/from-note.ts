/**
 * A bench note as an entry of the deck: a seat, a plate, a step or a reading. What the note has goes into the fields
 * it belongs to; what it does not say stays open, and the checks name it.
 */
import type { End } from '../unit/record.ts';
import { type DeckDraft, type Edit, freshId } from './draft.ts';
import { figureFrom } from './finish.ts';
import { stepIdFrom } from './steps.ts';

export interface BenchNote {
  readonly part: string;
  readonly seenFrom: End | null;
  readonly text: string;
  readonly thickness: { readonly value: string; readonly unit: string };
}

export const NOTE_TARGETS = ['seat', 'plate', 'step', 'reading'] as const;
export type NoteTarget = (typeof NOTE_TARGETS)[number];

export interface MadeEntry {
  readonly edit: Edit;
  /** List and id: "seats:T3", "stacks/B1:steel-1". What evidence is found by. */
  readonly record: string;
}

const measured = ({ thickness: { value, unit } }: BenchNote) =>
  value.trim() === '' ? undefined : { value: figureFrom(value), unit };

const words = ({ part, text }: BenchNote) =>
  [part.trim(), text.trim()].filter((one) => one !== '').join(': ');

function seatFrom(draft: DeckDraft, note: BenchNote): MadeEntry {
  const seats = draft.seats ?? [];
  const id = freshId(
    'T',
    seats.map((seat) => seat.id),
  );
  const places = seats.map(({ place }) => Number(place)).filter(Number.isInteger);
  // Face A looks to the front until it is said what the faces touch, as in a seat that is tapped in.
  const seen = note.seenFrom === 'rear' ? 'B' : 'A';
  const thickness = measured(note);
  const value = {
    id,
    ...(note.part.trim() !== '' && { name: note.part.trim() }),
    place: Math.max(0, ...places) + 1,
    ...(note.seenFrom && { viewedFrom: note.seenFrom }),
    faces: note.text.trim() === '' ? {} : { [seen]: { mark: note.text.trim() } },
    ...(thickness && { size: { thickness } }),
  };
  return { edit: { kind: 'insert', at: ['seats'], value }, record: `seats:${id}` };
}

function plateFrom(draft: DeckDraft, note: BenchNote, within: string): MadeEntry | null {
  const stacks = draft.stacks ?? [];
  const stack = stacks.findIndex(({ id }) => id === within);
  if (stack < 0) return null;
  const id = freshId(
    'plate-',
    (stacks[stack]!.items ?? []).map((item) => item.id),
  );
  const thickness = measured(note);
  const value = {
    id,
    ...(note.part.trim() !== '' && { name: note.part.trim() }),
    ...(thickness && { thickness }),
    ...(note.text.trim() !== '' && { note: note.text.trim() }),
  };
  return {
    edit: { kind: 'insert', at: ['stacks', stack, 'items'], value },
    record: `stacks/${within}:${id}`,
  };
}

function stepFrom(draft: DeckDraft, note: BenchNote, within: string): MadeEntry {
  const sequences = draft.sequences ?? [];
  const known = sequences.findIndex(({ id }) => id === within);
  const holder =
    known >= 0
      ? within
      : freshId(
          'strip-',
          sequences.map(({ id }) => id),
        );
  const steps = known >= 0 ? (sequences[known]!.steps ?? []) : [];
  const text = words(note);
  const id = stepIdFrom(
    text,
    steps.map((step) => step.id ?? ''),
  );
  const step = { id, text };
  const edit: Edit =
    known >= 0
      ? { kind: 'insert', at: ['sequences', known, 'steps'], value: step }
      : { kind: 'insert', at: ['sequences'], value: { id: holder, steps: [step] } };
  return { edit, record: `sequences/${holder}:${id}` };
}

function readingFrom(draft: DeckDraft, note: BenchNote, within: string): MadeEntry | null {
  const fits = draft.fits ?? [];
  const fit = fits.findIndex(({ id }) => id === within);
  if (fit < 0) return null;
  const id = freshId(
    'bench-',
    (fits[fit]!.readings ?? []).map((reading) => reading.id),
  );
  const play = measured(note);
  const value = { id, ...(play && { play }), ...(words(note) !== '' && { note: words(note) }) };
  return { edit: { kind: 'insert', at: ['fits', fit, 'readings'], value }, record: `fits/${within}:${id}` };
}

/** `within` is the pack of a plate, the fit of a reading, the work of a step (a new one when it is not there). */
export function entryFromNote(
  draft: DeckDraft,
  note: BenchNote,
  target: NoteTarget,
  within: string,
): MadeEntry | null {
  switch (target) {
    case 'seat':
      return seatFrom(draft, note);
    case 'plate':
      return plateFrom(draft, note, within);
    case 'step':
      return stepFrom(draft, note, within);
    case 'reading':
      return readingFrom(draft, note, within);
  }
}
