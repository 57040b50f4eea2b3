/**
 * A private, timed, mixed test that tells the truth at its end. It stays on the device, enters no report, and
 * can be wiped.
 */
import { useCallback, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { dateOfDay } from '../../core/memory/day.ts';
import { FAMILIES } from '../../core/questions/families/index.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { seedOf } from '../../core/random.ts';
import { AREAS, familiesOf } from '../../core/self-check/areas.ts';
import { type Blueprint, USUAL_BLUEPRINT } from '../../core/self-check/blueprint.ts';
import { type CheckBook, compareWithLast, noteOutcome, recentFacts } from '../../core/self-check/book.ts';
import { advance, type CheckEvent, type SelfCheck } from '../../core/self-check/check.ts';
import { drawForm, openItem } from '../../core/self-check/form.ts';
import { outcomeOf } from '../../core/self-check/outcome.ts';
import { makeUnseenUnit } from '../../core/transfer/index.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { OutcomeView } from './OutcomeView.tsx';
import { Running } from './Running.tsx';
import { SetupForm } from './SetupForm.tsx';

/** Units never studied, made once. */
function useUnseenUnits() {
  return useMemo(() => {
    const made = new Map<number, Unit | undefined>();
    return (seed: number) => {
      if (!made.has(seed)) made.set(seed, makeUnseenUnit(seed));
      return made.get(seed);
    };
  }, []);
}

function Opened({ unit, say, stored }: { unit: Unit; say: Say; stored: CheckBook }) {
  const { store, now, newId } = useServices();
  const [book, setBook] = useState(stored);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const unseenUnit = useUnseenUnits();
  const current =
    book.current?.deck === unit.deck.id && book.current.revision === unit.deck.revision ? book.current : null;

  const keep = useCallback(
    (changed: CheckBook) => {
      setBook(changed);
      void store.saveCheckBook(changed).then((saved) => setTrouble(saved.ok ? null : saved.error));
    },
    [store],
  );
  const open = useCallback(
    (index: number) =>
      current?.items[index] && openItem({ unit, families: FAMILIES, unseenUnit }, current.items[index]),
    [current?.items, unit, unseenUnit],
  );
  const onEvent = (event: CheckEvent) => {
    if (!current) return;
    const after = advance(current, event);
    if (after !== current) keep({ ...book, current: after });
  };
  const start = (blueprint: Blueprint) => {
    const { at } = now();
    const id = newId();
    const seed = seedOf('self-check', id);
    const recent = recentFacts(book, unit.deck.id);
    const items = drawForm({ blueprint, unit, families: FAMILIES, unseenUnit, recent, seed });
    const check: SelfCheck = {
      id,
      deck: unit.deck.id,
      revision: unit.deck.revision,
      blueprint,
      seed,
      items,
      startedAt: at,
      index: 0,
      drafts: {},
      marked: [],
      sure: {},
      spentMs: 0,
      shownAt: at,
      finishedAt: null,
    };
    keep({ ...book, current: check });
  };
  const finished = current && current.finishedAt !== null ? current : null;
  const outcome = useMemo(() => (finished ? outcomeOf(finished, open) : null), [finished, open]);
  const close = () =>
    keep({ ...(finished && outcome ? noteOutcome(book, finished, outcome) : book), current: null });
  const wipe = () => {
    setBook({ current: null, past: [] });
    void store.wipeCheckBook().then((wiped) => setTrouble(wiped.ok ? null : wiped.error));
  };

  if (current && !finished && current.items.length > 0)
    return (
      <>
        {trouble && <TroubleNote trouble={trouble} say={say} />}
        <Running check={current} open={open} say={say} onEvent={onEvent} />
      </>
    );
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('self-check.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
      titleBlock={titleBlockOf(unit, say)}
    >
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {finished && outcome ? (
        <>
          <OutcomeView
            check={finished}
            outcome={outcome}
            compared={compareWithLast(book, finished, outcome)}
            date={dateOfDay(Math.floor(finished.finishedAt! / 86_400_000))}
            say={say}
          />
          <div className="row-of-buttons">
            <button type="button" className="button key" onClick={close}>
              {say(phrase('self-check.close'))}
            </button>
            <button type="button" className="button plain" onClick={wipe}>
              {say(phrase('self-check.wipe'))}
            </button>
          </div>
        </>
      ) : (
        <>
          <SetupForm
            blueprint={book.current?.blueprint ?? USUAL_BLUEPRINT}
            able={
              new Set(
                AREAS.filter((area) =>
                  familiesOf(FAMILIES, area).some((family) => family.facts(unit).length > 0),
                ),
              )
            }
            say={say}
            onStart={start}
          />
          {book.past.length > 0 && (
            <button type="button" className="button plain" onClick={wipe}>
              {say(phrase('self-check.wipe-past', { count: book.past.length }))}
            </button>
          )}
        </>
      )}
      <p className="aside">{say(phrase('app.standing-line'))}</p>
    </Sheet>
  );
}

export function SelfCheckScreen({ unit, say }: { unit: Unit; say: Say }) {
  const { store, now } = useServices();
  const loaded = useLoaded(async () => {
    const book = await store.checkBook();
    if (!book.ok || !book.value.current) return book;
    // Opened again: the clock goes on, or has gone on, as chosen beforehand.
    const current = advance(book.value.current, { kind: 'shown', at: now().at });
    return { ok: true as const, value: { ...book.value, current } };
  }, 'check-book');
  if (!loaded) return <p className="sheet aside">{say(phrase('app.loading'))}</p>;
  if (!loaded.ok) return <TroubleNote trouble={loaded.error} say={say} />;
  return <Opened unit={unit} say={say} stored={loaded.value} />;
}
