import { expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { makeReference, parseReference } from '../../../src/core/questions/reference.ts';
import { questionOf } from '../../../src/core/questions/reopen.ts';
import { publishedUnits } from '../../units.ts';

test('a question opens again from its reference, for every family', () => {
  const [unit] = publishedUnits().slice(3);
  for (const family of FAMILIES) {
    const question = ask(unit!, family, 5);
    if (!question) continue;
    const reference = parseReference(makeReference(question));
    expect(reference).toMatchObject({ deck: unit!.deck.id, revision: 1, family: family.id });
    expect(questionOf(unit!, reference!)).toEqual(question);
  }
});

test.each([
  '',
  'kestrel-7',
  'kestrel-7 r3 row-ratio range:4/ratio',
  'kestrel-7 3 row-ratio range:4/ratio 17',
  'a r1 b c d',
])('%j is no reference', (text) => {
  expect(parseReference(text)).toBeNull();
});
