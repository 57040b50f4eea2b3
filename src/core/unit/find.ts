/**
 * Finds things of a deck by what people call them: id, name, other names. Case, accents and marks between words
 * make no difference. Every word looked for must begin some word of the thing; one that ends in a digit ("T1") must
 * be the whole word where there is such a one, so that it does not bring T10 along.
 */
import type { Deck } from './deck.ts';
import type { Named } from './record.ts';
import type { Ref, RefKind } from './refs.ts';

export interface Called {
  readonly ref: Ref;
  /** Its name, or its id where it has none. */
  readonly name: string;
  readonly id: string;
  readonly aliases: readonly string[];
}

export interface Found extends Called {
  /** The other name that was asked for, when id and name alone do not answer. */
  readonly alias: string | null;
}

const wordsOf = (text: string): string[] =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

/** Everything of the deck that has a name people may look for, in the deck's order. */
export function calledIn(deck: Deck): Called[] {
  const others = (ref: string): string[] =>
    (deck.aliases ?? []).filter((alias) => alias.of === ref).flatMap(({ names }) => names);
  const one = (ref: Ref, id: string, name = id, own: string = ref): Called => ({
    ref,
    id,
    name,
    aliases: [...new Set([...others(ref), ...others(own)])],
  });
  const all = (kind: RefKind, records: readonly Named[] = []): Called[] =>
    records.map(({ id, name }) => one(`${kind}:${id}`, id, name));
  /** A record that has no name of its own, called as what it belongs to. */
  const as = <T>(
    kind: RefKind,
    of: readonly Named[] | undefined,
    owner: RefKind,
    records: readonly T[],
    idOf: (record: T) => string,
  ) =>
    records.map((record) => {
      const id = idOf(record);
      return one(`${kind}:${id}`, id, of?.find((named) => named.id === id)?.name, `${owner}:${id}`);
    });
  const { windings = [], pickups = [], supplies, thermistors, connectors } = deck.electrical ?? {};
  return [
    ...all('seat', deck.seats),
    ...all('element', deck.train.elements),
    ...all('solenoid', deck.solenoids),
    ...all('interlock', deck.interlocks),
    ...all('stack', deck.stacks),
    ...all('fit', deck.fits),
    ...all('part', deck.shaftLine),
    ...all('gearset', deck.train.gearsets),
    ...all('range', deck.chart.ranges),
    ...all('neutral', deck.chart.neutral),
    ...all('position', deck.lever?.positions),
    ...all('sensor', deck.sensors),
    ...as('winding', deck.solenoids, 'solenoid', windings, ({ solenoid }) => solenoid),
    ...as('pickup', deck.sensors, 'sensor', pickups, ({ sensor }) => sensor),
    ...all('thermistor', thermistors),
    ...all('connector', connectors),
    ...all('supply', supplies),
    ...(deck.stacks ?? []).flatMap((stack) =>
      stack.items.map(({ id, name }) => one(`plate:${stack.id}/${id}`, id, name)),
    ),
    ...all('sequence', deck.sequences),
    ...(deck.sequences ?? []).flatMap((sequence) =>
      sequence.steps.map(({ id, text }) => one(`step:${sequence.id}/${id}`, id, text)),
    ),
    ...all('fluid', deck.fluids),
    ...all('torque', deck.torques),
    ...all('weight', deck.weights),
    ...(deck.codes ?? []).map(({ id, meaning }) => one(`code:${id}`, id, meaning)),
  ];
}

interface Entry {
  readonly thing: Called;
  readonly own: readonly string[];
  readonly others: readonly { readonly alias: string; readonly words: readonly string[] }[];
}

interface Index {
  readonly entries: readonly Entry[];
  /** Every word that something is called by. */
  readonly words: ReadonlySet<string>;
}

const indexes = new WeakMap<Deck, Index>();

function indexOf(deck: Deck): Index {
  const made = indexes.get(deck);
  if (made) return made;
  const entries = calledIn(deck).map(
    (thing): Entry => ({
      thing,
      own: [...wordsOf(thing.id), ...wordsOf(thing.name)],
      others: thing.aliases.map((alias) => ({ alias, words: wordsOf(alias) })),
    }),
  );
  const words = entries.flatMap(({ own, others }) => [...own, ...others.flatMap((other) => other.words)]);
  const index = { entries, words: new Set(words) };
  indexes.set(deck, index);
  return index;
}

/** How one word looked for is held against the words of a thing. */
function matchFor(wanted: string, among: ReadonlySet<string>): (word: string) => boolean {
  const isWhole = /\d$/.test(wanted) && among.has(wanted);
  return (word) => (isWhole ? word === wanted : word.startsWith(wanted));
}

/** Own ids and names, then other names, then steps, which only mention a thing. */
const rankOf = ({ ref, alias }: Found): number => (ref.startsWith('step:') ? 2 : alias === null ? 0 : 1);

/** What answers to the text, the likeliest meant first; null when the text asks for nothing. */
export function findIn(deck: Deck, text: string): Found[] | null {
  const wanted = wordsOf(text);
  if (wanted.length === 0) return null;
  const { entries, words } = indexOf(deck);
  const matches = wanted.map((word) => matchFor(word, words));
  const answer = (called: readonly string[]) => matches.every((match) => called.some(match));
  const found = entries.flatMap(({ thing, own, others }): Found[] => {
    if (answer(own)) return [{ ...thing, alias: null }];
    const other = others.find((each) => answer([...own, ...each.words]));
    return other ? [{ ...thing, alias: other.alias }] : [];
  });
  return found.toSorted((a, b) => rankOf(a) - rankOf(b));
}
