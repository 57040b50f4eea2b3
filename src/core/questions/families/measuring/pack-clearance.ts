/** The room in a drum and the plates for it: how much clearance is left? Counts and thicknesses are in view. */
import { packClearance as clearanceIn, type Waves } from '../../../measure/stack.ts';
import type { Random } from '../../../random.ts';
import { decimalsOf, makeDecimal, type Rational, rational } from '../../../rational.ts';
import { exactIn, type Length } from '../../../unit/record.ts';
import { type DeckStack, type DeckStackItem, isInPack, platesOf } from '../../../unit/stacks.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { FactId, Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { isNear, numberAnswer, numberLures } from '../number-parts.ts';
import { HAIR } from './fit-parts.ts';
import { PLACES } from './scale-parts.ts';

const FEWEST_KINDS = 3;
/** How far a drum's room may be from the recorded one, in its last place: makes each question its own. */
const ROOM_SPREAD = 30;

const factOf = ({ id }: DeckStack): FactId => `stack:${id}/clearance`;

/** Plates that are alike: how many there are, and one of them. */
interface Kind {
  readonly item: DeckStackItem & { readonly thickness: Length };
  readonly count: number;
}

function kindsOf({ items }: DeckStack): Kind[] | undefined {
  const kinds = new Map<string, Kind>();
  for (const item of items.filter(isInPack)) {
    const { thickness, kind, free } = item;
    if (!thickness) return undefined;
    const key = JSON.stringify([kind, thickness, free]);
    kinds.set(key, { item: { ...item, thickness }, count: (kinds.get(key)?.count ?? 0) + 1 });
  }
  return [...kinds.values()];
}

interface Pack {
  readonly stack: DeckStack;
  readonly room: Length;
  readonly kinds: readonly Kind[];
  readonly waves: Waves;
}

/** Verified packs with room and every thickness, and told how their waved plates count. */
function packsOf(unit: Unit): Pack[] {
  return (unit.deck.stacks ?? []).flatMap((stack): Pack[] => {
    const kinds = kindsOf(stack);
    const waved = kinds?.some(({ item }) => item.free) ?? false;
    const waves = stack.waves ?? (waved ? undefined : 'flat');
    if (!stack.room || !kinds || !waves || kinds.length < FEWEST_KINDS) return [];
    return unit.sure(`stack:${stack.id}`) ? [{ stack, room: stack.room, kinds, waves }] : [];
  });
}

const lengthPhrase = ({ value, unit }: Length): Phrase => say('measuring.length', { value, unit });

/** The room of this drum, near the recorded one and read to the same place. */
function drawRoom(pack: Pack, places: number, random: Random): Rational {
  const step = rational(1n, 10n ** BigInt(places));
  return exactIn(pack.room, pack.room.unit).add(step.mul(BigInt(random.int(-ROOM_SPREAD, ROOM_SPREAD))));
}

export const packClearance: Family = {
  id: 'pack-clearance',
  level: 'apply',
  form: 'number',
  facts: (unit) => packsOf(unit).map(({ stack }) => factOf(stack)),
  pose(unit, fact, random) {
    const pack = packsOf(unit).find(({ stack }) => factOf(stack) === fact);
    if (!pack) return undefined;
    const { stack, kinds, waves } = pack;
    const { unit: length } = pack.room;
    const figures = [pack.room, ...kinds.map(({ item }) => item.thickness)];
    const places = Math.max(PLACES[length], ...figures.map(({ value }) => decimalsOf(value)));
    const room = drawRoom(pack, places, random);
    const mm = (value: Rational) => (length === 'mm' ? value : value.mul(127n).div(5n));
    const back = (value: Rational) => (length === 'mm' ? value : value.mul(5n).div(127n));
    const left = clearanceIn(mm(room), platesOf(stack), waves);
    if (!left.ok) return undefined;
    const clearance = back(left.value);
    const thick = (item: Kind['item'], counted: Waves = waves) =>
      exactIn(counted === 'free' && item.free ? item.free : item.thickness, length);
    const total = (rule: (kind: Kind) => Rational) =>
      kinds.reduce((sum, kind) => sum.add(rule(kind)), rational(0));
    const without = (kind: DeckStackItem['kind']) =>
      room.sub(
        total(({ item, count }) => (item.kind === kind ? rational(0) : thick(item).mul(BigInt(count)))),
      );
    const otherWaves: Waves = waves === 'flat' ? 'free' : 'flat';
    const wrong: { slipUp: SlipUp; value: Rational }[] = [
      { slipUp: 'ring-left-out', value: without('snap-ring') },
      { slipUp: 'backing-left-out', value: without('backing') },
      { slipUp: 'one-of-each-counted', value: room.sub(total(({ item }) => thick(item))) },
      {
        slipUp: 'other-wave-height',
        value: room.sub(total(({ item, count }) => thick(item, otherWaves).mul(BigInt(count)))),
      },
    ];
    const text = (value: Rational) => makeDecimal(value, places);
    const tolerance = text(rational(1n, 10n ** BigInt(places)));
    const sums = kinds.map(({ item, count }): Phrase => {
      const each = thick(item);
      return say('pack-clearance.line', {
        kind: say(`measuring.plates-${item.kind}`, { count }),
        count,
        each: text(each),
        all: text(each.mul(BigInt(count))),
        unit: length,
      });
    });
    return {
      facts: [fact],
      uses: [`stack:${stack.id}` as Ref],
      prompt: say('pack-clearance.prompt', {
        stack: thing('stack', stack.id),
        room: text(room),
        unit: length,
        waves: kinds.some(({ item }) => item.free) ? waves : 'none',
        tolerance,
      }),
      drawing: {
        kind: 'table',
        columns: ['how-many', 'each', 'free'].map((column) => say(`pack-clearance.${column}`)),
        rows: kinds.map(({ item, count }) => ({
          head: say(`measuring.plates-${item.kind}`, { count }),
          cells: [
            say('measuring.count', { count }),
            lengthPhrase(item.thickness),
            item.free ? lengthPhrase(item.free) : say('measuring.nothing'),
          ],
        })),
      },
      space: { form: 'number', unit: length, tolerance, signed: false, decimals: places },
      answers: [numberAnswer(clearance)],
      lures: numberLures(
        clearance,
        tolerance,
        fact,
        wrong.filter(({ value }) => value.gt(0n)),
      ),
      explanation: {
        row: say('pack-clearance.row', {
          room: text(room),
          height: text(room.sub(clearance)),
          clearance: text(clearance),
          unit: length,
        }),
        reason: say('pack-clearance.reason'),
        more: sums,
        drawing: { kind: 'stack', stack: stack.id, showThickness: true },
      },
      isRight: (answer) => {
        const heights = stack.items.filter(isInPack).map(({ thickness, free }) => {
          const of = waves === 'free' && free ? free : thickness!;
          return Number(of.value) * (of.unit === length ? 1 : of.unit === 'in' ? 25.4 : 1 / 25.4);
        });
        const really = room.valueOf() - heights.reduce((sum, height) => sum + height, 0);
        return isNear(answer, really, tolerance, HAIR);
      },
    };
  },
};
