/** The self-check under way: one question at a time, back and forth, no hints, no verdicts. */
import { useEffect, useMemo, useRef, useState } from 'react';
import { type Draft, emptyDraft, finishDraft } from '../../core/questions/draft.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Question } from '../../core/questions/question.ts';
import { type CheckEvent, leftAt, type SelfCheck } from '../../core/self-check/check.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import { Sheet } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { QuestionView } from '../drill/QuestionView.tsx';
import { useServices } from '../services.ts';

type OpenItem = (index: number) => { readonly question: Question; readonly unit: Unit } | undefined;

interface Props {
  readonly check: SelfCheck;
  readonly open: OpenItem;
  readonly say: Say;
  readonly onEvent: (event: CheckEvent) => void;
}

/** Minutes left, and the end when they are over. */
function useClock(check: SelfCheck, onEvent: Props['onEvent']): number | null {
  const { now } = useServices();
  const [left, setLeft] = useState(() => leftAt(check, now().at));
  const latest = useRef({ check, onEvent });
  latest.current = { check, onEvent };
  useEffect(() => {
    const tick = () => {
      const { at } = now();
      const remaining = leftAt(latest.current.check, at);
      setLeft(remaining);
      if (remaining === 0) latest.current.onEvent({ kind: 'finished', at });
    };
    const timer = setInterval(tick, 1000);
    const onShown = () => {
      latest.current.onEvent({ kind: document.hidden ? 'hidden' : 'shown', at: now().at });
      if (!document.hidden) tick();
    };
    document.addEventListener('visibilitychange', onShown);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', onShown);
    };
  }, [now]);
  return left;
}

export function Running({ check, open, say, onEvent }: Props) {
  const { now, sayFor } = useServices();
  const left = useClock(check, onEvent);
  const opened = useMemo(() => open(check.index), [open, check.index]);
  const [asking, setAsking] = useState(false);
  const at = () => now().at;
  const count = check.items.length;
  const answeredAt = (index: number) => {
    const draft = check.drafts[index];
    const item = draft && open(index);
    return item !== undefined && draft !== undefined && finishDraft(item.question.space, draft) !== null;
  };
  const openLeft = check.items.filter((_, index) => !answeredAt(index)).length;
  const unitSay = opened ? sayFor(opened.unit) : say;
  const draft: Draft | null = opened
    ? (check.drafts[check.index] ?? emptyDraft(opened.question.space))
    : null;
  return (
    <Sheet
      className="drill"
      top={
        <>
          <span>{say(phrase('drill.place', { place: check.index + 1, count }))}</span>
          {left !== null && (
            <span role="timer">{say(phrase('self-check.left', { minutes: Math.ceil(left / 60_000) }))}</span>
          )}
        </>
      }
    >
      {opened && draft ? (
        <>
          {check.items[check.index]!.unseen !== null && (
            <section>
              <p className="aside">{say(phrase('self-check.unseen-unit'))}</p>
              <DrawingView drawing={{ kind: 'chart', showRatios: true }} unit={opened.unit} say={unitSay} />
            </section>
          )}
          <QuestionView
            key={check.index}
            question={opened.question}
            unit={opened.unit}
            say={unitSay}
            draft={draft}
            verdict={null}
            again={false}
            onChange={(changed) => onEvent({ kind: 'entered', draft: changed, at: at() })}
          />
          <fieldset className="answer">
            <legend>{say(phrase('self-check.sure-legend'))}</legend>
            <div className="choices">
              {[true, false].map((sure) => (
                <label key={String(sure)} className="choice">
                  <input
                    type="radio"
                    name={`sure-${check.index}`}
                    checked={check.sure[check.index] === sure}
                    onChange={() => onEvent({ kind: 'said-sure', sure, at: at() })}
                  />
                  <span>{say(phrase(sure ? 'self-check.sure' : 'self-check.unsure'))}</span>
                </label>
              ))}
            </div>
          </fieldset>
        </>
      ) : (
        <p className="note">{say(phrase('preview.nothing'))}</p>
      )}
      <nav aria-label={say(phrase('self-check.all-questions'))} className="item-keys">
        {check.items.map((item, index) => (
          <button
            // biome-ignore lint/suspicious/noArrayIndexKey: the items of a form keep their places
            key={`${item.family} ${index}`}
            type="button"
            className={`item-key ${answeredAt(index) ? 'answered' : ''} ${check.marked.includes(index) ? 'marked' : ''}`}
            aria-current={index === check.index ? 'step' : undefined}
            aria-label={say(
              phrase('self-check.item', {
                place: index + 1,
                answered: answeredAt(index) ? 'yes' : 'no',
                marked: check.marked.includes(index) ? 'yes' : 'no',
              }),
            )}
            onClick={() => onEvent({ kind: 'went-to', index, at: at() })}
          >
            {index + 1}
          </button>
        ))}
      </nav>
      {asking && (
        <div className="note" role="alert">
          <p>{say(phrase('self-check.finish-sure', { open: openLeft }))}</p>
          <div className="row-of-buttons">
            <button type="button" className="button" onClick={() => onEvent({ kind: 'finished', at: at() })}>
              {say(phrase('self-check.finish'))}
            </button>
            <button type="button" className="button plain" onClick={() => setAsking(false)}>
              {say(phrase('self-check.finish-not'))}
            </button>
          </div>
        </div>
      )}
      <div className="drill-foot three">
        <button
          type="button"
          className="button plain"
          aria-disabled={check.index === 0}
          onClick={() => onEvent({ kind: 'went-to', index: check.index - 1, at: at() })}
        >
          {say(phrase('self-check.back'))}
        </button>
        <button
          type="button"
          className="button plain"
          aria-pressed={check.marked.includes(check.index)}
          onClick={() => onEvent({ kind: 'marked', at: at() })}
        >
          {say(phrase('self-check.mark'))}
        </button>
        {check.index === count - 1 ? (
          <button type="button" className="button key" onClick={() => setAsking(true)}>
            {say(phrase('self-check.finish'))}
          </button>
        ) : (
          <button
            type="button"
            className="button key"
            onClick={() => onEvent({ kind: 'went-to', index: check.index + 1, at: at() })}
          >
            {say(phrase('drill.next'))}
          </button>
        )}
      </div>
    </Sheet>
  );
}
