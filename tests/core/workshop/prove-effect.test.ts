import { describe, expect, test } from 'vitest';
import { LENGTH_UNITS } from '../../../src/core/unit/record.ts';
import { usualUnit } from '../../../src/core/workshop/amounts.ts';
import type { DeckDraft } from '../../../src/core/workshop/draft.ts';
import { proveEffect } from '../../../src/core/workshop/prove-effect.ts';
import { shippedDecks } from '../../units.ts';

const mm = (value: string) => ({ value, unit: 'mm' });
const parts = [
  { id: 'A', thickness: mm('1.60') },
  { id: 'C', thickness: mm('1.80') },
  { id: 'E', thickness: mm('2,00') },
];

describe('what one real case proves', () => {
  // By hand. Closing: bare = play + part in; result = bare − part chosen. Opening: bare = play − part in; result = bare + part.
  test.each([
    ['0.50 with A (1.60) in, 0.30 with C (1.80): less play', { method: 'part-fitted' }, { play: mm('0.50'), fitted: 'A', chosen: 'C', result: mm('0.30') }, 'closes'],
    ['0.50 with A in, 0.70 with C: more play', { method: 'part-fitted' }, { play: mm('0.50'), fitted: 'A', chosen: 'C', result: mm('0.70') }, 'opens'],
    ['0.50 with A in, 0.55 with C: neither', { method: 'part-fitted' }, { play: mm('0.50'), fitted: 'A', chosen: 'C', result: mm('0.55') }, 'neither'],
    ['the same part again tells nothing', { method: 'part-fitted' }, { play: mm('0.50'), fitted: 'A', chosen: 'A', result: mm('0.50') }, 'both'],
    ['a last digit apart still agrees', { method: 'part-fitted' }, { play: mm('0.50'), fitted: 'A', chosen: 'C', result: mm('0.31') }, 'closes'],
    ['further apart where readings may lie apart', { method: 'part-fitted', spread: mm('0.05') }, { play: mm('0.50'), fitted: 'A', chosen: 'C', result: mm('0.34') }, 'closes'],
    ['2.30 with none in, 0.30 with E (2.00)', { method: 'bare' }, { play: mm('2.30'), chosen: 'E', result: mm('0.30') }, 'closes'],
    ['0.10 with none in, 2.10 with E', { method: 'bare' }, { play: mm('0.10'), chosen: 'E', result: mm('2,10') }, 'opens'],
    ['depths 40.00 less 37.70, gasket 0.00: 2.30 bare', { method: 'depths' }, { seat: { reading: mm('40.00') }, standOff: { reading: mm('37.70') }, chosen: 'E', result: mm('0.30') }, 'closes'],
    ['the same over a bar of 25', { method: 'depths', bar: mm('25') }, { seat: { reading: mm('65.00'), overBar: true }, standOff: { reading: mm('37.70') }, chosen: 'E', result: mm('0.30') }, 'closes'],
    ['in inches against parts in millimetres: 0.0118 in is 0.30 mm', { method: 'bare' }, { play: mm('2.30'), chosen: 'E', result: { value: '0.0118', unit: 'in' } }, 'closes'],
    ['a figure half typed', { method: 'bare' }, { play: mm('2.'), chosen: 'E', result: mm('0.30') }, 'waits'],
    ['no part chosen', { method: 'bare' }, { play: mm('2.30'), result: mm('0.30') }, 'waits'],
    ['a part that is not on the list', { method: 'part-fitted' }, { play: mm('0.50'), fitted: 'Z', chosen: 'C', result: mm('0.30') }, 'waits'],
    ['no method said', {}, { play: mm('0.50'), chosen: 'C', result: mm('0.30') }, 'waits'],
    ['over a bar whose height is not said', { method: 'depths' }, { seat: { reading: mm('65'), overBar: true }, standOff: { reading: mm('37.70') }, chosen: 'E', result: mm('0.30') }, 'waits'],
  ] as const)('%s', (_, fit, reading, proof) => {
    expect(proveEffect({ parts, ...fit }, reading)).toBe(proof);
  }); // biome-ignore format: a table reads across

  test('readings of the shipped decks prove what their fits say', () => {
    let proved = 0;
    for (const { fits } of shippedDecks())
      for (const fit of fits ?? [])
        for (const reading of fit.readings ?? []) {
          const proof = proveEffect(fit as NonNullable<DeckDraft['fits']>[number], reading as never);
          if (proof === 'waits') continue;
          expect(proof).toBe(fit.effect);
          proved++;
        }
    expect(proved).toBeGreaterThan(0);
  });

  test('the unit that most lengths of a draft are in', () => {
    expect(usualUnit({}, LENGTH_UNITS)).toBe('mm');
    expect(
      usualUnit({ stacks: [{ items: [{ thickness: { value: '0.07', unit: 'in' } }] }] }, LENGTH_UNITS),
    ).toBe('in');
    expect(
      usualUnit(
        { fits: [{ aim: { value: '1', unit: 'mm' }, spread: { value: '1', unit: 'in' } }] },
        LENGTH_UNITS,
      ),
    ).toBe('mm');
  });
});
