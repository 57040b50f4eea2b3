/**
 * Work in steps, typed in the order of stripping. The assembly is that turned round; only where it is not so does
 * the writer say anything.
 */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { DeckSequence } from '../../core/unit/sequences.ts';
import { type Place, valueAt } from '../../core/workshop/draft.ts';
import { finishDraft } from '../../core/workshop/finish.ts';
import { type DraftSequence, stepsFromLines } from '../../core/workshop/steps.ts';
import { readSequences } from '../../exchange/csv/sequences.ts';
import { Assembly } from './Assembly.tsx';
import { Checks } from './Checks.tsx';
import type { Desk, SectionProps } from './desk.ts';
import { Fold } from './Fold.tsx';
import { TextField } from './fields.tsx';
import { LinesBox } from './LinesBox.tsx';
import { PasteBox } from './PasteBox.tsx';
import { Provenance, Vouch } from './Provenance.tsx';
import { AddRecord, headOf, Records } from './Records.tsx';
import { StepFields, stepOptions } from './StepFields.tsx';

const SEQUENCES: Place = ['sequences'];

function SequenceFields({ desk, at }: { desk: Desk; at: Place }) {
  const { draft, say, edit } = desk;
  const sequence = (valueAt(draft, at) ?? {}) as DraftSequence;
  const steps = sequence.steps ?? [];
  const turns = sequence.assembly !== undefined;
  const options = stepOptions(steps);
  const place = [...at, 'steps'];
  return (
    <>
      <div className="fields">
        <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
        <TextField desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
      </div>
      <LinesBox
        say={say}
        label={phrase('workshop.steps-lines')}
        how={phrase('workshop.steps-lines-how')}
        onTake={(text) => {
          const made = stepsFromLines(text, steps);
          edit({
            kind: 'all',
            edits: [
              ...made.map((value) => ({ kind: 'insert' as const, at: place, value })),
              ...(!turns && made.some(({ turned }) => turned)
                ? [{ kind: 'set' as const, at: [...at, 'assembly'], value: { leftOut: [] } }]
                : []),
            ],
          });
        }}
      />
      <Fold
        summary={say(phrase('workshop.steps', { count: steps.length }))}
        starts={steps.length === 0 ? 'open' : 'closed'}
      >
        <Records
          folds
          desk={desk}
          at={place}
          ordered
          head={(index) => phrase('workshop.step', { number: index + 1, text: steps[index]?.text ?? '' })}
        >
          {(step, index) => (
            <StepFields desk={desk} at={step} earlier={options.slice(0, index)} turns={turns} />
          )}
        </Records>
      </Fold>
      <label className="choice">
        <input
          type="checkbox"
          checked={turns}
          onChange={({ target }) =>
            edit({
              kind: 'set',
              at: [...at, 'assembly'],
              value: target.checked ? { leftOut: [] } : undefined,
            })
          }
        />
        <span>{say(phrase('workshop.turns'))}</span>
      </label>
      {turns && <Assembly desk={desk} at={at} sequence={sequence} />}
      <Checks desk={desk} at={at} steps={options} />
      <Provenance desk={desk} at={at} />
    </>
  );
}

export function SequenceSection({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const existing = ((finishDraft({ sequences: draft.sequences }).sequences ?? []) as DeckSequence[]).filter(
    ({ steps }) => Array.isArray(steps),
  );
  return (
    <>
      <Records
        folds
        desk={desk}
        at={SEQUENCES}
        head={(index) => headOf(desk, SEQUENCES, index, 'workshop.sequence')}
      >
        {(at) => <SequenceFields desk={desk} at={at} />}
      </Records>
      <AddRecord
        desk={desk}
        at={SEQUENCES}
        stem="strip-"
        value={{ steps: [] }}
        label={phrase('workshop.add-sequence')}
      />
      <details>
        <summary>{say(phrase('workshop.paste-sequences'))}</summary>
        <PasteBox
          say={say}
          label={phrase('workshop.paste-sequences')}
          how={phrase('workshop.paste-sequences-how')}
          read={(text) => readSequences(text, existing)}
          tell={(sequences) =>
            phrase('workshop.sequences-read', {
              sequences: sequences.map(({ id }) => id),
              steps: sequences.reduce((sum, { steps }) => sum + steps.length, 0),
            })
          }
          onTake={(sequences) => {
            const others = (draft.sequences ?? []).filter(
              ({ id }) => !sequences.some((one) => one.id === id),
            );
            edit({ kind: 'set', at: SEQUENCES, value: [...others, ...sequences] });
          }}
        />
      </details>
      <Vouch desk={desk} lists={[SEQUENCES]} />
    </>
  );
}
