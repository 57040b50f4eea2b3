/**
 * A solenoid is stuck as if it had no current, or full current, whatever is commanded: what does each range do?
 * What it gives then has to be known; the chart and what it feeds are in view.
 */
import type { Fault } from '../../../faults/fault.ts';
import { pressureAt } from '../../../hydraulics/solenoid.ts';
import type { DeckSolenoid } from '../../../unit/deck.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { FactId, Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { elementNames, frictionIds, rangeOptions } from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';
import { pressureFact } from '../solenoid-parts.ts';
import {
  askable,
  drawRanges,
  proofOf,
  type RangeTest,
  type Result,
  resultLines,
  resultOptions,
  resultPairs,
  resultRefs,
  resultTable,
  resultWith,
} from './range-results.ts';

const stuckFact = (solenoid: string): FactId => `solenoid:${solenoid}/stuck`;

const KINDS = ['solenoid-stuck-off', 'solenoid-stuck-on'] as const;

const fedBy = (unit: Unit, { feeds }: DeckSolenoid) => frictionIds(unit).filter((id) => feeds.includes(id));

/** Both ways in which each solenoid can stick, where ranges tell of it. */
const faults = perUnit((unit: Unit) =>
  (unit.deck.solenoids ?? [])
    .filter((solenoid) => unit.sure(`solenoid:${solenoid.id}`) && fedBy(unit, solenoid).length > 0)
    .flatMap((solenoid) => {
      const able = KINDS.filter((kind) => askable(unit, { kind, solenoid: solenoid.id }).length > 0);
      return able.length > 0 ? [{ solenoid, able }] : [];
    }),
);

export const solenoidStuck: Family = {
  id: 'solenoid-stuck',
  level: 'reason',
  form: 'pair',
  facts: (unit) => faults(unit).map(({ solenoid }) => stuckFact(solenoid.id)),
  pose(unit, fact, random) {
    const asked = faults(unit).find(({ solenoid }) => stuckFact(solenoid.id) === fact);
    if (!asked) return undefined;
    const { solenoid } = asked;
    const fault = { kind: random.pick(asked.able), solenoid: solenoid.id } satisfies Fault;
    const rows = drawRanges(unit, fault, random);
    const fed = fedBy(unit, solenoid);
    const gives = pressureAt(solenoid, fault.kind === 'solenoid-stuck-off' ? 'off' : 'on');
    const other: Fault = { ...fault, kind: KINDS.find((kind) => kind !== fault.kind)! };
    const usesIt = ({ range }: RangeTest) => fed.some((id) => range.applied.includes(id));
    const pressureOnly: Fault = {
      ...fault,
      kind:
        (fault.kind === 'solenoid-stuck-on') === (pressureAt(solenoid, 'on') === 'full')
          ? 'solenoid-stuck-on'
          : 'solenoid-stuck-off',
    };
    const rules: readonly (readonly [SlipUp, FactId, (row: RangeTest) => Result | null])[] = [
      ['solenoid-turned-round', pressureFact(solenoid.id), (row) => resultWith(unit, other, row)],
      // On is pressure, off is none, for any solenoid.
      [
        'current-means-pressure',
        pressureFact(solenoid.id),
        (row) =>
          gives === (fault.kind === 'solenoid-stuck-on' ? 'full' : 'none')
            ? null
            : resultWith(unit, pressureOnly, row),
      ],
      ['uses-it-ranges-only', fact, (row) => (usesIt(row) ? 'no-drive' : 'works')],
      ['unused-means-tied-up', fact, (row) => (usesIt(row) ? 'works' : 'tied-up')],
      ['fault-left-out', fact, () => 'works'],
    ];
    return {
      facts: [fact, pressureFact(solenoid.id)],
      uses: resultRefs(unit, fault, rows),
      prompt: say(`solenoid-stuck.prompt-${fault.kind === 'solenoid-stuck-off' ? 'off' : 'on'}`, {
        solenoid: thing('solenoid', solenoid.id),
        elements: elementNames(fed),
      }),
      drawing: { kind: 'chart', litColumns: fed },
      space: { form: 'pair', left: rangeOptions(rows.map(({ range }) => range)), right: resultOptions },
      answers: [resultPairs(rows, (row) => resultWith(unit, fault, row))!],
      lures: rules.flatMap(([slipUp, missing, rule]) => {
        const answer = resultPairs(rows, rule);
        return answer ? [{ answer, slipUp, fact: missing }] : [];
      }),
      explanation: {
        row: say(`solenoid-stuck.row-${gives}`, {
          solenoid: thing('solenoid', solenoid.id),
          elements: elementNames(fed),
        }),
        reason: say(`solenoid-stuck.reason-${gives}`, { elements: elementNames(fed) }),
        more: resultLines(unit, fault, rows),
        drawing: resultTable(unit, fault, rows),
      },
      isRight: proofOf(unit, fault, rows),
    };
  },
};
