/** What the torque of a clutch or brake is computed from: piston, spring, plates, pressure. All widths are diameters. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { FORCE_UNITS, PRESSURE_UNITS } from '../../core/unit/record.ts';
import { type Place, valueAt } from '../../core/workshop/draft.ts';
import { AmountField } from './AmountField.tsx';
import type { Desk } from './desk.ts';
import { Fold } from './Fold.tsx';
import { TextField } from './fields.tsx';
import { Provenance } from './Provenance.tsx';

export function Capacity({ desk, at }: { desk: Desk; at: Place }) {
  const { say, edit } = desk;
  const place = [...at, 'capacity'];
  const has = valueAt(desk.draft, place) !== undefined;
  return (
    <Fold summary={say(phrase('workshop.capacity', { has: has ? 'yes' : 'no' }))}>
      <div className="record-body">
        <p className="aside">{say(phrase('workshop.capacity-hint'))}</p>
        <div className="fields tight">
          <AmountField
            desk={desk}
            at={[...place, 'piston', 'outer']}
            label={phrase('workshop.piston-outer')}
          />
          <AmountField
            desk={desk}
            at={[...place, 'piston', 'inner']}
            label={phrase('workshop.piston-inner')}
          />
          <AmountField
            desk={desk}
            at={[...place, 'spring']}
            label={phrase('workshop.spring')}
            units={FORCE_UNITS}
          />
          <TextField
            desk={desk}
            at={[...place, 'frictions']}
            label={phrase('workshop.frictions')}
            inputMode="numeric"
          />
          <AmountField
            desk={desk}
            at={[...place, 'lining', 'outer']}
            label={phrase('workshop.lining-outer')}
          />
          <AmountField
            desk={desk}
            at={[...place, 'lining', 'inner']}
            label={phrase('workshop.lining-inner')}
          />
          <TextField
            desk={desk}
            at={[...place, 'friction']}
            label={phrase('workshop.friction')}
            inputMode="decimal"
            placeholder="0.13"
          />
          <AmountField
            desk={desk}
            at={[...place, 'pressure']}
            label={phrase('workshop.most-pressure')}
            units={PRESSURE_UNITS}
          />
        </div>
        {has && (
          <button
            type="button"
            className="button plain small"
            onClick={() => edit({ kind: 'set', at: place, value: undefined })}
          >
            {say(phrase('workshop.no-capacity'))}
          </button>
        )}
        <Provenance desk={desk} at={place} />
      </div>
    </Fold>
  );
}
