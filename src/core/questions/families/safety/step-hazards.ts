/** Which danger belongs to which step? The cautions stand above, together; sorting them out is the question. */
import type { Hazard } from '../../../unit/cautions.ts';
import { say } from '../../phrase.ts';
import type { Answer, Family } from '../../question.ts';
import { type HazardStep, stepsWithHazards } from './step-parts.ts';

/** Steps asked at once. */
const ROWS = 4;

const factOf = ({ ref }: HazardStep) => `${ref}/hazard`;

/** Steps with one hazard: where there are two, either would be a fair answer. */
const plain = (steps: readonly HazardStep[]) => steps.filter(({ hazards }) => hazards.length === 1);

const pairAnswer = (
  rows: readonly HazardStep[],
  hazardOf: (row: HazardStep, place: number) => Hazard,
): Answer => ({
  form: 'pair',
  pairs: Object.fromEntries(rows.map((row, place) => [row.ref, hazardOf(row, place)])),
});

export const stepHazards: Family = {
  id: 'step-hazards',
  level: 'apply',
  form: 'pair',
  facts(unit) {
    const steps = plain(stepsWithHazards(unit));
    return new Set(steps.map(({ hazards }) => hazards[0])).size >= 3 ? steps.map(factOf) : [];
  },
  pose(unit, fact, random) {
    const steps = plain(stepsWithHazards(unit));
    const asked = steps.find((step) => factOf(step) === fact);
    if (!asked) return undefined;
    const rows = [asked];
    const hazardOf = ({ hazards }: HazardStep) => hazards[0]!;
    for (const step of random.shuffle(steps)) {
      const again = rows.filter((row) => hazardOf(row) === hazardOf(step)).length;
      const sameText = rows.some((row) => row.step.text === step.step.text);
      if (rows.length < ROWS && again === 0 && !sameText) rows.push(step);
    }
    if (rows.length < 3) return undefined;
    const shuffled = random.shuffle(rows);
    const hazards = [...new Set(shuffled.map(hazardOf))].sort();
    return {
      facts: [fact, ...rows.slice(1).map(factOf)],
      uses: rows.map(({ ref }) => ref),
      prompt: say('step-hazards.prompt'),
      space: {
        form: 'pair',
        left: shuffled.map(({ ref, step }) => ({ id: ref, label: say('text', { text: step.text }) })),
        right: hazards.map((id) => ({ id, label: say(`hazard.${id}`) })),
      },
      answers: [pairAnswer(shuffled, hazardOf)],
      lures: [
        {
          answer: pairAnswer(shuffled, (_, place) => hazardOf(shuffled[(place + 1) % shuffled.length]!)),
          slipUp: 'hazard-of-another-step',
        },
        ...hazards.map((hazard) => ({
          answer: pairAnswer(shuffled, () => hazard),
          slipUp: 'one-hazard-for-all' as const,
        })),
      ],
      explanation: {
        row: say('step-hazards.row', {
          step: say('text', { text: asked.step.text }),
          hazard: say(`hazard.${hazardOf(asked)}`),
        }),
        reason: say(`hazard-harm.${hazardOf(asked)}`),
        more: rows.slice(1).map((row) =>
          say('step-hazards.row', {
            step: say('text', { text: row.step.text }),
            hazard: say(`hazard.${hazardOf(row)}`),
          }),
        ),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        rows.every(({ sequence, step }) =>
          unit.deck.sequences!.some(
            ({ id, steps: raw }) =>
              id === sequence &&
              raw.some(
                (one) =>
                  one.id === step.id && one.hazards?.join() === answer.pairs[`step:${sequence}/${step.id}`],
              ),
          ),
        ),
    };
  },
};
