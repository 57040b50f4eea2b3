/** Bench notes at the desk: each becomes a seat, a plate, a step or a reading of this draft, its photo beside it. */
import { useState } from 'react';
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import { applyEdit } from '../../core/workshop/draft.ts';
import { entryFromNote, NOTE_TARGETS, type NoteTarget } from '../../core/workshop/from-note.ts';
import type { StoredNote } from '../../storage/workshop.ts';
import { useServices } from '../services.ts';
import type { SectionProps } from './desk.ts';
import { ActField, type Option } from './fields.tsx';
import { NoteCard } from './NoteCard.tsx';
import { nameOptions } from './options.ts';
import { sectionOf } from './sections.ts';

export function NoteSection({ desk }: SectionProps) {
  const { store } = useServices();
  const { draft, say, notes } = desk;
  const [told, setTold] = useState<string | null>(null);
  /** Where a note can go; what needs a pack or a fit is offered once there is one. */
  const targets: Option[] = NOTE_TARGETS.flatMap((target): Option[] => {
    const within =
      target === 'plate'
        ? nameOptions(draft.stacks)
        : target === 'reading'
          ? nameOptions(draft.fits)
          : target === 'step'
            ? [...nameOptions(draft.sequences), { value: '', label: say(phrase('bench.new-work')) }]
            : [{ value: '', label: '' }];
    return within.map(({ value, label }) => ({
      value: `${target}/${value}`,
      label: say(phrase(`bench.as.${target}`, { within: label })),
    }));
  });
  const use = async (note: StoredNote, choice: string) => {
    const [target, within = ''] = choice.split('/');
    const made = entryFromNote(draft, note, target as NoteTarget, within);
    if (!made) return;
    desk.replace(applyEdit(draft, made.edit));
    await store.workshop.keepNote({ ...note, usedIn: { draft: desk.draftId, record: made.record } });
    setTold(
      say(
        phrase('bench.used', {
          part: note.part || say(phrase('bench.unnamed')),
          section: phrase(`workshop.section.${sectionOf(`/${made.record.split(/[/:]/)[0]}`)}`),
        }),
      ),
    );
    desk.notesChanged();
  };
  const open = notes.filter(({ usedIn }) => usedIn === null);
  const used = notes.filter(({ usedIn }) => usedIn?.draft === desk.draftId);
  return (
    <>
      <p className="aside">{say(phrase('bench.section-hint'))}</p>
      <Link href="/workshop/bench" className="button plain">
        {say(phrase('bench.link'))}
      </Link>
      <p role="status">{told ?? say(phrase('bench.open', { count: open.length }))}</p>
      {open.map((note) => (
        <NoteCard key={note.id} note={note} say={say}>
          <ActField
            label={say(phrase('bench.make-it'))}
            none={say(phrase('workshop.pick'))}
            options={targets}
            onPick={(choice) => choice !== '' && void use(note, choice)}
          />
        </NoteCard>
      ))}
      {used.length > 0 && (
        <details>
          <summary>{say(phrase('bench.in-here', { count: used.length }))}</summary>
          {used.map((note) => (
            <NoteCard key={note.id} note={note} say={say} />
          ))}
        </details>
      )}
    </>
  );
}
