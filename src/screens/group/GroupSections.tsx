/** The group as a whole: what it mixes up, what nobody holds, bench groups, before and after class, flags. */

import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { compareBeforeAfter, LEAST_PEOPLE } from '../../core/group/before-after.ts';
import { benchGroups } from '../../core/group/bench-groups.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { questionOf } from '../../core/questions/reopen.ts';
import type { Say } from '../../words/words.ts';
import type { OpenedGroup } from './open-group.ts';
import { confusionPhrase, factPhrase, percent } from './told.ts';

interface Props {
  readonly group: OpenedGroup;
  readonly say: Say;
}

/** Entries shown at once; the rest on tap. */
const FIRST = 8;

function Entries({ entries, say }: { entries: readonly { key: string; text: string }[]; say: Say }) {
  const item = ({ key, text }: { key: string; text: string }) => <li key={key}>{text}</li>;
  return (
    <>
      <ul className="steps">{entries.slice(0, FIRST).map(item)}</ul>
      {entries.length > FIRST && (
        <details>
          <summary>{say(phrase('group.more', { count: entries.length - FIRST }))}</summary>
          <ul className="steps">{entries.slice(FIRST).map(item)}</ul>
        </details>
      )}
    </>
  );
}

export function MixedUp({ group: { board }, say }: Props) {
  const confusions = board.confusions.map(({ confusion, people, times }) => ({
    key: JSON.stringify(confusion),
    text: say(phrase('group.by-people', { what: confusionPhrase(confusion), people, times })),
  }));
  const slipUps = board.slipUps.map(({ slipUp, people, times }) => ({
    key: slipUp,
    text: say(phrase('group.by-people', { what: phrase(`slip-up.${slipUp}`), people, times })),
  }));
  if (confusions.length + slipUps.length === 0) return <p>{say(phrase('group.nothing-mixed-up'))}</p>;
  return (
    <>
      {confusions.length > 0 && <Entries entries={confusions} say={say} />}
      {slipUps.length > 0 && (
        <>
          <h3>{say(phrase('group.slip-ups'))}</h3>
          <Entries entries={slipUps} say={say} />
        </>
      )}
    </>
  );
}

export function NobodyHolds({ group: { board, facts }, say }: Props) {
  const known = new Map(facts.map((fact) => [fact.id, fact]));
  if (board.nobodyHolds.length === 0) return <p>{say(phrase('group.all-held'))}</p>;
  const entries = board.nobodyHolds.map(({ fact, tried }) => ({
    key: fact,
    text: say(phrase('group.unheld', { fact: factPhrase(known.get(fact)!), tried })),
  }));
  return <Entries entries={entries} say={say} />;
}

export function BenchGroups({ group: { board }, say }: Props) {
  const [size, setSize] = useState(3);
  const made = useMemo(
    () =>
      benchGroups(
        board.people.map(({ weakness }) => weakness),
        board.areas,
        size,
      ),
    [board, size],
  );
  const names = new Map(board.people.map(({ learner, name }) => [learner, name]));
  const namesOf = (learners: readonly string[]) => learners.map((learner) => names.get(learner) ?? learner);
  return (
    <>
      <label className="field">
        <span>{say(phrase('group.size'))}</span>
        <select value={size} onChange={(event) => setSize(Number(event.target.value))}>
          {[2, 3, 4, 5, 6].map((one) => (
            <option key={one}>{one}</option>
          ))}
        </select>
      </label>
      {made.groups.length === 0 && <p>{say(phrase('group.no-groups'))}</p>}
      <ul className="steps">
        {made.groups.map(({ area, learners, missedShare, missedByAll, tried }) => (
          <li key={learners.join(' ')}>
            <strong>{say(phrase(`area.${area}`))}: </strong>
            {say(
              phrase('group.bench', {
                names: namesOf(learners),
                missed: percent(missedShare),
                all: percent(missedByAll),
                tried,
              }),
            )}
          </li>
        ))}
      </ul>
      {made.unplaced.length > 0 && <p>{say(phrase('group.unplaced', { names: namesOf(made.unplaced) }))}</p>}
    </>
  );
}

export function BeforeAfter({ group: { digests, facts }, say }: Props) {
  const compared = useMemo(() => compareBeforeAfter(digests, facts), [digests, facts]);
  const nothing = compared.areas.length === 0 && compared.withheld.length === 0;
  return (
    <>
      <p className="aside">{say(phrase('group.before-after-note', { least: LEAST_PEOPLE }))}</p>
      {nothing && <p>{say(phrase('group.no-before-after'))}</p>}
      <ul className="steps">
        {compared.areas.map(({ area, people, before, after, rise, beyondChance }) => (
          <li key={area}>
            {say(
              phrase('group.rise', {
                area: phrase(`area.${area}`),
                people,
                before: before.right,
                after: after.right,
                asked: before.asked,
                low: percent(rise.low),
                high: percent(rise.high),
                beyond: beyondChance ? 'yes' : 'no',
              }),
            )}
          </li>
        ))}
      </ul>
      {compared.withheld.length > 0 && (
        <p>
          {say(
            phrase('group.withheld', {
              areas: compared.withheld.map((area) => phrase(`area.${area}`)),
              least: LEAST_PEOPLE,
            }),
          )}
        </p>
      )}
    </>
  );
}

export function FlagList({ group: { flags, unit }, say }: Props) {
  if (flags.length === 0) return <p>{say(phrase('group.no-flags'))}</p>;
  return (
    <ul className="flags">
      {flags.toReversed().map((flag) => {
        const { id, note, family, fact, revision, seed } = flag;
        const question = revision === unit.deck.revision ? questionOf(unit, flag) : undefined;
        return (
          <li key={id} className="note">
            <p>
              <strong>{note}</strong>
            </p>
            {question ? (
              <>
                <p>{say(question.prompt)}</p>
                <p className="aside">
                  {say(question.explanation.row)} {say(question.explanation.reason)}
                </p>
              </>
            ) : (
              <p className="aside">{say(phrase('group.flag-older', { revision }))}</p>
            )}
            <p className="provenance">{`${flag.deck} r${revision} ${family} ${fact} ${seed}`}</p>
            <Link
              className="button plain"
              href={`/workshop/fix/${flag.deck}/${encodeURIComponent(`flag:${id}`)}`}
            >
              {say(phrase('fix.link'))}
            </Link>
          </li>
        );
      })}
    </ul>
  );
}
