/** Marks of a sheet that came back on paper: for each question what was written, as far as it matters. */
import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Question } from '../../core/questions/question.ts';
import { makeReference } from '../../core/questions/reference.ts';
import type { StoredSheet } from '../../storage/classroom-rows.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { answerInWords } from '../../words/answer-in-words.ts';
import type { Say } from '../../words/words.ts';
import { type OpenedGroup, openGroups } from '../group/open-group.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { attemptsOf, keepMarks, type Mark, questionsOf } from './make-up.ts';

interface Choice {
  readonly words: string;
  readonly mark: Mark;
}

/** Left open, right, one of the answers a slip-up gives, or another: each once. */
function choicesFor({ space, answers, accepts, lures }: Question, say: Say): Choice[] {
  const right = answers.map((answer) => answerInWords(space, answer, say)).join(' / ');
  const wrong = new Map(
    lures.map(({ answer }) => [answerInWords(space, answer, say), { kind: 'lure', answer } as const]),
  );
  return [
    { words: say(phrase('marks.open')), mark: { kind: 'open' } },
    {
      words: say(phrase('marks.right', { answer: right, more: accepts ? 'yes' : 'no' })),
      mark: { kind: 'right' },
    },
    ...[...wrong].map(([words, mark]) => ({ words: say(phrase('marks.wrong', { answer: words })), mark })),
    { words: say(phrase('marks.other')), mark: { kind: 'other' } },
  ];
}

interface FormProps {
  readonly group: OpenedGroup;
  readonly sheet: StoredSheet;
  readonly questions: readonly Question[];
}

function MarksForm({ group, sheet, questions }: FormProps) {
  const services = useServices();
  const [, go] = useLocation();
  const say = services.sayFor(group.unit);
  const [marks, setMarks] = useState<readonly number[]>(questions.map(() => 0));
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const choices = useMemo(() => questions.map((question) => choicesFor(question, say)), [questions, say]);
  const marked = marks.filter((mark) => mark !== 0).length;
  const save = async () => {
    if (marked === 0) return;
    const given = marks.map((mark, place) => choices[place]![mark]!.mark);
    const kept = await keepMarks(services, sheet, attemptsOf(sheet, questions, given, services.now()));
    setTrouble(kept.ok ? null : kept.error);
    if (kept.ok) go(`/group/${sheet.assignment}`);
  };
  return (
    <form
      className="frame"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <p>{say(phrase('marks.note', { name: sheet.name, sheet: sheet.id }))}</p>
      {questions.map((question, place) => (
        <label key={makeReference(question)} className="field">
          <span>{`${place + 1}. ${say(question.prompt)}`}</span>
          <select
            value={marks[place]}
            onChange={(event) => setMarks(marks.with(place, Number(event.target.value)))}
          >
            {choices[place]!.map(({ words }, index) => (
              <option key={words} value={index}>
                {words}
              </option>
            ))}
          </select>
        </label>
      ))}
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <button type="submit" className="button key" aria-disabled={marked === 0}>
        {say(phrase('marks.keep', { count: marked }))}
      </button>
    </form>
  );
}

export function MarksScreen({ assignment, sheet: id }: { assignment: string; sheet: string }) {
  const services = useServices();
  const loaded = useLoaded(async () => {
    const [groups, sheets] = await Promise.all([
      openGroups(services, assignment),
      services.store.classroom.sheetsOf(assignment),
    ]);
    if (!groups.ok) return groups;
    if (!sheets.ok) return sheets;
    const sheet = sheets.value.find((one) => one.id === id);
    const { group } = groups.value;
    const questions = group && sheet && questionsOf(group.unit, sheet);
    return { ok: true as const, value: { group, sheet, questions } };
  }, `${assignment}/${id}`);
  const say = services.sayFor(null);
  const value = loaded?.ok ? loaded.value : undefined;
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('marks.title'))}</h1>
          <Link href={`/group/${assignment}`}>{say(phrase('app.back'))}</Link>
        </>
      }
    >
      {loaded && !loaded.ok && <TroubleNote trouble={loaded.error} say={say} />}
      {value &&
        (value.group && value.sheet && value.questions && value.sheet.markedAt === null ? (
          <MarksForm group={value.group} sheet={value.sheet} questions={value.questions} />
        ) : (
          <p className="note">{say(phrase(value.sheet?.markedAt ? 'marks.done' : 'marks.none'))}</p>
        ))}
    </Sheet>
  );
}
