/** A bench note as it was taken. */
import type { ReactNode } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { StoredNote } from '../../storage/workshop.ts';
import type { Say } from '../../words/words.ts';
import { Photo } from './Photo.tsx';

interface Props {
  readonly note: StoredNote;
  readonly say: Say;
  readonly children?: ReactNode;
}

export function NoteCard({ note, say, children }: Props) {
  const { part, seenFrom, text, thickness, photo, unit } = note;
  const told = [
    seenFrom && say(phrase('bench.was-seen-from', { end: phrase(`bench.end.${seenFrom}`) })),
    text,
    thickness.value && `${thickness.value} ${thickness.unit}`,
    unit,
  ].filter(Boolean);
  return (
    <section className="frame" aria-label={part || say(phrase('bench.unnamed'))}>
      <h3>{part || say(phrase('bench.unnamed'))}</h3>
      <p>{told.join('; ')}</p>
      {photo && <Photo photo={photo} alt={say(phrase('bench.photo-of', { part }))} />}
      {children}
    </section>
  );
}
