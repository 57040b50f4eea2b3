/** Neutral leaves some elements on. Which others, each coming on alone beside them, would make it drive? */
import { type Behaviour, behaviourOf } from '../../faults/behaviour.ts';
import { solveBySpeeds } from '../../faults/by-speeds.ts';
import { type Row, trainRefs, type Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { FactId, Family, Lure } from '../question.ts';
import { behaviourInWords } from './behaviour-words.ts';
import { distinctLures, elementNames, elementOptions, frictionIds, setAnswer } from './chart-parts.ts';

const FEWEST_OPTIONS = 3;

const factOf = (row: Row): FactId => `neutral:${row.id}/drive`;

interface Addition {
  readonly element: string;
  readonly behaviour: Behaviour;
}

const onIn = (unit: Unit, row: Row) => frictionIds(unit).filter((id) => row.applied.includes(id));

/** What each element that is off here does when it comes on alone beside these. */
function additions(unit: Unit, row: Row, on: readonly string[]): Addition[] {
  return frictionIds(unit)
    .filter((id) => !row.applied.includes(id))
    .map((element) => ({ element, behaviour: behaviourOf(unit, [...on, element]) }));
}

const driving = (added: readonly Addition[]) =>
  added.filter(({ behaviour }) => behaviour.does === 'drives').map(({ element }) => element);

/** Verified rows that do not drive, and that at least one element more would make drive. */
function askable(unit: Unit): Row[] {
  if (!trainRefs(unit.deck).every((ref) => unit.sure(ref))) return [];
  return unit.neutrals.filter((row) => {
    if (!unit.sure(row.ref) || row.solution.state === 'drives') return false;
    const added = additions(unit, row, onIn(unit, row));
    return added.length >= FEWEST_OPTIONS && driving(added).length > 0;
  });
}

export const neutralDrive: Family = {
  id: 'neutral-drive',
  level: 'reason',
  form: 'set',
  facts: (unit) => askable(unit).map(factOf),
  pose(unit, fact) {
    const row = askable(unit).find((candidate) => factOf(candidate) === fact);
    if (!row) return undefined;
    const { train } = unit.deck;
    const on = onIn(unit, row);
    const added = additions(unit, row, on);
    const elements = added.map(({ element }) => element);
    const isBackward = ({ behaviour }: Addition) =>
      behaviour.does === 'drives' && behaviour.ratio.compare(0n) < 0;
    const lures: Lure[] = [
      { answer: setAnswer(driving(additions(unit, row, []))), slipUp: 'neutral-needs-nothing', fact },
      { answer: setAnswer(elements), slipUp: 'every-element-drives', fact },
      {
        answer: setAnswer(driving(added.filter((addition) => !isBackward(addition)))),
        slipUp: 'reverse-left-out',
        fact,
      },
      {
        answer: setAnswer(
          added.filter(({ behaviour }) => behaviour.does !== 'no-drive').map(({ element }) => element),
        ),
        slipUp: 'settled-means-drives',
        fact,
      },
    ];
    return {
      facts: [fact],
      uses: [row.ref, ...trainRefs(unit.deck)],
      prompt: say('neutral-drive.prompt', {
        row: thing('range', row.id),
        count: on.length,
        elements: elementNames(on),
      }),
      drawing: { kind: 'train', applied: on },
      space: {
        form: 'set',
        options: elementOptions(unit).filter((option) => elements.includes(option.id)),
      },
      answers: [setAnswer(driving(added))],
      lures: distinctLures(lures),
      explanation: {
        row: say('neutral-drive.row', {
          row: thing('range', row.id),
          count: driving(added).length,
          elements: elementNames(driving(added)),
        }),
        reason: say(`neutral-drive.${row.solution.state}`, { count: on.length, elements: elementNames(on) }),
        more: added.map(({ element, behaviour }) => behaviourInWords(unit, [...on, element], behaviour)),
        drawing: { kind: 'train', applied: [...on, driving(added)[0]!] },
      },
      isRight: (answer) => {
        const raw = unit.deck.chart.neutral!.find(({ id }) => id === row.id)!;
        const kept = raw.applied.filter((id) => on.includes(id));
        return (
          answer.form === 'set' &&
          elements.every(
            (id) => answer.picks.includes(id) === (solveBySpeeds(train, [...kept, id]).state === 'drives'),
          )
        );
      },
    };
  },
};
