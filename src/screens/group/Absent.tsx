/** Names on the list from which nothing came, and the sheets on paper of everybody. */
import { Link } from 'wouter';
import { dateOfDay, localDay } from '../../core/memory/day.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import type { OpenedGroup } from './open-group.ts';
import { makeUpAddress, marksAddress, paperLearner } from './sheets.ts';

interface Props {
  readonly group: OpenedGroup;
  readonly say: Say;
}

export function NotHeardFrom({ group: { board, assignment }, say }: Props) {
  if (board.notHeardFrom.length === 0) return null;
  return (
    <>
      <p>{say(phrase('group.not-heard', { names: board.notHeardFrom }))}</p>
      <details>
        <summary>{say(phrase('group.absent'))}</summary>
        <p className="aside">{say(phrase('group.absent-note'))}</p>
        <ul className="steps">
          {board.notHeardFrom.map((name) => (
            <li key={name}>
              <Link href={makeUpAddress(assignment.id, paperLearner(name))}>
                {say(phrase('group.absent-sheet', { name }))}
              </Link>
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}

/** Printed sheets, and where their marks are typed in. */
export function SheetList({ group: { assignment, digests }, say }: Props) {
  const { store, now } = useServices();
  const { id } = assignment;
  const answers = digests.reduce((sum, digest) => sum + digest.answers, 0);
  const sheets = useLoaded(() => store.classroom.sheetsOf(id), `${id}/${answers}`);
  if (!sheets) return null;
  if (!sheets.ok) return <TroubleNote trouble={sheets.error} say={say} />;
  if (sheets.value.length === 0) return <p>{say(phrase('group.no-sheets'))}</p>;
  const dateOf = (at: number) => dateOfDay(localDay(at, now().zone));
  return (
    <ul className="steps">
      {sheets.value.map((sheet) => (
        <li key={sheet.id}>
          {sheet.name}:{' '}
          {sheet.markedAt === null ? (
            <Link href={marksAddress(id, sheet.id)}>
              {say(phrase('group.sheet-waits', { sheet: sheet.id, on: dateOf(sheet.madeAt) }))}
            </Link>
          ) : (
            say(phrase('group.sheet-marked', { sheet: sheet.id, on: dateOf(sheet.markedAt) }))
          )}
        </li>
      ))}
    </ul>
  );
}
