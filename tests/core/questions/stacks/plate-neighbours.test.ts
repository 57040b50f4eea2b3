import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { plateNeighbours } from '../../../../src/core/questions/families/stacks/plate-neighbours.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { packUnit } from './packs.ts';

const unit = packUnit();
const say = makeSay(unit.deck);

function asked(stack: string, plate: string) {
  for (let seed = 0; seed < 100; seed++) {
    const question = ask(unit, plateNeighbours, seed, `stack:${stack}/order`)!;
    if (say(question.prompt).includes(`above the ${plate}`)) return question;
  }
  throw new Error(`${plate} of ${stack} never asked`);
}

describe('plate-neighbours, by hand from packs.ts', () => {
  test.each([
    ['C1', 'waved plate', 'piston', 's1', true, []],
    ['C1', 'waved plate', 's1', 'piston', false, ['counted-from-opening']],
    // at the other end it would lie between backing plate and ring
    ['C1', 'waved plate', 'backing', 'ring', false, ['wave-at-wrong-end']],
    // one up: on a steel, under a friction
    ['C1', 'waved plate', 's1', 'f1', false, ['adjacent-swapped']],
    ['C1', 'backing plate', 'f1', 'ring', true, []],
    ['C1', 'backing plate', 's1', 'f1', false, ['adjacent-swapped']],
    // at the other end it would lie on the piston, under the waved plate
    ['C1', 'backing plate', 'piston', 'wave', false, ['opposite-end-plate']],
    ['B1', 'steel plate', 'f1', 'f1', true, []],
    ['B1', 'steel plate', 'apply', 'f1', false, ['adjacent-swapped']],
  ])('%s, %s between %s and %s: right %s', (stack, plate, below, above, right, slipUps) => {
    const verdict = judge(asked(stack, plate), { form: 'pair', pairs: { below, above } });
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('only plates of which there is one, with something on both sides', () => {
    const met = new Set<string>();
    for (let seed = 0; seed < 200; seed++)
      met.add(
        /above the ([a-z]+(?: [a-z]+)*)/.exec(
          say(ask(unit, plateNeighbours, seed, 'stack:C1/order')!.prompt),
        )![1]!,
      );
    expect([...met].sort()).toEqual(['backing plate', 'waved plate']);
  });
});

describeRules(plateNeighbours, { seeds: 100 });
