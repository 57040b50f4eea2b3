/**
 * A range is commanded and one solenoid's plug is off: what do gauges on the taps of the elements show? The row
 * is in view; what the dead solenoid feeds, what it gives unplugged and what the lever cuts have to be known.
 */
import { pressuresWith } from '../../../faults/pressure.ts';
import { currentsFor } from '../../../hydraulics/commands.ts';
import { elementsFedBy, frictionOf } from '../../../hydraulics/feeds.ts';
import { pressuresAt } from '../../../hydraulics/pressurised.ts';
import type { Deck, DeckSolenoid, Pressure } from '../../../unit/deck.ts';
import type { Range, Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { distinctLures, elementNames, neighboursOf, sureRanges } from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';
import { type Position, positionRef, pressureFact, senseInWords, valvePositions } from '../solenoid-parts.ts';

const FEWEST_ELEMENTS = 4;
const SHOWN = ['full', 'none'] as const satisfies readonly Pressure[];

interface Case {
  readonly range: Range;
  readonly position: Position;
  readonly solenoid: DeckSolenoid;
  /** Of every brake and clutch. */
  readonly gauges: ReadonlyMap<string, Pressure>;
}

/** The gauges by the other way: from the currents of the row, with this one solenoid's at none. */
function byCurrents(deck: Deck, range: Range, position: Position, dead: string) {
  const row = deck.chart.ranges.find(({ id }) => id === range.id)!;
  const currents = { ...currentsFor(deck, row, position?.id ?? null), [dead]: 'off' as const };
  return pressuresAt(deck, currents, position?.id ?? null);
}

function casesFor(unit: Unit, range: Range, position: Position, solenoid: DeckSolenoid): Case[] {
  const { deck } = unit;
  const fault = { kind: 'solenoid-unplugged', solenoid: solenoid.id } as const;
  const found = [...pressuresWith(deck, fault, range, position?.id ?? null)];
  const other = byCurrents(deck, range, position, solenoid.id);
  const gauges = new Map<string, Pressure>();
  for (const [element, pressure] of found) {
    if ((pressure !== 'full' && pressure !== 'none') || other.get(element) !== pressure) return [];
    gauges.set(element, pressure);
  }
  return [{ range, position, solenoid, gauges }];
}

/** The solenoids that feed any of these elements. */
const feeding = (deck: Deck, elements: readonly string[]): DeckSolenoid[] =>
  (deck.solenoids ?? []).filter(({ feeds }) => feeds.some((id) => elements.includes(id)));

/** Every verified range, position and solenoid for which the deck settles what each gauge shows. */
const cases = perUnit((unit: Unit): Case[] => {
  const { deck } = unit;
  const elements = frictionOf(deck);
  if (elements.length < FEWEST_ELEMENTS || !elements.every((id) => unit.sure(`element:${id}`))) return [];
  const solenoids = (deck.solenoids ?? []).filter((solenoid) => {
    const fed = elementsFedBy(deck, solenoid);
    return fed.length > 0 && feeding(deck, fed).every(({ id }) => unit.sure(`solenoid:${id}`));
  });
  return sureRanges(unit).flatMap((range) =>
    valvePositions(unit)
      .filter((position) => position === null || position.rows.includes(range.id))
      .flatMap((position) => solenoids.flatMap((solenoid) => casesFor(unit, range, position, solenoid))),
  );
});

/** Whether the plug being off changes any gauge. */
const changes = ({ range, gauges }: Case): boolean =>
  [...gauges].some(([element, pressure]) => (pressure === 'full') !== range.applied.includes(element));

/** Nothing changes in one question of five, so that it cannot be taken for granted. */
const UNCHANGED = 1 / 5;

export const tapPressures: Family = {
  id: 'tap-pressures',
  level: 'reason',
  form: 'fill',
  facts: (unit) => {
    const telling = cases(unit).filter(changes);
    return (unit.deck.solenoids ?? [])
      .filter(({ id }) => telling.some(({ solenoid }) => solenoid.id === id))
      .map(({ id }) => pressureFact(id));
  },
  pose(unit, fact, random) {
    const own = cases(unit).filter(({ solenoid }) => pressureFact(solenoid.id) === fact);
    const calm = random.unit() < UNCHANGED ? own.filter((one) => !changes(one)) : [];
    const among = calm.length > 0 ? calm : own.filter(changes);
    if (among.length === 0) return undefined;
    const { range, position, solenoid, gauges } = random.pick(among);
    const { deck } = unit;
    const elements = [...gauges.keys()];
    const fed = elementsFedBy(deck, solenoid);
    const told = (rule: (element: string) => Pressure): Answer => ({
      form: 'fill',
      cells: Object.fromEntries(elements.map((id) => [`${id}/gauge`, rule(id)])),
    });
    const charted =
      (row: Pick<Range, 'applied'>) =>
      (id: string): Pressure =>
        row.applied.includes(id) ? 'full' : 'none';
    const withDead = (pressure: Pressure) => told((id) => (fed.includes(id) ? pressure : charted(range)(id)));
    const lures: Lure[] = [
      { slipUp: 'fault-left-out', answer: told(charted(range)) },
      { slipUp: 'current-means-pressure', answer: withDead('none') },
      { slipUp: 'current-cuts-pressure', answer: withDead('full') },
      ...(position ? [{ slipUp: 'valve-forgotten' as const, answer: withDead(solenoid.whenUnplugged) }] : []),
      ...neighboursOf(unit, range).map((row) => ({
        slipUp: 'neighbour-range' as const,
        answer: told((id) => (fed.includes(id) ? gauges.get(id)! : charted(row)(id))),
      })),
    ];
    const lineOf = (id: string): Phrase => {
      const pressure = gauges.get(id)!;
      const values = { element: thing('element', id), range: thing('range', range.id), pressure };
      if (!fed.includes(id)) return say('tap-pressures.line-charted', values);
      return pressure === solenoid.whenUnplugged
        ? say('tap-pressures.line-dead', { ...values, solenoid: thing('solenoid', solenoid.id) })
        : say('tap-pressures.line-valve', {
            ...values,
            position: position ? thing('position', position.id) : '',
          });
    };
    return {
      facts: [fact],
      uses: [
        range.ref,
        ...elements.map((id): Ref => `element:${id}`),
        ...feeding(deck, fed).map(({ id }): Ref => `solenoid:${id}`),
        ...positionRef(position),
      ],
      prompt: say('tap-pressures.prompt', {
        range: thing('range', range.id),
        solenoid: thing('solenoid', solenoid.id),
        lever: position ? 'yes' : 'no',
        position: position ? thing('position', position.id) : '',
      }),
      drawing: { kind: 'chart', rows: [range.id], litRows: [range.id] },
      space: {
        form: 'fill',
        rows: elements.map((id) => ({ id, label: thing('element', id) })),
        columns: [{ id: 'gauge', label: say('tap-pressures.gauge') }],
        marks: SHOWN.map((id) => ({ id, label: say(`tap-pressures.shows-${id}`) })),
        asked: elements.map((id) => `${id}/gauge`),
        given: {},
      },
      answers: [told((id) => gauges.get(id)!)],
      lures: distinctLures(lures),
      explanation: {
        row: senseInWords(solenoid),
        reason: say('tap-pressures.reason', {
          solenoid: thing('solenoid', solenoid.id),
          elements: elementNames(fed),
        }),
        more: elements.map(lineOf),
        drawing: { kind: 'valve-body', unplugged: [solenoid.id], lit: [solenoid.id] },
      },
      isRight: (answer) => {
        const really = byCurrents(deck, range, position, solenoid.id);
        return (
          answer.form === 'fill' && elements.every((id) => answer.cells[`${id}/gauge`] === really.get(id))
        );
      },
    };
  },
};
