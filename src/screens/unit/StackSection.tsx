/** One pack at a time, chosen by name: its section, clearance, and where its figures come from. */
import { useState } from 'react';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { makeDecimal, rational } from '../../core/rational.ts';
import { clearanceMm, type DeckStack } from '../../core/unit/stacks.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import type { Say } from '../../words/words.ts';
import { ProvenanceNote } from './ProvenanceNote.tsx';

/** What the room leaves, in the unit's own words; nothing where the deck states no room. */
function Clearance({ stack, say }: { stack: DeckStack; say: Say }) {
  const clearance = clearanceMm(stack);
  if (!stack.room || !clearance?.ok) return null;
  const shown =
    stack.room.unit === 'in'
      ? `${makeDecimal(clearance.value.div(rational(254, 10)), 3)} in`
      : `${makeDecimal(clearance.value, 2)} mm`;
  return (
    <p>
      {say(
        phrase('unit.clearance', {
          room: `${stack.room.value} ${stack.room.unit}`,
          clearance: shown,
        }),
      )}
    </p>
  );
}

export function StackSection({ unit, say }: { unit: Unit; say: Say }) {
  const stacks = unit.deck.stacks ?? [];
  const [shown, setShown] = useState(stacks[0]?.id ?? '');
  const stack = stacks.find(({ id }) => id === shown);
  if (!stack) return null;
  return (
    <>
      <label className="field">
        <span>{say(phrase('unit.find-stack'))}</span>
        <select value={shown} onChange={(event) => setShown(event.target.value)}>
          {stacks.map(({ id }) => (
            <option key={id} value={id}>
              {say(thing('stack', id))}
            </option>
          ))}
        </select>
      </label>
      <DrawingView drawing={{ kind: 'stack', stack: stack.id, showThickness: true }} unit={unit} say={say} />
      <Clearance stack={stack} say={say} />
      <ProvenanceNote of={stack} unit={unit} say={say} />
      {stack.items
        .filter(({ note, unsure }) => note || unsure)
        .map((item) => (
          <p key={item.id}>
            {item.name ?? item.id}
            <ProvenanceNote of={item} unit={unit} say={say} />
          </p>
        ))}
    </>
  );
}
