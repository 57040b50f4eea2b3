import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  endRun,
  type History,
  record,
  redo,
  STEPS_KEPT,
  startHistory,
  undo,
} from '../../../src/core/workshop/history.ts';

const typed = (history: History<string>, ...states: readonly (readonly [string, string?])[]) =>
  states.reduce((made, [state, run]) => record(made, state, run ?? null), history);

describe('back and forth', () => {
  test('the letters of one word are one step, those of the next another', () => {
    const history = typed(
      startHistory(''),
      ['f', 'unit'],
      ['fr', 'unit'],
      ['fro', 'unit'],
      ['fro!', 'title'],
    );
    expect(undo(history).present).toBe('fro');
    expect(undo(undo(history)).present).toBe('');
    expect(undo(undo(undo(history))).present).toBe('');
  });

  test('a pause within a word ends its step', () => {
    const history = record(endRun(typed(startHistory(''), ['a', 'unit'])), 'ab', 'unit');
    expect(undo(history).present).toBe('a');
  });

  test('after going back, a change of the same run is a step of its own, and what lay ahead is gone', () => {
    const history = record(undo(typed(startHistory(''), ['a', 'x'], ['b', 'y'])), 'c', 'x');
    expect(undo(history).present).toBe('a');
    expect(redo(history)).toEqual(history);
  });

  test('no change is no step', () => {
    const history = startHistory('a');
    expect(record(history, 'a', 'x')).toBe(history);
  });

  test('as far back as forth, for any changes', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.string(), fc.constantFrom('x', 'y', undefined)), { maxLength: 30 }), (states) => {
        const end = states.reduce((made, [state, run]) => record(made, state, run ?? null), startHistory('start'));
        let history = end;
        for (let step = 0; step < states.length + 2; step++) history = undo(history);
        expect(history.present).toBe('start');
        for (let step = 0; step < states.length + 2; step++) history = redo(history);
        expect(history.present).toBe(end.present);
        expect(history.past).toEqual(end.past);
      }),
    ); // biome-ignore format: one property
  });

  test(`${STEPS_KEPT} steps are kept, the oldest go first`, () => {
    let history = startHistory(0);
    for (let state = 1; state <= STEPS_KEPT + 3; state++) history = record(history, state);
    for (let step = 0; step <= STEPS_KEPT + 3; step++) history = undo(history);
    expect(history.present).toBe(3);
  });
});
