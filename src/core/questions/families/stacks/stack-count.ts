/** How many friction plates, or steels, does a pack hold, and how many does a kit for the unit need? */
import { rational } from '../../../rational.ts';
import { countOf, type DeckStack } from '../../../unit/stacks.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { FactId, Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { numberAnswer, numberLures } from '../number-parts.ts';
import { stackLine, stackName, sureStacks } from './stack-parts.ts';

const COUNTED = ['friction', 'steel'] as const;
type Counted = (typeof COUNTED)[number];

/** Counts are exact. */
const TOLERANCE = '0';

const factOf = (stack: DeckStack): FactId => `stack:${stack.id}/count`;
const kitFact = (kind: Counted): FactId => `kit:${kind}/count`;

const withPlates = (unit: Unit): DeckStack[] =>
  sureStacks(unit).filter((stack) => COUNTED.some((kind) => countOf(stack, kind) > 0));

/** Packs whose plates make up the kit; none unless every pack of the unit is verified. */
function kitPacks(unit: Unit, kind: Counted): DeckStack[] {
  const all = unit.deck.stacks ?? [];
  if (all.some(({ id }) => !unit.sure(`stack:${id}`))) return [];
  const packs = all.filter((stack) => countOf(stack, kind) > 0);
  return packs.length < 2 ? [] : packs;
}

interface Asked {
  readonly kind: Counted;
  readonly packs: readonly DeckStack[];
  readonly kit: boolean;
}

const sum = (packs: readonly DeckStack[], kind: Counted) =>
  packs.reduce((total, stack) => total + countOf(stack, kind), 0);

const endPlates = (stack: DeckStack) => countOf(stack, 'apply') + countOf(stack, 'backing');

function wrongCounts(unit: Unit, { kind, packs, kit }: Asked): { slipUp: SlipUp; value: number }[] {
  const other: Counted = kind === 'friction' ? 'steel' : 'friction';
  const right = sum(packs, kind);
  const ends = packs.reduce((total, stack) => total + endPlates(stack), 0);
  return [
    { slipUp: 'other-kind-counted', value: sum(kit ? unit.deck.stacks! : packs, other) },
    ...(kind === 'steel' ? [{ slipUp: 'end-plates-counted' as const, value: right + ends }] : []),
    ...(kit
      ? packs.map((stack) => ({ slipUp: 'one-pack-left-out' as const, value: right - countOf(stack, kind) }))
      : withPlates(unit)
          .filter((stack) => !packs.includes(stack))
          .map((stack) => ({ slipUp: 'other-pack-count' as const, value: countOf(stack, kind) }))),
  ];
}

export const stackCount: Family = {
  id: 'stack-count',
  level: 'read',
  form: 'number',
  facts: (unit) => [
    ...withPlates(unit).map(factOf),
    ...COUNTED.filter((kind) => kitPacks(unit, kind).length > 0).map(kitFact),
  ],
  pose(unit, fact, random) {
    const stack = withPlates(unit).find((candidate) => factOf(candidate) === fact);
    const kitKind = COUNTED.find((kind) => kitFact(kind) === fact);
    const asked: Asked | undefined = stack
      ? { kind: random.pick(COUNTED.filter((kind) => countOf(stack, kind) > 0)), packs: [stack], kit: false }
      : kitKind && { kind: kitKind, packs: kitPacks(unit, kitKind), kit: true };
    if (!asked || asked.packs.length === 0) return undefined;
    const { kind, packs, kit } = asked;
    const right = rational(sum(packs, kind));
    const seen = new Set<string>();
    const wrong = wrongCounts(unit, asked)
      .filter(
        ({ slipUp, value }) => value > 0 && !seen.has(`${slipUp} ${value}`) && seen.add(`${slipUp} ${value}`),
      )
      .map(({ slipUp, value }) => ({ slipUp, value: rational(value) }));
    return {
      facts: [fact],
      uses: packs.map(({ id }): Ref => `stack:${id}`),
      prompt: kit
        ? say('stack-count.kit', { kind })
        : say('stack-count.prompt', { stack: stackName(packs[0]!), kind }),
      space: { form: 'number', unit: null, tolerance: TOLERANCE, signed: false, decimals: 0 },
      answers: [numberAnswer(right)],
      lures: numberLures(right, TOLERANCE, fact, wrong),
      explanation: {
        row: kit
          ? say('stack-count.sum', {
              counts: packs.map((pack) =>
                say('stack-count.one', { stack: stackName(pack), count: countOf(pack, kind) }),
              ),
              total: Number(right.valueOf()),
            })
          : stackLine(packs[0]!),
        reason: say('stack-count.reason', { kind }),
        more: kit ? packs.map(stackLine) : [],
        ...(kit ? {} : { drawing: { kind: 'stack', stack: packs[0]!.id, showThickness: true } as const }),
      },
      isRight: (answer) => {
        const ids = new Set(packs.map(({ id }) => id));
        let count = 0;
        for (const { id, items } of unit.deck.stacks!)
          if (ids.has(id)) for (const item of items) if (item.kind === kind) count++;
        return answer.form === 'number' && answer.value === String(count);
      },
    };
  },
};
