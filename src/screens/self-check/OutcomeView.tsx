/** What a finished self-check says, and what it does not: figures with their intervals, slip-ups, reasons. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Compared } from '../../core/self-check/book.ts';
import type { SelfCheck } from '../../core/self-check/check.ts';
import type { Interval } from '../../core/self-check/interval.ts';
import type { Answered, Outcome } from '../../core/self-check/outcome.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';

const percent = (share: number) => Math.round(share * 100);
const rangeOf = ({ low, high }: Interval) => ({ low: percent(low), high: percent(high) });

function Worked({ one, say }: { one: Answered; say: Say }) {
  const { sayFor } = useServices();
  const speak = sayFor(one.unit);
  const { question, verdict } = one;
  return (
    <details>
      <summary>
        {say(
          phrase('self-check.worked', {
            place: one.index + 1,
            verdict: verdict === null ? 'open' : verdict.right ? 'right' : 'wrong',
            family: phrase(`family.${question.family}`),
          }),
        )}
      </summary>
      <div>
        {question.cautions.map((caution) => (
          <p key={caution} className="caution">
            {caution}
          </p>
        ))}
        <p>
          <strong>{speak(question.prompt)}</strong>
        </p>
        {verdict?.slipUps.map((slipUp) => (
          <p key={slipUp}>{say(phrase(`slip-up.${slipUp}`))}</p>
        ))}
        <p>{speak(question.explanation.row)}</p>
        <p>{speak(question.explanation.reason)}</p>
        <ol className="steps">
          {question.explanation.more
            .map((step) => speak(step))
            .map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
        </ol>
      </div>
    </details>
  );
}

interface Props {
  readonly check: SelfCheck;
  readonly outcome: Outcome;
  readonly compared: Compared | null;
  readonly date: string;
  readonly say: Say;
}

export function OutcomeView({ check, outcome, compared, date, say }: Props) {
  const missed = outcome.answered.filter(({ verdict }) => !verdict?.right);
  return (
    <>
      <section className="frame">
        <h2>{say(phrase('self-check.right-of', { right: outcome.right, asked: outcome.asked, date }))}</h2>
        <p>{say(phrase('self-check.interval', rangeOf(outcome.interval)))}</p>
        <p>
          {say(
            phrase('self-check.chance', {
              threshold: percent(check.blueprint.threshold),
              chance: percent(outcome.chance),
            }),
          )}
        </p>
        {compared && (
          <p>
            {say(
              phrase(compared.beyondError ? 'self-check.changed' : 'self-check.not-changed', {
                before: compared.before.right,
                beforeAsked: compared.before.asked,
                after: compared.after.right,
                afterAsked: compared.after.asked,
                ...rangeOf(compared.rise),
              }),
            )}
          </p>
        )}
        <p className="aside">{say(phrase('self-check.words'))}</p>
      </section>
      {outcome.sureAndWrong.length > 0 && (
        <section>
          <h2>{say(phrase('self-check.sure-and-wrong'))}</h2>
          {outcome.sureAndWrong.map((one) => (
            <Worked key={one.index} one={one} say={say} />
          ))}
        </section>
      )}
      <section>
        <h2>{say(phrase('self-check.by-area'))}</h2>
        <table className="listing">
          <tbody>
            {outcome.areas.map((area) => (
              <tr key={area.area}>
                <th scope="row">{say(phrase(`area.${area.area}`))}</th>
                <td>
                  <strong>
                    {say(phrase('self-check.area-score', { right: area.right, asked: area.asked }))}
                  </strong>
                  <span className="provenance">
                    {area.enough
                      ? say(phrase('self-check.interval', rangeOf(area.interval)))
                      : say(phrase('self-check.too-few'))}
                  </span>
                  {area.right < area.asked && (
                    <span className="provenance">{say(phrase(`area.reading.${area.area}`))}</span>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {outcome.slipUps.length > 0 && (
        <section>
          <h2>{say(phrase('end.mixed-up'))}</h2>
          {outcome.slipUps.map(({ slipUp, evidence }) => (
            <details key={slipUp}>
              <summary>
                {say(phrase(`slip-up.${slipUp}`))} ({evidence.length})
              </summary>
              <div>
                {evidence.map((one) => (
                  <Worked key={one.index} one={one} say={say} />
                ))}
              </div>
            </details>
          ))}
        </section>
      )}
      {missed.length > 0 && (
        <section>
          <h2>{say(phrase('self-check.missed'))}</h2>
          {missed.map((one) => (
            <Worked key={one.index} one={one} say={say} />
          ))}
        </section>
      )}
    </>
  );
}
