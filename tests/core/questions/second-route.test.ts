import { describe, expect, test } from 'vitest';
import { solveSpeeds } from '../../../src/core/gears/solve.ts';
import { floatOutput, floatSpeeds } from '../../../src/core/questions/second-route.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { everyUnit, PUBLISHED } from '../../units.ts';

describe('the second route', () => {
  const rows = PUBLISHED.flatMap((train) => train.chart.map((row) => ({ train, row })));

  test.each(rows.map(({ train, row }) => [train.id, row.range, row.publishedRatio, { train, row }] as const))(
    '%s range %s comes to the published %d',
    (_id, _range, published, { train, row }) => {
      // two units of the last decimal: some plates are cut, not rounded
      expect(Math.abs(1 / floatOutput(train, row.applied)! - published)).toBeLessThan(
        2 * 10 ** -row.decimals,
      );
    },
  );

  test('agrees with the exact solver on any elements at all, open shafts and tie-ups too', () => {
    const random = randomFrom(7);
    for (const { deck } of everyUnit()) {
      const ids = deck.train.elements.map((element) => element.id);
      for (let draw = 0; draw < 60; draw++) {
        const applied = random.sample(ids, random.int(0, ids.length));
        const { state, speeds } = solveSpeeds(deck.train, applied);
        const floats = floatSpeeds(deck.train, applied);
        expect(floats === null).toBe(state === 'tied-up');
        for (const [shaft, speed] of speeds) {
          const float = floats!.get(shaft)!;
          if (speed === null) expect(float).toBeNull();
          else expect(float).toBeCloseTo(speed.valueOf(), 9);
        }
      }
    }
  });
});
