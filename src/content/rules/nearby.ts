/** Rows one change away from a given one, to tell an author what he may have meant. */

import { type Phrase, say } from '../../core/questions/phrase.ts';
import { decimalsOf, makeDecimal, type Rational } from '../../core/rational.ts';
import type { Deck, DeckRange } from '../../core/unit/deck.ts';
import { solveRow } from './rows.ts';

interface Near {
  readonly applied: readonly string[];
  readonly ratio: Rational;
}

/** Rows that drive with one element fewer, one more, or one in place of another. */
function drivingNear(deck: Deck, applied: readonly string[]): Near[] {
  const ids = deck.train.elements.map((element) => element.id);
  const fewer = applied.map((_, index) => applied.toSpliced(index, 1));
  const more = (row: readonly string[]) =>
    ids.filter((id) => !applied.includes(id)).map((id) => [...row, id]);
  return [...fewer, ...more(applied), ...fewer.flatMap(more)].flatMap((row) => {
    const ratio = solveRow(deck.train, row)?.ratio;
    return ratio ? [{ applied: row, ratio }] : [];
  });
}

/** A hint after "expected": which elements, one change away, give the stated ratio; best such as no row has. */
export function statedHint(deck: Deck, { applied, ratio: stated }: DeckRange): Phrase {
  if (stated === undefined) return say('hint.none');
  const key = (ids: readonly string[]) => [...ids].sort().join(' ');
  const taken = new Set(deck.chart.ranges.map((range) => key(range.applied)));
  const matches = drivingNear(deck, applied).filter(
    ({ ratio }) => makeDecimal(ratio, decimalsOf(stated)) === stated,
  );
  const match = matches.find((near) => !taken.has(key(near.applied))) ?? matches[0];
  if (!match) return say('hint.none');
  const elements = deck.train.elements.map(({ id }) => id).filter((id) => match.applied.includes(id));
  return say('hint.stated', { ratio: stated, elements });
}

/** The same, or else which one element more or fewer makes the row drive. */
export function drivesHint(deck: Deck, range: DeckRange): Phrase {
  const stated = statedHint(deck, range);
  if (stated.key !== 'hint.none') return stated;
  const near = drivingNear(deck, range.applied);
  const adds = near.filter(({ applied }) => applied.length > range.applied.length);
  if (adds.length > 0) return say('hint.add', { elements: adds.map(({ applied }) => applied.at(-1)!) });
  const drops = near.filter(({ applied }) => applied.length < range.applied.length);
  if (drops.length > 0)
    return say('hint.drop', {
      elements: drops.map(({ applied }) => range.applied.find((id) => !applied.includes(id)) ?? ''),
    });
  return stated;
}
