import { describe, expect, test } from 'vitest';
import { codesFromLines, torquesFromLines } from '../../../src/core/workshop/service-lines.ts';

const read = (line: string) => {
  const [typed] = torquesFromLines(line, 'N·m', []);
  const { name, torque, count } = typed!;
  return [name, torque && `${torque.value} ${torque.unit}`, count];
};

describe('torques, a line each', () => {
  test.each([
    ['pan bolts 11 N·m x14', ['pan bolts', '11 N·m', 14]],
    ['pan bolts 11 Nm 14x', ['pan bolts', '11 N·m', 14]],
    ['drain plug 22', ['drain plug', '22 N·m', undefined]],
    ['M8 pump bolts; 24,5 N.m; 9', ['M8 pump bolts', '24.5 N·m', 9]],
    ['pump bolts: 18 ft-lb x 9', ['pump bolts', '18 lbf·ft', 9]],
    ['sensor bolts 71 lbf·in', ['sensor bolts', '71 lbf·in', undefined]],
    ['sensor bolts 71 in-lbs', ['sensor bolts', '71 lbf·in', undefined]],
    ['flange nut 16.3 kgf·m', ['flange nut', '16.3 kgf·m', undefined]],
    ['flange nut', ['flange nut', undefined, undefined]],
    ['flange nut 160 stone', ['flange nut 160 stone', undefined, undefined]],
  ])('%s', (line, expected) => {
    expect(read(line)).toEqual(expected);
  });

  test('blank lines are none, and ids are told apart', () => {
    const typed = torquesFromLines('pan bolts 11\n\n  \npan bolts 12', 'lbf·ft', ['pan-bolts']);
    expect(typed.map(({ id, torque }) => [id, torque?.unit])).toEqual([
      ['pan-bolts-2', 'lbf·ft'],
      ['pan-bolts-3', 'lbf·ft'],
    ]);
  });
});

test('codes, a line each; one that is there already is left alone', () => {
  expect(
    codesFromLines('P0777 Solenoid B stays on.\nP0730\nU0101: no word from the unit', ['P0730']),
  ).toEqual([
    { id: 'P0777', meaning: 'Solenoid B stays on.', watches: [] },
    { id: 'U0101', meaning: 'no word from the unit', watches: [] },
  ]);
});
