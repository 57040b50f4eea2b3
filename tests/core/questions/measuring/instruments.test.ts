import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import type { Drawing } from '../../../../src/core/questions/drawing.ts';
import { depthGaugeReading } from '../../../../src/core/questions/families/measuring/depth-gauge-reading.ts';
import { dialReading } from '../../../../src/core/questions/families/measuring/dial-reading.ts';
import { micrometerReading } from '../../../../src/core/questions/families/measuring/micrometer-reading.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Answer, Family, Posed } from '../../../../src/core/questions/question.ts';
import { everyUnit } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { fitOf, inch, listed, mm, unitWithFits } from './bench.ts';

const number = (value: string): Answer => ({ form: 'number', value });
const metric = unitWithFits(
  fitOf(mm, '0.20', '0.45', { parts: listed(mm, '1.20', '8.00'), bar: mm('25.00') }),
);
const inches = unitWithFits(
  fitOf(inch, '0.005', '0.025', { parts: listed(inch, '0.060', '0.300'), bar: inch('1.000') }),
);
const deep = (unit: typeof metric) =>
  unitWithFits({ ...unit.deck.fits![0]!, method: 'depths', instrument: 'depth-gauge' });
const slips = (posed: Posed, value: string) => judge(posed, number(value)).slipUps;

// Read by the scales as they are made: docs/sources.md [SCALE-1]. Worked by hand.
describe('dial-reading', () => {
  // turns, divisions; the draw below 1/3 leaves the face as it stood
  const zeroed = (unit: typeof metric, turns: number, divisions: number) =>
    dialReading.pose(unit, 'skill:dial', scripted({ ints: [turns, divisions], units: [0.9] }))!;

  test.each([
    // one turn of 1.00 mm and 12 divisions are 1.12 mm, not 0.12
    [metric, 1, 12, '1.12'],
    [metric, 0, 38, '0.38'],
    [metric, 3, 97, '3.97'],
    [inches, 0, 18, '0.018'],
    [inches, 2, 5, '0.205'],
  ])('case %#: %i turns and %i divisions', (unit, turns, divisions, value) => {
    const posed = zeroed(unit, turns, divisions);
    expect(judge(posed, number(value)).right).toBe(true);
    expect(posed.drawing).toMatchObject({ kind: 'dial', reading: { steps: turns, divisions } });
  });

  test('slip-ups are known: a turn missed, one too many, a factor of ten, the wrong side', () => {
    const posed = zeroed(metric, 1, 37);
    expect(slips(posed, '0.37')).toEqual(['turn-missed']);
    expect(slips(posed, '2.37')).toEqual(['turn-too-many']);
    expect(slips(posed, '13.7')).toEqual(['division-ten-off']);
    expect(slips(posed, '0.137')).toEqual(['division-ten-off']);
    expect(slips(posed, '1.63')).toEqual(['scale-backward']);
    expect(slips(posed, '1.40')).toEqual([]);
  });

  test('a face that was not zeroed: from 0.30 to 2.12 is 1.82', () => {
    // units: not zeroed; ints: end turns (to which the start's and one more are added) and divisions, start
    const random = scripted({ ints: [1, 12, 0, 30], units: [0.1] });
    const posed = dialReading.pose(metric, 'skill:dial', random)!;
    expect(posed.drawing).toMatchObject({
      reading: { steps: 2, divisions: 12 },
      start: { steps: 0, divisions: 30 },
    });
    expect(judge(posed, number('1.82')).right).toBe(true);
    expect(slips(posed, '2.12')).toEqual(['start-left-out']);
    expect(slips(posed, '2.42')).toEqual(['start-added']);
    expect(slips(posed, '0.82')).toEqual(['turn-missed']);
  });
});

describe('micrometer-reading', () => {
  const drawn = (unit: typeof metric, divisions: number) =>
    micrometerReading.pose(unit, 'skill:micrometer', scripted({ ints: [divisions] }))!;

  test('7.78 mm: 15 half millimetres and 28 divisions', () => {
    const posed = drawn(metric, 778);
    expect(posed.drawing).toMatchObject({ reading: { steps: 15, divisions: 28 } });
    expect(judge(posed, number('7.78')).right).toBe(true);
    expect(slips(posed, '7.28')).toEqual(['sleeve-line-missed']);
    expect(slips(posed, '8.28')).toEqual(['sleeve-line-too-many']);
    expect(slips(posed, '7.50')).toEqual(['fine-scale-left-out']);
    // 28 divisions taken for 0.028
    expect(slips(posed, '7.53')).toEqual(['fine-scale-ten-off']);
  });

  test('0.187 in: 7 lines of 0.025 and 12 divisions', () => {
    const posed = drawn(inches, 187);
    expect(posed.drawing).toMatchObject({ reading: { steps: 7, divisions: 12 } });
    expect(judge(posed, number('0.187')).right).toBe(true);
    // the number 1 and the thimble, three lines unseen
    expect(slips(posed, '0.112')).toEqual(['sleeve-line-missed']);
  });

  test('parts that a small micrometer does not take are not asked', () => {
    const thick = unitWithFits(fitOf(mm, '0.2', '0.4', { parts: listed(mm, '26.00', '27.00') }));
    const thin = unitWithFits(fitOf(mm, '0.2', '0.4', { parts: listed(mm, '0.10', '0.20') }));
    expect([thick, thin].flatMap((unit) => micrometerReading.facts(unit))).toEqual([]);
  });
});

describe('depth-gauge-reading', () => {
  test('38.42 mm on the face: main line 38, vernier line 21', () => {
    const random = scripted({ ints: [0, 38, 21] });
    const posed = depthGaugeReading.pose(deep(metric), 'skill:depth-gauge', random)!;
    expect(judge(posed, number('38.42')).right).toBe(true);
    expect(slips(posed, '38.21')).toEqual(['vernier-lines-as-hundredths']);
    expect(slips(posed, '39.42')).toEqual(['main-line-too-many']);
    expect(slips(posed, '38')).toEqual(['fine-scale-left-out']);
  });

  test('63.42 mm over a bar of 25.00 is 38.42 below the face', () => {
    const random = scripted({ ints: [1, 38, 21] });
    const posed = depthGaugeReading.pose(deep(metric), 'skill:depth-gauge', random)!;
    expect(posed.drawing).toMatchObject({ reading: { steps: 63, divisions: 21 }, overBar: true });
    expect(judge(posed, number('38.42')).right).toBe(true);
    expect(slips(posed, '63.42')).toEqual(['bar-left-in']);
  });

  test('1.562 in: main line 62 of 0.025 each, vernier line 12', () => {
    const random = scripted({ ints: [0, 62, 12] });
    const posed = depthGaugeReading.pose(deep(inches), 'skill:depth-gauge', random)!;
    expect(judge(posed, number('1.562')).right).toBe(true);
  });
});

test.each<[Family, Drawing['kind']]>([
  [dialReading, 'dial'],
  [micrometerReading, 'micrometer'],
  [depthGaugeReading, 'depth-gauge'],
])('what is drawn stays on the scale: %#', (family, kind) => {
  let asked = 0;
  for (const unit of everyUnit())
    for (let seed = 0; seed < 100; seed++) {
      const drawing = ask(unit, family, seed)?.drawing;
      if (!drawing) continue;
      if (drawing.kind !== 'dial' && drawing.kind !== 'micrometer' && drawing.kind !== 'depth-gauge')
        throw new Error('an instrument is drawn');
      asked++;
      expect(drawing.kind).toBe(kind);
      const { steps, divisions } = drawing.reading;
      expect(divisions).toBeLessThan(drawing.scale.divisions);
      // reach of the usual ones: ten turns, 25 mm or 1 in, 200 mm or 8 in
      const reach = {
        dial: 10,
        micrometer: drawing.scale.unit === 'mm' ? 50 : 40,
        'depth-gauge': drawing.scale.unit === 'mm' ? 200 : 320,
      };
      expect(steps).toBeLessThan(reach[drawing.kind]);
    }
  expect(asked).toBeGreaterThan(150);
});

describeRules(dialReading, { seeds: 60 });
describeRules(micrometerReading, { seeds: 60 });
describeRules(depthGaugeReading, { seeds: 60 });
