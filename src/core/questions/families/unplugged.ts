/**
 * The connector is off, so no solenoid has current: what does the unit do in a lever position? The chart is
 * shown; what each solenoid gives unplugged is not. Asked only where the deck settles every element.
 */
import { type Behaviour, behaviourOf } from '../../faults/behaviour.ts';
import { solveBySpeeds } from '../../faults/by-speeds.ts';
import { solveSpeeds } from '../../gears/solve.ts';
import { elementsFedBy, feedsAt, frictionOf, isOpen } from '../../hydraulics/feeds.ts';
import { unpluggedAt } from '../../hydraulics/pressurised.ts';
import type { Deck, DeckLeverPosition, DeckSolenoid, Pressure } from '../../unit/deck.ts';
import { type Range, type Ref, rangeOf, trainRefs, type Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { FactId, Family, Lure, Option } from '../question.ts';
import type { SlipUp } from '../slip-ups.ts';
import { elementNames, rawApplied } from './chart-parts.ts';
import { pressureFact, solenoidInWords } from './solenoid-parts.ts';

const FEWEST_WRONG = 3;
const MOST_WRONG = 5;

const unpluggedFact = (position: string): FactId => `position:${position}/unplugged`;

/** "range:4", or what it does instead. */
const choiceOf = (behaviour: Behaviour): string =>
  behaviour.does !== 'drives'
    ? behaviour.does
    : behaviour.range === null
      ? 'other-ratio'
      : `range:${behaviour.range}`;

const rangeIn = (unit: Unit, choice: string): Range | undefined =>
  choice.startsWith('range:') ? rangeOf(unit, choice.slice('range:'.length)) : undefined;

function optionOf(unit: Unit, choice: string): Option {
  const range = rangeIn(unit, choice);
  return {
    id: choice,
    label: range ? say('unplugged.range', { range: thing('range', range.id) }) : say(`unplugged.${choice}`),
  };
}

/** What the unit does when its solenoids give this instead, unplugged, with the valve as given. */
function choiceWith(
  unit: Unit,
  position: DeckLeverPosition | null,
  given: (solenoid: DeckSolenoid) => Pressure,
): string | undefined {
  const { deck } = unit;
  const solenoids = (deck.solenoids ?? []).map((solenoid) => ({
    ...solenoid,
    whenUnplugged: given(solenoid),
  }));
  const lever = position ? deck.lever : undefined;
  const on = unpluggedAt({ ...deck, solenoids, lever }, position?.id ?? null);
  return on ? choiceOf(behaviourOf(unit, on)) : undefined;
}

interface Wrong {
  readonly choice: string;
  readonly slipUp: SlipUp;
  readonly fact?: FactId;
}

function wrongChoices(unit: Unit, position: DeckLeverPosition, reached: readonly DeckSolenoid[]): Wrong[] {
  const asIs = (solenoid: DeckSolenoid) => solenoid.whenUnplugged;
  const turned = (solenoid: DeckSolenoid): Pressure => (asIs(solenoid) === 'full' ? 'none' : 'full');
  const ranges = unit.ranges
    .filter((range) => position.rows.includes(range.id))
    .sort((a, b) => a.ratio.abs().compare(b.ratio.abs()));
  const others = unit.deck.lever!.positions.filter(
    (other) => other !== position && unit.sure(`position:${other.id}`),
  );
  const fact = unpluggedFact(position.id);
  // When the rule goes wrong on one solenoid alone, that one's fact is the one missed.
  const onlyOne = (pressure: Pressure): { fact?: FactId } => {
    const wrong = reached.filter((solenoid) => asIs(solenoid) === pressure);
    return wrong.length === 1 ? { fact: pressureFact(wrong[0]!.id) } : {};
  };
  const oneTurned = reached.map((odd) => ({
    slipUp: 'solenoid-turned-round' as const,
    choice: choiceWith(unit, position, (solenoid) => (solenoid === odd ? turned(solenoid) : asIs(solenoid))),
    fact: pressureFact(odd.id),
  }));
  const telling = oneTurned.filter(
    ({ choice }) => oneTurned.filter((other) => other.choice === choice).length === 1,
  );
  const candidates: (Omit<Wrong, 'choice'> & { choice: string | undefined })[] = [
    { slipUp: 'all-off-nothing-on', choice: 'no-drive', fact },
    { slipUp: 'top-range-when-dead', choice: `range:${ranges[0]!.id}`, fact },
    { slipUp: 'lowest-range-when-dead', choice: `range:${ranges.at(-1)!.id}`, fact },
    {
      slipUp: 'current-means-pressure',
      choice: choiceWith(unit, position, () => 'none'),
      ...onlyOne('full'),
    },
    { slipUp: 'current-cuts-pressure', choice: choiceWith(unit, position, () => 'full'), ...onlyOne('none') },
    { slipUp: 'polarity-turned-round', choice: choiceWith(unit, position, turned) },
    ...telling,
    { slipUp: 'valve-forgotten', choice: choiceWith(unit, null, asIs), fact },
    ...others.map((other) => ({
      slipUp: 'other-lever-position' as const,
      choice: choiceWith(unit, other, asIs),
      fact,
    })),
  ];
  return candidates.flatMap(({ choice, ...rest }) => (choice === undefined ? [] : [{ ...rest, choice }]));
}

interface Setting {
  readonly position: DeckLeverPosition;
  readonly on: readonly string[];
  readonly right: string;
  readonly wrong: readonly Wrong[];
  /** Solenoids that reach an element here. */
  readonly reached: readonly DeckSolenoid[];
  readonly uses: readonly Ref[];
}

function settingOf(unit: Unit, position: DeckLeverPosition): Setting | undefined {
  const { deck } = unit;
  const on = unpluggedAt(deck, position.id);
  const feeds = feedsAt(deck, position.id);
  if (!on || !feeds || !unit.ranges.some((range) => position.rows.includes(range.id))) return undefined;
  const reached = (deck.solenoids ?? []).filter((solenoid) =>
    elementsFedBy(deck, solenoid).some((id) => isOpen(feeds, id) && !feeds.byHand.includes(id)),
  );
  const right = choiceOf(behaviourOf(unit, on));
  const rightRange = rangeIn(unit, right);
  const wrong = wrongChoices(unit, position, reached).filter(({ choice }) => {
    const range = rangeIn(unit, choice);
    if (choice === right || (range && !unit.sure(range.ref))) return false;
    return !(range && rightRange?.ratio.equals(range.ratio));
  });
  const uses: Ref[] = [
    `position:${position.id}`,
    ...reached.map(({ id }): Ref => `solenoid:${id}`),
    ...(deck.interlocks ?? []).map(({ id }): Ref => `interlock:${id}`),
    ...trainRefs(deck),
    ...unit.ranges.filter((range) => position.rows.includes(range.id)).map(({ ref }) => ref),
    ...(rightRange ? [rightRange.ref] : []),
  ];
  const choices = new Set(wrong.map(({ choice }) => choice)).size;
  if (choices < FEWEST_WRONG || !uses.every((ref) => unit.sure(ref))) return undefined;
  return { position, on, right, wrong, reached, uses: [...new Set(uses)] };
}

/** An interlock that has something to keep pressure from. */
const acting = (deck: Deck, on: readonly string[]) =>
  deck.interlocks?.find(
    ({ whenApplied, blocks }) =>
      whenApplied.every((element) => on.includes(element)) && blocks.some((element) => on.includes(element)),
  );

/** Whether a choice is right, from the raw deck and by the second route. */
function holds(deck: Deck, position: DeckLeverPosition, choice: string, unit: Unit): boolean {
  let on = frictionOf(deck).filter((element) => {
    const open = deck.lever?.valve !== 'manual' || position.opens?.includes(element);
    const fed = deck.solenoids!.some(
      ({ feeds, whenUnplugged }) => whenUnplugged === 'full' && feeds.includes(element),
    );
    return (open && fed) || (deck.lever?.valve === 'manual' && position.feeds?.includes(element));
  });
  // One after another, until none of them acts any more.
  for (let lock = acting(deck, on); lock; lock = acting(deck, on)) {
    const { blocks } = lock;
    on = on.filter((element) => !blocks.includes(element));
  }
  const { state, ratio } = solveBySpeeds(deck.train, on);
  const charted = (range: string) => solveSpeeds(deck.train, rawApplied(unit, range)).ratio;
  if (choice.startsWith('range:')) return !!ratio && !!charted(choice.slice('range:'.length))?.equals(ratio);
  if (choice === 'other-ratio')
    return !!ratio && !deck.chart.ranges.some(({ id }) => charted(id)?.equals(ratio));
  return state === (choice === 'no-drive' ? 'free' : choice);
}

/** One line for each solenoid, then what the valve feeds by hand and what it cuts. */
function linesFor(unit: Unit, { position, reached }: Setting): Phrase[] {
  const feeds = feedsAt(unit.deck, position.id)!;
  const cut = frictionOf(unit.deck).filter((id) => !isOpen(feeds, id) && !feeds.byHand.includes(id));
  const valve = (key: string, ids: readonly string[]) =>
    ids.length > 0
      ? [say(key, { position: thing('position', position.id), elements: elementNames(ids) })]
      : [];
  return [
    ...reached.map((solenoid) => solenoidInWords(unit, solenoid, 'off', solenoid.whenUnplugged)),
    ...valve('unplugged.by-hand', feeds.byHand),
    ...valve('unplugged.cut', cut),
  ];
}

export const unplugged: Family = {
  id: 'unplugged',
  level: 'reason',
  form: 'one',
  facts: (unit) =>
    (unit.deck.lever?.positions ?? [])
      .filter((position) => settingOf(unit, position))
      .map(({ id }) => unpluggedFact(id)),
  pose(unit, fact, random) {
    const position = unit.deck.lever?.positions.find(({ id }) => unpluggedFact(id) === fact);
    const setting = position && settingOf(unit, position);
    if (!position || !setting) return undefined;
    const { on, right, wrong, reached, uses } = setting;
    const shown = random.sample([...new Set(wrong.map(({ choice }) => choice))], MOST_WRONG);
    const ranges = [right, ...shown].flatMap((choice) => rangeIn(unit, choice) ?? []);
    const lures = wrong
      .filter(({ choice }) => shown.includes(choice))
      .map(({ choice, ...rest }): Lure => ({ ...rest, answer: { form: 'one', pick: choice } }));
    const names = { position: thing('position', position.id), elements: elementNames(on) };
    return {
      facts: [fact, ...reached.map(({ id }) => pressureFact(id))],
      uses: [...new Set([...uses, ...ranges.map(({ ref }) => ref)])],
      prompt: say('unplugged.prompt', names),
      drawing: { kind: 'chart' },
      space: { form: 'one', options: random.shuffle([right, ...shown]).map((id) => optionOf(unit, id)) },
      answers: [{ form: 'one', pick: right }],
      lures,
      explanation: {
        row: on.length > 0 ? say('unplugged.row', names) : say('unplugged.row-none', names),
        reason: say('unplugged.reason', { does: optionOf(unit, right).label }),
        more: linesFor(unit, setting),
        drawing: {
          kind: 'chart',
          litColumns: on,
          ...(rangeIn(unit, right) ? { litRows: [rangeIn(unit, right)!.id] } : {}),
        },
      },
      isRight: (answer) => answer.form === 'one' && holds(unit.deck, position, answer.pick, unit),
    };
  },
};
