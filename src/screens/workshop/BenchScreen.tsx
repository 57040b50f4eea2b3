/**
 * Bench notes: one thing at a time while a unit comes apart, on the phone, with oily gloves. Each letter and each photo
 * is kept at once, with no network. What becomes of them is decided later at the desk (NoteSection.tsx).
 */
import { type ChangeEvent, useEffect, useId, useRef, useState } from 'react';
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import { ENDS, LENGTH_UNITS } from '../../core/unit/record.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { StoredNote } from '../../storage/workshop.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { NoteCard } from './NoteCard.tsx';
import { Photo } from './Photo.tsx';
import { shrunkPhoto } from './shrink.ts';
import { canListen, listen } from './speech.ts';

type Keep = (note: StoredNote) => void;

/** Keeps notes one after the other; of several states of one note only the newest waits. */
function useKeeping(onKept: () => void) {
  const { store } = useServices();
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const waiting = useRef(new Map<string, StoredNote>());
  const busy = useRef(false);
  const keep: Keep = (note) => {
    waiting.current.set(note.id, note);
    if (busy.current) return;
    busy.current = true;
    void (async () => {
      for (const [id, next] of waiting.current) {
        waiting.current.delete(id);
        const kept = await store.workshop.keepNote(next);
        setTrouble(kept.ok ? null : kept.error);
      }
      busy.current = false;
      onKept();
    })();
  };
  return { keep, trouble };
}

function Dictate({ say, onWords }: { say: Say; onWords: (words: string) => void }) {
  const { language } = useServices();
  const [can, setCan] = useState(false);
  const [stop, setStop] = useState<(() => void) | null>(null);
  useEffect(() => {
    void canListen(language).then(setCan);
  }, [language]);
  if (!can) return <p className="aside">{say(phrase('bench.keyboard-speech'))}</p>;
  const toggle = () => {
    if (stop) return stop();
    const end = listen(language, onWords, () => setStop(null));
    setStop(() => end);
  };
  return (
    <button type="button" className="button plain" aria-pressed={stop !== null} onClick={toggle}>
      {say(phrase(stop ? 'bench.stop' : 'bench.speak'))}
    </button>
  );
}

function NoteForm({ note, say, onChange }: { note: StoredNote; say: Say; onChange: Keep }) {
  const [unit, part, text, thickness, from] = [useId(), useId(), useId(), useId(), useId()];
  const [refused, setRefused] = useState(false);
  const photo = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const [file] = target.files ?? [];
    if (!file) return;
    const shrunk = await shrunkPhoto(file);
    target.value = '';
    setRefused(shrunk === null);
    if (shrunk) onChange({ ...note, photo: shrunk });
  };
  return (
    <div className="frame bench-form">
      <div className="field">
        <label htmlFor={part}>{say(phrase('bench.part'))}</label>
        <input
          id={part}
          type="text"
          autoComplete="off"
          value={note.part}
          onChange={({ target }) => onChange({ ...note, part: target.value })}
        />
      </div>
      <fieldset className="answer">
        <legend>{say(phrase('bench.seen-from'))}</legend>
        <div className="choices">
          {ENDS.map((end) => (
            <label key={end} className="choice">
              <input
                type="radio"
                name={from}
                checked={note.seenFrom === end}
                onChange={() => onChange({ ...note, seenFrom: end })}
              />
              <span>{say(phrase(`bench.end.${end}`))}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <div className="field">
        <label htmlFor={text}>{say(phrase('bench.text'))}</label>
        <textarea
          id={text}
          rows={3}
          value={note.text}
          onChange={({ target }) => onChange({ ...note, text: target.value })}
        />
      </div>
      <Dictate
        say={say}
        onWords={(words) => onChange({ ...note, text: [note.text, words].filter(Boolean).join(' ') })}
      />
      <div className="field">
        <label htmlFor={thickness}>{say(phrase('bench.thickness'))}</label>
        <div className="amount">
          <input
            id={thickness}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={note.thickness.value}
            onChange={({ target }) =>
              onChange({ ...note, thickness: { ...note.thickness, value: target.value.slice(0, 40) } })
            }
          />
          <select
            aria-label={say(phrase('workshop.unit-of', { what: phrase('bench.thickness') }))}
            value={note.thickness.unit}
            onChange={({ target }) =>
              onChange({ ...note, thickness: { ...note.thickness, unit: target.value } })
            }
          >
            {LENGTH_UNITS.map((symbol) => (
              <option key={symbol} value={symbol}>
                {symbol}
              </option>
            ))}
          </select>
        </div>
      </div>
      <label className="button file-button">
        {say(phrase(note.photo ? 'bench.other-photo' : 'bench.photo'))}
        <input
          type="file"
          accept="image/*"
          capture="environment"
          className="unseen"
          onChange={(event) => void photo(event)}
        />
      </label>
      <p className="aside">{say(phrase('bench.photo-hint'))}</p>
      {refused && (
        <p className="note" role="alert">
          {say(phrase('bench.no-picture'))}
        </p>
      )}
      {note.photo && <Photo photo={note.photo} alt={say(phrase('bench.photo-of', { part: note.part }))} />}
      <div className="field">
        <label htmlFor={unit}>{say(phrase('bench.unit'))}</label>
        <input
          id={unit}
          type="text"
          autoComplete="off"
          value={note.unit}
          onChange={({ target }) => onChange({ ...note, unit: target.value })}
        />
      </div>
    </div>
  );
}

export function BenchScreen() {
  const { store, now, newId, sayFor } = useServices();
  const say = sayFor(null);
  const [version, setVersion] = useState(0);
  const again = () => setVersion((before) => before + 1);
  const { keep, trouble } = useKeeping(again);
  const [note, setNote] = useState<StoredNote | null>(null);
  const loaded = useLoaded(() => store.workshop.notes(), String(version));
  const kept = useRef<readonly StoredNote[]>([]);
  if (loaded?.ok) kept.current = loaded.value;
  const notes = kept.current;
  const last = notes.at(-1);
  const begin = () =>
    setNote({
      id: newId(),
      unit: note?.unit ?? last?.unit ?? '',
      part: '',
      // Whoever looked from the rear a moment ago still stands there.
      seenFrom: note?.seenFrom ?? last?.seenFrom ?? null,
      text: '',
      thickness: { value: '', unit: note?.thickness.unit ?? last?.thickness.unit ?? 'mm' },
      photo: null,
      usedIn: null,
      madeAt: now().at,
    });
  const change: Keep = (next) => {
    setNote(next);
    keep(next);
  };
  const remove = async (id: string) => {
    await store.workshop.removeNote(id);
    if (note?.id === id) setNote(null);
    again();
  };
  const saved = note !== null && notes.some(({ id }) => id === note.id);
  return (
    <Sheet
      className="workshop"
      top={
        <>
          <h1>{say(phrase('bench.heading'))}</h1>
          <Link href="/workshop">{say(phrase('app.back'))}</Link>
        </>
      }
    >
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {loaded && !loaded.ok && <TroubleNote trouble={loaded.error} say={say} />}
      {note === null ? (
        <p>{say(phrase('bench.intro'))}</p>
      ) : (
        <>
          <NoteForm key={note.id} note={note} say={say} onChange={change} />
          <p className="aside" role="status">
            {saved ? say(phrase('workshop.kept')) : ''}
          </p>
        </>
      )}
      <button type="button" className="button key" onClick={begin}>
        {say(phrase(note === null ? 'bench.new' : 'bench.next'))}
      </button>
      {notes.length > 0 && (
        <>
          <h2>{say(phrase('bench.kept', { count: notes.length }))}</h2>
          {notes.toReversed().map((one) =>
            one.id === note?.id ? null : (
              <NoteCard key={one.id} note={one} say={say}>
                <div className="row-of-buttons">
                  <button type="button" className="button plain" onClick={() => setNote(one)}>
                    {say(phrase('bench.change'))}
                    <span className="unseen"> {one.part}</span>
                  </button>
                  <button type="button" className="button plain" onClick={() => void remove(one.id)}>
                    {say(phrase('workshop.remove'))}
                    <span className="unseen"> {one.part}</span>
                  </button>
                </div>
              </NoteCard>
            ),
          )}
        </>
      )}
    </Sheet>
  );
}
