import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { interlock } from '../../../src/core/questions/families/interlock.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import type { DeckInterlock } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

// The published four-range Ravigneaux (tests/published names its source): C1 drives the small sun, C2 the carrier;
// B1 holds the large sun, B2 the carrier. D opens these four (tests/units.ts). The interlock is made up.
const GUARD: DeckInterlock = { id: 'X1', whenApplied: ['C2', 'B1'], blocks: ['C1'] };
const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
const unitWith = (...interlocks: DeckInterlock[]) => makeUnit({ ...deck, interlocks });
const questions = Array.from({ length: 80 }, (_, seed) => ask(unitWith(GUARD), interlock, seed)!);
const idsIn = ({ space }: Question) => (space.form === 'set' ? space.options.map(({ id }) => id) : []);

describe('interlock, by hand', () => {
  test('keeps off C1 wherever C2 and B1 are on as well, and nothing else', () => {
    const blocked = ['C1+C2+B1', 'C1+C2+B1+B2'];
    for (const question of questions) {
      const picks = idsIn(question).filter((id) => blocked.includes(id));
      expect(judge(question, { form: 'set', picks }).right).toBe(true);
    }
    const seen = new Set(questions.flatMap(idsIn));
    for (const id of [...blocked, 'C2+B1', 'C1+C2', 'C1+B1', 'C2+B1+B2']) expect(seen).toContain(id);
  });

  test('wrong rules are known by name', () => {
    const ids = ['C1+C2', 'C1+B1', 'C2+B1', 'C1+C2+B1'];
    const including = (...wanted: string[]) =>
      questions.find((asked) => wanted.every((id) => idsIn(asked).includes(id)))!;
    const said = (rule: (id: string) => boolean, question = including(...ids)) =>
      judge(question, { form: 'set', picks: idsIn(question).filter(rule) }).slipUps;
    const has = (id: string, ...elements: string[]) =>
      elements.every((element) => id.split('+').includes(element));
    expect(said((id) => has(id, 'C2', 'B1'))).toContain('interlock-blocks-itself');
    expect(said((id) => has(id, 'C1'))).toContain('blocked-whatever-else');
    expect(said((id) => has(id, 'C1') && (has(id, 'C2') || has(id, 'B1')))).toContain('part-sets-it-off');
    // ranges: 1 C1 with F2, 1m C1 B2, 2 C1 B1, 3 C1 C2, 4 C2 B1
    const charted = ['C1+B2', 'C1+B1', 'C1+C2', 'C2+B1'];
    expect(said((id) => !charted.includes(id))).toContain('uncharted-means-blocked');
    // C2 with B2 holds the input; three or more of the four want two speeds of something
    const tiedUp = (id: string) => has(id, 'C2', 'B2') || id.split('+').length > 2;
    expect(said(tiedUp, including('C1+C2+B1', 'C2+B1+B2'))).toContain('tie-up-means-blocked');
  });

  test('says what is left, and what the unit does then', () => {
    const say = makeSay(null);
    const lines = questions.flatMap(({ explanation }) => explanation.more.map(say));
    expect(lines).toContain(
      'C1 + C2 + B1: C1 gets no pressure. What is left: C2 + B1: drives as range 4, at 0.697 : 1.',
    );
    expect(lines).toContain('C1 + C2: drives as range 3, at 1.000 : 1.');
  });

  test('a combination in which another interlock acts is left out', () => {
    const other: DeckInterlock = { id: 'X2', whenApplied: ['B2'], blocks: ['C2'] };
    const unit = unitWith(GUARD, other);
    for (let seed = 0; seed < 40; seed++)
      for (const id of idsIn(ask(unit, interlock, seed, 'interlock:X1/blocks')!))
        expect(id.includes('C2') && id.includes('B2')).toBe(false);
  });

  test('is not asked where the manual valve cuts what it would keep off', () => {
    // C3 is for reverse alone: D and R never open it together with B1
    expect(interlock.facts(unitWith({ id: 'X3', whenApplied: ['B1'], blocks: ['C3'] }))).toEqual([]);
    expect(interlock.facts(makeUnit(deck))).toEqual([]);
  });
});

describeRules(interlock);
