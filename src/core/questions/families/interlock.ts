/**
 * Some elements are commanded on together: which of these combinations does an interlock not let come on? What it
 * keeps off, and when, is to be remembered. Combinations in which another interlock has a say are left out.
 */
import { behaviourOf } from '../../faults/behaviour.ts';
import { elementsFedBy } from '../../hydraulics/feeds.ts';
import { blockedBy } from '../../hydraulics/interlocks.ts';
import type { Random } from '../../random.ts';
import type { DeckInterlock } from '../../unit/deck.ts';
import { type Ref, trainRefs, type Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { FactId, Family, Lure } from '../question.ts';
import { behaviourInWords } from './behaviour-words.ts';
import { distinctLures, elementNames, frictionIds, setAnswer, sureRanges } from './chart-parts.ts';
import { together } from './gear-parts.ts';
import { perUnit } from './per-unit.ts';
import {
  decidingSolenoids,
  type Position,
  positionRef,
  solenoidRefs,
  valvePositions,
} from './solenoid-parts.ts';

const OPTIONS = 6;
const FEWEST_OPTIONS = 5;
const MOST_BLOCKED = 3;
const SIZES = [2, 3, 4] as const;

interface Combination {
  readonly id: string;
  readonly elements: readonly string[];
}

interface Setting {
  readonly interlock: DeckInterlock;
  readonly position: Position;
  /** Commands that this interlock does not let through, and others that no interlock meddles with. */
  readonly blocked: readonly Combination[];
  readonly free: readonly Combination[];
  readonly uses: readonly Ref[];
}

const factOf = ({ id }: DeckInterlock): FactId => `interlock:${id}/blocks`;

function subsets(ids: readonly string[], size: number): string[][] {
  if (size === 0) return [[]];
  return ids.flatMap((id, place) => subsets(ids.slice(place + 1), size - 1).map((rest) => [id, ...rest]));
}

/** Elements that this interlock, or any but this one, keeps off when these are commanded. */
const keptOff = (interlocks: readonly DeckInterlock[], on: readonly string[]): string[] =>
  blockedBy({ interlocks }, on).filter((id) => on.includes(id));

function settingOf(unit: Unit, interlock: DeckInterlock, position: Position): Setting | undefined {
  const solenoids = decidingSolenoids(unit, position);
  const fed = solenoids.flatMap((solenoid) => elementsFedBy(unit.deck, solenoid));
  const elements = frictionIds(unit).filter((id) => fed.includes(id));
  const others = unit.deck.interlocks!.filter((other) => other !== interlock);
  const combinations = SIZES.flatMap((size) => subsets(elements, size))
    .filter((on) => keptOff(others, on).length === 0)
    .map((on): Combination => ({ id: on.join('+'), elements: on }));
  const isBlocked = ({ elements: on }: Combination) => keptOff([interlock], on).length > 0;
  const blocked = combinations.filter(isBlocked);
  const free = combinations.filter((combination) => !isBlocked(combination));
  if (blocked.length === 0 || free.length < FEWEST_OPTIONS - 1) return undefined;
  const uses: Ref[] = [
    ...unit.deck.interlocks!.map(({ id }): Ref => `interlock:${id}`),
    ...positionRef(position),
    ...solenoidRefs(unit, solenoids),
    ...trainRefs(unit.deck),
    ...sureRanges(unit).map((range) => range.ref),
  ];
  if (!uses.every((ref) => unit.sure(ref))) return undefined;
  return { interlock, position, blocked, free, uses: [...new Set(uses)] };
}

const settings = perUnit((unit: Unit): Setting[] =>
  (unit.deck.interlocks ?? []).flatMap((interlock) =>
    valvePositions(unit).flatMap((position) => settingOf(unit, interlock, position) ?? []),
  ),
);

/** Those that share most with what sets the interlock off come first among the others. */
function draw({ interlock, blocked, free }: Setting, random: Random): Combination[] {
  const { whenApplied, blocks } = interlock;
  const near = ({ elements }: Combination) =>
    elements.filter((id) => whenApplied.includes(id) || blocks.includes(id)).length;
  const some = random.sample(blocked, random.int(1, MOST_BLOCKED));
  const others = random.shuffle(free).sort((a, b) => near(b) - near(a));
  const [nearer, rest] = [others.slice(0, OPTIONS), random.shuffle(others.slice(OPTIONS))];
  const picked = [...random.shuffle(nearer).slice(0, OPTIONS - 1 - some.length), ...rest, ...nearer];
  const drawn = [...new Set([...some, ...picked])].slice(0, OPTIONS);
  return [...free, ...blocked]
    .filter((combination) => drawn.includes(combination))
    .sort((a, b) => a.elements.length - b.elements.length || (a.id < b.id ? -1 : 1));
}

function luresFor(unit: Unit, { interlock }: Setting, options: readonly Combination[], fact: FactId): Lure[] {
  const { whenApplied, blocks } = interlock;
  const lure = (slipUp: Lure['slipUp'], rule: (elements: readonly string[]) => boolean): Lure => ({
    answer: setAnswer(options.filter(({ elements }) => rule(elements)).map(({ id }) => id)),
    slipUp,
    fact,
  });
  const hasBlocked = (on: readonly string[]) => blocks.some((id) => on.includes(id));
  const charted = new Set(
    unit.ranges.map((range) =>
      frictionIds(unit)
        .filter((id) => range.applied.includes(id))
        .join('+'),
    ),
  );
  return [
    lure('tie-up-means-blocked', (on) => behaviourOf(unit, on).does === 'tied-up'),
    lure('interlock-blocks-itself', (on) => whenApplied.every((id) => on.includes(id))),
    lure('blocked-whatever-else', hasBlocked),
    lure('part-sets-it-off', (on) => hasBlocked(on) && whenApplied.some((id) => on.includes(id))),
    lure('uncharted-means-blocked', (on) => !charted.has(on.join('+'))),
  ].filter(({ answer }) => answer.form === 'set' && answer.picks.length > 0);
}

function lineFor(unit: Unit, interlocks: readonly DeckInterlock[], { elements }: Combination): Phrase {
  const off = keptOff(interlocks, elements);
  const left = elements.filter((id) => !off.includes(id));
  const does = behaviourInWords(unit, left, behaviourOf(unit, left));
  return off.length === 0
    ? does
    : say('interlock.line', {
        elements: together(elements),
        count: off.length,
        off: elementNames(off),
        does,
      });
}

export const interlock: Family = {
  id: 'interlock',
  level: 'apply',
  form: 'set',
  facts: (unit) => [...new Set(settings(unit).map((setting) => factOf(setting.interlock)))],
  pose(unit, fact, random) {
    const fitting = settings(unit).filter((setting) => factOf(setting.interlock) === fact);
    if (fitting.length === 0) return undefined;
    const setting = random.pick(fitting);
    const options = draw(setting, random);
    const blocked = options.filter((option) => setting.blocked.includes(option));
    const { id, whenApplied, blocks } = setting.interlock;
    const names = {
      interlock: thing('interlock', id),
      count: whenApplied.length,
      whenApplied: elementNames(whenApplied),
      blocks: elementNames(blocks),
    };
    return {
      facts: [fact],
      uses: setting.uses,
      prompt: setting.position
        ? say('interlock.prompt-lever', { ...names, position: thing('position', setting.position.id) })
        : say('interlock.prompt', names),
      space: {
        form: 'set',
        options: options.map(({ id: option, elements }) => ({ id: option, label: together(elements) })),
      },
      answers: [setAnswer(blocked.map((option) => option.id))],
      lures: distinctLures(luresFor(unit, setting, options, fact)),
      explanation: {
        row: say('interlock.row', names),
        reason: say('interlock.reason', names),
        more: options.map((option) => lineFor(unit, [setting.interlock], option)),
        drawing: {
          kind: 'chart',
          litColumns: [...whenApplied, ...blocks],
          litRows: unit.ranges
            .filter((range) => whenApplied.every((element) => range.applied.includes(element)))
            .map((range) => range.id),
        },
      },
      // From the raw deck: some interlock has all it waits for, and something to keep off.
      isRight: (answer) =>
        answer.form === 'set' &&
        options.every(({ id: option, elements }) => {
          const kept = unit.deck.interlocks!.some(
            (lock) =>
              lock.whenApplied.filter((element) => !elements.includes(element)).length === 0 &&
              lock.blocks.filter((element) => elements.includes(element)).length > 0,
          );
          return answer.picks.includes(option) === kept;
        }),
    };
  },
};
