import type { Deck, Named } from '../../core/unit/deck.ts';
import type { Rule } from './rule.ts';

const plain = (text: string) => text.trim().toLowerCase();

/** What things of the kinds that are named in questions are called, by id and by name. */
function callings(deck: Deck): Map<string, Set<string>> {
  const called = new Map<string, Set<string>>();
  const note = (name: string, ref: string) => {
    const refs = called.get(plain(name)) ?? new Set();
    called.set(plain(name), refs.add(ref));
  };
  const noteAll = (kind: string, records: readonly Named[] = []) => {
    for (const { id, name } of records) for (const word of [id, name ?? id]) note(word, `${kind}:${id}`);
  };
  noteAll('element', deck.train.elements);
  noteAll('gearset', deck.train.gearsets);
  noteAll('solenoid', deck.solenoids);
  noteAll('sensor', deck.sensors);
  noteAll('part', deck.shaftLine);
  noteAll('seat', deck.seats);
  noteAll('stack', deck.stacks);
  for (const { of, names } of deck.aliases ?? []) for (const name of names) note(name, of);
  return called;
}

const kindOf = (ref: string) => ref.split(':')[0];

/** Another name means one thing of its kind. */
export const aliasesClear: Rule = {
  id: 'aliases-clear',
  severity: 'warning',
  check(deck) {
    const called = callings(deck);
    return (deck.aliases ?? []).flatMap(({ of, names }, index) =>
      names.flatMap((name, entry) => {
        const others = [...(called.get(plain(name)) ?? [])].filter(
          (ref) => ref !== of && kindOf(ref) === kindOf(of),
        );
        return others.length === 0
          ? []
          : [{ at: ['aliases', index, 'names', entry], values: { name, other: others[0]! } }];
      }),
    );
  },
};
