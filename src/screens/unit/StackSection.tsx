/** One pack at a time, chosen by name: its section, clearance, and where its figures come from. */
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { makeDecimal, rational } from '../../core/rational.ts';
import { clearanceMm, type DeckStack } from '../../core/unit/stacks.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import type { Say } from '../../words/words.ts';
import { useNarrowed } from './found.ts';
import { ProvenanceNote } from './ProvenanceNote.tsx';

/** What the room leaves, in the unit's own words; nothing where the deck states no room. */
export function Clearance({ stack, say }: { stack: DeckStack; say: Say }) {
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

interface Props {
  readonly unit: Unit;
  readonly say: Say;
  /** Id of the pack to show; the first of those looked for when it is none of them. */
  readonly shown: string;
  readonly onShow: (id: string) => void;
}

export function StackSection({ unit, say, shown, onShow }: Props) {
  const { isSearching, shows } = useNarrowed();
  const stacks = (unit.deck.stacks ?? []).filter(
    ({ id, items }) => shows(`stack:${id}`) || items.some((item) => shows(`plate:${id}/${item.id}`)),
  );
  const stack = stacks.find(({ id }) => id === shown) ?? stacks[0];
  if (!stack) return null;
  const lit = isSearching
    ? stack.items.filter((item) => shows(`plate:${stack.id}/${item.id}`)).map(({ id }) => id)
    : [];
  return (
    <>
      <label className="field">
        <span>{say(phrase('unit.find-stack'))}</span>
        <select value={stack.id} onChange={(event) => onShow(event.target.value)}>
          {stacks.map(({ id }) => (
            <option key={id} value={id}>
              {say(thing('stack', id))}
            </option>
          ))}
        </select>
      </label>
      <DrawingView
        drawing={{ kind: 'stack', stack: stack.id, showThickness: true, lit }}
        unit={unit}
        say={say}
      />
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
