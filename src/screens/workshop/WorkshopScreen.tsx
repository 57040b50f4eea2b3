/** Decks that are being written on this device: a new one, a copy of one that is here, or one from a file. */
import { type ChangeEvent, useState } from 'react';
import { Link, Route, Switch, useLocation } from 'wouter';
import { sentenceOf } from '../../content/finding.ts';
import { readJson, textOfFile } from '../../content/json.ts';
import { openDraft } from '../../content/open-draft.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { type DeckDraft, emptyDraft } from '../../core/workshop/draft.ts';
import { INPUT, OUTPUT } from '../../core/workshop/train.ts';
import type { StoredDeck } from '../../storage/rows.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { LOCALES } from '../../words/figures.ts';
import { fromAddress } from '../address.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { BenchScreen } from './BenchScreen.tsx';
import { DraftScreen } from './DraftScreen.tsx';
import { FixScreen } from './FixScreen.tsx';
import './workshop.css';

interface Props {
  /** Called when the decks on the device, or the choice of one, have changed. */
  readonly onChange: () => void;
}

const newDeck = (): DeckDraft => ({ ...emptyDraft(), train: { input: INPUT, output: OUTPUT } });

const draftIn = ({ text }: StoredDeck): DeckDraft => openDraft(JSON.parse(text))?.draft ?? emptyDraft();

const titleOf = ({ text }: StoredDeck) => (JSON.parse(text) as { title: string }).title;

function DraftList() {
  const { store, now, newId, sayFor, language } = useServices();
  const say = sayFor(null);
  const [, go] = useLocation();
  const [version, setVersion] = useState(0);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const [refused, setRefused] = useState<Phrase | null>(null);
  const drafts = useLoaded(() => store.workshop.drafts(), String(version));
  const decks = useLoaded(() => store.decks(), String(version));

  const begin = async (draft: DeckDraft) => {
    const id = newId();
    const kept = await store.workshop.keep({
      id,
      unit: draft.unit ?? '',
      text: JSON.stringify(draft),
      savedAt: now().at,
    });
    if (!kept.ok) return setTrouble(kept.error);
    go(`/workshop/${id}`);
  };
  /** Another unit, with an id and a history of its own. */
  const copy = (stored: StoredDeck) => {
    const { id: _, title, unit, variantOf: _of, ...deck } = draftIn(stored);
    const named = say(phrase('workshop.copy-of', { title: title ?? unit ?? '' }));
    void begin({ ...deck, unit: named, title: named, revision: 1 });
  };
  /** The same unit but for what is changed: it remembers where it comes from, and that revision is kept. */
  const vary = async (stored: StoredDeck) => {
    const { id, title, unit, revision: _, ...deck } = draftIn(stored);
    const named = (words: string | undefined) => say(phrase('variant.named', { title: words ?? '' }));
    const { revision, text } = stored;
    const kept = await store.classroom.keepRevision({ deck: stored.id, revision, text, savedAt: now().at });
    if (!kept.ok) return setTrouble(kept.error);
    await begin({
      ...deck,
      title: named(title),
      unit: named(unit),
      revision: 1,
      variantOf: { deck: id, revision },
    });
  };
  const open = async (event: ChangeEvent<HTMLInputElement>) => {
    const input = event.target;
    const [file] = input.files ?? [];
    if (!file) return;
    const json = readJson(await textOfFile(file));
    input.value = '';
    if (!json.ok) return setRefused(sentenceOf(json.error));
    const opened = openDraft(json.value.value);
    if (!opened) return setRefused(phrase('workshop.no-deck'));
    await begin(opened.draft);
  };
  const remove = async (id: string) => {
    const removed = await store.workshop.remove(id);
    setTrouble(removed.ok ? null : removed.error);
    setVersion((before) => before + 1);
  };

  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('workshop.heading'))}</h1>
          <Link href="/decks">{say(phrase('app.back'))}</Link>
        </>
      }
    >
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <p>{say(phrase('workshop.intro'))}</p>
      <div className="row-of-buttons">
        <button type="button" className="button key" onClick={() => void begin(newDeck())}>
          {say(phrase('workshop.new'))}
        </button>
        <label className="button file-button">
          {say(phrase('workshop.open'))}
          <input
            type="file"
            accept=".json,application/json"
            className="unseen"
            onChange={(event) => void open(event)}
          />
        </label>
      </div>
      <Link href="/workshop/bench" className="button">
        {say(phrase('bench.link'))}
      </Link>
      {refused && (
        <p className="note" role="alert">
          {say(refused)}
        </p>
      )}
      {drafts?.ok && drafts.value.length > 0 && (
        <>
          <h2>{say(phrase('workshop.drafts'))}</h2>
          {drafts.value.map((draft) => {
            const name = draft.unit || say(phrase('workshop.unnamed'));
            return (
              <section key={draft.id} className="frame">
                <h3>{name}</h3>
                <p className="aside">
                  {say(
                    phrase('workshop.saved-at', {
                      when: new Date(draft.savedAt).toLocaleString(LOCALES[language], {
                        dateStyle: 'medium',
                        timeStyle: 'short',
                      }),
                    }),
                  )}
                </p>
                <div className="row-of-buttons">
                  <Link className="button" href={`/workshop/${draft.id}`}>
                    {say(phrase('workshop.go-on', { name }))}
                  </Link>
                  <button type="button" className="button plain" onClick={() => void remove(draft.id)}>
                    {say(phrase('workshop.discard', { name }))}
                  </button>
                </div>
              </section>
            );
          })}
        </>
      )}
      {decks?.ok && decks.value.length > 0 && (
        <>
          <h2>{say(phrase('workshop.decks-here'))}</h2>
          <p className="aside">{say(phrase('workshop.decks-here-hint'))}</p>
          {decks.value.map((stored) => (
            <section key={stored.id} className="frame">
              <h3>{titleOf(stored)}</h3>
              <div className="row-of-buttons">
                <button
                  type="button"
                  className="button"
                  aria-label={say(phrase('workshop.change', { title: titleOf(stored) }))}
                  onClick={() => void begin(draftIn(stored))}
                >
                  {say(phrase('workshop.change-it'))}
                </button>
                <button
                  type="button"
                  className="button plain"
                  aria-label={say(phrase('variant.make', { title: titleOf(stored) }))}
                  onClick={() => void vary(stored)}
                >
                  {say(phrase('variant.make-it'))}
                </button>
                <button
                  type="button"
                  className="button plain"
                  aria-label={say(phrase('workshop.copy', { title: titleOf(stored) }))}
                  onClick={() => copy(stored)}
                >
                  {say(phrase('workshop.copy-it'))}
                </button>
              </div>
            </section>
          ))}
        </>
      )}
    </Sheet>
  );
}

export function WorkshopScreen({ onChange }: Props) {
  return (
    <Switch>
      <Route path="/workshop">
        <DraftList />
      </Route>
      <Route path="/workshop/bench">
        <BenchScreen />
      </Route>
      <Route path="/workshop/fix/:deck/:about">
        {({ deck, about }) => <FixScreen deck={deck} about={fromAddress(about)} />}
      </Route>
      <Route path="/workshop/:draft/*?">
        {({ draft, '*': rest = '' }) => {
          const [section, about, record] = rest
            .split('/')
            .map((part) => (part === '' ? undefined : fromAddress(part)));
          return (
            <DraftScreen id={draft} section={section} about={about} record={record} onChange={onChange} />
          );
        }}
      </Route>
    </Switch>
  );
}
