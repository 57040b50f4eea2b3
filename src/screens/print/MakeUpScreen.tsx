/** The make-up sheet of one learner, with its key; printing keeps it until its marks are typed in. */
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import { seedOf } from '../../core/random.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { fromAddress } from '../address.ts';
import { type OpenedGroup, openGroups } from '../group/open-group.ts';
import { paperName } from '../group/sheets.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { absentMakeUp, newSheet, questionsOf } from './make-up.ts';
import { type PaperSize, PrintBar } from './Paper.tsx';
import { KeySheet, WorkSheet } from './WorkSheet.tsx';

interface Props {
  readonly assignment: string;
  readonly learner: string;
}

function MakeUpPapers({ group, learner }: { group: OpenedGroup; learner: string }) {
  const services = useServices();
  const [size, setSize] = useState<PaperSize>('a4');
  const [kept, setKept] = useState(false);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const { unit, board } = group;
  const say = services.sayFor(unit);
  // biome-ignore lint/correctness/useExhaustiveDependencies: one sheet as long as the page is open
  const sheet = useMemo(() => {
    const person = board.people.find((one) => one.learner === learner);
    if (person) return person.makeUp ? newSheet(services, group, person, person.makeUp) : undefined;
    const name = paperName(learner);
    if (name === null) return undefined;
    return newSheet(services, group, { learner, name }, absentMakeUp(group.facts, seedOf(learner)));
  }, [learner]);
  const questions = useMemo(() => sheet && questionsOf(unit, sheet), [sheet, unit]);
  if (!sheet || !questions) return <p className="note">{say(phrase('print.no-make-up'))}</p>;
  const keep = async () => {
    const saved = await services.store.classroom.keepSheet(sheet);
    setTrouble(saved.ok ? null : saved.error);
    setKept(saved.ok);
  };
  const given = {
    questions,
    title: say(phrase('print.make-up')),
    name: sheet.name,
    sheet: sheet.id,
    size,
    unit,
    say,
  };
  return (
    <>
      <section className="frame">
        <p>{say(phrase('print.make-up-note', { count: questions.length, sheet: sheet.id }))}</p>
        {trouble && <TroubleNote trouble={trouble} say={say} />}
        {kept ? (
          <>
            <p role="status">{say(phrase('print.kept'))}</p>
            <PrintBar size={size} onSize={setSize} say={say} />
          </>
        ) : (
          <button type="button" className="button key" onClick={() => void keep()}>
            {say(phrase('print.keep'))}
          </button>
        )}
      </section>
      <WorkSheet {...given} />
      <KeySheet {...given} />
    </>
  );
}

export function MakeUpScreen({ assignment, learner }: Props) {
  const services = useServices();
  const opened = useLoaded(() => openGroups(services, assignment), assignment);
  const say = services.sayFor(null);
  const group = opened?.ok ? opened.value.group : undefined;
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('print.make-up'))}</h1>
          <Link href={`/group/${assignment}`}>{say(phrase('app.back'))}</Link>
        </>
      }
    >
      {opened && !opened.ok && <TroubleNote trouble={opened.error} say={say} />}
      {opened?.ok && !group && <p className="note">{say(phrase('group.no-deck'))}</p>}
      {group && <MakeUpPapers group={group} learner={fromAddress(learner)} />}
    </Sheet>
  );
}
