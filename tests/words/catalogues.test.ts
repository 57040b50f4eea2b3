/**
 * The languages against English: the same files, keys and arguments, plurals that the language has (CLDR, by
 * Intl), and nothing left in English. Whether a sentence is well said no test can tell.
 */
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';
import { DE } from '../../src/words/de/index.ts';
import { EN } from '../../src/words/en/index.ts';
import { ES } from '../../src/words/es/index.ts';
import { LANGUAGES } from '../../src/words/speak.ts';

type Messages = Readonly<Record<string, string>>;
const CATALOGUES: Readonly<Record<(typeof LANGUAGES)[number], Messages>> = { en: EN, de: DE, es: ES };
const OTHERS = LANGUAGES.filter((language) => language !== 'en');

/** Every file of words: language, subject, and its messages together. */
const FILES = Object.entries(
  import.meta.glob<Readonly<Record<string, Messages>>>('../../src/words/*/*.ts', { eager: true }),
)
  .map(([path, exports]) => {
    const [language = '', file = ''] = path.split('/').slice(-2);
    return { language, subject: file.replace(/\.ts$/, ''), exports };
  })
  .filter(({ subject }) => !['index', 'drill', 'rest'].includes(subject))
  .map(({ exports, ...file }) => ({
    ...file,
    names: Object.keys(exports),
    keys: Object.values(exports).flatMap((messages) => Object.keys(messages)),
  }));

/** The same word in both languages, or a sign, a format, a name. */
const ALIKE: Readonly<Record<(typeof OTHERS)[number], ReadonlySet<string>>> = {
  de: new Set(
    `pin.field print.size.letter sensor-frequency.row-hertz shop.rename sling-load.row workshop.pickup workshop.pin-id
    workshop.pins workshop.sensor`.split(/\s+/),
  ),
  es: new Set(
    `cli.check.error difference.no electrical.solenoid-pin look-up-first.torque manual-range.no output-speed.road
    pin.field place.pin place.sensor place.torque print.torques sensor-frequency.row-hertz sensor-frequency.row-rpm
    workshop.pickup workshop.pin-id workshop.sensor workshop.torque-at workshop.torques`.split(/\s+/),
  ),
};

/** Set out with spaces, for the command line. */
const SPACED: ReadonlySet<string> = new Set([
  'cli.usage',
  'cli.check.error',
  'cli.check.warning',
  'cli.check.line',
]);

/** Words of English that no other language here has. What is in straight quotes is text of a file. */
const STOP_WORDS = new Set(
  'the and of with this that these which from are for not you your is it to there they when then its be by or each'.split(
    ' ',
  ),
);

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

interface Use {
  readonly name: string;
  readonly kind: 'text' | 'number' | 'select' | 'plural';
  readonly options: readonly string[];
}

/** What a message is made of: its own text, and each use of an argument. The numbers are the parser's types. */
function taken(message: string, language: string) {
  const text: string[] = [];
  const uses: Use[] = [];
  const walk = (elements: readonly Element[]) => {
    for (const element of elements) {
      if (element.type === 0) text.push(element.value);
      else if (element.type === 1) uses.push({ name: element.value, kind: 'text', options: [] });
      else if (element.type === 2) uses.push({ name: element.value, kind: 'number', options: [] });
      else if (element.type === 5 || element.type === 6) {
        const kind = element.type === 5 ? 'select' : 'plural';
        uses.push({ name: element.value, kind, options: Object.keys(element.options) });
        for (const option of Object.values(element.options)) walk(option.value);
      } else if (element.type !== 7) throw new Error(`a kind of argument not thought of, in: ${message}`);
    }
  };
  try {
    walk(new IntlMessageFormat(message, language, undefined, { ignoreTag: true }).getAst());
  } catch (cause) {
    throw new Error(`cannot be read, in ${language}: ${message}`, { cause });
  }
  return { text, uses };
}

type Taken = ReturnType<typeof taken>;
const READ: Readonly<Record<string, ReadonlyMap<string, Taken>>> = Object.fromEntries(
  Object.entries(CATALOGUES).map(([language, messages]) => [
    language,
    new Map(Object.entries(messages).map(([key, message]) => [key, taken(message, language)])),
  ]),
);

/** The names of a message, each with what it is used as, what it selects by, and the counts it takes apart. */
const argumentsOf = ({ uses }: Taken): readonly string[] =>
  [
    ...new Set(
      uses.map(({ name, kind, options }) => {
        const exact = options.filter((option) => option.startsWith('=')).sort();
        return [name, kind, ...(kind === 'select' ? [...options].sort() : exact)].join(' ');
      }),
    ),
  ].sort();

/** Values that lead through each branch of a message: every option of each select with every sort of count. */
function samplesOf({ uses }: Taken): readonly Readonly<Record<string, string | number>>[] {
  const choices = new Map<string, Set<string | number>>();
  for (const { name, kind, options } of uses) {
    const known = choices.get(name) ?? new Set();
    choices.set(name, known);
    if (kind === 'select') for (const option of options) known.add(option);
    if (kind === 'plural') for (const count of [0, 1, 2, 1234]) known.add(count);
    if (kind === 'number') known.add(1234.5);
  }
  let samples: Record<string, string | number>[] = [{}];
  for (const [name, values] of choices) {
    const each = values.size > 0 ? [...values] : ['K1'];
    samples = samples.flatMap((sample) => each.map((value) => ({ ...sample, [name]: value })));
  }
  return samples;
}

const entriesOf = (language: string) => [...(READ[language] ?? [])];

describe.each(OTHERS)('%s beside English', (language) => {
  const own = FILES.filter((file) => file.language === language);
  const english = FILES.filter((file) => file.language === 'en');

  it('has the files of English, each with the same exports and the same keys', () => {
    const shape = (files: typeof FILES) =>
      Object.fromEntries(
        files.map(({ subject, names, keys }) => [
          subject,
          { names: [...names].sort(), keys: [...keys].sort() },
        ]),
      );
    expect(shape(own)).toEqual(shape(english));
  });

  it('puts every file into its catalogue', () => {
    expect(Object.keys(CATALOGUES[language]).sort()).toEqual(own.flatMap(({ keys }) => keys).sort());
  });

  it('takes the same arguments, chosen by the same options', () => {
    const theirs = new Map(entriesOf('en').map(([key, read]) => [key, argumentsOf(read)]));
    const mine = new Map(entriesOf(language).map(([key, read]) => [key, argumentsOf(read)]));
    const differing = [...mine].filter(([key, names]) => names.join('|') !== theirs.get(key)?.join('|'));
    expect(differing.map(([key, names]) => ({ key, names, english: theirs.get(key) }))).toEqual([]);
  });

  it('says nothing as English does, but for what is alike', () => {
    const same = entriesOf(language)
      .filter(([key, { text }]) => CATALOGUES[language][key] === EN[key] && /\p{L}{2}/u.test(text.join(' ')))
      .map(([key]) => key);
    expect(same.filter((key) => !ALIKE[language].has(key))).toEqual([]);
    expect([...ALIKE[language]].filter((key) => !same.includes(key))).toEqual([]);
  });

  it('has no word of English left', () => {
    const left = entriesOf(language).flatMap(([key, { text }]) => {
      const words =
        text
          .join(' ')
          .replaceAll(/"[^"]*"/g, '')
          .toLowerCase()
          .match(/\p{L}+/gu) ?? [];
      const found = words.filter((word) => STOP_WORDS.has(word));
      return found.length > 0 ? [{ key, found }] : [];
    });
    expect(left).toEqual([]);
  });
});

describe.each(LANGUAGES)('each message in %s', (language) => {
  it('tells counts apart as the language does', () => {
    const categories: readonly string[] = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
    const wrong = entriesOf(language).flatMap(([key, { uses }]) =>
      uses
        .filter(({ kind }) => kind === 'plural')
        .flatMap(({ options }) => options)
        .filter((option) => !option.startsWith('=') && !categories.includes(option))
        .map((option) => ({ key, option })),
    );
    expect(wrong).toEqual([]);
  });

  it('reads whole in every branch', () => {
    const broken = entriesOf(language).flatMap(([key, read]) => {
      const message = CATALOGUES[language][key] ?? '';
      const format = new IntlMessageFormat(message, language, undefined, { ignoreTag: true });
      return samplesOf(read).flatMap((sample) => {
        const said = String(format.format(sample));
        const whole = !/undefined|NaN|[{}]/.test(said);
        const spaced = SPACED.has(key) || !/^ | {2}| [,.;]/.test(said);
        return whole && spaced ? [] : [{ key, said }];
      });
    });
    expect(broken.slice(0, 10)).toEqual([]);
  });
});
