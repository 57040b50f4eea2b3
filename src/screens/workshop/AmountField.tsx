/** An amount as it is read: the figure, and the unit it is read in. */
import { useId } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { LENGTH_UNITS } from '../../core/unit/record.ts';
import type { UnitSymbol } from '../../core/units/units.ts';
import { usualUnit } from '../../core/workshop/amounts.ts';
import type { Place } from '../../core/workshop/draft.ts';
import type { Desk } from './desk.ts';
import { textAt } from './fields.tsx';

interface Props {
  readonly desk: Desk;
  readonly at: Place;
  readonly label: Phrase;
  readonly units?: readonly [UnitSymbol, ...UnitSymbol[]];
}

export function AmountField({ desk, at, label, units = LENGTH_UNITS }: Props) {
  const field = useId();
  const value = textAt(desk, [...at, 'value']);
  const unit = textAt(desk, [...at, 'unit']) || usualUnit(desk.draft, units);
  const run = at.join('/');
  const set = (text: string, symbol: string) =>
    desk.edit({ kind: 'set', at, value: text === '' ? undefined : { value: text, unit: symbol } }, run);
  return (
    <div className="field">
      <label htmlFor={field}>{desk.say(label)}</label>
      <div className="amount">
        <input
          id={field}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={value}
          onChange={({ target }) => set(target.value, unit)}
          onBlur={desk.endRun}
        />
        <select
          aria-label={desk.say(phrase('workshop.unit-of', { what: label }))}
          value={unit}
          onChange={({ target }) => set(value, target.value)}
        >
          {units.map((symbol) => (
            <option key={symbol} value={symbol}>
              {symbol}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}

/** The two ends of a band, in one unit as a rule. */
export function BandFields({
  at,
  low,
  high,
  ...field
}: Omit<Props, 'label'> & { low: Phrase; high: Phrase }) {
  return (
    <>
      <AmountField {...field} at={[...at, 'low']} label={low} />
      <AmountField {...field} at={[...at, 'high']} label={high} />
    </>
  );
}
