/**
 * With a given fault in the unit, what would a gauge show at four ports? Worn plates or stripped teeth are behind
 * the port, so the gauge does not tell of them.
 */
import { predict } from '../../../diagnosis/predict.ts';
import { readingPhrase, testPhrase } from '../../../diagnosis/say.ts';
import { type Table, tableOf } from '../../../diagnosis/table.ts';
import { type Reading, type Test, testId } from '../../../diagnosis/test.ts';
import type { Fault, FaultKind } from '../../../faults/fault.ts';
import type { Random } from '../../../random.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Answer, Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { perDeck } from '../per-unit.ts';
import { seenAgain } from './seen-again.ts';
import { benchOf, benchRefs, drawFault, solenoidFacts, suspectPhrase } from './suspect-parts.ts';

const FACT = 'skill:predicted-gauge';
const PORTS = 4;
const READINGS = ['full', 'low', 'none'] as const;

/** Behind the port: pressure is as in a sound unit. */
const BEHIND: readonly FaultKind[] = ['element-fails', 'element-stuck'];

type Gauge = Extract<Test, { kind: 'gauge' }>;

const gaugesIn = ({ tests }: Table): Gauge[] => tests.filter((test): test is Gauge => test.kind === 'gauge');

interface Asked {
  readonly fault: Fault;
  /** Ports that the fault changes, or those of the element at fault. */
  readonly touched: readonly Gauge[];
  readonly others: readonly Gauge[];
}

const faults = perDeck((unit: Unit): Asked[] => {
  if (!benchOf(unit)) return [];
  const table = tableOf(unit);
  return table.suspects.flatMap((fault) => {
    const settled = gaugesIn(table).filter((test) => table.reading(fault, test) !== null);
    const touches = (test: Gauge) =>
      BEHIND.includes(fault.kind) && 'element' in fault
        ? test.element === fault.element
        : table.reading(fault, test) !== predict(unit, null, test);
    const touched = settled.filter(touches);
    const others = settled.filter((test) => !touches(test));
    return touched.length > 0 && touched.length + others.length >= PORTS ? [{ fault, touched, others }] : [];
  });
});

const drawPorts = ({ touched, others }: Asked, random: Random): Gauge[] => {
  const few = random.sample(touched, 2);
  const rest = random.shuffle([...touched, ...others].filter((test) => !few.includes(test)));
  return [...few, ...rest].slice(0, PORTS);
};

const turned = (fault: Fault): Fault | null =>
  fault.kind === 'solenoid-stuck-off'
    ? { ...fault, kind: 'solenoid-stuck-on' }
    : fault.kind === 'solenoid-stuck-on'
      ? { ...fault, kind: 'solenoid-stuck-off' }
      : fault.kind === 'solenoid-unplugged'
        ? { ...fault, kind: 'solenoid-stuck-on' }
        : null;

export const predictedGauge: Family = {
  id: 'predicted-gauge',
  level: 'reason',
  form: 'pair',
  facts: (unit) => (faults(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || faults(unit).length === 0) return undefined;
    const table = tableOf(unit);
    const fault = drawFault(
      faults(unit).map((asked) => asked.fault),
      random,
    );
    const asked = faults(unit).find((one) => one.fault === fault)!;
    const drawn = drawPorts(asked, random);
    const ports = gaugesIn(table).filter((test) => drawn.includes(test));
    const told = (rule: (test: Gauge) => Reading | null): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(ports.map((test) => [testId(test), rule(test) ?? 'none'])),
    });
    const sound = (test: Gauge) => predict(unit, null, test);
    const other = turned(fault);
    const lures: { slipUp: SlipUp; rule: (test: Gauge) => Reading | null }[] = [
      { slipUp: 'fault-left-out', rule: sound },
      ...(BEHIND.includes(fault.kind) && 'element' in fault
        ? [
            {
              slipUp: 'gauge-reads-the-plates' as const,
              rule: (test: Gauge): Reading | null =>
                test.element !== fault.element
                  ? sound(test)
                  : fault.kind === 'element-fails'
                    ? 'none'
                    : 'full',
            },
          ]
        : []),
      ...(other
        ? [{ slipUp: 'polarity-turned-round' as const, rule: (test: Gauge) => predict(unit, other, test) }]
        : []),
      ...('solenoid' in fault || fault.kind === 'supply-lost' || fault.kind === 'connector-off'
        ? [
            {
              slipUp: 'current-means-pressure' as const,
              rule: (test: Gauge): Reading | null =>
                !asked.touched.some(({ element }) => element === test.element)
                  ? table.reading(fault, test)
                  : fault.kind === 'solenoid-stuck-on'
                    ? 'full'
                    : 'none',
            },
          ]
        : []),
    ];
    let checked: ReadonlyMap<string, Reading | null> | undefined;
    return {
      facts: [fact, ...solenoidFacts(unit, [fault])],
      uses: benchRefs(unit, [fault], ports),
      prompt: say('predicted-gauge.prompt', { fault: suspectPhrase(unit, fault) }),
      drawing: { kind: 'chart' },
      space: {
        form: 'pair',
        left: ports.map((test) => ({ id: testId(test), label: testPhrase(unit, test) })),
        right: READINGS.map((id) => ({ id, label: say(`reading.${id}`) })),
      },
      answers: [told((test) => table.reading(fault, test))],
      lures: lures.map(({ slipUp, rule }) => ({ answer: told(rule), slipUp, fact })),
      explanation: {
        row: say(
          BEHIND.includes(fault.kind) ? 'predicted-gauge.row-behind' : 'predicted-gauge.row-port',
          'element' in fault ? { element: thing('element', fault.element) } : { element: '' },
        ),
        reason: say('predicted-gauge.reason'),
        more: ports.map((test) =>
          say('observation', {
            test: testPhrase(unit, test),
            reading: readingPhrase(unit, test, table.reading(fault, test)!),
          }),
        ),
        drawing: {
          kind: 'table',
          columns: [say('before-after.sound'), say('before-after.fault')],
          rows: ports.map((test) => ({
            head: testPhrase(unit, test),
            cells: [sound(test)!, table.reading(fault, test)!].map((reading) =>
              readingPhrase(unit, test, reading),
            ),
            lit: sound(test) !== table.reading(fault, test),
          })),
        },
      },
      isRight(answer) {
        checked ??= new Map(ports.map((test) => [testId(test), seenAgain(unit, fault, test)]));
        return answer.form === 'pair' && [...checked].every(([id, reading]) => answer.pairs[id] === reading);
      },
    };
  },
};
