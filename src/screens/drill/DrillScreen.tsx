/**
 * The drill: one question at a time, from the drawing to the reason. Every tap is stored; the clock stands
 * while the page is hidden; an answer and the drill's next state are stored together.
 */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { type Attempt, draftAttempt } from '../../core/memory/attempt.ts';
import { answeringMs, type Drill, type DrillEvent, progress } from '../../core/memory/drill.ts';
import { addWorked, isCalculation, type Worked } from '../../core/memory/support.ts';
import { type Draft, emptyDraft, finishDraft } from '../../core/questions/draft.ts';
import { judge } from '../../core/questions/judge.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Result } from '../../core/result.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { type Asked, askedIn } from './asked.ts';
import { QuestionView } from './QuestionView.tsx';
import { useExample } from './use-example.ts';
import { useKeeping } from './use-keeping.ts';
import { useNoted } from './use-noted.ts';

interface Props {
  /** Undefined while the store is being opened. */
  readonly unit: Unit | undefined;
  readonly say: Say;
  /** As stored; its clock stands. */
  readonly stored: Drill;
  /** Its question at hand. */
  readonly first: Asked;
  /** What was calculated before, the drill's answers so far included; undefined while the log is being read. */
  readonly worked: Worked | undefined;
  /** Called with the finished drill, or with the drill as it stands when stopped. */
  readonly onLeave: (drill: Drill) => void;
  /** Called when the drill went on in another tab and is to go on here. */
  readonly onReload: () => void;
}

/** By then a question is on the screen. */
const SEEN_MS = 500;

const ENTER_KEEPS = new Set(['BUTTON', 'A', 'SUMMARY', 'SELECT', 'TEXTAREA']);

/** Stops the clock while the page is hidden and starts it again when it is shown. */
function useShownClock(onEvent: (kind: 'paused' | 'resumed') => void) {
  const latest = useRef(onEvent);
  latest.current = onEvent;
  useEffect(() => {
    const onChange = () => latest.current(document.hidden ? 'paused' : 'resumed');
    document.addEventListener('visibilitychange', onChange);
    return () => document.removeEventListener('visibilitychange', onChange);
  }, []);
}

export function DrillScreen({ unit, say: speak, stored, first, worked: before, onLeave, onReload }: Props) {
  const { store, now, newId, familyOf } = useServices();
  const [drill, setDrill] = useState(() => progress(stored, { kind: 'resumed', at: now().at }));
  const item = drill.items[drill.index]!;
  const [next, setNext] = useState<Asked>();
  const { question } = next ?? first;
  const noted = useNoted(speak, question);
  const { say } = noted;
  const draft: Draft = drill.draft ?? emptyDraft(question.space);
  const answer = finishDraft(question.space, draft);
  const again = drill.items.slice(0, drill.index).some(({ fact }) => fact === item.fact);
  const [given, setGiven] = useState<readonly Attempt[]>([]);
  const worked = useMemo(() => before && addWorked(before, given), [before, given]);
  // Whether an example belongs above a calculation is known when the log is.
  const isReady = worked !== undefined || !isCalculation({ ...question, form: question.space.form });
  const example = useExample({ unit, say, worked }, drill, next ?? first);
  const busy = useRef(false);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const tell = useCallback(
    (result: Result<unknown, StoreTrouble>) => setTrouble(result.ok ? null : result.error),
    [],
  );

  const step = useCallback(
    (event: DrillEvent) => {
      // An answer that is being stored is not changed any more.
      if (busy.current) return;
      const after = progress(drill, event);
      setDrill(after);
      void store.saveDraft(after).then(tell);
    },
    [drill, store, tell],
  );

  useShownClock((kind) => step({ kind, at: now().at }));

  const check = async () => {
    if (!answer || !isReady || drill.verdict || busy.current) return;
    busy.current = true;
    const { at, zone } = now();
    const verdict = judge(question, answer);
    const after = progress(drill, { kind: 'checked', verdict, at });
    const seconds = answeringMs(drill, at) / 1000;
    const attempt = draftAttempt({
      id: newId(),
      question,
      answer,
      verdict,
      ...(example ? { support: example.support } : {}),
      seconds,
      at,
      zone,
      drill: drill.id,
    });
    const recorded = await store.recordAttempt(attempt, after);
    busy.current = false;
    tell(recorded);
    if (!recorded.ok) return;
    setGiven((known) => [...known, recorded.value]);
    setDrill(after);
  };

  const isPressed = useRef(false);
  const goOn = async () => {
    isPressed.current = unit === undefined;
    if (busy.current || !unit) return;
    busy.current = true;
    const { drill: after, asked } = await askedIn(
      { familyOf },
      unit,
      progress(drill, { kind: 'next', at: now().at }),
    );
    busy.current = false;
    void store.saveDraft(after).then(tell);
    if (!asked) return onLeave(after);
    setNext(asked);
    setDrill(after);
  };
  const onNext = () =>
    void goOn().catch((error: unknown) =>
      setDrill(() => {
        throw error;
      }),
    );

  // Pressed while the deck was still being read.
  // biome-ignore lint/correctness/useExhaustiveDependencies: done once, when the deck is there
  useEffect(() => {
    if (unit && isPressed.current) onNext();
  }, [unit]);

  useKeeping(unit, question, drill, noted);

  // Loaded ahead, so that the drill goes on when the network does not; the question at hand is to be seen first.
  useEffect(() => {
    const soon = setTimeout(() => {
      for (const each of stored.items) void familyOf(each.family).catch(() => {});
    }, SEEN_MS);
    return () => clearTimeout(soon);
  }, [stored, familyOf]);

  const stop = () => {
    const after = progress(drill, { kind: 'paused', at: now().at });
    void store.saveDraft(after);
    onLeave(after);
  };

  const onEnter = useRef<() => void>(() => {});
  onEnter.current = drill.verdict ? onNext : () => void check();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Enter' || event.isComposing || event.repeat) return;
      if (event.target instanceof HTMLElement && ENTER_KEEPS.has(event.target.tagName)) return;
      event.preventDefault();
      onEnter.current();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);

  const place = drill.index + 1;
  const count = drill.items.length;
  return (
    <Sheet
      className="drill"
      top={
        <>
          <label className="drill-place">
            <span>{say(phrase('drill.place', { place, count }))}</span>
            <progress className="progress" max={count} value={drill.index + (drill.verdict ? 1 : 0)} />
          </label>
          <button type="button" className="button plain" onClick={stop}>
            {say(phrase('drill.stop'))}
          </button>
        </>
      }
    >
      <QuestionView
        key={`${drill.id}/${drill.index}`}
        question={question}
        unit={unit}
        say={say}
        draft={draft}
        verdict={drill.verdict}
        again={again}
        canFlag
        example={example}
        onChange={(changed) => step({ kind: 'draft-changed', draft: changed, at: now().at })}
      />
      <div className="drill-foot">
        {trouble && <TroubleNote trouble={trouble} say={say} />}
        {trouble?.code === 'elsewhere' && (
          <button type="button" className="button" onClick={onReload}>
            {say(phrase('drill.go-on-here'))}
          </button>
        )}
        {drill.verdict ? (
          <button type="button" className="button key" onClick={onNext}>
            {say(phrase(place === count ? 'drill.finish' : 'drill.next'))}
          </button>
        ) : (
          <button
            type="button"
            className="button key"
            aria-disabled={answer === null || !isReady}
            onClick={() => void check()}
          >
            {say(phrase(!answer ? 'drill.check-waiting' : isReady ? 'drill.check' : 'app.loading'))}
          </button>
        )}
      </div>
    </Sheet>
  );
}
