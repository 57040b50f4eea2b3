import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stackSlip } from '../../../../src/core/questions/families/stacks/stack-slip.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { PACKS, packUnit, plate } from './packs.ts';

const pick = (id: string) => ({ form: 'one' as const, pick: id });

/** The height that B1 is said to measure, in hundredths of a mm. */
function measured(question: NonNullable<ReturnType<typeof ask>>, say: ReturnType<typeof makeSay>): number {
  const [, should, is] = /should be ([\d.]+) mm high\. Assembled it measures ([\d.]+) mm/.exec(
    say(question.prompt),
  )!;
  expect(should).toBe('16.00');
  return Math.round(Number(is) * 100);
}

describe('stack-slip, by hand from packs.ts: B1 is 16.0 mm high', () => {
  const unit = packUnit([PACKS.B1]);
  const say = makeSay(unit.deck);
  // apply 4.0, friction 2.1, steel 1.7, backing 4.6, each too many or missing, read to within 0.04
  const HEIGHTS: Record<string, number> = {
    'apply/doubled': 2000,
    'apply/left-out': 1200,
    'f1/doubled': 1810,
    'f1/left-out': 1390,
    's1/doubled': 1770,
    's1/left-out': 1430,
    'backing/doubled': 2060,
    'backing/left-out': 1140,
  };

  test('the plate that is right makes up the difference, and no other comes near', () => {
    const met = new Set<string>();
    for (let seed = 0; seed < 200; seed++) {
      const question = ask(unit, stackSlip, seed)!;
      const height = measured(question, say);
      const near = Object.keys(HEIGHTS).filter((id) => Math.abs(HEIGHTS[id]! - height) <= 10);
      expect(near).toHaveLength(1);
      met.add(near[0]!);
      expect(judge(question, pick(near[0]!)).right).toBe(true);
      const turned = near[0]!.replace(/doubled|left-out/, (sense) =>
        sense === 'doubled' ? 'left-out' : 'doubled',
      );
      expect(judge(question, pick(turned)).slipUps).toEqual(['height-sense-turned']);
      const sense = near[0]!.split('/')[1]!;
      const { space } = question;
      for (const { id } of space.form === 'one' ? space.options : [])
        if (id !== near[0] && id.endsWith(sense))
          expect(judge(question, pick(id)).slipUps).toEqual(['other-thickness']);
    }
    expect(met.size).toBe(8);
  });

  test('two kinds that cannot be told apart by the height are never the question', () => {
    // a steel as thick as the frictions, to within the measuring
    const steel = plate('s1', 'steel', '2.05');
    const close = packUnit([{ ...PACKS.B1, items: PACKS.B1.items.with(2, steel) }]);
    for (let seed = 0; seed < 100; seed++) {
      const answer = ask(close, stackSlip, seed)?.answers[0];
      if (answer?.form === 'one') expect(answer.pick).toMatch(/^(apply|backing)/);
    }
  });
});

describeRules(stackSlip, { seeds: 100 });
