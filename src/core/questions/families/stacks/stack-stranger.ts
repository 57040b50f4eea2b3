/** A pack laid out with one plate of another pack in it: tap the stranger. */
import { parseRational } from '../../../rational.ts';
import { exactIn } from '../../../unit/record.ts';
import type { DeckStack, DeckStackItem } from '../../../unit/stacks.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import { classOf, floorName, kindsIn, plateName, stackLine, stackName, sureStacks } from './stack-parts.ts';

/** Plates whose thicknesses are nearer than this look alike; common practice, no source. */
const APART_MM = parseRational('0.2')!;

/** A pack is laid out whole, on its floor; with more places a drawing is too long for a phone. */
const MOST_PLACES = 24;
const FEWEST_PLACES = 5;

const factOf = (stack: DeckStack): FactId => `stack:${stack.id}/plates`;

interface Swap {
  readonly place: number;
  readonly from: DeckStack;
  readonly stranger: DeckStackItem;
}

/** Plates of other packs of the same kind and of another thickness, and the place each would take. */
function swaps(unit: Unit, stack: DeckStack): Swap[] {
  return stack.items.flatMap((own, place) =>
    sureStacks(unit)
      .filter((other) => other !== stack)
      .flatMap((from) =>
        kindsIn(from.items)
          .filter(
            (stranger) =>
              stranger.kind === own.kind &&
              stranger.thickness &&
              // no plate of the pack itself is like it
              kindsIn(stack.items).every(
                ({ kind, thickness }) =>
                  kind !== own.kind ||
                  (thickness &&
                    exactIn(thickness, 'mm').sub(exactIn(stranger.thickness!, 'mm')).abs().gte(APART_MM)),
              ),
          )
          .map((stranger) => ({ place, from, stranger })),
      ),
  );
}

/** Packs that a stranger can come into, and how. */
const askable = perUnit(
  (unit) =>
    new Map(
      sureStacks(unit)
        .filter(({ items }) => items.length >= FEWEST_PLACES && items.length <= MOST_PLACES)
        .map((stack) => [stack, swaps(unit, stack)] as const)
        .filter(([, found]) => found.length > 0),
    ),
);

export const stackStranger: Family = {
  id: 'stack-stranger',
  level: 'apply',
  form: 'place',
  facts: (unit) => [...askable(unit).keys()].map(factOf),
  pose(unit, fact, random) {
    const [stack, all] = [...askable(unit)].find(([candidate]) => factOf(candidate) === fact) ?? [];
    if (!stack || !all) return undefined;
    // Where there is only one of a plate, the pattern of the others does not give the stranger away.
    const singles = all.filter(
      ({ place }) =>
        stack.items.filter((item) => classOf(item) === classOf(stack.items[place]!)).length === 1,
    );
    const { place, from, stranger } = random.pick(singles.length > 0 && random.unit() < 0.7 ? singles : all);
    const strange = `${from.id}/${stranger.id}`;
    const shown = stack.items.map((item, index) =>
      index === place ? { id: strange, item: stranger } : { id: item.id, item },
    );
    const single = shown.filter(
      ({ id, item }) =>
        id !== strange && stack.items.filter((other) => classOf(other) === classOf(item)).length === 1,
    );
    const at = (spot: string) => ({ form: 'place' as const, spot });
    return {
      facts: [fact],
      uses: [
        `stack:${stack.id}`,
        ...stack.items.map(({ id }) => `plate:${stack.id}/${id}` as const),
        `stack:${from.id}`,
        `plate:${from.id}/${stranger.id}`,
      ],
      prompt: say('stack-stranger.prompt', { stack: stackName(stack), floor: floorName(stack) }),
      drawing: {
        kind: 'stack',
        stack: stack.id,
        items: shown.map(({ id }) => id),
        places: shown.map(({ id }) => id),
        showThickness: true,
      },
      space: { form: 'place', spots: shown.map(({ id, item }) => ({ id, label: plateName(item) })) },
      answers: [at(strange)],
      lures: single.map(({ id }): Lure => ({ answer: at(id), slipUp: 'single-taken-for-stranger', fact })),
      explanation: {
        row: say('stack.belongs', { plate: plateName(stranger), stack: stackName(from) }),
        reason: say('stack-stranger.reason', { plate: plateName(stack.items[place]!) }),
        more: [stackLine(stack), stackLine(from)],
        drawing: { kind: 'stack', stack: stack.id, showThickness: true },
      },
      // The one plate of those laid out that is not as the record of its place says.
      isRight: (answer) => {
        if (answer.form !== 'place') return false;
        const raw = unit.deck.stacks!.find(({ id }) => id === stack.id)!.items;
        const index = shown.findIndex(({ id }) => id === answer.spot);
        const [laid, wanted] = [shown[index]!.item.thickness, raw[index]!.thickness];
        if (!laid || !wanted) return false;
        return !exactIn(laid, 'mm').equals(exactIn(wanted, 'mm'));
      },
    };
  },
};
