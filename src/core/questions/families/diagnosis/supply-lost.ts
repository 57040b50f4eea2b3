/**
 * A supply that several solenoids share is lost while a range is commanded: which elements have pressure then?
 * The table shows what each solenoid feeds and hangs on; what it gives with no current has to be known.
 */
import type { Fault } from '../../../faults/fault.ts';
import { pressuresWith, suppliedBy, usualPosition } from '../../../faults/pressure.ts';
import { pressureAt } from '../../../hydraulics/solenoid.ts';
import type { DeckSolenoid } from '../../../unit/deck.ts';
import type { Range, Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import {
  distinctLures,
  elementNames,
  elementOptions,
  frictionIds,
  setAnswer,
  sureRanges,
} from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';
import { pressureFact, solenoidInWords } from '../solenoid-parts.ts';
import { portsAgain } from './seen-again.ts';
import { benchRefs, ticked } from './suspect-parts.ts';

const lostFact = (supply: string): FactId => `supply:${supply}/lost`;

interface Case {
  readonly supply: string;
  readonly dead: readonly DeckSolenoid[];
  readonly ranges: readonly { readonly range: Range; readonly on: readonly string[] }[];
}

/** Elements with pressure; null where the deck leaves one open. */
function portsWith(unit: Unit, fault: Fault | null, range: Range): string[] | null {
  const pressures = [...pressuresWith(unit.deck, fault, range)];
  if (pressures.some(([, pressure]) => pressure === null)) return null;
  return pressures.filter(([, pressure]) => pressure === 'full').map(([element]) => element);
}

const same = (a: readonly string[], b: readonly string[]) =>
  a.length === b.length && a.every((id) => b.includes(id));

/** Supplies of two solenoids or more that feed elements, in ranges whose elements change. */
const cases = perUnit((unit: Unit): Case[] =>
  (unit.deck.electrical?.supplies ?? []).flatMap(({ id: supply }) => {
    const dead = suppliedBy(unit.deck, supply).filter(({ feeds }) =>
      frictionIds(unit).some((element) => feeds.includes(element)),
    );
    const ranges = sureRanges(unit).flatMap((range) => {
      const on = portsWith(unit, { kind: 'supply-lost', supply }, range);
      const sound = portsWith(unit, null, range);
      return on && sound && on.length > 0 && !same(on, sound) ? [{ range, on }] : [];
    });
    const uses = benchRefs(unit, [{ kind: 'supply-lost', supply }], []);
    return dead.length > 1 && ranges.length > 0 && uses.every((ref) => unit.sure(ref))
      ? [{ supply, dead, ranges }]
      : [];
  }),
);

export const supplyLost: Family = {
  id: 'supply-lost',
  level: 'reason',
  form: 'set',
  facts: (unit) => cases(unit).map(({ supply }) => lostFact(supply)),
  pose(unit, fact, random) {
    const asked = cases(unit).find(({ supply }) => lostFact(supply) === fact);
    if (!asked) return undefined;
    const { supply, dead } = asked;
    const { range, on } = random.pick(asked.ranges);
    const fault: Fault = { kind: 'supply-lost', supply };
    const position = usualPosition(unit.deck, range);
    const all = frictionIds(unit);
    const fedByDead = (element: string) => dead.some(({ feeds }) => feeds.includes(element));
    const charted = all.filter((id) => range.applied.includes(id));
    const lure = (slipUp: SlipUp, picks: readonly string[] | null): Lure[] =>
      picks ? [{ answer: setAnswer(all.filter((id) => picks.includes(id))), slipUp, fact }] : [];
    const lures = [
      ...lure('fault-left-out', charted),
      ...lure(
        'dead-means-off',
        charted.filter((id) => !fedByDead(id)),
      ),
      ...dead.flatMap(({ id: solenoid }) =>
        lure('one-of-the-group', portsWith(unit, { kind: 'solenoid-unplugged', solenoid }, range)),
      ),
      ...lure(
        'current-cuts-pressure',
        all.filter((id) => charted.includes(id) || fedByDead(id)),
      ),
    ];
    const test = { kind: 'road', row: range.id, position } as const;
    return {
      facts: [fact, ...dead.map(({ id }) => pressureFact(id))],
      uses: benchRefs(unit, [fault], [test]),
      prompt: say('supply-lost.prompt', {
        supply: thing('supply', supply),
        solenoids: dead.map(({ id }) => thing('solenoid', id)),
        range: thing('range', range.id),
        lever: position === null ? 'none' : 'some',
        position: position === null ? '' : thing('position', position),
      }),
      drawing: {
        kind: 'table',
        columns: [say('supply-lost.hangs'), say('supply-lost.charted')],
        rows: all.map((element) => ({
          head: thing('element', element),
          cells: [
            say(fedByDead(element) ? 'supply-lost.on-it' : 'supply-lost.not-on-it'),
            say(charted.includes(element) ? 'reading.full' : 'reading.none'),
          ],
        })),
      },
      space: { form: 'set', options: elementOptions(unit).filter(({ id }) => all.includes(id)) },
      answers: [setAnswer(all.filter((id) => on.includes(id)))],
      lures: distinctLures(ticked(lures)),
      explanation: {
        row: say('supply-lost.row', { elements: elementNames(on) }),
        reason: say('supply-lost.reason'),
        more: dead.map((solenoid) => solenoidInWords(unit, solenoid, 'off', pressureAt(solenoid, 'off'))),
        drawing: {
          kind: 'table',
          columns: [say('before-after.sound'), say('before-after.fault')],
          rows: all.map((element) => ({
            head: thing('element', element),
            cells: [charted, on].map((list) => say(list.includes(element) ? 'reading.full' : 'reading.none')),
            lit: charted.includes(element) !== on.includes(element),
          })),
        },
      },
      isRight(answer) {
        const ports = portsAgain(unit.deck, fault, range.id, position);
        return answer.form === 'set' && ports !== null && same(answer.picks, ports);
      },
    };
  },
};
