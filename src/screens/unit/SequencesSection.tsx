/** Sequences of work as they are listed: what is done, what with, how tight, and what must come before. */
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { DeckSequence, DeckStep } from '../../core/unit/sequences.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { useNarrowed } from './found.ts';
import { ProvenanceNote } from './ProvenanceNote.tsx';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
}

export function Step({ step, sequence, unit, say }: Props & { step: DeckStep; sequence: DeckSequence }) {
  const { deck } = unit;
  const numberOf = (id: string) => sequence.steps.findIndex((other) => other.id === id) + 1;
  const torque = step.torque ?? deck.torques?.find(({ id }) => id === step.tightens)?.torque;
  const cautions = (deck.cautions ?? []).filter(({ attachedTo }) =>
    attachedTo.includes(`step:${sequence.id}/${step.id}`),
  );
  const details = [
    ...(step.tool ? [say(phrase('unit.step-tool', { tool: step.tool }))] : []),
    ...(torque ? [say(phrase('unit.step-torque', { torque: `${torque.value} ${torque.unit}` }))] : []),
    ...(step.after ?? []).map(({ step: id, reason }) =>
      say(phrase('unit.step-after', { number: numberOf(id), reason })),
    ),
  ];
  return (
    <li value={numberOf(step.id)}>
      {cautions.map(({ id, text }) => (
        <p key={id} className="caution">
          {text}
        </p>
      ))}
      {step.text}
      {details.length > 0 && <span className="provenance">{details.join(' · ')}</span>}
      <ProvenanceNote of={step} unit={unit} say={say} />
    </li>
  );
}

export function SequencesSection({ unit, say }: Props) {
  const { isSearching, shows } = useNarrowed();
  const held = (unit.deck.sequences ?? [])
    .map((sequence) => ({
      sequence,
      steps: shows(`sequence:${sequence.id}`)
        ? sequence.steps
        : sequence.steps.filter(({ id }) => shows(`step:${sequence.id}/${id}`)),
    }))
    .filter(({ steps }) => steps.length > 0);
  return (
    <>
      <p className="aside">{say(phrase('unit.sequences-note'))}</p>
      {held.map(({ sequence, steps }) => (
        <details key={sequence.id} open={isSearching}>
          <summary>
            {say(
              phrase('unit.sequence', {
                name: thing('sequence', sequence.id),
                count: sequence.steps.length,
              }),
            )}
          </summary>
          <ol className="steps">
            {steps.map((step) => (
              <Step key={step.id} step={step} sequence={sequence} unit={unit} say={say} />
            ))}
          </ol>
          <ProvenanceNote of={sequence} unit={unit} say={say} />
        </details>
      ))}
    </>
  );
}
