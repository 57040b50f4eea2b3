/** Topic by topic, and in each topic fact by fact: what is known now, and what class day is expected to find. */
import { useState } from 'react';
import { areaOf } from '../../core/assign/assignment.ts';
import type { Memory } from '../../core/memory/fold.ts';
import { recallOn } from '../../core/memory/recall.ts';
import { factPhrase } from '../../core/questions/fact-name.ts';
import type { Fact } from '../../core/questions/facts.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { FactId } from '../../core/questions/question.ts';
import { AREAS, type Area } from '../../core/self-check/areas.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import type { Outlook } from '../use-outlook.ts';

interface Props {
  readonly unit: Unit;
  readonly facts: readonly Fact[];
  readonly memory: Memory;
  readonly day: number;
  readonly forecast: Outlook['forecast'];
  readonly say: Say;
}

const percent = (share: number) => Math.round(100 * share);

function FactRows({ unit, facts, memory, day, forecast, say }: Props) {
  const expected = new Map<FactId, number>(
    forecast?.readiness.facts.map((each) => [each.fact, each.expected]),
  );
  const leftOut = new Set(forecast?.leftOut);
  const rows = facts.map((fact) => {
    const state = memory.get(fact.id);
    return { fact, now: state ? recallOn(state, day) : null, byClass: expected.get(fact.id) ?? null };
  });
  rows.sort((a, b) => (a.byClass ?? a.now ?? 0) - (b.byClass ?? b.now ?? 0));
  const share = (value: number) => say(phrase('progress.share', { share: percent(value) }));
  return (
    <table className="listing">
      <thead>
        <tr>
          <th scope="col">{say(phrase('progress.fact'))}</th>
          <th scope="col">{say(phrase('progress.now'))}</th>
          {forecast && <th scope="col">{say(phrase('progress.by-class'))}</th>}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ fact, now, byClass }) => (
          <tr key={fact.id}>
            <th scope="row">{say(factPhrase(unit.deck, fact))}</th>
            <td>{now === null ? say(phrase('progress.not-met')) : share(now)}</td>
            {forecast && (
              <td>
                {leftOut.has(fact.id) ? say(phrase('progress.no-time')) : byClass !== null && share(byClass)}
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Topic({ area, ...props }: Props & { readonly area: Area }) {
  const { facts, memory, day, forecast, say } = props;
  const [open, setOpen] = useState(false);
  const known = facts.reduce((sum, { id }) => {
    const state = memory.get(id);
    return sum + (state ? recallOn(state, day) : 0);
  }, 0);
  const ready = forecast?.readiness.topics.get(area);
  const values = { area: phrase(`area.${area}`), now: percent(known / facts.length) };
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {say(
          ready
            ? phrase('progress.topic-class', {
                ...values,
                low: percent(ready.low),
                high: percent(ready.high),
              })
            : phrase('progress.topic', values),
        )}
      </summary>
      {open && <FactRows {...props} />}
    </details>
  );
}

export function Topics(props: Props) {
  const own = (area: Area) => props.facts.filter((fact) => areaOf(fact) === area);
  return AREAS.filter((area) => own(area).length > 0).map((area) => (
    <Topic key={area} {...props} area={area} facts={own(area)} />
  ));
}
