/**
 * Which way do the one-sided plates of the packs lie, step or bevel to the floor or to the opening? Several at
 * once, because one alone is a toss-up.
 */
import { type DeckStack, type DeckStackItem, TOWARDS } from '../../../unit/stacks.ts';
import { type Phrase, say } from '../../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';
import { floorName, plateName, stackName, sureStacks } from './stack-parts.ts';

type Towards = (typeof TOWARDS)[number];

const FEWEST = 3;
const MOST = 4;

interface Sided {
  readonly stack: DeckStack;
  readonly item: DeckStackItem;
  readonly id: string;
}

const factOf = ({ id }: Sided): FactId => `plate:${id}/face`;

const oneSided = perUnit((unit): Sided[] => {
  const all = sureStacks(unit).flatMap((stack) =>
    stack.items
      .filter(({ looks, identical }) => looks && identical === undefined)
      .map((item) => ({ stack, item, id: `${stack.id}/${item.id}` })),
  );
  return all.length < FEWEST ? [] : all;
});

const towards = ({ item }: Sided): Towards => item.looks!.towards;
const turned = (plate: Sided): Towards => (towards(plate) === 'floor' ? 'opening' : 'floor');

const line = (plate: Sided): Phrase =>
  say('plate-faces.line', {
    stack: stackName(plate.stack),
    plate: plateName(plate.item),
    feature: plate.item.looks!.feature,
    towards: towards(plate),
    floor: floorName(plate.stack),
  });

export const plateFaces: Family = {
  id: 'plate-faces',
  level: 'read',
  form: 'pair',
  facts: (unit) => oneSided(unit).map(factOf),
  pose(unit, fact, random) {
    const all = oneSided(unit);
    const own = all.find((plate) => factOf(plate) === fact);
    if (!own) return undefined;
    const drawn = random.sample(
      all.filter((plate) => plate !== own),
      MOST - 1,
    );
    const asked = all.filter((plate) => plate === own || drawn.includes(plate));
    const told = (rule: (plate: Sided) => Towards): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(asked.map((plate) => [plate.id, rule(plate)])),
    });
    const lures: Lure[] = [
      { answer: told(turned), slipUp: 'mirror-view' },
      ...TOWARDS.map((each): Lure => ({ answer: told(() => each), slipUp: 'all-face-alike' })),
      ...asked.map(
        (odd): Lure => ({
          answer: told((plate) => (plate === odd ? turned(plate) : towards(plate))),
          slipUp: 'plate-turned-round',
          fact: factOf(odd),
        }),
      ),
    ];
    const others = asked.filter((plate) => plate !== own);
    return {
      facts: [fact, ...others.map(factOf)],
      uses: [
        ...new Set(asked.flatMap(({ stack, id }) => [`stack:${stack.id}` as const, `plate:${id}` as const])),
      ],
      prompt: say('plate-faces.prompt'),
      space: {
        form: 'pair',
        left: asked.map((plate) => ({
          id: plate.id,
          label: say('plate-faces.plate', {
            stack: stackName(plate.stack),
            plate: plateName(plate.item),
            feature: plate.item.looks!.feature,
          }),
        })),
        right: TOWARDS.map((id) => ({ id, label: say(`plate-faces.${id}`) })),
      },
      answers: [told(towards)],
      lures: distinctLures(lures),
      explanation: {
        row: line(own),
        reason: say('plate-faces.reason'),
        more: others.map(line),
        drawing: { kind: 'stack', stack: own.stack.id, lit: [own.item.id] },
      },
      // From the record of each pack: those that look to the floor are just those said to.
      isRight: (answer) => {
        if (answer.form !== 'pair') return false;
        const toFloor = new Set(
          unit.deck.stacks!.flatMap((stack) =>
            stack.items
              .filter(({ looks }) => looks?.towards === 'floor')
              .map((item) => `${stack.id}/${item.id}`),
          ),
        );
        return asked.every(({ id }) => (answer.pairs[id] === 'floor') === toFloor.has(id));
      },
    };
  },
};
