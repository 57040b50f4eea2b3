import { describe, expect, test } from 'vitest';
import { loadDeck } from '../../../../src/content/load.ts';
import { ask } from '../../../../src/core/questions/ask.ts';
import { seatFaces } from '../../../../src/core/questions/families/orientation/seat-faces.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { lineDeck, lineUnit } from './line.ts';

const unit = lineUnit();

/** What is right for each face, over many seeds: "T2 closed race" -> "rear". */
function taught(): Map<string, Set<string>> {
  const say = makeSay(unit.deck);
  const found = new Map<string, Set<string>>();
  for (let seed = 0; seed < 200; seed++) {
    const { space, answers } = ask(unit, seatFaces, seed)!;
    if (space.form !== 'pair' || answers[0].form !== 'pair') throw new Error('not a pair');
    for (const { id, label } of space.left) {
      const text = say(label).replace(':', '');
      found.set(text, (found.get(text) ?? new Set()).add(answers[0].pairs[id]!));
    }
  }
  return found;
}

describe('seat-faces, by hand from the line in line.ts', () => {
  test('the line passes the checks', () => {
    const loaded = loadDeck(JSON.stringify(lineDeck()));
    expect(loaded.ok ? [] : loaded.error).toEqual([]);
  });

  test('each face of each part looks to one end, and that one', () => {
    expect(Object.fromEntries([...taught()].map(([face, ends]) => [face, [...ends].join(' or ')]))).toEqual({
      'S1 lip': 'rear',
      'S1 flat back': 'front',
      'T1 closed race': 'front',
      'T1 needles in view': 'rear',
      'T2 closed race': 'rear',
      'T2 needles in view': 'front',
      'T3 closed race': 'front',
      'T3 needles in view': 'rear',
      'W3 smooth': 'front',
      'W3 grooves': 'rear',
      'T4 closed race': 'rear',
      'T4 needles in view': 'front',
    });
  });

  test('slip-ups: the mirror image, all alike, one turned round names its fact', () => {
    const question = ask(unit, seatFaces, 3)!;
    const right = question.answers[0];
    if (right.form !== 'pair') throw new Error('not a pair');
    const flip = (end: string) => (end === 'front' ? 'rear' : 'front');
    const ids = Object.keys(right.pairs);
    const mirrored = Object.fromEntries(ids.map((id) => [id, flip(right.pairs[id]!)]));
    expect(judge(question, { form: 'pair', pairs: mirrored }).slipUps).toContain('mirror-view');
    for (const id of ids) {
      const verdict = judge(question, {
        form: 'pair',
        pairs: { ...right.pairs, [id]: flip(right.pairs[id]!) },
      });
      expect(verdict.slipUps).toContain('seat-turned-round');
      expect(verdict.missed).toContain(`seat:${id}/face`);
    }
  });

  test('at least three at once, so that it is guessed once in eight at most', () => {
    for (let seed = 0; seed < 50; seed++)
      expect(ask(unit, seatFaces, seed)!.guessRate).toBeLessThanOrEqual(1 / 8);
  });

  test('the viewing end of the note is said', () => {
    const say = makeSay(unit.deck);
    const question = ask(unit, seatFaces, 0, 'seat:T2/face')!;
    expect(say(question.explanation.row)).toBe(
      'T2: to the front: needles in view against drum; to the rear: closed race against hub. Noted as seen from the rear.',
    );
  });

  test('parts with two like faces, and fewer than three others, are not asked', () => {
    const plain = {
      faces: { A: { touches: 'hub' }, B: { touches: 'drum' } },
      race: undefined,
      turned: undefined,
    };
    const [t2] = [lineUnit({ T2: plain })];
    expect(seatFaces.facts(t2)).not.toContain('seat:T2/face');
    const unsure = { unsure: true } as const;
    const few = lineUnit({ S1: unsure, T1: unsure, T3: unsure, T4: unsure });
    // W3 lies against T3, which is not verified
    expect(seatFaces.facts(few)).toEqual([]);
  });
});

describeRules(seatFaces, { seeds: 100 });
