import { IntlMessageFormat } from 'intl-messageformat';
import { expect, test } from 'vitest';
import { DE } from '../../src/words/de/index.ts';
import { EN } from '../../src/words/en/index.ts';
import { ES } from '../../src/words/es/index.ts';
import { speakerOf } from '../../src/words/speak.ts';

test.each([
  ['en', EN],
  ['de', DE],
  ['es', ES],
] as const)(
  'in %s a message of text and bare names is said as the message-format library says it',
  (language, messages) => {
    let compared = 0;
    for (const [key, message] of Object.entries(messages)) {
      const names = [...message.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!);
      // A value that is a word of its own, so that no message opens with a thing of the deck or holds a figure.
      const values = Object.fromEntries(names.map((name) => [name, `<${name}>`]));
      if (message.replaceAll(/\{\w+\}/g, '').includes('{')) continue;
      compared++;
      const theirs = new IntlMessageFormat(message, language, undefined, { ignoreTag: true });
      expect(speakerOf(null, language, (each) => messages[each])({ key, values }), key).toBe(
        theirs.format(values),
      );
    }
    expect(compared).toBeGreaterThan(1000);
  },
);

test('a value that is not there is a mistake', () => {
  expect(() => speakerOf(null, 'en', () => 'of {name}')({ key: 'a' })).toThrow('no value for {name}');
});

test.each([
  ['Chock the wheels.', 'Why “{a}” first?', 'Why “Chock the wheels” first?'],
  ['Chock the wheels.', 'Why “{a}”?', 'Why “Chock the wheels”?'],
  ['Räder keilen.', 'Warum „{a}“ zuerst?', 'Warum „Räder keilen“ zuerst?'],
  ['Is it dry?', 'First “{a}” is asked.', 'First “Is it dry?” is asked.'],
  ['Chock the wheels.', 'The step is “{a}”', 'The step is “Chock the wheels.”'],
  ['Chock the wheels.', '“{a}” Then the pan.', '“Chock the wheels.” Then the pan.'],
])('what is quoted within a sentence has no full stop of its own: %s in %s', (text, message, said) => {
  const say = speakerOf(null, 'en', () => message);
  expect(say({ key: 'message', values: { a: { key: 'text', values: { text } } } })).toBe(said);
});
