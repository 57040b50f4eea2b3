import { describe, expect, test } from 'vitest';
import {
  everyFault,
  faultsThatFit,
  GROUND,
  type PinReading,
} from '../../../../src/core/electrical/harness.ts';
import { ask } from '../../../../src/core/questions/ask.ts';
import {
  explainsByFormula,
  readHarness,
} from '../../../../src/core/questions/families/electrical/faulty-harness.ts';
import { askedHarnesses } from '../../../../src/core/questions/families/electrical/harness-parts.ts';
import { pinPairs } from '../../../../src/core/questions/families/electrical/pin-pairs.ts';
import { windingFault } from '../../../../src/core/questions/families/electrical/winding-fault.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { randomFrom } from '../../../../src/core/random.ts';
import { exact } from '../../../results.ts';
import { everyUnit } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { unitWith, windingsOf } from './bench.ts';

describe('pin-pairs', () => {
  const posed = (one: string, other: string) =>
    pinPairs.pose(unitWith(windingsOf([one, one], [other, other])), 'skill:pin-pairs', scripted({}))!;

  test.each([
    // series from pin to pin; 12 ‖ 12 = 6 and 5 ‖ 12 = 3.529 are what a parallel circuit would give
    ['12', '12', '24', '6'],
    ['5', '12', '17', '3.529'],
    ['5.2', '12.4', '17.6', '3.664'],
  ])('%s and %s Ω: %s, not %s', (one, other, sum, parallel) => {
    const question = posed(one, other);
    expect(judge(question, { form: 'number', value: sum }).right).toBe(true);
    expect(judge(question, { form: 'number', value: parallel }).slipUps).toEqual(['parallel-for-series']);
    expect(judge(question, { form: 'number', value: one }).slipUps).toEqual(
      one === other ? ['one-winding-only'] : ['one-winding-only'],
    );
  });
});

const electrical = windingsOf(['11', '15'], ['11', '15'], ['5.0', '5.6']);
const [harness] = askedHarnesses(unitWith(electrical));
const kinds = (readings: PinReading[]) =>
  [null, ...everyFault(harness!)]
    .filter((fault) => explainsByFormula(harness!, fault, readings))
    .map((fault) => (fault === null ? 'sound' : `${fault.kind}${'pin' in fault ? ` ${fault.pin}` : ''}`));

/** Readings of pins 1, 2, 3 to the common pin 4 and to the case; null is open. */
const readings = (toCommon: (string | null)[], toCase: (string | null)[] = []): PinReading[] => [
  ...toCommon.map(
    (ohms, index): PinReading => ({
      between: [`${index + 1}`, '4'],
      ohms: ohms === null ? null : exact(ohms),
    }),
  ),
  ...toCase.map(
    (ohms, index): PinReading => ({
      between: [`${index + 1}`, GROUND],
      ohms: ohms === null ? null : exact(ohms),
    }),
  ),
];

describe('what fits which readings, by Ohm and by hand', () => {
  test.each<[string, PinReading[], string[]]>([
    ['all in band, case open', readings(['12', '13', '5.2'], [null, null, null]), ['sound']],
    ['one open', readings([null, '13', '5.2'], [null, null, null]), ['open 1']],
    ['one at nothing', readings(['12', '0', '5.2'], [null, null, null]), ['shorted 2']],
    ['one low', readings(['12', '7', '5.2'], [null, null, null]), ['turns-shorted 2']],
    ['one high', readings(['12', '13', '9'], [null, null, null]), ['high-resistance 3']],
    // 12 ‖ 12 = 6 on both
    ['two alike and low', readings(['6', '6', '5.2'], [null, null, null]), ['pins-joined 1']],
    ['all open', readings([null, null, null], [null, null, null]), ['common-open']],
    // 12 + 13 = 25, 5.2 + 13 = 18.2
    ['pin 2 on the case', readings(['12', '13', '5.2'], ['25', '0', '18.2']), ['to-ground 2']],
    ['the common pin on the case', readings(['12', '13', '5.2'], ['12', '13', '5.2']), ['common-to-ground']],
    ['all in band, the case not read', readings(['12', '13', '5.2']), ['sound', 'to-ground 1', 'to-ground 2', 'to-ground 3', 'common-to-ground']],
    ['two at once', readings([null, '0', '5.2'], [null, null, null]), []],
  ])('%s', (_, given, fits) => {
    expect(kinds(given)).toEqual(fits);
  }); // biome-ignore format: a table reads across

  test('the formulas agree with the solved network on every fault of every harness', () => {
    let compared = 0;
    for (const unit of everyUnit())
      for (const one of askedHarnesses(unit)) {
        if (one.common === GROUND) continue;
        const faults = [null, ...everyFault(one)];
        for (const real of faults)
          for (const toCase of [true, false]) {
            const read = readHarness(one, real, toCase, randomFrom(compared));
            const byNetwork = faultsThatFit(one, read);
            expect(faults.filter((fault) => explainsByFormula(one, fault, read))).toEqual(byNetwork);
            compared++;
          }
      }
    expect(compared).toBeGreaterThan(100);
  });
});

describe('winding-fault', () => {
  test('where the case was not read, several can be right; where it was, nearly always one', () => {
    const counts = { read: [] as number[], unread: [] as number[], none: [] as number[] };
    for (const unit of everyUnit())
      for (let seed = 0; seed < 60; seed++) {
        const question = ask(unit, windingFault, seed);
        if (question?.answers[0].form !== 'set') continue;
        counts[question.prompt.values!.case as keyof typeof counts].push(question.answers[0].picks.length);
      }
    expect(counts.unread.filter((count) => count > 1).length).toBeGreaterThan(5);
    expect(counts.read.filter((count) => count === 1).length).toBeGreaterThan(counts.read.length * 0.9);
  });
});

test('a group on a ground wire is never asked about the case', () => {
  const electrical = windingsOf(['11', '15'], ['11', '15'], ['5.0', '5.6']);
  const high = electrical.windings!.map((winding) => ({ ...winding, switched: 'high' as const }));
  const [connector] = electrical.connectors!;
  const pins = connector!.pins.map((pin) =>
    pin.serves === 'supply:main' ? { ...pin, serves: 'ground' } : pin,
  );
  const unit = unitWith({ ...electrical, windings: high, connectors: [{ ...connector!, pins }] });
  for (let seed = 0; seed < 60; seed++) {
    const question = ask(unit, windingFault, seed)!;
    if (question.space.form !== 'set') throw new Error('faults are ticked');
    expect(question.prompt.values!.case).toBe('none');
    expect(question.space.options.filter(({ id }) => id.includes('ground'))).toEqual([]);
  }
});

describeRules(pinPairs, { seeds: 60 });
describeRules(windingFault, { seeds: 60 });
