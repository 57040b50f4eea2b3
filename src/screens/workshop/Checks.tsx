/** Checks that are possible only for a part of the work. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Place } from '../../core/workshop/draft.ts';
import type { Desk } from './desk.ts';
import { Fold } from './Fold.tsx';
import { type Option, PickField, SeveralField, TextField } from './fields.tsx';
import { nameOptions, wordedOptions } from './options.ts';
import { Provenance } from './Provenance.tsx';
import { AddRecord, Records } from './Records.tsx';

export function Checks({ desk, at, steps }: { desk: Desk; at: Place; steps: readonly Option[] }) {
  const { draft, say } = desk;
  const list = [...at, 'checks'];
  const fits = nameOptions(draft.fits);
  return (
    <Fold summary={say(phrase('workshop.checks'))}>
      <p className="aside">{say(phrase('workshop.checks-hint'))}</p>
      <Records desk={desk} at={list} head={(index) => phrase('workshop.check-no', { number: index + 1 })}>
        {(check) => (
          <>
            <div className="fields">
              <TextField desk={desk} at={[...check, 'text']} label={phrase('workshop.check-text')} />
              <PickField
                desk={desk}
                at={[...check, 'during']}
                label={phrase('workshop.during')}
                options={wordedOptions(say, ['strip', 'assembly'], 'workshop.during')}
              />
              <PickField
                desk={desk}
                at={[...check, 'fit']}
                label={phrase('workshop.check-fit')}
                options={fits}
                none={phrase('workshop.not-said')}
              />
            </div>
            <SeveralField
              desk={desk}
              at={[...check, 'needs']}
              label={phrase('workshop.needs')}
              options={steps}
            />
            <SeveralField
              desk={desk}
              at={[...check, 'closedBy']}
              label={phrase('workshop.closed-by')}
              options={steps}
            />
            <Provenance desk={desk} at={check} />
          </>
        )}
      </Records>
      <AddRecord
        desk={desk}
        at={list}
        stem="check-"
        value={{ needs: [], closedBy: [] }}
        label={phrase('workshop.add-check')}
      />
    </Fold>
  );
}
