/**
 * Two decks that were edited apart, brought together: what is taken from the other side, and by fact what somebody has
 * to choose. Nothing changes before all is chosen and taken.
 */
import { useEffect, useId, useMemo, useState } from 'react';
import { type ConflictsByFact, conflictsByFact } from '../../core/deck-merge/by-fact.ts';
import {
  differencePhrase,
  differencesBetween,
  placePhrase,
  valuePhrase,
} from '../../core/deck-merge/differences.ts';
import { type Conflict, type MergeSide, mergeDecks } from '../../core/deck-merge/merge.ts';
import { isFields, VOUCHING, writePath } from '../../core/deck-merge/records.ts';
import { factsOf } from '../../core/questions/facts.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Deck } from '../../core/unit/deck.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { factPhrase } from '../group/told.ts';

interface Props {
  readonly base: Deck;
  readonly mine: Deck;
  readonly theirs: Deck;
  /** Both sides solved, where both pass the checks: only then is it known which facts are in doubt. */
  readonly solved: { readonly mine: Unit; readonly theirs: Unit } | null;
  /** What the other side is called. */
  readonly other: Phrase;
  readonly say: Say;
  readonly onTake: (merged: Deck) => void;
}

/** A conflict about vouching may be left: the value then counts as unsure. */
const mustChoose = ({ kind }: Conflict) => kind !== 'vouched';

function Choice({
  conflict,
  chosen,
  other,
  say,
  onChoose,
}: {
  conflict: Conflict;
  chosen: MergeSide | undefined;
  other: Phrase;
  say: Say;
  onChoose: (side: MergeSide | undefined) => void;
}) {
  const name = useId();
  const { kind, path, base, mine, theirs } = conflict;
  // Of a record in which only the vouching is in doubt, who vouched for it tells the sides apart.
  const told = (value: unknown) =>
    valuePhrase(kind === 'vouched' && isFields(value) ? value.verified : value);
  const sides: readonly (readonly [MergeSide | undefined, string])[] = [
    ...(mustChoose(conflict) ? [] : [[undefined, say(phrase('together.leave-unsure'))] as const]),
    ['mine', say(phrase('together.mine', { value: told(mine) }))],
    ['theirs', say(phrase('together.theirs', { other, value: told(theirs) }))],
  ];
  return (
    <fieldset className="answer conflict">
      <legend>
        {say(placePhrase(path))}
        {': '}
        {say(phrase(`together.${kind}`, { base: valuePhrase(base) }))}
      </legend>
      <div className="choices wide">
        {sides.map(([side, words]) => (
          <label key={side ?? 'none'} className="choice">
            <input type="radio" name={name} checked={chosen === side} onChange={() => onChoose(side)} />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** Which facts each conflict is about; worked out after the page has drawn, since it poses many questions. */
function useFacts(conflicts: readonly Conflict[], solved: Props['solved']): ConflictsByFact | null {
  const [byFact, setByFact] = useState<ConflictsByFact | null>(null);
  useEffect(() => {
    setByFact(null);
    if (!solved || conflicts.length === 0) return;
    const timer = setTimeout(() => setByFact(conflictsByFact(conflicts, solved.mine, solved.theirs)));
    return () => clearTimeout(timer);
  }, [conflicts, solved]);
  return byFact;
}

export function Together({ base, mine, theirs, solved, other, say, onTake }: Props) {
  const [choices, setChoices] = useState<ReadonlyMap<string, MergeSide>>(new Map());
  // Which conflicts there are does not hang on what was chosen.
  const { conflicts } = useMemo(() => mergeDecks(base, mine, theirs), [base, mine, theirs]);
  const merged = useMemo(() => mergeDecks(base, mine, theirs, choices).deck, [base, mine, theirs, choices]);
  const taken = useMemo(() => {
    const { deck, conflicts: open } = mergeDecks(base, mine, theirs);
    const vouched = open.filter(({ kind }) => kind === 'vouched').map(({ path }) => writePath(path));
    return differencesBetween(mine, deck).filter(
      ({ path }) =>
        !(VOUCHING as readonly string[]).includes(path.at(-1)!.field) ||
        !vouched.includes(writePath(path.slice(0, -1))),
    );
  }, [base, mine, theirs]);
  const byFact = useFacts(conflicts, solved);
  const left = conflicts.filter((conflict) => mustChoose(conflict) && !choices.has(conflict.id)).length;
  const choose = (id: string, side: MergeSide | undefined) =>
    setChoices((before) => {
      const next = new Map(before);
      if (side) next.set(id, side);
      else next.delete(id);
      return next;
    });
  const choice = (conflict: Conflict) => (
    <Choice
      key={conflict.id}
      conflict={conflict}
      chosen={choices.get(conflict.id)}
      other={other}
      say={say}
      onChoose={(side) => choose(conflict.id, side)}
    />
  );
  /** Facts that wait for the same choices stand together, and no choice stands there twice. */
  const groups = new Map<string, { facts: string[]; conflicts: readonly Conflict[] }>();
  const facts = solved ? new Map(factsOf(solved.mine).map((fact) => [fact.id, fact])) : new Map();
  for (const { fact, conflicts: of } of byFact?.facts ?? []) {
    const key = of.map(({ id }) => id).join(' ');
    const group = groups.get(key) ?? { facts: [], conflicts: of };
    const known = facts.get(fact);
    group.facts.push(known ? say(factPhrase(known)) : fact);
    groups.set(key, group);
  }
  const shown = new Set<string>();
  return (
    <>
      <h3>{say(phrase('together.taken', { count: taken.length, other }))}</h3>
      <ul className="steps">
        {taken.map((difference) => {
          const words = say(differencePhrase(difference));
          return <li key={words}>{words}</li>;
        })}
      </ul>
      <h3>{say(phrase('together.conflicts', { count: conflicts.length }))}</h3>
      {conflicts.length > 0 && !byFact && conflicts.map(choice)}
      {byFact &&
        [...groups].map(([key, group]) => {
          const fresh = group.conflicts.filter(({ id }) => !shown.has(id));
          for (const { id } of fresh) shown.add(id);
          return fresh.length === 0 ? null : (
            <section key={key} className="frame">
              <h4>
                {say(phrase('together.facts', { facts: group.facts.slice(0, 3), count: group.facts.length }))}
              </h4>
              {fresh.map(choice)}
            </section>
          );
        })}
      {byFact && byFact.others.length > 0 && (
        <section className="frame">
          <h4>{say(phrase('together.no-fact'))}</h4>
          {byFact.others.map(choice)}
        </section>
      )}
      <p role="status">{say(phrase('together.left', { count: left }))}</p>
      <button
        type="button"
        className="button key"
        aria-disabled={left > 0}
        onClick={() => left === 0 && onTake(merged)}
      >
        {say(phrase('together.take'))}
      </button>
    </>
  );
}
