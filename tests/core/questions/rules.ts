/**
 * The rules every family keeps, as properties over seeds and units. A family's own test calls this once and
 * then adds a table of cases worked by hand.
 */
import { describe, expect, test } from 'vitest';
import { everyAnswer, LISTABLE, sizeOf } from '../../../src/core/questions/answer-space.ts';
import { ask, countRight, unfairness } from '../../../src/core/questions/ask.ts';
import type { Drawing } from '../../../src/core/questions/drawing.ts';
import { judge, sameAnswer } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import type { Family, Question } from '../../../src/core/questions/question.ts';
import { randomFrom, seedOf } from '../../../src/core/random.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit, type Unit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { everyUnit } from '../../units.ts';
import { withUnsure } from '../../unsure.ts';

export { withUnsure };

const phrasesOf = (question: Question): Phrase[] => {
  const { space, explanation } = question;
  const options =
    space.form === 'set' || space.form === 'one'
      ? space.options
      : space.form === 'order'
        ? space.items
        : space.form === 'pair'
          ? [...space.left, ...space.right]
          : space.form === 'fill'
            ? [...space.rows, ...space.columns, ...space.marks]
            : space.form === 'place'
              ? space.spots
              : [];
  return [
    question.prompt,
    ...options.map((option) => option.label),
    explanation.row,
    explanation.reason,
    ...explanation.more,
    { key: `family.${question.family}` },
    ...question.lures.map((lure) => ({ key: `slip-up.${lure.slipUp}` })),
    ...drawnPhrases(question.drawing),
    ...drawnPhrases(explanation.drawing),
  ];
};

/** What a drawing says by itself, besides what it takes from the deck. */
function drawnPhrases(drawing: Drawing | undefined): Phrase[] {
  if (!drawing) return [];
  const title = { key: `drawing.${drawing.kind}` };
  if (drawing.kind === 'window') return [title, ...drawing.parts.map((part) => part.label)];
  if (drawing.kind !== 'table') return [title];
  return [title, ...drawing.columns, ...drawing.rows.flatMap((row) => [row.head, ...row.cells])];
}

/** Declares the property tests for one family; `seeds` questions are made on every unit that has any. */
export function describeRules(family: Family, { seeds = 200 }: { seeds?: number } = {}) {
  const units: Unit[] = everyUnit();
  const asked = units
    .map((unit) => ({
      unit,
      questions: Array.from({ length: seeds }, (_, seed) => ask(unit, family, seed)).filter(
        (question) => question !== undefined,
      ),
    }))
    .filter(({ questions }) => questions.length > 0);

  describe(`${family.id}: rules kept over ${seeds} seeds on every unit`, () => {
    test('asks on at least two units, and on nearly every seed where it asks at all', () => {
      expect(asked.length).toBeGreaterThanOrEqual(2);
      for (const { questions } of asked) expect(questions.length).toBeGreaterThan(seeds * 0.9);
    });

    test('every fact it lists can be asked about', () => {
      for (const { unit } of asked)
        for (const fact of family.facts(unit))
          expect(
            Array.from({ length: 8 }).some((_, seed) => ask(unit, family, seed, fact)),
            `${unit.deck.id} ${fact}`,
          ).toBe(true);
    });

    test('a seed gives the same question every time, whatever was asked before', () => {
      for (const { unit, questions } of asked)
        for (const question of questions.slice(0, 20))
          expect(ask(makeUnit(unit.deck), family, question.seed)).toEqual(question);
    });

    test('the declared answers are right by the raw data, and nothing else in the answer space is', () => {
      for (const { unit } of asked)
        for (const fact of family.facts(unit))
          for (let seed = 0; seed < 3; seed++) {
            const posed = family.pose(unit, fact, randomFrom(seedOf('rules', fact, seed)));
            if (!posed || unfairness(unit, posed) !== null) continue;
            const { space } = posed;
            if (space.form === 'number' || sizeOf(space) > LISTABLE) continue;
            const right = [...everyAnswer(space)].filter((answer) => posed.isRight(answer));
            expect(right).toHaveLength(countRight(posed));
          }
    });

    test('every wrong choice comes from a slip-up, is judged wrong, and is logged as that slip-up', () => {
      for (const { questions } of asked)
        for (const question of questions)
          for (const lure of question.lures) {
            const verdict = judge(question, lure.answer);
            expect(verdict.right).toBe(false);
            expect(verdict.slipUps).toContain(lure.slipUp);
            for (const answer of question.answers)
              expect(sameAnswer(question.space, lure.answer, answer)).toBe(false);
          }
    });

    test('a choice of one holds only right answers and slip-ups, at least three of them wrong', () => {
      for (const { questions } of asked)
        for (const question of questions) {
          const { space } = question;
          if (space.form !== 'one') continue;
          const known = [...question.answers, ...question.lures.map((lure) => lure.answer)];
          for (const { id } of space.options)
            expect(known.some((answer) => answer.form === 'one' && answer.pick === id)).toBe(true);
          expect(space.options.length).toBeGreaterThanOrEqual(4);
        }
    });

    test('facts start with the one asked for, and all of them are facts of the family', () => {
      for (const { unit, questions } of asked) {
        const own = family.facts(unit);
        expect(new Set(own).size).toBe(own.length);
        for (const question of questions) {
          expect(question.facts[0]).toBe(question.fact);
          expect(own).toContain(question.fact);
          for (const lure of question.lures) if (lure.fact) expect(question.facts).toContain(lure.fact);
        }
      }
    });

    test('a value marked unsure is never asked, nor rested on', () => {
      for (const { unit, questions } of asked.slice(0, 3)) {
        const refs = new Set(questions.slice(0, 40).flatMap((question) => question.uses));
        for (const ref of refs) {
          const doubtful = makeUnit(withUnsure(unit.deck, ref));
          for (let seed = 0; seed < 25; seed++)
            expect(ask(doubtful, family, seed)?.uses ?? []).not.toContain(ref);
        }
      }
    });

    test('a caution attached to a value it rests on comes with the question', () => {
      const { unit, questions } = asked[0]!;
      const question = questions[0]!;
      const deck: Deck = {
        ...unit.deck,
        cautions: [
          { id: 'k', hazard: 'air', text: 'Mind the air.', attachedTo: [question.uses[0]!] },
          { id: 'o', hazard: 'air', text: 'Elsewhere.', attachedTo: ['range:none'] },
        ],
      };
      expect(ask(makeUnit(deck), family, question.seed)?.cautions).toEqual(['Mind the air.']);
    });

    test('every phrase has words, and choices of one do not give the answer away by length', () => {
      for (const { unit, questions } of asked) {
        const say = makeSay(unit.deck);
        for (const question of questions.slice(0, 60)) {
          for (const phrase of phrasesOf(question)) expect(say(phrase).trim()).not.toBe('');
          expect(JSON.parse(JSON.stringify(question))).toEqual(question);
        }
      }
    });

    test('over many seeds the right choice is not found at one place', () => {
      const places = new Map<number, number>();
      let total = 0;
      for (const { questions } of asked)
        for (const { space, answers } of questions)
          if (space.form === 'one' && answers[0].form === 'one') {
            const { pick } = answers[0];
            const place = space.options.findIndex((option) => option.id === pick);
            places.set(place, (places.get(place) ?? 0) + 1);
            total++;
          }
      for (const count of places.values()) expect(count).toBeLessThan(total * 0.6);
    });
  });
}
