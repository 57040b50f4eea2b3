/** At which of these steps can something fly or spray out: springs, rings, air, oil under pressure? */
import type { Hazard } from '../../../unit/cautions.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Family } from '../../question.ts';
import { setAnswer } from '../chart-parts.ts';
import { type HazardStep, stepsWithHazards } from './step-parts.ts';

const FACT = 'skill:stored-energy';

/** Dangers from what is held back until a step lets it go. */
const HELD_BACK: readonly Hazard[] = ['stored-energy', 'pressure', 'air'];

/** Steps asked at once; at least two of them let something go, and at least two do not. */
const ROWS = 6;

const letsGo = ({ hazards }: Pick<HazardStep, 'hazards'>) =>
  hazards.some((hazard) => HELD_BACK.includes(hazard));
const isHeavy = ({ hazards }: HazardStep) =>
  hazards.some((hazard) => hazard === 'lift' || hazard === 'handling');

const enough = (unit: Unit) => {
  const steps = stepsWithHazards(unit);
  return steps.filter(letsGo).length >= 2 && steps.filter((step) => !letsGo(step)).length >= 4;
};

export const storedEnergy: Family = {
  id: 'stored-energy',
  level: 'apply',
  form: 'set',
  facts: (unit) => (enough(unit) ? [FACT] : []),
  pose(unit, fact, random) {
    const steps = random.shuffle(stepsWithHazards(unit));
    const texts = new Set<string>();
    const take = (from: readonly HazardStep[], count: number) => {
      const taken: HazardStep[] = [];
      for (const row of from) {
        if (taken.length === count) break;
        if (texts.has(row.step.text)) continue;
        texts.add(row.step.text);
        taken.push(row);
      }
      return taken;
    };
    const loaded = take(steps.filter(letsGo), random.int(2, 3));
    // Heavy steps first: they look as dangerous and let nothing go.
    const others = steps
      .filter((step) => !letsGo(step))
      .sort((a, b) => Number(isHeavy(b)) - Number(isHeavy(a)));
    const calm = [...take(others, 1), ...take(random.shuffle(others), ROWS - loaded.length - 1)];
    const rows = random.shuffle([...loaded, ...calm]);
    if (rows.length < ROWS) return undefined;
    const right = rows.filter(letsGo);
    const ids = (some: readonly HazardStep[]) => setAnswer(some.map(({ ref }) => ref));
    return {
      facts: [fact],
      uses: rows.map(({ ref }) => ref),
      prompt: say('stored-energy.prompt'),
      space: {
        form: 'set',
        options: rows.map(({ ref, step }) => ({ id: ref, label: say('text', { text: step.text }) })),
      },
      answers: [ids(right)],
      lures: [
        { answer: ids(rows.filter((row) => letsGo(row) || isHeavy(row))), slipUp: 'heavy-taken-for-loaded' },
        {
          answer: ids(rows.filter(({ hazards }) => hazards.length > 0)),
          slipUp: 'any-hazard-taken-for-loaded',
        },
        {
          answer: ids(rows.filter(({ hazards }) => hazards.includes('stored-energy'))),
          slipUp: 'springs-only',
        },
      ],
      explanation: {
        row: say('stored-energy.row', { count: right.length }),
        reason: say('stored-energy.reason'),
        more: right.map(({ step, hazards }) =>
          say('step-hazards.row', {
            step: say('text', { text: step.text }),
            hazard: say(`hazard.${hazards.find((hazard) => HELD_BACK.includes(hazard))!}`),
          }),
        ),
      },
      isRight: (answer) =>
        answer.form === 'set' &&
        rows.every(({ ref, sequence, step }) => {
          const raw = unit.deck
            .sequences!.find(({ id }) => id === sequence)!
            .steps.find(({ id }) => id === step.id)!;
          return letsGo({ hazards: raw.hazards ?? [] }) === answer.picks.includes(ref);
        }),
    };
  },
};
