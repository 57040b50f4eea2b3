import { describe, expect, test } from 'vitest';
import { faultId } from '../../../../src/core/faults/fault.ts';
import { ask } from '../../../../src/core/questions/ask.ts';
import { tellingFaults } from '../../../../src/core/questions/families/codes/code-parts.ts';
import { codeRoots } from '../../../../src/core/questions/families/codes/code-roots.ts';
import { codeWatches } from '../../../../src/core/questions/families/codes/code-watches.ts';
import { codesThatSet } from '../../../../src/core/questions/families/codes/codes-that-set.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import { shippedDecks } from '../../../units.ts';
import { describeRules } from '../rules.ts';

const deck = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
const unit = makeUnit(deck);

describe('the seven-range unit, its codes worked by hand from chart and wiring', () => {
  const rowsOf = (id: string) =>
    Object.fromEntries(
      tellingFaults(unit)
        .find(({ fault }) => faultId(fault) === id)!
        .rows.map(({ code, state, own }) => [code.id, `${state}${own ? ', own' : ''}`]),
    );

  // C2 is on in 3, 5 and R only; without it what is left on leaves the output free there, at no ratio. So no
  // wrong-ratio code must set; in those three it may, in the others it cannot, and no circuit is broken.
  test('C2 does not take hold: wrong-ratio codes may come in 3, 5 and R, no circuit code can', () => {
    const rows = rowsOf('element-fails:C2');
    for (const id of ['P0733', 'P0735', 'P0736']) expect(rows[id]).toBe('could');
    for (const id of ['P0731', 'P0732', 'P0734', 'P0729', 'P0710', 'P0715', 'P0720'])
      expect(rows[id]).toBe('cannot');
  });

  // An output speed sensor that is lost sets its own circuit code; with one speed missing no ratio is known.
  test('output speed lost: its circuit code sets, no wrong-ratio code can', () => {
    const rows = rowsOf('sensor-lost:output-speed');
    expect(rows.P0720).toBe('sets, own');
    for (const id of ['P0731', 'P0733', 'P0736']) expect(rows[id]).toBe('cannot');
  });
});

test('a letter is looked up in the record, and the order of the list is a slip-up', () => {
  const [fact] = codeWatches.facts(unit);
  for (let seed = 0; seed < 20; seed++) {
    const question = ask(unit, codeWatches, seed, fact)!;
    for (const lure of question.lures) expect(judge(question, lure.answer).slipUps).toContain(lure.slipUp);
    const { answers } = question;
    if (answers[0].form === 'pair')
      for (const [code, solenoid] of Object.entries(answers[0].pairs))
        expect(deck.codes!.find(({ id }) => id === code)!.watches).toEqual([`solenoid:${solenoid}`]);
  }
});

describeRules(codeWatches, { seeds: 100 });
describeRules(codesThatSet, { seeds: 100 });
describeRules(codeRoots, { seeds: 100 });
