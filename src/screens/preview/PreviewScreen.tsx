/**
 * Any question of the deck, exactly as a learner sees it, for any seed; nothing is stored. A disputed
 * question is opened again from its reference.
 */
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { ask } from '../../core/questions/ask.ts';
import { type Draft, emptyDraft, finishDraft } from '../../core/questions/draft.ts';
import { FAMILIES } from '../../core/questions/families/index.ts';
import { judge, type Verdict } from '../../core/questions/judge.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Question } from '../../core/questions/question.ts';
import { makeReference, parseReference } from '../../core/questions/reference.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { QuestionView } from '../drill/QuestionView.tsx';

interface Wanted {
  readonly family: string;
  /** Empty: the fact is drawn from the seed. */
  readonly fact: string;
  readonly seed: number;
}

function Tried({ question, unit, say }: { question: Question; unit: Unit; say: Say }) {
  const [draft, setDraft] = useState<Draft>(() => emptyDraft(question.space));
  const [verdict, setVerdict] = useState<Verdict | null>(null);
  const answer = finishDraft(question.space, draft);
  return (
    <>
      <QuestionView
        question={question}
        unit={unit}
        say={say}
        draft={draft}
        onChange={setDraft}
        verdict={verdict}
        again={false}
      />
      {!verdict && (
        <button
          type="button"
          className="button key"
          aria-disabled={answer === null}
          onClick={() => answer && setVerdict(judge(question, answer))}
        >
          {say(phrase(answer ? 'drill.check' : 'drill.check-waiting'))}
        </button>
      )}
    </>
  );
}

export function PreviewScreen({ unit, say }: { unit: Unit; say: Say }) {
  const able = useMemo(() => FAMILIES.filter((family) => family.facts(unit).length > 0), [unit]);
  const [wanted, setWanted] = useState<Wanted>({ family: able[0]!.id, fact: '', seed: 1 });
  const [typed, setTyped] = useState('');
  const [refused, setRefused] = useState(false);
  const family = able.find(({ id }) => id === wanted.family)!;
  const question = useMemo(
    () => ask(unit, family, wanted.seed, wanted.fact || undefined),
    [unit, family, wanted],
  );
  const open = () => {
    const reference = parseReference(typed);
    const own =
      reference?.deck === unit.deck.id &&
      reference.revision === unit.deck.revision &&
      able.some(({ id }) => id === reference.family);
    setRefused(!own);
    if (own) setWanted(reference);
  };
  return (
    <Sheet
      className="drill"
      top={
        <>
          <h1>{say(phrase('preview.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
      titleBlock={titleBlockOf(unit, say)}
    >
      <form className="fields" onSubmit={(event) => event.preventDefault()}>
        <label className="field">
          <span>{say(phrase('preview.family'))}</span>
          <select
            value={wanted.family}
            onChange={(event) => setWanted({ ...wanted, family: event.target.value, fact: '' })}
          >
            {able.map(({ id }) => (
              <option key={id} value={id}>
                {say(phrase(`family.${id}`))}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>{say(phrase('preview.fact'))}</span>
          <select
            value={wanted.fact}
            onChange={(event) => setWanted({ ...wanted, fact: event.target.value })}
          >
            <option value="">{say(phrase('preview.any-fact'))}</option>
            {family.facts(unit).map((fact) => (
              <option key={fact} value={fact}>
                {fact}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>{say(phrase('preview.seed'))}</span>
          <input
            type="number"
            value={wanted.seed}
            onChange={(event) => setWanted({ ...wanted, seed: Math.trunc(Number(event.target.value)) | 0 })}
          />
        </label>
      </form>
      <details>
        <summary>{say(phrase('preview.reopen'))}</summary>
        <form
          className="fields"
          onSubmit={(event) => {
            event.preventDefault();
            open();
          }}
        >
          <label className="field">
            <span>{say(phrase('preview.reference'))}</span>
            <input type="text" value={typed} onChange={(event) => setTyped(event.target.value)} />
          </label>
          <button type="submit" className="button">
            {say(phrase('preview.open'))}
          </button>
        </form>
        {refused && (
          <p className="note" role="alert">
            {say(phrase('preview.refused', { deck: unit.deck.id, revision: unit.deck.revision }))}
          </p>
        )}
      </details>
      <hr className="rule" />
      {question ? (
        <>
          <Tried key={makeReference(question)} question={question} unit={unit} say={say} />
          <p className="aside">{makeReference(question)}</p>
        </>
      ) : (
        <p className="note">{say(phrase('preview.nothing'))}</p>
      )}
    </Sheet>
  );
}
