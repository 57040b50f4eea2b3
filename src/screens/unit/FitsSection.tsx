/** Fits: how each is measured, its limits, and the parts it is set with. */
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { DeckFit } from '../../core/unit/fits.ts';
import type { Length } from '../../core/unit/record.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { Listing } from './Listing.tsx';

const lengthText = ({ value, unit }: Length): string => `${value} ${unit}`;

function FitLines({ fit, say }: { fit: DeckFit; say: Say }) {
  const { limits, aim, bar, gasket, parts } = fit;
  const lines = [
    fit.where,
    say(phrase(`unit.fit.${fit.method}`)),
    say(
      phrase('unit.fit.limits', {
        low: lengthText(limits.low),
        high: lengthText(limits.high),
        aimed: aim ? 'yes' : 'no',
        aim: aim ? lengthText(aim) : '',
      }),
    ),
    ...(bar ? [say(phrase('unit.fit.bar', { height: lengthText(bar) }))] : []),
    ...(gasket ? [say(phrase('unit.fit.gasket', { thickness: lengthText(gasket) }))] : []),
    say(phrase(`unit.fit.${fit.effect}`)),
    say(
      phrase('unit.fit.parts', {
        parts: parts.map((part) => {
          const thickness = say(phrase('text', { text: lengthText(part.thickness) }));
          return `${part.name ?? part.id} (${thickness})`;
        }),
      }),
    ),
  ];
  return (
    <ul className="steps">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

export function FitsSection({ unit, say }: { unit: Unit; say: Say }) {
  const entries = (unit.deck.fits ?? []).map((fit) => ({
    ref: `fit:${fit.id}` as const,
    head: say(thing('fit', fit.id)),
    text: <FitLines fit={fit} say={say} />,
    of: fit,
  }));
  return <Listing entries={entries} unit={unit} say={say} />;
}
