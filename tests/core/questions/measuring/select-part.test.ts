import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { selectPart } from '../../../../src/core/questions/families/measuring/select-part.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { AnswerSpace } from '../../../../src/core/questions/question.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { deckOf, everyUnit, PUBLISHED } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { fitOf, inch, listed, mm, unitWithFits } from './bench.ts';

const bare = { method: 'bare' as const };

/** The first unit of a question on this fit, drawn so that `part` leaves this play with `present` in. */
function posed(fit: ReturnType<typeof fitOf>, part: string, present: string, steps: number) {
  const unit = unitWithFits(fit);
  const random = scripted({ picks: [part, present, part, present], ints: [steps, steps], again: true });
  const drawn = selectPart.pose(unit, 'fit:f/select', random);
  if (!drawn) return undefined;
  const { left } = drawn.space as AnswerSpace & { form: 'pair' };
  const [answer] = drawn.answers;
  if (answer.form !== 'pair') throw new Error('a pair is answered in pairs');
  return { posed: drawn, reads: makeSay(unit.deck)(left[0]!.label), part: answer.pairs.one };
}

describe('select-part on published readings', () => {
  test.each([
    // Honda Civic shop manual: standard 0.11 to 0.18, 1.93 read, 1.78 fits and leaves 0.15; its neighbours made up
    [fitOf(mm, '0.11', '0.18', { ...bare, parts: listed(mm, '1.73', '1.78', '1.83', '1.88') }), 4, '1.93 mm, with none in', '1.78'],
    // Honda Accord 2009: standard 0.11 to 0.17, 1.93 read, 1.80 leaves 0.13
    [fitOf(mm, '0.11', '0.17', { ...bare, parts: listed(mm, '1.75', '1.80', '1.85', '1.90') }), 2, '1.93 mm, with none in', '1.80'],
    // Eaton FSO-2105, p. 95: standard 0.06 to 0.11, 0.47 read, 0.36 to 0.41 would do; list made up
    [fitOf(mm, '0.06', '0.11', { ...bare, parts: listed(mm, '0.30', '0.38', '0.46', '0.54') }), 3, '0.47 mm, with none in', '0.38'],
    // Subaru Forester 2007, multi-plate brake: standard 0.2 to 0.6, T = 2.45, plates as listed there
    [fitOf(mm, '0.2', '0.6', { ...bare, parts: listed(mm, '1.6', '2.0', '2.4', '2.8') }), 25, '2.45 mm, with none in', '2.0'],
    // Toyota underdrive clutch: 1.51 to 1.71, flanges as listed there; 1.95 supposed with 3.2 in
    [fitOf(mm, '1.51', '1.71', { parts: listed(mm, '3.0', '3.2', '3.4', '3.6', '3.8') }), 4, '1.95 mm, with 3.2 (3.2 mm) in', '3.6'],
    // Arithmetic: 1.20 in, 0.95 read, 0.20 to 0.45
    [fitOf(mm, '0.20', '0.45', { parts: listed(mm, '1.20', '1.50', '1.80', '2.10') }), 15, '0.95 mm, with 1.20 (1.20 mm) in', '1.80'],
    // Chrysler 42LE: 0.055 in with the thinnest in; a plate from the band 0.071 to 0.074 leaves 0.020
    [fitOf(inch, '0.005', '0.025', { parts: listed(inch, '0.038', '0.048', '0.060', '0.073') }), 15, '0.055 in, with 0.038 (0.038 in) in', '0.073'],
  ] as const)('case %#: step %i of the limits, %s: %s', (fit, steps, reads, part) => {
    const present = /with ([\d.]+) \(/.exec(reads)?.[1] ?? fit.parts.find(({ id }) => id !== part)!.id;
    const found = posed(fit, part, present, steps);
    expect(found?.reads).toBe(reads);
    expect(found?.part).toBe(part);
  }); // biome-ignore format: a table reads across

  test('depths over a bar of 25.00: 63.42 and 62.81, gasket 0.35: 0.96 with none in, 0.55 leaves 0.41', () => {
    // Arithmetic, from the definition of the method
    const fit = fitOf(mm, '0.25', '0.55', {
      method: 'depths',
      instrument: 'depth-gauge',
      bar: mm('25.00'),
      gasket: mm('0.35'),
      parts: listed(mm, '0.30', '0.55', '0.80', '1.05'),
      readings: [
        {
          id: 'r',
          seat: { reading: mm('63.42'), overBar: true },
          standOff: { reading: mm('62.81'), overBar: true },
        },
      ],
    });
    const random = scripted({ picks: ['0.55', '0.30'], ints: [16, 0], again: true });
    const drawn = selectPart.pose(unitWithFits(fit), 'fit:f/select', random)!;
    const { left } = drawn.space as AnswerSpace & { form: 'pair' };
    expect(left[0]!.label.values).toMatchObject({ seat: '63.42', standOff: '62.81' });
    expect(drawn.answers[0]).toEqual({ form: 'pair', pairs: { one: '0.55', two: '0.55' } });
  });
});

describe('select-part refuses what has no one answer', () => {
  test.each([
    // 1.70 leaves 0.45 and 1.95 leaves 0.20: both on a limit, both as far from the middle
    ['1.20 in, 0.95 read, 1.20 1.45 1.70 1.95', fitOf(mm, '0.20', '0.45', { parts: listed(mm, '1.20', '1.45', '1.70', '1.95') }), '1.70', '1.20', 25],
    // the clearance 1.40 with 6.0 in: 6.2 leaves 1.20, 6.4 leaves 1.00
    ['6.0 in, 1.40 read, 5.8 6.0 6.2 6.4', fitOf(mm, '1.00', '1.20', { parts: listed(mm, '5.8', '6.0', '6.2', '6.4') }), '6.2', '6.0', 20],
  ] as const)('a tie: %s', (_, fit, part, present, steps) => {
    expect(posed(fit, part, present, steps)).toBeUndefined();
  }); // biome-ignore format: a table reads across

  test('with 6.3 in the list the tie is gone', () => {
    const fit = fitOf(mm, '1.00', '1.20', { parts: listed(mm, '5.8', '6.0', '6.2', '6.3', '6.4') });
    expect(posed(fit, '6.3', '6.0', 10)).toMatchObject({
      reads: '1.40 mm, with 6.0 (6.0 mm) in',
      part: '6.3',
    });
  });

  test('a list of three is too easily guessed', () => {
    const short = unitWithFits(fitOf(mm, '0.20', '0.45', { parts: listed(mm, '1.20', '1.50', '1.80') }));
    expect(selectPart.facts(short)).toEqual([]);
  });

  test('with none in and a closing part, too little play to begin with is never a reading', () => {
    // Eaton FSO-2105, p. 95: 0.02 read against 0.06 to 0.11 says that the measurement is wrong
    let seen = 0;
    for (const unit of everyUnit())
      for (let seed = 0; seed < 60; seed++) {
        const question = ask(unit, selectPart, seed);
        if (question?.space.form !== 'pair') continue;
        const low = Number(question.prompt.values!.low);
        for (const { label } of question.space.left)
          if (label.key === 'measuring.read-bare' && question.prompt.values!.effect === 'closes') {
            seen++;
            expect(Number(label.values!.play)).toBeGreaterThan(low);
          }
      }
    expect(seen).toBeGreaterThan(10);
  });
});

describe('select-part: slip-ups are known by what they choose', () => {
  // 1.98 with 5.60 in and an aim of 1.30: 5.60 + 1.98 - 1.30 = 6.28, so 6.20 or 6.30
  const fit = fitOf(mm, '1.10', '1.50', {
    parts: listed(mm, '5.20', '5.30', '5.40', '5.50', '5.60', '5.70', '5.80', '5.90'),
  });
  const drawn = posed(fit, '5.80', '5.60', 20)!;
  const chose = (part: string) => judge(drawn.posed, { form: 'pair', pairs: { one: part, two: part } });

  test('5.60 in, 1.50 read, aim 1.30', () => {
    expect(drawn.reads).toBe('1.50 mm, with 5.60 (5.60 mm) in');
    expect(chose('5.80').right).toBe(true);
    // 5.60 - 0.20
    expect(chose('5.40').slipUps).toEqual(['thicker-turned-round']);
    expect(chose('5.70').slipUps).toEqual(['next-part']);
    // 5.60 + 1.50 - 1.50
    expect(chose('5.60').slipUps).toEqual(['aimed-at-limit']);
    expect(chose('5.20')).toMatchObject({ right: false, slipUps: [] });
  });
});

describe('inches turned into millimetres exactly choose the same part', () => {
  const { fits } = deckOf(PUBLISHED.find(({ id }) => id === 'ravigneaux-4-a')!);
  const inches = fits!.find(({ id }) => id === 'drum-play')!;
  const scaled: typeof inches = JSON.parse(
    JSON.stringify(inches).replace(
      /\{"value":"0\.(\d{3})","unit":"in"\}/g,
      (_, thousandths: string) => `{"value":"${(Number(thousandths) * 254) / 10000}","unit":"mm"}`,
    ),
  );
  const chosen = (fit: typeof inches, part: string, steps: number) => {
    const random = scripted({ picks: [part, 'D1'], ints: [steps], again: true });
    return selectPart.pose(unitWithFits({ ...fit, id: 'f' }), 'fit:f/select', random)?.answers;
  };

  test.each(['D2', 'D3', 'D4', 'D5'])('%s with every play within the limits', (part) => {
    expect(scaled.limits.high).toEqual({ value: '0.4064', unit: 'mm' });
    let compared = 0;
    for (let thousandths = 0; thousandths <= 10; thousandths++) {
      const inInches = chosen(inches, part, thousandths);
      if (!inInches) continue;
      compared++;
      expect(chosen(scaled, part, thousandths * 254)).toEqual(inInches);
    }
    expect(compared).toBeGreaterThan(4);
  });
});

describeRules(selectPart, { seeds: 60 });
