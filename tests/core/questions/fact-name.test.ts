import { describe, expect, test } from 'vitest';
import { factPhrase } from '../../../src/core/questions/fact-name.ts';
import { factsOf } from '../../../src/core/questions/facts.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { shippedDecks } from '../../units.ts';

const kestrel = shippedDecks().find(({ id }) => id === 'kestrel-7')!;

describe('names of facts', () => {
  test.each([
    ['range:1/elements', 'range-elements', 'Elements of a range: 1'],
    ['element:B1/fails', 'element-fails', /^Ranges lost when an element fails: .*B1$/],
    ['step:valve-body-off/lift/hazard', 'step-hazards', /: .*lift/i],
    ['skill:micrometer', 'micrometer-reading', 'Reading a micrometer'],
    ['code:P0746/watches', 'code-watches', 'Which part a code means: P0746'],
    ['shift:1>2', 'shift-changes', 'What changes in a shift: 1>2'],
    ['gone', 'row-ratio', 'Ratio of a range'],
  ])('%s by %s', (id, family, expected) => {
    const said = makeSay(kestrel)(factPhrase(kestrel, { id, families: [family] }));
    if (typeof expected === 'string') expect(said).toBe(expected);
    else expect(said).toMatch(expected);
  });

  test('every fact of every shipped deck has one, told in words of the shop', () => {
    for (const deck of shippedDecks()) {
      const say = makeSay(deck);
      for (const fact of factsOf(makeUnit(deck))) {
        const said = say(factPhrase(deck, fact));
        expect(said, fact.id).not.toContain('/');
        expect(said.length, fact.id).toBeGreaterThan(3);
      }
    }
  });
});
