import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { outputSpeed } from '../../../src/core/questions/families/output-speed.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

function asking(train: string, range: string, fact: string): Question {
  const unit = unitOf(train);
  for (let seed = 0; seed < 80; seed++) {
    const question = ask(unit, outputSpeed, seed, fact)!;
    if ((question.prompt.values!.range as Phrase).values!.id === range) return question;
  }
  throw new Error(`${range} is never asked`);
}

const numberIn = ({ prompt }: Question, name: string) => Number(prompt.values![name]);
const slipUps = (question: Question, value: number) =>
  judge(question, { form: 'number', value: value.toFixed(2) }).slipUps;

describe('output-speed with published ratios (tests/published names their sources)', () => {
  test.each([
    ['four-range-two-crossed-sets', '1', 128 / 45],
    ['four-range-two-crossed-sets', '4', 62 / 90],
    ['four-range-two-crossed-sets', 'R', -62 / 28],
    ['ravigneaux-4-a', '1', 69 / 24],
    ['lepelletier-6-a', '6', 85 / 123],
  ])('%s range %s, %d : 1', (train, range, ratio) => {
    const question = asking(train, range, 'skill:output-speed');
    const input = numberIn(question, 'input');
    expect(judge(question, { form: 'number', value: String(Math.round(input / ratio)) }).right).toBe(true);
    expect(slipUps(question, input * ratio)).toContain('inverse-ratio');
    expect(slipUps(question, input)).toContain('turns-with-input');
    if (ratio < 0) expect(slipUps(question, -input / ratio)).toContain('sign-lost');
  });

  test('road speed: the wheels roll what the output gives them, an hour long', () => {
    const question = asking('ravigneaux-4-a', '1', 'skill:road-speed');
    const [input, final, tyre] = ['input', 'final', 'tyre'].map((name) => numberIn(question, name)) as [
      number,
      number,
      number,
    ];
    // 24/69 turns of the output for one of the input
    const kmh = (((input * 24) / 69 / final) * tyre * 60) / 1000;
    expect(judge(question, { form: 'number', value: kmh.toFixed(1) }).right).toBe(true);
    expect(slipUps(question, kmh * final)).toEqual(['final-drive-left-out']);
    expect(slipUps(question, kmh * final * final)).toEqual(['final-drive-multiplied']);
    expect(slipUps(question, kmh / 60)).toEqual(['minutes-for-hours']);
    expect(makeSay(null)(question.explanation.more[1]!)).toMatch(new RegExp(`= ${kmh.toFixed(1)} km/h\\.$`));
  });

  test('direct drive leaves nothing to reckon', () => {
    const unit = unitOf('four-range-two-crossed-sets');
    for (let seed = 0; seed < 40; seed++)
      expect((ask(unit, outputSpeed, seed)!.prompt.values!.range as Phrase).values!.id).not.toBe('3');
  });
});

describeRules(outputSpeed);
