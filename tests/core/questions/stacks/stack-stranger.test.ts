import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stackStranger } from '../../../../src/core/questions/families/stacks/stack-stranger.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { describeRules } from '../rules.ts';
import { PACKS, packUnit, plate } from './packs.ts';

const unit = packUnit();
const asked = (seed: number, stack = 'B1') => ask(unit, stackStranger, seed, `stack:${stack}/plates`)!;

/** What lies where, with the stranger. */
const laid = (seed: number, stack = 'B1'): string[] => {
  const { drawing } = asked(seed, stack);
  return drawing?.kind === 'stack' ? [...(drawing.items ?? [])] : [];
};

describe('stack-stranger, by hand from packs.ts', () => {
  test('one plate of the same kind and another thickness has taken a place, and it is right to tap it', () => {
    const met = new Set<string>();
    for (let seed = 0; seed < 500; seed++) {
      const items = laid(seed);
      const strangers = items.filter((id) => id.includes('/'));
      expect(strangers).toHaveLength(1);
      const place = items.indexOf(strangers[0]!);
      met.add(`${PACKS.B1.items[place]!.id} by ${strangers[0]}`);
      expect(judge(asked(seed), { form: 'place', spot: strangers[0]! }).right).toBe(true);
    }
    // frictions 2.1 by 1.9 or 1.6, the steel 1.7 by 2.0, apply 4.0 by 3.5, backing 4.6 by 5.0 or 3.9, ring 1.5 by 2.2
    // or 1.3; the nearest of these are 0.2 apart
    expect([...met].sort()).toEqual([
      'apply by B2/apply',
      'backing by B2/backing',
      'backing by C1/backing',
      'f1 by B2/f1',
      'f1 by C1/f1',
      'f2 by B2/f1',
      'f2 by C1/f1',
      'ring by B2/ring',
      'ring by C1/ring',
      's1 by C1/s1',
    ]);
  });

  test('a plate that occurs once and belongs is a slip-up by name, one of several is not', () => {
    for (let seed = 0; seed < 40; seed++)
      for (const id of laid(seed).filter((each) => !each.includes('/'))) {
        const { slipUps } = judge(asked(seed), { form: 'place', spot: id });
        expect(slipUps).toEqual(id.startsWith('f') ? [] : ['single-taken-for-stranger']);
      }
  });

  test('a plate as thick as one of the pack never comes in as a stranger', () => {
    const near = { ...PACKS.B2, items: [plate('apply', 'apply', '3.9'), ...PACKS.B2.items.slice(1)] };
    const other = packUnit([PACKS.C1, PACKS.B1, near]);
    for (let seed = 0; seed < 100; seed++) {
      const { drawing } = ask(other, stackStranger, seed, 'stack:B1/plates')!;
      expect(drawing?.kind === 'stack' && drawing.items).not.toContain('B2/apply');
    }
  });

  test('with one pack there are no strangers', () => {
    expect(stackStranger.facts(packUnit([PACKS.C1]))).toEqual([]);
  });
});

describeRules(stackStranger, { seeds: 100 });
