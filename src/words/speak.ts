/**
 * Turns phrases into sentences: ICU messages, lists, and the shop's own names for the deck's things. The
 * messages are handed in, so that a page loads only its own language, and of that what it needs first.
 */
import { IntlMessageFormat } from 'intl-messageformat';
import type { DeckNames } from '../core/questions/names.ts';
import type { Phrase, PhraseValue, ThingKind } from '../core/questions/phrase.ts';
import { type Language, LOCALES, writerOf } from './figures.ts';

export { LANGUAGES, type Language } from './figures.ts';

export type Say = (phrase: Phrase) => string;

/** ICU messages by key. */
export type Messages = Readonly<Record<string, string>>;

/** The message of a key; undefined where there is none. */
export type Find = (key: string) => string | undefined;

/** Kinds whose id is printed on charts and drawings, so that it stands beside the name: "low brake B1". */
const LABELLED: readonly ThingKind[] = ['element', 'gearset', 'solenoid', 'interlock', 'seat'];

const isIn = (tag: string | undefined, language: Language) => tag?.toLowerCase().split('-')[0] === language;

/** What a deck of another language says a thing is called in this one, first of all. */
function aliasIn(names: DeckNames, kind: ThingKind, id: string, language: Language): string | undefined {
  if (isIn(names.language, language)) return undefined;
  /** Neutral rows are spoken of as ranges. */
  const refs = kind === 'range' ? [`range:${id}`, `neutral:${id}`] : [`${kind}:${id}`];
  return names.aliases.find(({ of, language: tag }) => refs.includes(of) && isIn(tag, language))?.names[0];
}

/** What the deck calls a thing in a language; its id where it has no name. */
const nameOf = (names: DeckNames, kind: ThingKind, id: string, language: Language): string =>
  aliasIn(names, kind, id, language) ?? names.things[kind].find((record) => record.id === id)?.name ?? id;

/** An argument that the message itself writes as a number, or counts. */
const COUNTED = /\{(\w+), *(?:number|plural)/g;

/** A message of text and bare names of values says itself: nothing needs to be parsed or formatted. */
const PLAIN = /^[^{}']*(?:\{\w+\}[^{}']*)*$/;

/**
 * A speaker of the messages that `find` finds; with a deck's names it knows these. A missing message throws:
 * tests find it.
 */
export function speakerOf(names: DeckNames | null, language: Language, find: Find): Say {
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
      const name = names ? nameOf(names, kind, id, language) : id;
      return LABELLED.includes(kind) && values.alone !== 'yes' && !name.includes(id) ? `${name} ${id}` : name;
    }
    if (phrase.key === 'text') return written(String(values.text));
    const message = find(phrase.key);
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
    return startsWithThing(phrase, find) ? asSentence(text) : text;
  };
}

/** The full stop of what is quoted within a sentence that goes on. */
const STOP_IN_QUOTE = /\.(?=[”“»](?:[?,;:.]| \p{Ll}))/gu;

/** Whether the message opens with a thing or a place of the deck, with a list of them, or with a phrase that does. */
function startsWithThing(phrase: Phrase, find: Find): boolean {
  const name = /^\{(\w+)\}/.exec(find(phrase.key) ?? '')?.[1];
  const value = name === undefined ? undefined : phrase.values?.[name];
  const [first] = Array.isArray(value) ? value : [value];
  if (typeof first !== 'object') return false;
  return first.key === 'thing' || first.key.startsWith('place.') || startsWithThing(first, find);
}

/** A sentence that starts with a shop name starts with a capital; an id like "s4" is left as it is printed. */
function asSentence(text: string): string {
  const first = /^\p{Ll}[\p{Ll}-]*(?=[\s,:])/u.exec(text);
  return first && /[.?!]$/.test(text) ? text.charAt(0).toLocaleUpperCase() + text.slice(1) : text;
}
