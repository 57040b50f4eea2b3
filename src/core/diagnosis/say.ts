/** Faults, tests, readings and links as phrases; src/words/en/diagnosis.ts has the words. */
import { type Fault, partOf } from '../faults/fault.ts';
import { type Phrase, say, type ThingKind, thing } from '../questions/phrase.ts';
import type { Unit } from '../unit/unit.ts';
import type { Link } from './chain.ts';
import type { Observation, Reading, Test } from './test.ts';

const kindOfPart = (fault: Fault): ThingKind =>
  'element' in fault
    ? 'element'
    : 'gearset' in fault
      ? 'gearset'
      : 'solenoid' in fault
        ? 'solenoid'
        : 'supply' in fault
          ? 'supply'
          : 'sensor';

/** "brake B1 does not take hold", "one-way F1 does not hold", "the pressure is down to 70 %". */
export function faultPhrase(unit: Unit, fault: Fault): Phrase {
  if (fault.kind === 'low-pressure') return say('fault.low-pressure', { percent: fault.percent });
  const part = partOf(fault);
  if (part === undefined) return say(`fault.${fault.kind}`);
  const oneWay = unit.deck.train.elements.some(({ id, kind }) => id === part && kind === 'one-way');
  const key = oneWay && 'element' in fault ? `fault.${fault.kind}-one-way` : `fault.${fault.kind}`;
  return say(fault.kind === 'one-way-reversed' ? 'fault.one-way-reversed' : key, {
    part: thing(kindOfPart(fault), part),
  });
}

const inRow = ({ row, position }: { readonly row: string; readonly position: string | null }) => ({
  row: thing('range', row),
  lever: position === null ? 'none' : 'some',
  position: position === null ? '' : thing('position', position),
});

const mustDrive = (unit: Unit, row: string) =>
  unit.ranges.some(({ id }) => id === row) ? 'range' : 'neutral';

/** "Drive range 3, lever in D.", "Gauge at brake B1, in range 3, lever in D." */
export function testPhrase(unit: Unit, test: Test): Phrase {
  switch (test.kind) {
    case 'road':
      return say(`test.road-${mustDrive(unit, test.row)}`, inRow(test));
    case 'gauge':
      return say('test.gauge', { element: thing('element', test.element), ...inRow(test) });
    case 'codes':
      return say('test.codes');
    case 'signal':
      return say('test.signal', { sensor: thing('sensor', test.sensor) });
    default:
      return say(`test.${test.kind}`, { solenoid: thing('solenoid', test.solenoid) });
  }
}

/** "does not drive", "drives as range 2", "full pressure", "codes P0750 and P0755". */
export function readingPhrase(unit: Unit, test: Test, reading: Reading): Phrase {
  if (reading.startsWith('range:'))
    return say('reading.range', { range: thing('range', reading.slice('range:'.length)) });
  if (reading.startsWith('codes:')) {
    const codes = reading.slice('codes:'.length).split('+').filter(Boolean);
    return codes.length > 0 ? say('reading.codes', { codes }) : say('reading.no-codes');
  }
  const neutral = test.kind === 'road' && mustDrive(unit, test.row) === 'neutral';
  return say(neutral && reading === 'works' ? 'reading.stays-put' : `reading.${reading}`);
}

/** "Drive range 3, lever in D: does not drive." */
export const observationPhrase = (unit: Unit, { test, reading }: Observation): Phrase =>
  say('observation', { test: testPhrase(unit, test), reading: readingPhrase(unit, test, reading) });

/** A road test as a customer tells it: "range 3 in drive does not drive". */
export function symptomPhrase(unit: Unit, { test, reading }: Observation): Phrase {
  if (test.kind !== 'road') throw new Error(`a customer makes no ${test.kind} test`);
  return say(`case.symptom-${mustDrive(unit, test.row)}`, {
    ...inRow(test),
    reading: readingPhrase(unit, test, reading),
  });
}

export const linkPhrase = (link: Link): Phrase => say(`link.${link}`);
