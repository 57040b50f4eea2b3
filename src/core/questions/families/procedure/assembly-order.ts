/**
 * Put steps of the assembly in order, among them at least two that stripping turned round would get wrong. Every
 * order that keeps the relations is right.
 */
import { type Random, randomFrom, seedOf } from '../../../random.ts';
import { assemblyOrder as nearReverse } from '../../../sequence/assembly.ts';
import { comparable, mustPrecede } from '../../../sequence/precedence.ts';
import { type DeckSequence, reasonOf } from '../../../unit/sequences.ts';
import { countRight } from '../../ask.ts';
import { keeps } from '../../judge.ts';
import { say } from '../../phrase.ts';
import type { Accepts, Answer, AnswerSpace, FactId, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';
import {
  assemblyWorks,
  pathBetween,
  reasonLine,
  stepRef,
  stepText,
  type Work,
  workName,
} from './work-parts.ts';

const SIZE = 5;
/** Right orders of the 120, at most: one in ten. */
const MOST_RIGHT = 12;
const DRAWS = 16;

const factOf = ({ sequence }: Work): FactId => `sequence:${sequence.id}/assembly`;

/** The stripping turned round; steps that only the assembly has come last. */
const blindly = ({ sequence }: Work): string[] => [
  ...sequence.steps.map(({ id }) => id).reverse(),
  ...(sequence.assembly?.added ?? []).map(({ id }) => id),
];

/** As the sheet lists the stripping, added steps last. */
const asStripped = ({ sequence }: Work): string[] => [
  ...sequence.steps.map(({ id }) => id),
  ...(sequence.assembly?.added ?? []).map(({ id }) => id),
];

const hasReason = ({ sequence, during }: Work, earlier: string, later: string): boolean =>
  reasonOf(sequence, during, earlier, later) !== undefined;

/** Relations with a reason of their own that the blind reverse breaks. */
function traps(work: Work): [string, string][] {
  const blind = blindly(work);
  return work.askable.flatMap((later) =>
    [...work.known.direct.get(later)!]
      .filter(
        (earlier) =>
          work.askable.includes(earlier) &&
          blind.indexOf(earlier) > blind.indexOf(later) &&
          hasReason(work, earlier, later),
      )
      .map((earlier): [string, string] => [earlier, later]),
  );
}

/** Relations among just these steps, also through others. */
const acceptsOf = ({ known }: Work, ids: readonly string[]): Accepts => ({
  rule: 'precedence',
  pairs: ids.flatMap((later) =>
    ids.filter((earlier) => mustPrecede(known, earlier, later)).map((earlier) => [earlier, later] as const),
  ),
});

const spaceOf = (work: Work, ids: readonly string[]): AnswerSpace => ({
  form: 'order',
  items: ids.map((id) => ({ id, label: stepText(work, id) })),
  first: say('step.first'),
  last: say('step.last'),
});

const order = (ids: readonly string[]): Answer => ({ form: 'order', order: ids });

/**
 * Two steps of a trap and others that have a fixed place to one of them; undefined when too many orders are right,
 * or when an unverified step might fix more.
 */
function drawSteps(work: Work, trap: readonly [string, string], random: Random): string[] | undefined {
  const near = work.askable.filter(
    (id) => !trap.includes(id) && trap.some((own) => comparable(work.known, own, id)),
  );
  const drawn = [...trap, ...random.sample(near, SIZE - trap.length)];
  if (drawn.length < SIZE) return undefined;
  const settled = drawn.every((a) =>
    drawn.every((b) => mustPrecede(work.known, a, b) === mustPrecede(work.full, a, b)),
  );
  if (!settled) return undefined;
  const right = countRight({
    space: spaceOf(work, drawn),
    answers: [order(drawn)],
    accepts: acceptsOf(work, drawn),
  });
  return right <= MOST_RIGHT ? drawn : undefined;
}

function firstDraw(work: Work, trap: readonly [string, string], random: Random): string[] | undefined {
  for (let draw = 0; draw < DRAWS; draw++) {
    const drawn = drawSteps(work, trap, random);
    if (drawn) return drawn;
  }
  return undefined;
}

interface Turned {
  readonly work: Work;
  readonly traps: readonly (readonly [string, string])[];
}

/** Assemblies with the traps that some draw makes a question of. */
const askable = perUnit((unit): Turned[] =>
  assemblyWorks(unit)
    .map((work) => ({
      work,
      traps: traps(work).filter((trap) => firstDraw(work, trap, randomFrom(seedOf(...trap)))),
    }))
    .filter(({ traps: usable }) => usable.length > 0),
);

export const assemblyOrder: Family = {
  id: 'assembly-order',
  level: 'reason',
  form: 'order',
  facts: (unit) => askable(unit).map(({ work }) => factOf(work)),
  pose(unit, fact, random) {
    const turned = askable(unit).find(({ work }) => factOf(work) === fact);
    if (!turned) return undefined;
    const { work } = turned;
    const trap = random.pick(turned.traps);
    const drawn = firstDraw(work, trap, random);
    if (!drawn) return undefined;
    const { sequence, known } = work;
    const chosen = (ids: readonly string[]) => ids.filter((id) => drawn.includes(id));
    const right = chosen(
      nearReverse(
        known,
        sequence.steps.map(({ id }) => id),
      ),
    );
    const accepts = acceptsOf(work, drawn);
    const following = new Map(drawn.map((id) => [id, recordedAfter(sequence, id)]));
    const wrong: [Lure['slipUp'], readonly string[]][] = [
      ['blind-reverse', chosen(blindly(work))],
      ['stripping-order-kept', chosen(asStripped(work))],
      ...right
        .slice(1)
        .map((later, index): [Lure['slipUp'], readonly string[]] => [
          'step-too-early',
          right.toSpliced(index, 2, later, right[index]!),
        ]),
    ];
    const direct = accepts.pairs.filter((pair) => hasReason(work, ...pair));
    return {
      facts: [fact],
      uses: [
        `sequence:${sequence.id}`,
        ...[...new Set([...drawn, ...accepts.pairs.flatMap((pair) => pathBetween(work, ...pair))])].map(
          (id) => stepRef(work, id),
        ),
      ],
      prompt: say('assembly-order.prompt', { work: workName(work) }),
      space: spaceOf(work, random.shuffle(drawn)),
      answers: [order(right)],
      accepts,
      lures: distinctLures(
        wrong
          .filter(([, ids]) => !keeps(accepts, ids))
          .map(([slipUp, ids]): Lure => ({ answer: order(ids), slipUp, fact })),
      ),
      explanation: {
        row: say('assembly-order.row', {
          steps: right.map((id) => say('step.quoted', { step: stepText(work, id) })),
        }),
        reason: reasonLine(work, ...trap),
        more: direct.map(([earlier, later]) => reasonLine(work, earlier, later)),
      },
      // Nothing may stand before a step that the records put it after.
      isRight: (answer) =>
        answer.form === 'order' &&
        answer.order.every((id, place) =>
          answer.order.slice(place + 1).every((later) => !following.get(later)!.has(id)),
        ),
    };
  },
};

/** All steps of the assembly that the recorded stripping and its exceptions put after this one. */
function recordedAfter({ steps, assembly = {} }: DeckSequence, first: string): Set<string> {
  const { added = [], lifted = [], imposed = [] } = assembly;
  const isLifted = (before: string, after: string) =>
    lifted.some((each) => each.earlier === before && each.later === after);
  const follows = (id: string): string[] => [
    // turned round: what was taken off to reach a step is put on after it
    ...(steps.find((step) => step.id === id)?.after ?? [])
      .map(({ step }) => step)
      .filter((next) => !isLifted(id, next)),
    ...added.filter(({ after = [] }) => after.some(({ step }) => step === id)).map((step) => step.id),
    ...imposed.filter((each) => each.earlier === id).map((each) => each.later),
  ];
  const met = new Set<string>();
  const open = follows(first);
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (met.has(id)) continue;
    met.add(id);
    open.push(...follows(id));
  }
  return met;
}
