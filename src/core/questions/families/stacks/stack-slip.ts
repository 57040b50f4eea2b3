/** A pack measures too high or too low: which plate is one too many or too few? The difference tells. */
import { type CountSlip, slipsThatExplain } from '../../../measure/stack.ts';
import { makeDecimal, parseRational, type Rational, rational } from '../../../rational.ts';
import type { DeckStack, DeckStackItem } from '../../../unit/stacks.ts';
import { say } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import { floatHeight, heightPlates, lengthUnit, plateTable } from './height-parts.ts';
import { classOf, kindsIn, plateName, platesIn, stackName, sureStacks } from './stack-parts.ts';

const FACT: FactId = 'skill:stack-slip';
const FEWEST_KINDS = 3;
const MOST_OTHERS = 3;

/** How well a pack can be measured, and the places it is read with. Assumptions, no source. */
const MEASURED = {
  mm: { tolerance: '0.1', places: 2, off: 4 },
  in: { tolerance: '0.004', places: 3, off: 1 },
} as const;

type Slip = CountSlip['slip'];

/** Kinds that can be miscounted: nobody fits a second snap ring. */
const countable = (stack: DeckStack): DeckStackItem[] =>
  kindsIn(platesIn(stack)).filter(({ kind }) => kind !== 'snap-ring');

const askable = perUnit((unit) =>
  sureStacks(unit).filter((stack) => countable(stack).length >= FEWEST_KINDS),
);

const other = (slip: Slip): Slip => (slip === 'doubled' ? 'left-out' : 'doubled');

export const stackSlip: Family = {
  id: 'stack-slip',
  level: 'reason',
  form: 'one',
  facts: (unit) => (askable(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || askable(unit).length === 0) return undefined;
    const stack = random.pick(askable(unit));
    const waves = stack.waves ?? 'flat';
    const in_ = lengthUnit(stack);
    const { tolerance, places, off } = MEASURED[in_];
    const plates = heightPlates(stack);
    const own = (item: DeckStackItem): Rational => {
      const plate = plates.find(({ id }) => id === item.id)!;
      return waves === 'free' ? (plate.free ?? plate.thickness) : plate.thickness;
    };
    const right = plates.reduce(
      (sum, { thickness, free }) => sum.add(waves === 'free' ? (free ?? thickness) : thickness),
      rational(0),
    );
    const odd = random.pick(countable(stack));
    const slip = random.pick<Slip>(['left-out', 'doubled']);
    const exact = slip === 'doubled' ? right.add(own(odd)) : right.sub(own(odd));
    const measured = exact.add(rational(BigInt(random.int(-off, off)), 10n ** BigInt(places)));
    const explains = slipsThatExplain(plates, waves, measured, parseRational(tolerance)!);
    const told = explains.ok
      ? explains.value.map((each) => platesIn(stack).find(({ id }) => id === each.plate)!)
      : [];
    if (told.length === 0 || told.some((item) => classOf(item) !== classOf(odd))) return undefined;
    // The nearest thicknesses are the likeliest to be mistaken for it.
    const others = countable(stack)
      .filter((item) => item !== odd)
      .sort((a, b) =>
        own(a)
          .sub(own(odd))
          .abs()
          .compare(own(b).sub(own(odd)).abs()),
      )
      .slice(0, MOST_OTHERS);
    const idOf = (item: DeckStackItem, as: Slip) => `${item.id}/${as}`;
    const pick = (item: DeckStackItem, as: Slip) => ({ form: 'one' as const, pick: idOf(item, as) });
    const choices = [
      [odd, slip],
      [odd, other(slip)],
      ...others.map((item) => [item, slip] as const),
    ] as const;
    const shown = (value: Rational) => makeDecimal(value, places);
    return {
      facts: [fact],
      uses: [`stack:${stack.id}`, ...platesIn(stack).map(({ id }) => `plate:${stack.id}/${id}` as const)],
      prompt: say('stack-slip.prompt', {
        stack: stackName(stack),
        right: shown(right),
        measured: shown(measured),
        tolerance,
        unit: in_,
      }),
      drawing: plateTable(stack),
      space: {
        form: 'one',
        options: random.shuffle(
          choices.map(([item, as]) => ({
            id: idOf(item, as),
            label: say(`stack-slip.${as}`, { plate: plateName(item) }),
          })),
        ),
      },
      answers: [pick(odd, slip)],
      lures: [
        { answer: pick(odd, other(slip)), slipUp: 'height-sense-turned', fact },
        ...others.map((item): Lure => ({ answer: pick(item, slip), slipUp: 'other-thickness', fact })),
      ],
      explanation: {
        row: say('stack-slip.row', {
          difference: shown(measured.sub(right).abs()),
          sense: slip,
          unit: in_,
        }),
        reason: say('stack-slip.reason', {
          plate: plateName({ ...odd, thickness: undefined }),
          height: shown(own(odd)),
          unit: in_,
        }),
        more: others.map((item) =>
          say('stack-slip.other', {
            plate: plateName({ ...item, thickness: undefined }),
            height: shown(own(item)),
            unit: in_,
          }),
        ),
        drawing: { kind: 'stack', stack: stack.id, showThickness: true },
      },
      isRight: (answer) => {
        const [id, as] = answer.form === 'one' ? answer.pick.split('/') : [];
        const item = platesIn(stack).find((plate) => plate.id === id);
        if (!item) return false;
        const alone = floatHeight({ ...stack, items: [item] }, waves);
        const expected = floatHeight(stack, waves) + (as === 'doubled' ? alone : -alone);
        return Math.abs(expected - measured.valueOf()) <= Number(tolerance) + 1e-9;
      },
    };
  },
};
