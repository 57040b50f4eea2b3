/**
 * A shift from one row to another, both shown: what does the current of each solenoid do? Only solenoids whose
 * current follows from both rows in the lever position told are asked.
 */
import { currentsFor } from '../../hydraulics/commands.ts';
import { type Current, pressureAt } from '../../hydraulics/solenoid.ts';
import type { DeckSolenoid } from '../../unit/deck.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { distinctLures, rawApplied, rowInWords, sureRanges } from './chart-parts.ts';
import { perUnit } from './per-unit.ts';
import {
  feedsInWords,
  type Position,
  positionRef,
  pressureFact,
  senseInWords,
  solenoidRefs,
  valvePositions,
} from './solenoid-parts.ts';

/** Fewer solenoids than this are guessed too easily. */
const FEWEST_SOLENOIDS = 3;
const MOST_SOLENOIDS = 5;

const SENSES = ['switched-on', 'switched-off', 'stays-on', 'stays-off'] as const;
type Sense = (typeof SENSES)[number];

const senseOf = (before: Current, after: Current): Sense =>
  before === after ? `stays-${after}` : `switched-${after}`;

interface Setting {
  readonly from: Range;
  readonly to: Range;
  readonly position: Position;
  readonly solenoids: readonly DeckSolenoid[];
  readonly currentOf: (solenoid: DeckSolenoid, range: Range) => Current;
}

/** Every two rows of a lever position between which some current changes. */
const settings = perUnit((unit: Unit): Setting[] =>
  valvePositions(unit).flatMap((position) => {
    const ranges = sureRanges(unit).filter((range) => !position || position.rows.includes(range.id));
    const wanted = new Map(
      ranges.map((range) => [range, currentsFor(unit.deck, range, position?.id ?? null)] as const),
    );
    return ranges.flatMap((from) =>
      ranges.flatMap((to): Setting[] => {
        const settled = (unit.deck.solenoids ?? []).filter(
          ({ id }) => wanted.get(from)![id] && wanted.get(to)![id],
        );
        const solenoids = settled.filter((solenoid) =>
          solenoidRefs(unit, [solenoid]).every((ref) => unit.sure(ref)),
        );
        const changes = solenoids.some(({ id }) => wanted.get(from)![id] !== wanted.get(to)![id]);
        if (!changes || solenoids.length < FEWEST_SOLENOIDS) return [];
        return [{ from, to, position, solenoids, currentOf: ({ id }, range) => wanted.get(range)![id]! }];
      }),
    );
  }),
);

/** Forward, the other way round: with which changes of its current does each element do what both rows say? */
function sensesThatFit(unit: Unit, id: string, { from, to, position }: Setting): ReadonlySet<string> {
  const [rawFrom, rawTo] = [rawApplied(unit, from.id), rawApplied(unit, to.id)];
  const { feeds, whenUnplugged } = unit.deck.solenoids!.find((solenoid) => solenoid.id === id)!;
  // Elements that this one alone feeds, by an open port.
  const own = feeds.filter(
    (element) =>
      unit.deck.solenoids!.every((one) => one.id === id || !one.feeds.includes(element)) &&
      (!position || (position.opens!.includes(element) && !position.feeds?.includes(element))),
  );
  const gives = (powered: boolean) => (whenUnplugged === 'full') !== powered;
  const fitting = SENSES.filter((sense) => {
    const after = sense === 'switched-on' || sense === 'stays-on';
    const before = sense === 'switched-off' || sense === 'stays-on';
    return own.every(
      (element) => rawFrom.includes(element) === gives(before) && rawTo.includes(element) === gives(after),
    );
  });
  return new Set(fitting);
}

export const solenoidChanges: Family = {
  id: 'solenoid-changes',
  level: 'apply',
  form: 'pair',
  facts: (unit) => [
    ...new Set(settings(unit).flatMap(({ solenoids }) => solenoids.map(({ id }) => pressureFact(id)))),
  ],
  pose(unit, fact, random) {
    const fitting = settings(unit).filter(({ solenoids }) =>
      solenoids.some(({ id }) => pressureFact(id) === fact),
    );
    if (fitting.length === 0) return undefined;
    // One whose own current changes, where there is such a shift.
    const asked = fitting[0]!.solenoids.find(({ id }) => pressureFact(id) === fact)!;
    const telling = fitting.filter(
      ({ from, to, currentOf }) => currentOf(asked, from) !== currentOf(asked, to),
    );
    const setting = random.pick(telling.length > 0 ? telling : fitting);
    const { from, to, position, currentOf } = setting;
    const others = random.sample(
      setting.solenoids.filter((solenoid) => solenoid !== asked),
      MOST_SOLENOIDS - 1,
    );
    const solenoids = setting.solenoids.filter((solenoid) => solenoid === asked || others.includes(solenoid));
    let checked: ReadonlyMap<string, ReadonlySet<string>> | undefined;
    const told = (rule: (solenoid: DeckSolenoid, range: Range) => Current): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(
        solenoids.map((solenoid) => [solenoid.id, senseOf(rule(solenoid, from), rule(solenoid, to))]),
      ),
    });
    const other = (current: Current): Current => (current === 'on' ? 'off' : 'on');
    const pressed = (solenoid: DeckSolenoid, range: Range) =>
      pressureAt(solenoid, currentOf(solenoid, range)) === 'full';
    const lures: Lure[] = [
      ...solenoids.map(
        (turned): Lure => ({
          answer: told((solenoid, range) =>
            solenoid === turned ? other(currentOf(solenoid, range)) : currentOf(solenoid, range),
          ),
          slipUp: 'solenoid-turned-round',
          fact: pressureFact(turned.id),
        }),
      ),
      {
        answer: told((solenoid, range) => (pressed(solenoid, range) ? 'on' : 'off')),
        slipUp: 'current-means-pressure',
      },
      {
        answer: told((solenoid, range) => (pressed(solenoid, range) ? 'off' : 'on')),
        slipUp: 'current-cuts-pressure',
      },
      {
        answer: told((solenoid, range) => other(currentOf(solenoid, range))),
        slipUp: 'polarity-turned-round',
      },
      {
        answer: told((solenoid, range) => currentOf(solenoid, range === from ? to : from)),
        slipUp: 'shift-turned-round',
      },
    ];
    const names = { from: thing('range', from.id), to: thing('range', to.id) };
    return {
      facts: [fact, ...others.map(({ id }) => pressureFact(id))],
      uses: [from.ref, to.ref, ...positionRef(position), ...solenoidRefs(unit, solenoids)],
      prompt: position
        ? say('solenoid-changes.prompt-lever', { ...names, position: thing('position', position.id) })
        : say('solenoid-changes.prompt', names),
      drawing: { kind: 'chart', rows: [from.id, to.id], litRows: [to.id] },
      space: {
        form: 'pair',
        left: solenoids.map((solenoid) => ({
          id: solenoid.id,
          label: say('solenoid.feeds', {
            solenoid: thing('solenoid', solenoid.id),
            elements: feedsInWords(unit, solenoid),
          }),
        })),
        right: SENSES.map((id) => ({ id, label: say(`solenoid-changes.${id}`) })),
      },
      answers: [told(currentOf)],
      lures: distinctLures(lures),
      explanation: {
        row: say('solenoid-changes.rows', { from: rowInWords(from), to: rowInWords(to) }),
        reason: senseInWords(asked),
        more: solenoids.map((solenoid) => {
          const [before, after] = [pressed(solenoid, from), pressed(solenoid, to)];
          return say('solenoid-changes.line', {
            solenoid: thing('solenoid', solenoid.id),
            elements: feedsInWords(unit, solenoid),
            change: before === after ? (after ? 'kept' : 'none') : after ? 'gains' : 'loses',
            sense: say(`solenoid-changes.${senseOf(currentOf(solenoid, from), currentOf(solenoid, to))}`),
          });
        }),
        drawing: { kind: 'chart', rows: [from.id, to.id], litRows: [to.id] },
      },
      isRight(answer) {
        checked ??= new Map(solenoids.map(({ id }) => [id, sensesThatFit(unit, id, setting)]));
        return answer.form === 'pair' && [...checked].every(([id, senses]) => senses.has(answer.pairs[id]!));
      },
    };
  },
};
