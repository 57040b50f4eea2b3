/** One question on the page: cautions, prompt, drawing, answer space; after Check the verdict and the reason. */
import { useEffect, useRef } from 'react';
import { type Draft, finishDraft } from '../../core/questions/draft.ts';
import type { Verdict } from '../../core/questions/judge.ts';
import { nearestRight } from '../../core/questions/nearest-right.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Question } from '../../core/questions/question.ts';
import { makeReference } from '../../core/questions/reference.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { AnswerForm } from '../../ui/answers/AnswerForm.tsx';
import type { Say } from '../../words/words.ts';
import { whenPainted } from '../when-painted.ts';
import { DrawingLater } from './DrawingLater.tsx';
import { ExampleView, type ShownExample } from './ExampleView.tsx';
import { FlagForm } from './FlagForm.tsx';

interface Props {
  readonly question: Question;
  /** Undefined while the deck is being read: drawings, which need it, come then. */
  readonly unit: Unit | undefined;
  readonly say: Say;
  readonly draft: Draft;
  readonly onChange: (draft: Draft) => void;
  /** Null until the answer is checked. */
  readonly verdict: Verdict | null;
  /** Flags can be raised and are kept: not where a question is only tried. */
  readonly canFlag?: boolean;
  /** True when the fact slipped earlier in this drill and is asked once more. */
  readonly again: boolean;
  /** Stands above the answer until it is checked; then the question's own working takes its place. */
  readonly example?: ShownExample | undefined;
}

function VerdictView({ question, verdict, say }: { question: Question; verdict: Verdict; say: Say }) {
  const told = useRef<HTMLDivElement>(null);
  useEffect(() => {
    told.current?.focus({ preventScroll: true });
    told.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <div className={`verdict ${verdict.right ? 'right' : 'wrong'}`} ref={told} role="status" tabIndex={-1}>
      <strong>{say(phrase(verdict.right ? 'result.right' : 'result.wrong'))}</strong>
      {!verdict.right && verdict.slipUps.length === 0 && <p>{say(phrase('result.other'))}</p>}
      {verdict.slipUps.map((slipUp) => (
        <p key={slipUp}>{say(phrase(`slip-up.${slipUp}`))}</p>
      ))}
      <p>{say(question.explanation.row)}</p>
      <p>{say(question.explanation.reason)}</p>
    </div>
  );
}

export function QuestionView({
  question,
  unit,
  say,
  draft,
  onChange,
  verdict,
  again,
  example,
  canFlag = false,
}: Props) {
  const { explanation } = question;
  const prompt = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (window.scrollY !== 0) window.scrollTo?.(0, 0);
    // Where somebody has been quicker, the focus stays.
    const free = document.activeElement;
    void whenPainted().then(() => {
      if (document.activeElement === free) prompt.current?.focus({ preventScroll: true });
    });
  }, []);
  const drawing = verdict ? (explanation.drawing ?? question.drawing) : question.drawing;
  const given = verdict && finishDraft(question.space, draft);
  const right = verdict ? (given ? nearestRight(question, given) : question.answers[0]) : undefined;
  const tapped =
    draft.form === 'place' && drawing === question.drawing
      ? {
          picked: draft.spot,
          right: right?.form === 'place' ? right.spot : null,
          onPick: verdict ? undefined : (spot: string) => onChange({ form: 'place', spot }),
        }
      : undefined;
  return (
    <div className="drill-question">
      <div className="drill-answer">
        {question.cautions.length > 0 && (
          <div className="caution" role="note">
            <strong>{say(phrase('drill.caution'))}</strong>
            {question.cautions.map((caution) => (
              <p key={caution}>{caution}</p>
            ))}
            <p className="aside">{say(phrase('drill.caution-defer'))}</p>
          </div>
        )}
        <h1 className="prompt" ref={prompt} tabIndex={-1}>
          {say(question.prompt)}
        </h1>
        {again && <p className="aside">{say(phrase('drill.again'))}</p>}
        {drawing && unit && <DrawingLater drawing={drawing} unit={unit} say={say} tapped={tapped} />}
      </div>
      <div className="drill-answer">
        {verdict && <VerdictView question={question} verdict={verdict} say={say} />}
        {example && unit && !verdict && (
          <ExampleView {...example} unit={unit} say={say} told={question.cautions} />
        )}
        <AnswerForm space={question.space} draft={draft} onChange={onChange} say={say} right={right} />
        {verdict && (
          <div>
            <details>
              <summary>{say(phrase('result.more'))}</summary>
              <ol className="steps">
                {explanation.more
                  .map((step) => say(step))
                  .map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
              </ol>
            </details>
            <details>
              <summary>{say(phrase('result.wrong-data'))}</summary>
              {canFlag ? (
                <FlagForm question={question} say={say} />
              ) : (
                <p>{say(phrase('result.wrong-data-note', { reference: makeReference(question) }))}</p>
              )}
            </details>
          </div>
        )}
      </div>
    </div>
  );
}
