/**
 * Turns phrases into sentences: ICU messages, lists, and the shop's own names for the deck's things. The
 * messages are handed in, so that a page loads only its own language, and of that what it needs first.
 */
import { IntlMessageFormat } from 'intl-messageformat';
import type { Phrase, PhraseValue, ThingKind } from '../core/questions/phrase.ts';
import type { Deck, Named } from '../core/unit/deck.ts';
import { type Language, LOCALES, writerOf } from './figures.ts';

export { LANGUAGES, type Language } from './figures.ts';

export type Say = (phrase: Phrase) => string;

/** ICU messages by key. */
export type Messages = Readonly<Record<string, string>>;

/** Kinds whose id is printed on charts and drawings, so that it stands beside the name: "low brake B1". */
const LABELLED: readonly ThingKind[] = ['element', 'gearset', 'solenoid', 'interlock', 'seat'];

const isIn = (tag: string | undefined, language: Language) => tag?.toLowerCase().split('-')[0] === language;

/** What a deck of another language says a thing is called in this one, first of all. */
function aliasIn(deck: Deck, kind: ThingKind, id: string, language: Language): string | undefined {
  if (isIn(deck.language, language)) return undefined;
  /** Neutral rows are spoken of as ranges. */
  const refs = kind === 'range' ? [`range:${id}`, `neutral:${id}`] : [`${kind}:${id}`];
  return deck.aliases?.find(({ of, language: tag }) => refs.includes(of) && isIn(tag, language))?.names[0];
}

/** What the deck calls a thing in a language; its id where it has no name. */
function nameOf(deck: Deck, kind: ThingKind, id: string, language: Language): string {
  const among: Record<ThingKind, readonly Named[] | undefined> = {
    element: deck.train.elements,
    range: [...deck.chart.ranges, ...(deck.chart.neutral ?? [])],
    gearset: deck.train.gearsets,
    shaft: deck.train.shafts,
    solenoid: deck.solenoids,
    position: deck.lever?.positions,
    interlock: deck.interlocks,
    sensor: deck.sensors,
    part: deck.shaftLine,
    seat: deck.seats,
    sequence: deck.sequences,
    stack: deck.stacks,
    fit: deck.fits,
    supply: deck.electrical?.supplies,
    thermistor: deck.electrical?.thermistors,
    connector: deck.electrical?.connectors,
    fluid: deck.fluids,
    torque: deck.torques,
  };
  return aliasIn(deck, kind, id, language) ?? among[kind]?.find((record) => record.id === id)?.name ?? id;
}

/** An argument that the message itself writes as a number, or counts. */
const COUNTED = /\{(\w+), *(?:number|plural)/g;

/** A message of text and bare names of values says itself: nothing needs to be parsed or formatted. */
const PLAIN = /^[^{}']*(?:\{\w+\}[^{}']*)*$/;

/**
 * A speaker of these messages; with a deck it knows the deck's names. Messages that come later are found as
 * well. A missing message throws: tests find it.
 */
export function speakerOf(deck: Deck | null, language: Language, messages: Messages): Say {
  const formats = new Map<
    string,
    { readonly format: IntlMessageFormat; readonly counted: ReadonlySet<string> }
  >();
  const written = writerOf(language);
  let lists: Intl.ListFormat | undefined;
  const list = (items: readonly string[]): string => {
    if (items.length < 2) return items.join('');
    lists ??= new Intl.ListFormat(LOCALES[language], { type: 'conjunction', style: 'long' });
    return lists.format(items);
  };
  const render = (value: PhraseValue): string | number =>
    typeof value === 'string'
      ? written(value)
      : typeof value === 'number'
        ? value
        : 'key' in value
          ? speak(value)
          : list(value.map((item) => String(render(item))));
  const speak = (phrase: Phrase): string => {
    const values = phrase.values ?? {};
    if (phrase.key === 'thing') {
      const kind = values.kind as ThingKind;
      const id = String(values.id);
      if (kind === 'shaft' && id === 'case') return speak({ key: 'shaft.case' });
      const name = deck ? nameOf(deck, kind, id, language) : id;
      return LABELLED.includes(kind) && values.alone !== 'yes' && !name.includes(id) ? `${name} ${id}` : name;
    }
    if (phrase.key === 'text') return written(String(values.text));
    const message = messages[phrase.key];
    if (message === undefined) throw new Error(`no words for "${phrase.key}"`);
    if (PLAIN.test(message))
      return message.replaceAll(/\{(\w+)\}/g, (_, name) => {
        const value = values[name];
        if (value === undefined) throw new Error(`no value for {${name}} of "${phrase.key}"`);
        return String(render(value));
      });
    let format = formats.get(phrase.key);
    if (!format) {
      format = {
        format: new IntlMessageFormat(message, LOCALES[language], undefined, { ignoreTag: true }),
        counted: new Set([...message.matchAll(COUNTED)].map(([, name]) => name ?? '')),
      };
      formats.set(phrase.key, format);
    }
    const { counted } = format;
    const rendered = Object.fromEntries(
      Object.entries(values).map(([name, value]) => [
        name,
        typeof value === 'string' && counted.has(name) ? value : render(value),
      ]),
    );
    return String(format.format.format(rendered));
  };
  return (phrase) => {
    const text = speak(phrase).replaceAll(STOP_IN_QUOTE, '');
    return startsWithThing(phrase, messages) ? asSentence(text) : text;
  };
}

/** The full stop of what is quoted within a sentence that goes on. */
const STOP_IN_QUOTE = /\.(?=[”“»](?:[?,;:.]| \p{Ll}))/gu;

/** Whether the message opens with a thing or a place of the deck, with a list of them, or with a phrase that does. */
function startsWithThing(phrase: Phrase, messages: Messages): boolean {
  const name = /^\{(\w+)\}/.exec(messages[phrase.key] ?? '')?.[1];
  const value = name === undefined ? undefined : phrase.values?.[name];
  const [first] = Array.isArray(value) ? value : [value];
  if (typeof first !== 'object') return false;
  return first.key === 'thing' || first.key.startsWith('place.') || startsWithThing(first, messages);
}

/** A sentence that starts with a shop name starts with a capital; an id like "s4" is left as it is printed. */
function asSentence(text: string): string {
  const first = /^\p{Ll}[\p{Ll}-]*(?=[\s,:])/u.exec(text);
  return first && /[.?!]$/.test(text) ? text.charAt(0).toLocaleUpperCase() + text.slice(1) : text;
}
