/** A question on paper: cautions above it, the drawing, and room for the answer in the form it asks for. */
import type { ReactNode } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { AnswerSpace, Option, Question } from '../../core/questions/question.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import { labelIn } from '../../words/answer-in-words.ts';
import type { Say } from '../../words/words.ts';

const Blank = () => <span className="blank" />;
const labels = (options: readonly Option[], say: Say) => options.map(({ label }) => say(label)).join(', ');

function Lines({ options, say, mark }: { options: readonly Option[]; say: Say; mark: ReactNode }) {
  return (
    <ul className="paper-options">
      {options.map(({ id, label }) => (
        <li key={id}>
          {mark}
          {say(label)}
        </li>
      ))}
    </ul>
  );
}

function FillTable({ space, say }: { space: Extract<AnswerSpace, { form: 'fill' }>; say: Say }) {
  const cell = (row: string, column: string) => {
    const key = `${row}/${column}`;
    if (space.asked.includes(key)) return <Blank />;
    const given = space.given[key];
    return given === undefined ? '' : labelIn(space.marks, given, say);
  };
  return (
    <>
      <p>{say(phrase('print.fill', { marks: labels(space.marks, say) }))}</p>
      <table className="listing">
        <thead>
          <tr>
            <td />
            {space.columns.map(({ id, label }) => (
              <th key={id} scope="col">
                {say(label)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {space.rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">{say(row.label)}</th>
              {space.columns.map((column) => (
                <td key={column.id}>{cell(row.id, column.id)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** Where the answer is written. */
function Room({ space, say }: { space: AnswerSpace; say: Say }) {
  switch (space.form) {
    case 'set':
      return (
        <>
          <p>{say(phrase('answer.tick-all'))}</p>
          <Lines options={space.options} say={say} mark={<span className="box" />} />
        </>
      );
    case 'one':
      return (
        <>
          <p>{say(phrase('print.one'))}</p>
          <Lines options={space.options} say={say} mark={<span className="box round" />} />
        </>
      );
    case 'order':
      return (
        <>
          <p>{say(phrase('print.order', { first: space.first, last: space.last }))}</p>
          <Lines options={space.items} say={say} mark={<Blank />} />
        </>
      );
    case 'number':
      return (
        <p>
          <span className="blank wide" /> {say(phrase('text', { text: space.unit ?? '' }))}{' '}
          <span className="provenance-inline">
            {say(phrase('print.number', { tolerance: space.tolerance, unit: space.unit ?? 'none' }))}
          </span>
        </p>
      );
    case 'pair':
      return (
        <>
          <p>{say(phrase('print.pair', { right: labels(space.right, say) }))}</p>
          <ul className="paper-options">
            {space.left.map(({ id, label }) => (
              <li key={id}>
                {say(label)} <span className="blank wide" />
              </li>
            ))}
          </ul>
        </>
      );
    case 'fill':
      return <FillTable space={space} say={say} />;
    case 'place':
      return (
        <>
          <p>
            {say(phrase('print.place'))} <Blank />
          </p>
          <p>
            {space.spots
              .map(({ label }, index) =>
                say(phrase('answer.spot', { number: String(index + 1), what: label })),
              )
              .join('; ')}
          </p>
        </>
      );
  }
}

interface Props {
  readonly question: Question;
  readonly number: number;
  readonly unit: Unit;
  readonly say: Say;
}

export function PaperQuestion({ question, number, unit, say }: Props) {
  const { cautions, prompt, drawing, space } = question;
  return (
    <section className="paper-question">
      {cautions.length > 0 && (
        <div className="caution">
          <strong>{say(phrase('drill.caution'))}</strong>
          {cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
          <p>{say(phrase('drill.caution-defer'))}</p>
        </div>
      )}
      <h3>{`${number}. ${say(prompt)}`}</h3>
      {drawing && <DrawingView drawing={drawing} unit={unit} say={say} />}
      <Room space={space} say={say} />
    </section>
  );
}
