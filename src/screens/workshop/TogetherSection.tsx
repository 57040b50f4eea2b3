/** A colleague's deck file, brought together with the draft: from the revision both started from. */
import { type ChangeEvent, useMemo, useState } from 'react';
import { sentenceOf } from '../../content/finding.ts';
import { textOfFile } from '../../content/json.ts';
import { loadDeck, parseDeck } from '../../content/load.ts';
import { likelyBase, nothingInCommon } from '../../core/deck-merge/base.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Deck } from '../../core/unit/deck.ts';
import { makeUnit, type Unit } from '../../core/unit/unit.ts';
import type { DeckDraft } from '../../core/workshop/draft.ts';
import { finishDraft } from '../../core/workshop/finish.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import type { SectionProps } from './desk.ts';
import { deckIn, knownRevisions } from './publish.ts';
import { Together } from './Together.tsx';

interface Theirs {
  readonly deck: Deck;
  readonly unit: Unit | null;
  readonly name: string;
}

const UNKNOWN = 'unknown';

function Merging({ desk, theirs }: SectionProps & { theirs: Theirs }) {
  const services = useServices();
  const { say, settled, check } = desk;
  const [picked, setPicked] = useState<string | null>(null);
  const [taken, setTaken] = useState(false);
  const id = String(finishDraft(settled).id ?? '');
  const known = useLoaded(() => knownRevisions(services, id), id);
  // The shape of a deck is there: nothing is missing.
  const mine = useMemo(() => finishDraft(settled) as unknown as Deck, [settled]);
  const solved = useMemo(
    () => (check.deck && theirs.unit ? { mine: makeUnit(check.deck), theirs: theirs.unit } : null),
    [check.deck, theirs.unit],
  );
  const revisions = useMemo(
    () =>
      known?.ok
        ? known.value.map(({ text }) => deckIn(text)).toSorted((a, b) => b.revision - a.revision)
        : [],
    [known],
  );
  const likely = useMemo(() => likelyBase(mine, theirs.deck, revisions), [mine, theirs.deck, revisions]);
  const base = useMemo(() => {
    const found = picked === null ? likely : revisions.find(({ revision }) => String(revision) === picked);
    return found ?? nothingInCommon(mine);
  }, [picked, likely, revisions, mine]);
  if (!known) return null;
  if (!known.ok) return <TroubleNote trouble={known.error} say={say} />;
  if (taken) return <p role="status">{say(phrase('together.done'))}</p>;
  const chosen = picked ?? (likely ? String(likely.revision) : UNKNOWN);
  return (
    <>
      <fieldset className="answer">
        <legend>{say(phrase('together.base'))}</legend>
        <div className="choices short">
          {[...revisions.map(({ revision }) => String(revision)), UNKNOWN].map((value) => (
            <label key={value} className="choice slim">
              <input
                type="radio"
                name="together-base"
                checked={chosen === value}
                onChange={() => setPicked(value)}
              />
              <span>
                {say(
                  value === UNKNOWN
                    ? phrase('together.base-unknown')
                    : phrase('workshop.revision', { revision: value }),
                )}
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      <Together
        key={chosen}
        base={base}
        mine={mine}
        theirs={theirs.deck}
        solved={solved}
        other={phrase('text', { text: theirs.name })}
        say={say}
        onTake={(merged) => {
          // The draft keeps its number: handing out counts it up.
          desk.replace({ ...merged, revision: settled.revision } as DeckDraft);
          setTaken(true);
        }}
      />
    </>
  );
}

export function TogetherSection({ desk }: SectionProps) {
  const { say, check, settled } = desk;
  const [theirs, setTheirs] = useState<Theirs | null>(null);
  const [refused, setRefused] = useState<readonly Phrase[]>([]);
  const open = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const [file] = target.files ?? [];
    if (!file) return;
    const text = await textOfFile(file);
    target.value = '';
    setTheirs(null);
    const parsed = parseDeck(text);
    if (!parsed.ok) return setRefused(parsed.error.slice(0, 8).map(sentenceOf));
    const { $schema: _, ...deck } = parsed.value.deck as Deck & { $schema?: unknown };
    const own = String(finishDraft(settled).id ?? '');
    if (deck.id !== own) return setRefused([phrase('together.other-deck', { own, id: deck.id })]);
    const loaded = loadDeck(text);
    setRefused([]);
    setTheirs({ deck, unit: loaded.ok ? loaded.value.unit : null, name: file.name });
  };
  if (check.missing.length > 0)
    return <p className="note">{say(phrase('together.missing', { count: check.missing.length }))}</p>;
  return (
    <>
      <p className="aside">{say(phrase('together.hint'))}</p>
      <label className="button file-button">
        {say(phrase('together.open'))}
        <input
          type="file"
          accept=".json,application/json"
          className="unseen"
          onChange={(event) => void open(event)}
        />
      </label>
      {refused.length > 0 && (
        <ul className="note" role="alert">
          {refused.map((one) => {
            const words = say(one);
            return <li key={words}>{words}</li>;
          })}
        </ul>
      )}
      {theirs && <Merging key={theirs.name} desk={desk} theirs={theirs} />}
    </>
  );
}
