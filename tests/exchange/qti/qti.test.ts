// @vitest-environment jsdom

import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { everyAnswer, sizeOf } from '../../../src/core/questions/answer-space.ts';
import { ask } from '../../../src/core/questions/ask.ts';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { isAmongRight } from '../../../src/core/questions/judge.ts';
import { say, thing } from '../../../src/core/questions/phrase.ts';
import type { Answer, AnswerSpace, Question } from '../../../src/core/questions/question.ts';
import { parseRational } from '../../../src/core/rational.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { isExportable, writeItem } from '../../../src/exchange/qti/item.ts';
import { itemName } from '../../../src/exchange/qti/names.ts';
import { makePackage } from '../../../src/exchange/qti/package.ts';
import { el, NC_NAME, writeXml } from '../../../src/exchange/xml.ts';
import { makeSay } from '../../../src/words/words.ts';
import { shippedDecks } from '../../units.ts';
import { process, type Responses } from './processor.ts';
import { faultsOf } from './structure.ts';

const units = shippedDecks().map(makeUnit);
const kestrel = units.find(({ deck }) => deck.id === 'kestrel-7')!;

/** A question of every family, on the first shipped deck that has one. */
const questions = FAMILIES.flatMap((family) => {
  for (const unit of units)
    for (const seed of [3, 8]) {
      const question = ask(unit, family, seed);
      if (question) return [{ unit, question, name: family.id }];
    }
  return [];
});

function parse(xml: string): Element {
  const parsed = new DOMParser().parseFromString(xml, 'application/xml');
  const error = parsed.querySelector('parsererror');
  if (error) throw new Error(error.textContent ?? 'not well-formed');
  return parsed.documentElement;
}

/**
 * An answer as responses to an item, found by where options stand in it: the n-th option of the question is the n-th
 * choice of the interaction. So the identifiers are the item's own.
 */
function responsesFor(item: Element, space: AnswerSpace, answer: Answer): Responses {
  const ids = (selector: string, within: Element = item) =>
    [...within.querySelectorAll(selector)].map((own) => own.getAttribute('identifier')!);
  const choice = (options: readonly { id: string }[], id: string) =>
    ids('qti-simple-choice')[options.findIndex((option) => option.id === id)]!;
  const one = (value: readonly string[] | null) =>
    new Map([[item.querySelector('[response-identifier]')!.getAttribute('response-identifier')!, value]]);
  if (space.form === 'one' && answer.form === 'one') return one([choice(space.options, answer.pick)]);
  if (space.form === 'place' && answer.form === 'place') return one([choice(space.spots, answer.spot)]);
  if (space.form === 'set' && answer.form === 'set')
    return one(answer.picks.map((pick) => choice(space.options, pick)));
  if (space.form === 'order' && answer.form === 'order')
    return one(answer.order.map((id) => choice(space.items, id)));
  if (space.form === 'number' && answer.form === 'number')
    return one([String(parseRational(answer.value)!.valueOf())]);
  if (space.form === 'pair' && answer.form === 'pair') {
    const [left, right] = [...item.querySelectorAll('qti-simple-match-set')].map((set) =>
      ids('qti-simple-associable-choice', set),
    );
    const at = (options: readonly { id: string }[], id: string) =>
      options.findIndex((option) => option.id === id);
    return one(
      space.left.map(
        ({ id }) => `${left![at(space.left, id)]} ${right![at(space.right, answer.pairs[id]!)]}`,
      ),
    );
  }
  if (space.form === 'fill' && answer.form === 'fill') {
    // Cells to fill stand in the table row by row.
    const order = space.rows.flatMap((row) =>
      space.columns.flatMap((column) =>
        space.asked.includes(`${row.id}/${column.id}`) ? [`${row.id}/${column.id}`] : [],
      ),
    );
    return new Map(
      [...item.querySelectorAll('qti-inline-choice-interaction')].map((cell, place) => {
        const mark = space.marks.findIndex(({ id }) => id === answer.cells[order[place]!]);
        return [cell.getAttribute('response-identifier')!, [ids('qti-inline-choice', cell)[mark]!]];
      }),
    );
  }
  throw new Error(`${space.form} answered as ${answer.form}`);
}

const scoreOf = (item: Element, question: Question, answer: Answer) =>
  Number(process(item, responsesFor(item, question.space, answer)).get('SCORE'));

const itemOf = (question: Question, unit = kestrel) =>
  parse(writeItem(question, null, makeSay(unit.deck), 'en'));

describe('items', () => {
  test('every family gives some', () => {
    expect(new Set(questions.map(({ question }) => question.family)).size).toBeGreaterThan(15);
    expect(new Set(questions.map(({ question }) => question.space.form)).size).toBeGreaterThan(4);
  });

  test.each(questions.filter(({ question }) => isExportable(question)))(
    'Q1 $name: well-formed, right scores 1, every lure 0 with its own feedback',
    ({ question, unit }) => {
      const item = itemOf(question, unit);
      expect(faultsOf(item)).toEqual([]);
      const say = makeSay(unit.deck);
      for (const right of question.answers) {
        const outcomes = process(item, responsesFor(item, question.space, right));
        expect([outcomes.get('SCORE'), outcomes.get('FEEDBACK')]).toEqual(['1', 'right']);
      }
      for (const lure of question.lures) {
        const outcomes = process(item, responsesFor(item, question.space, lure.answer));
        expect(outcomes.get('SCORE')).toBe('0');
        const shown = [...item.querySelectorAll('qti-modal-feedback')].find(
          (own) => own.getAttribute('identifier') === outcomes.get('FEEDBACK'),
        )!;
        if (question.space.form !== 'number')
          expect(shown.querySelector('div')!.getAttribute('data-slip-up')!.split(' ')).toContain(lure.slipUp);
        expect(shown.textContent).toContain(say(question.explanation.row));
      }
      // The declared correct response is a right one as well.
      const declared = new Map(
        [...item.querySelectorAll('qti-response-declaration')].map((own) => [
          own.getAttribute('identifier')!,
          [...own.querySelectorAll('qti-value')].map((value) => value.textContent!),
        ]),
      );
      expect(process(item, declared).get('SCORE')).toBe('1');
      // Nothing answered is nothing right.
      expect(process(item, new Map()).get('SCORE')).toBe('0');
    },
  );

  test('Q2 over whole answer spaces, an item scores just what the judge says', () => {
    let answers = 0;
    for (const { question, unit } of questions) {
      const { space } = question;
      if (space.form === 'number' || sizeOf(space) > 64 || !isExportable(question)) continue;
      const item = itemOf(question, unit);
      for (const answer of everyAnswer(space)) {
        answers++;
        expect(scoreOf(item, question, answer)).toBe(isAmongRight(question, answer) ? 1 : 0);
      }
    }
    expect(answers).toBeGreaterThan(100);
  });

  const made = (space: AnswerSpace, answers: Answer[], more: Partial<Question> = {}): Question =>
    ({
      space, answers, lures: [], cautions: [], facts: ['f'], uses: [], prompt: say('value.written', { text: 'Which?' }),
      explanation: { row: say('value.written', { text: 'row' }), reason: say('value.written', { text: 'reason' }), more: [] },
      deck: { id: 'demo', revision: 1 }, family: 'range-elements', fact: 'range:1/elements', seed: 7, level: 'read', guessRate: 0, ...more,
    }) as unknown as Question; // biome-ignore format: one record
  const items = ['a', 'b', 'c', 'd'].map((id) => ({ id, label: thing('range', id) }));
  const order = {
    form: 'order',
    items,
    first: say('value.written', { text: 'lowest' }),
    last: say('value.written', { text: 'highest' }),
  } as const;
  const orders = [...everyAnswer(order)];

  test('Q2 likes may change places, and any order that keeps the relations is right', () => {
    const alike = made({ ...order, alike: [['b', 'd']] }, [{ form: 'order', order: ['a', 'b', 'c', 'd'] }]);
    const free = made(order, [{ form: 'order', order: ['a', 'b', 'c', 'd'] }], { accepts: { rule: 'precedence', pairs: [['a', 'c'], ['b', 'd']] } });
    for (const question of [alike, free]) {
      const item = itemOf(question);
      expect(faultsOf(item)).toEqual([]);
      const right = orders.filter((answer) => isAmongRight(question, answer));
      expect(right.length).toBe(question === alike ? 2 : 6);
      for (const answer of orders) expect(scoreOf(item, question, answer)).toBe(right.includes(answer) ? 1 : 0);
    }
    const both = { ...alike, accepts: free.accepts! };
    expect(isExportable(both)).toBe(false);
    expect(() => itemOf(both)).toThrow('no QTI');
  }); // biome-ignore format: questions

  test('Q2 numbers are right within the tolerance, ends in it', () => {
    const question = made({ form: 'number', unit: 'rpm', tolerance: '0.5', signed: true, decimals: 0 }, [{ form: 'number', value: '-3/2' }]);
    const item = itemOf(question);
    for (const [value, score] of [['-1.5', 1], ['-2', 1], ['-1', 1], ['-2.01', 0], ['-0.99', 0], ['1.5', 0]] as const)
      expect(scoreOf(item, question, { form: 'number', value })).toBe(score);
  }); // biome-ignore format: pairs

  test('Q3 what somebody wrote stays text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const hostile = `${text}<script>&amp;]]>"'`;
        const options = items.map((item) => ({ ...item, label: say('value.written', { text: hostile }) }));
        const question = made({ form: 'one', options }, [{ form: 'one', pick: 'a' }], {
          cautions: [hostile],
        });
        const item = itemOf(question);
        expect(faultsOf(item)).toEqual([]);
        expect(item.querySelector('script')).toBeNull();
        expect(item.querySelector('qti-simple-choice')!.textContent).toContain('<script>&amp;]]>');
      }),
      { numRuns: 15 },
    );
  });

  test('Q3 cautions stand above the question', () => {
    const question = made({ form: 'one', options: items }, [{ form: 'one', pick: 'a' }], {
      cautions: ['Chock the wheels.'],
    });
    expect(itemOf(question).querySelector('qti-item-body')!.firstElementChild!.textContent).toContain(
      'Chock the wheels.',
    );
  });

  test('Q4 names hold the seed, are NCNames, and differ when anything differs', () => {
    const base = { deck: { id: 'demo', revision: 1 }, family: 'f', fact: 'range:1/elements', seed: -7 };
    const others = [
      base,
      { ...base, seed: 7 },
      { ...base, fact: 'range:1-elements' },
      { ...base, fact: 'range_1_elements' },
      { ...base, deck: { id: 'demo', revision: 2 } },
      { ...base, fact: 'Größe' },
    ];
    const names = others.map(itemName);
    for (const name of names) expect(name).toMatch(NC_NAME);
    expect(new Set(names).size).toBe(others.length);
    expect(names[0]).toContain('s-7');
  });
});

describe('the package', () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg"><title>train</title></svg>';
  const own = [
    'range-elements',
    'range-from-elements',
    'ratio-order',
    'range-solenoids',
    'actual-range',
  ].flatMap((id) => ask(kestrel, FAMILIES.find((family) => family.id === id)!, 3) ?? []);
  const request = {
    deck: kestrel.deck,
    questions: own,
    speak: makeSay(kestrel.deck),
    draw: () => ({ svg, alt: 'The gear train, elements B1 and C1 applied.' }),
  };

  test('Q5 holds every item and image that its manifest lists, and nothing else', () => {
    const { zip, items, leftOut } = makePackage(request);
    const files = unzipSync(zip);
    const manifest = parse(strFromU8(files['imsmanifest.xml']!));
    expect(faultsOf(manifest)).toEqual([]);
    const listed = [...manifest.querySelectorAll('file')].map((file) => file.getAttribute('href')!);
    expect([...listed, 'imsmanifest.xml'].sort()).toEqual(Object.keys(files).sort());
    expect(items.length + leftOut.length).toBe(own.length);
    for (const name of items) {
      const item = parse(strFromU8(files[`items/${name}.xml`]!));
      expect(faultsOf(item)).toEqual([]);
      expect(item.getAttribute('identifier')).toBe(name);
      for (const image of item.querySelectorAll('img')) {
        expect(files[image.getAttribute('src')!.replace('../', '')]).toBeDefined();
        expect(image.getAttribute('alt')).toContain('gear train');
      }
    }
  });

  test('Q5 the same questions give the same bytes, each question once', () => {
    const once = makePackage(request);
    const again = makePackage({ ...request, questions: [...own, ...own] });
    expect(again.zip).toEqual(once.zip);
  });

  test('Q5 what cannot be shown is left out and said, never exported without its drawing', () => {
    const { items, leftOut } = makePackage({ ...request, draw: () => null });
    expect(leftOut.length).toBeGreaterThan(0);
    for (const { question, why } of leftOut) {
      expect(why).toBe('no-drawing');
      expect(['chart', 'table', undefined]).not.toContain(question.drawing?.kind);
      expect(items).not.toContain(itemName(question));
    }
  });

  test('Q5 charts are tables with what is covered as "?"', () => {
    const question = own.find(({ family }) => family === 'range-elements')!;
    const { zip } = makePackage({ ...request, questions: [question] });
    const item = parse(strFromU8(unzipSync(zip)[`items/${itemName(question)}.xml`]!));
    if (question.drawing?.kind === 'chart') {
      const rows = [...item.querySelectorAll('tbody tr')];
      expect(rows.length).toBeGreaterThan(0);
      expect(rows.some((row) => row.textContent?.includes('?'))).toBe(
        (question.drawing.hiddenRows ?? []).length > 0,
      );
    }
  });
});

describe('the XML builder', () => {
  test('escapes texts and attributes, leaves out what XML cannot hold, refuses names that are none', () => {
    const xml = writeXml(el('a', { b: 'x"<&>\n\t', c: undefined, d: 0 }, '\u0000<&>\ud800]]>', el('e')));
    expect(xml).toBe(
      '<?xml version="1.0" encoding="UTF-8"?>\n<a b="x&quot;&lt;&amp;&gt;&#10;&#9;" d="0">&lt;&amp;&gt;]]&gt;<e/></a>\n',
    );
    for (const name of ['', '1a', 'a b', 'a>', 'é', 'a:b:c']) expect(() => el(name)).toThrow('no name');
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (text, value) => {
        const read = parse(writeXml(el('a', { b: value }, text)));
        // XML 1.0, production 2: the letters a document can hold.
        const holds = (code: number) =>
          [9, 10, 13].includes(code) ||
          (code >= 0x20 && code < 0xd800) ||
          (code >= 0xe000 && code < 0xfffe) ||
          code >= 0x10000;
        const kept = (own: string) => [...own].filter((letter) => holds(letter.codePointAt(0)!)).join('');
        expect(read.textContent).toBe(kept(text));
        expect(read.getAttribute('b')).toBe(kept(value));
      }),
      { numRuns: 60 },
    );
  });
});
