/**
 * How well the kinds of question measure, from the reports collected: read only when it is opened, since it
 * goes through every report. Kinds that mislead stand first.
 */
import { useState } from 'react';
import { type FamilyQuality, LEAST_ANSWERS, LEAST_PEOPLE, qualityOf } from '../../core/quality/quality.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { joinPile } from '../../exchange/pile.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';

type Read = { readonly found: readonly FamilyQuality[] } | { readonly trouble: StoreTrouble };

const percent = (share: number) => Math.round(share * 100);

export function QualitySection({ assignment, say }: { assignment: string; say: Say }) {
  const { store } = useServices();
  const [read, setRead] = useState<Read | null>(null);
  const open = async () => {
    const reports = await store.classroom.reportsOf(assignment);
    if (!reports.ok) return setRead({ trouble: reports.error });
    const { joined } = await joinPile(reports.value.reports);
    setRead({
      found: qualityOf(new Map(joined.learners.map(({ learner, attempts }) => [learner, attempts]))),
    });
  };
  if (!read)
    return (
      <button type="button" className="button plain" onClick={() => void open()}>
        {say(phrase('quality.open'))}
      </button>
    );
  if ('trouble' in read) return <TroubleNote trouble={read.trouble} say={say} />;
  if (read.found.length === 0)
    return <p>{say(phrase('quality.too-few', { answers: LEAST_ANSWERS, people: LEAST_PEOPLE }))}</p>;
  return (
    <>
      <p className="aside">{say(phrase('quality.about'))}</p>
      <table className="listing">
        <tbody>
          {read.found.map((quality) => (
            <tr key={quality.family}>
              <th scope="row">{say(phrase(`family.${quality.family}`))}</th>
              <td>
                {quality.misleads && <strong>{say(phrase('quality.misleads'))} </strong>}
                {say(
                  phrase('quality.figures', {
                    answers: quality.answers,
                    people: quality.people,
                    missed: percent(quality.difficulty),
                    settled: quality.discrimination === null ? 'no' : 'yes',
                    discrimination: (quality.discrimination ?? 0).toFixed(2),
                  }),
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
