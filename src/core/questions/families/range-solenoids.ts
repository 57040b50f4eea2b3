/**
 * A row of the chart is shown: which solenoids carry current for it? Only solenoids whose current follows from
 * the row in the lever position told are asked.
 */
import { currentsFor } from '../../hydraulics/commands.ts';
import { type Current, pressureAt } from '../../hydraulics/solenoid.ts';
import type { DeckSolenoid } from '../../unit/deck.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { rowInWords, sureRanges } from './chart-parts.ts';
import {
  CURRENT_MARKS,
  feedsInWords,
  type Position,
  positionRef,
  pressureFact,
  senseInWords,
  solenoidInWords,
  solenoidRefs,
  valvePositions,
} from './solenoid-parts.ts';

/** Fewer cells than this are guessed too easily. */
const FEWEST_CELLS = 4;

interface Setting {
  readonly range: Range;
  readonly position: Position;
  readonly solenoids: readonly DeckSolenoid[];
  readonly currents: ReadonlyMap<string, Current>;
}

function settings(unit: Unit): Setting[] {
  return sureRanges(unit).flatMap((range) =>
    valvePositions(unit)
      .filter((position) => !position || position.rows.includes(range.id))
      .map((position) => {
        const wanted = currentsFor(unit.deck, range, position?.id ?? null);
        const settled = (unit.deck.solenoids ?? []).flatMap((solenoid) => {
          const current = wanted[solenoid.id];
          const sure = solenoidRefs(unit, [solenoid]).every((ref) => unit.sure(ref));
          return current && sure ? [{ solenoid, current }] : [];
        });
        return {
          range,
          position,
          solenoids: settled.map(({ solenoid }) => solenoid),
          currents: new Map(settled.map(({ solenoid, current }) => [solenoid.id, current])),
        };
      })
      .filter(({ solenoids }) => solenoids.length >= FEWEST_CELLS),
  );
}

const cellOf = (solenoid: string) => `${solenoid}/current`;

function fill(solenoids: readonly DeckSolenoid[], currentOf: (solenoid: DeckSolenoid) => Current): Answer {
  const cells = solenoids.map((solenoid) => [cellOf(solenoid.id), currentOf(solenoid)]);
  return { form: 'fill', cells: Object.fromEntries(cells) };
}

const other = (current: Current): Current => (current === 'on' ? 'off' : 'on');

export const rangeSolenoids: Family = {
  id: 'range-solenoids',
  level: 'apply',
  form: 'fill',
  facts: (unit) => [
    ...new Set(settings(unit).flatMap(({ solenoids }) => solenoids.map(({ id }) => pressureFact(id)))),
  ],
  pose(unit, fact, random) {
    const fitting = settings(unit).filter(({ solenoids }) =>
      solenoids.some(({ id }) => pressureFact(id) === fact),
    );
    if (fitting.length === 0) return undefined;
    const { range, position, solenoids, currents } = random.pick(fitting);
    const { deck } = unit;
    const asked = solenoids.find(({ id }) => pressureFact(id) === fact)!;
    const currentOf = ({ id }: DeckSolenoid) => currents.get(id)!;
    const applies = (solenoid: DeckSolenoid) => pressureAt(solenoid, currentOf(solenoid)) === 'full';
    const lures: Lure[] = [
      ...solenoids.map(
        (turned): Lure => ({
          answer: fill(solenoids, (solenoid) =>
            solenoid === turned ? other(currentOf(solenoid)) : currentOf(solenoid),
          ),
          slipUp: 'solenoid-turned-round',
          fact: pressureFact(turned.id),
        }),
      ),
      {
        answer: fill(solenoids, (solenoid) => (applies(solenoid) ? 'on' : 'off')),
        slipUp: 'current-means-pressure',
      },
      {
        answer: fill(solenoids, (solenoid) => (applies(solenoid) ? 'off' : 'on')),
        slipUp: 'current-cuts-pressure',
      },
      {
        answer: fill(solenoids, (solenoid) => other(currentOf(solenoid))),
        slipUp: 'polarity-turned-round',
      },
    ];
    const raw = deck.chart.ranges.find((row) => row.id === range.id)!;
    const reaches = ({ feeds }: DeckSolenoid, element: string) =>
      feeds.includes(element) &&
      (!position || (position.opens!.includes(element) && !position.feeds?.includes(element)));
    return {
      facts: [fact, ...solenoids.filter((others) => others !== asked).map(({ id }) => pressureFact(id))],
      uses: [range.ref, ...positionRef(position), ...solenoidRefs(unit, solenoids)],
      prompt: position
        ? say('range-solenoids.prompt-lever', {
            range: thing('range', range.id),
            position: thing('position', position.id),
          })
        : say('range-solenoids.prompt', { range: thing('range', range.id) }),
      drawing: { kind: 'chart', rows: [range.id], litRows: [range.id] },
      space: {
        form: 'fill',
        rows: solenoids.map((solenoid) => ({
          id: solenoid.id,
          label: say('solenoid.feeds', {
            solenoid: thing('solenoid', solenoid.id),
            elements: feedsInWords(unit, solenoid),
          }),
        })),
        columns: [{ id: 'current', label: say('solenoid.current-column') }],
        marks: CURRENT_MARKS,
        asked: solenoids.map(({ id }) => cellOf(id)),
        given: {},
      },
      answers: [fill(solenoids, currentOf)],
      lures,
      explanation: {
        row: rowInWords(range),
        reason: senseInWords(asked),
        more: solenoids.map((solenoid) =>
          solenoidInWords(unit, solenoid, currentOf(solenoid), pressureAt(solenoid, currentOf(solenoid))),
        ),
        drawing: { kind: 'chart', litRows: [range.id] },
      },
      // Forward, the other way round: with these currents, does each element do what the row says?
      isRight: (answer) =>
        answer.form === 'fill' &&
        solenoids.every((solenoid) => {
          const gives = (solenoid.whenUnplugged === 'full') !== (answer.cells[cellOf(solenoid.id)] === 'on');
          return deck.train.elements
            .filter(({ id }) => reaches(solenoid, id))
            .filter(({ id }) => deck.solenoids!.filter(({ feeds }) => feeds.includes(id)).length === 1)
            .every(({ id }) => raw.applied.includes(id) === gives);
        }),
    };
  },
};
