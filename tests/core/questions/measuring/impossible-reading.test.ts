import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { impossibleReading } from '../../../../src/core/questions/families/measuring/impossible-reading.ts';
import type { Note } from '../../../../src/core/questions/families/measuring/notes-parts.ts';
import {
  flawsOf,
  floatFlawed,
  isOutside,
} from '../../../../src/core/questions/families/measuring/notes-parts.ts';
import type { Phrase } from '../../../../src/core/questions/phrase.ts';
import { exact } from '../../../results.ts';
import { everyUnit } from '../../../units.ts';
import { describeRules } from '../rules.ts';

const step = exact('0.01');
const part = (thickness: string) => ({ id: thickness, thickness: exact(thickness) });

/** Limits, the first reading with its part, the second with its. */
const note = (low: string, high: string, first: string, was?: string, play?: string, put?: string): Note => ({
  low: exact(low),
  high: exact(high),
  first: exact(first),
  part: was === undefined ? null : part(was),
  second: play === undefined || put === undefined ? null : { play: exact(play), part: part(put) },
});

describe('notes that can and cannot be right', () => {
  test.each<[string, Note, string[]]>([
    // 1.20 + 0.95 − 1.80
    ['0.95 with 1.20, then 0.35 with 1.80', note('0.20', '0.45', '0.95', '1.20', '0.35', '1.80'), []],
    // out of limits, but it can be
    ['0.95 with 1.20, then 0.65 with 1.50', note('0.20', '0.45', '0.95', '1.20', '0.65', '1.50'), []],
    // within a hundredth
    ['0.95 with 1.20, then 0.36 with 1.80', note('0.20', '0.45', '0.95', '1.20', '0.36', '1.80'), []],
    // thicker, and yet more play
    [
      '0.95 with 1.20, then 1.25 with 1.50',
      note('0.20', '0.45', '0.95', '1.20', '1.25', '1.50'),
      ['sum-disagrees'],
    ],
    // 0.40 of play and a part 0.60 thicker: a steel doubled by mistake does not go in either
    [
      '0.40 with 1.20, then 0.30 with 1.80',
      note('0.20', '0.45', '0.40', '1.20', '0.30', '1.80'),
      ['stack-exceeds-depth'],
    ],
    // a limit pair as printed in a Volvo TG-81SC table, "223 – 71"
    ['limits 223 to 71', note('223', '71', '100', '80', '100', '80'), ['limits-swapped']],
    // Eaton FSO-2105, p. 95: 0.02 with no shims against 0.06 to 0.11
    ['0.02 with none in', note('0.06', '0.11', '0.02'), ['bare-below-limits']],
    ['0.47 with none in', note('0.06', '0.11', '0.47'), []],
  ])('%s', (_, noted, flaws) => {
    expect(flawsOf(noted, step)).toEqual(flaws);
    expect(floatFlawed(noted, step)).toBe(flaws.length > 0);
  });

  test('outside the limits is told apart from impossible', () => {
    expect(isOutside(note('0.20', '0.45', '0.95', '1.20', '0.65', '1.50'))).toBe(true);
    expect(isOutside(note('0.20', '0.45', '0.95', '1.20', '0.45', '1.70'))).toBe(false);
  });
});

describe('impossible-reading', () => {
  test('what is ticked follows from the figures as they are printed', () => {
    let ticked = 0;
    let clean = 0;
    for (const unit of everyUnit())
      for (let seed = 0; seed < 60; seed++) {
        const question = ask(unit, impossibleReading, seed);
        if (question?.space.form !== 'set' || question.answers[0].form !== 'set') continue;
        const tolerance = Number(question.prompt.values!.tolerance) + 1e-9;
        for (const { id, label } of question.space.options) {
          const values = label.values!;
          const [low, high] = [Number(values.low), Number(values.high)];
          const reading = (values.reading as Phrase).values!;
          const thick = (of: unknown) => Number((of as Phrase).values!.thickness);
          const wrong =
            low > high ||
            (label.key === 'impossible-reading.note'
              ? Number(reading.play) < low
              : Math.abs(
                  Number(reading.play) + thick(reading.part) - thick(values.part) - Number(values.play),
                ) > tolerance);
          expect(question.answers[0].picks.includes(id)).toBe(wrong);
          if (wrong) ticked++;
          else clean++;
        }
      }
    expect(ticked).toBeGreaterThan(100);
    expect(clean).toBeGreaterThan(100);
  });
});

describeRules(impossibleReading, { seeds: 60 });
