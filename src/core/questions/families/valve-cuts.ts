/**
 * What the manual valve lets through in a lever position: which elements a solenoid can reach, which the valve
 * feeds by hand whatever the solenoids do, and which are cut off. From memory.
 */
import type { DeckLeverPosition } from '../../unit/deck.ts';
import type { Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../question.ts';
import { distinctLures, elementNames, elementOptions, frictionIds } from './chart-parts.ts';
import { perUnit } from './per-unit.ts';

const FEWEST_ELEMENTS = 4;

const REACHES = ['solenoid', 'by-hand', 'cut'] as const;
type Reach = (typeof REACHES)[number];

const factOf = (position: DeckLeverPosition): FactId => `position:${position.id}/valve`;

const reachOf = (position: DeckLeverPosition, element: string): Reach =>
  position.feeds?.includes(element) ? 'by-hand' : position.opens!.includes(element) ? 'solenoid' : 'cut';

/** Verified elements that a solenoid feeds. */
const fedElements = (unit: Unit): string[] =>
  frictionIds(unit).filter(
    (id) =>
      unit.sure(`element:${id}`) &&
      (unit.deck.solenoids ?? []).some(
        (solenoid) => solenoid.feeds.includes(id) && unit.sure(`solenoid:${solenoid.id}`),
      ),
  );

/** With what the valve feeds by hand somewhere, no solenoid being needed for that. */
const elementsOf = (unit: Unit): string[] => {
  const byHand = (unit.deck.lever?.positions ?? []).flatMap(({ feeds }) => feeds ?? []);
  const fed = fedElements(unit);
  return frictionIds(unit).filter(
    (id) => fed.includes(id) || (byHand.includes(id) && unit.sure(`element:${id}`)),
  );
};

/** Verified positions that do not treat every element alike. */
const positions = perUnit((unit: Unit): DeckLeverPosition[] => {
  const { lever } = unit.deck;
  const elements = elementsOf(unit);
  if (lever?.valve !== 'manual' || elements.length < FEWEST_ELEMENTS) return [];
  return lever.positions.filter(
    (position) =>
      position.opens &&
      unit.sure(`position:${position.id}`) &&
      new Set(elements.map((id) => reachOf(position, id))).size > 1,
  );
});

export const valveCuts: Family = {
  id: 'valve-cuts',
  level: 'read',
  form: 'pair',
  facts: (unit) => positions(unit).map(factOf),
  pose(unit, fact) {
    const position = positions(unit).find((candidate) => factOf(candidate) === fact);
    if (!position) return undefined;
    const elements = elementsOf(unit);
    const told = (rule: (element: string) => Reach): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(elements.map((id) => [id, rule(id)])),
    });
    const right = (id: string) => reachOf(position, id);
    const rows = [...unit.ranges, ...unit.neutrals].filter((row) => position.rows.includes(row.id));
    const used = new Set(rows.flatMap((row) => row.applied));
    const rowsSure = rows.every((row) => unit.sure(row.ref));
    const lures: Lure[] = [
      { answer: told(() => 'solenoid'), slipUp: 'valve-forgotten', fact },
      {
        answer: told((id) => (right(id) === 'by-hand' ? 'solenoid' : right(id))),
        slipUp: 'hand-feed-forgotten',
        fact,
      },
      ...(rowsSure
        ? [
            {
              answer: told((id) => (used.has(id) ? right(id) : 'cut')),
              slipUp: 'unused-means-cut' as const,
              fact,
            },
          ]
        : []),
      ...positions(unit)
        .filter((other) => other !== position)
        .map(
          (other): Lure => ({
            answer: told((id) => reachOf(other, id)),
            slipUp: 'other-lever-position',
            fact,
          }),
        ),
    ];
    const listed = (reach: Reach) => {
      const ids = elements.filter((id) => right(id) === reach);
      return { count: ids.length, elements: elementNames(ids) };
    };
    return {
      facts: [fact],
      uses: [
        `position:${position.id}`,
        ...elements.map((id) => `element:${id}` as const),
        ...(rowsSure ? rows.map((row) => row.ref) : []),
      ],
      prompt: say('valve-cuts.prompt', { position: thing('position', position.id) }),
      space: {
        form: 'pair',
        left: elementOptions(unit).filter(({ id }) => elements.includes(id)),
        right: REACHES.map((id) => ({ id, label: say(`valve-cuts.${id}`) })),
      },
      answers: [told(right)],
      lures: distinctLures(lures),
      explanation: {
        row: say('valve-cuts.row', { position: thing('position', position.id), ...listed('cut') }),
        reason: say('valve-cuts.reason'),
        more: [
          say('valve-cuts.line-solenoid', listed('solenoid')),
          say('valve-cuts.line-by-hand', listed('by-hand')),
        ],
        drawing: {
          kind: 'chart',
          litColumns: elements.filter((id) => right(id) !== 'cut'),
          litRows: rows.map(({ id }) => id),
        },
      },
      isRight: (answer) => {
        const raw = unit.deck.lever!.positions.find(({ id }) => id === position.id)!;
        const [byHand, open] = [new Set(raw.feeds), new Set(raw.opens)];
        return (
          answer.form === 'pair' &&
          elements.every((id) => {
            const given = answer.pairs[id];
            if ((given === 'by-hand') !== byHand.has(id)) return false;
            return byHand.has(id) || (given === 'solenoid') === open.has(id);
          })
        );
      },
    };
  },
};
