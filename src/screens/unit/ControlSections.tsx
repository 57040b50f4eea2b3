/** Elements, solenoids, lever and sensors, each in a line with its source. */
import { CASE } from '../../core/gears/train.ts';
import { nameAlone, say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import type { Say } from '../../words/words.ts';
import { useNarrowed } from './found.ts';
import { Listing } from './Listing.tsx';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
}

export function Elements({ unit, say }: Props) {
  const entries = unit.deck.train.elements.map((element) => {
    const [first, second] = element.between;
    const key = element.kind === 'one-way' ? 'unit.one-way' : second === CASE ? 'unit.holds' : 'unit.joins';
    return {
      ref: `element:${element.id}` as const,
      head: element.id,
      text: (
        <>
          {element.name && <strong>{say(nameAlone('element', element.id))} </strong>}
          {say(phrase(key, { first: thing('shaft', first), second: thing('shaft', second) }))}
        </>
      ),
      of: element,
    };
  });
  return <Listing entries={entries} unit={unit} say={say} />;
}

export function Solenoids({ unit, say }: Props) {
  const { isSearching, shows } = useNarrowed();
  const feed = (id: string) =>
    unit.deck.train.elements.some((element) => element.id === id)
      ? thing('element', id)
      : phrase(`feed.${id}`);
  const entries = (unit.deck.solenoids ?? []).map((solenoid) => ({
    ref: `solenoid:${solenoid.id}` as const,
    head: solenoid.id,
    text: (
      <>
        {solenoid.name && <strong>{say(nameAlone('solenoid', solenoid.id))} </strong>}
        {say(phrase('unit.feeds', { what: solenoid.feeds.map(feed) }))},{' '}
        {say(phrase(`unit.unplugged.${solenoid.whenUnplugged}`))}
      </>
    ),
    of: solenoid,
  }));
  const lit = (unit.deck.solenoids ?? []).map(({ id }) => id).filter((id) => shows(`solenoid:${id}`));
  return (
    <>
      {unit.deck.valveBody && (
        <DrawingView
          drawing={{ kind: 'valve-body', ...(isSearching ? { lit } : {}) }}
          unit={unit}
          say={say}
        />
      )}
      <Listing entries={entries} unit={unit} say={say} />
    </>
  );
}

export function Interlocks({ unit, say }: Props) {
  const entries = (unit.deck.interlocks ?? []).map((interlock) => ({
    ref: `interlock:${interlock.id}` as const,
    head: say(thing('interlock', interlock.id)),
    text: say(
      phrase('unit.interlock', {
        applied: interlock.whenApplied.map((id) => thing('element', id)),
        blocked: interlock.blocks.map((id) => thing('element', id)),
      }),
    ),
    of: interlock,
  }));
  return <Listing entries={entries} unit={unit} say={say} />;
}

export function LeverPositions({ unit, say }: Props) {
  const entries = (unit.deck.lever?.positions ?? []).map((position) => ({
    ref: `position:${position.id}` as const,
    head: say(thing('position', position.id)),
    text: say(phrase('unit.lever-rows', { rows: position.rows.map((id) => thing('range', id)) })),
    of: position,
  }));
  return <Listing entries={entries} unit={unit} say={say} />;
}

export function Sensors({ unit, say }: Props) {
  const entries = (unit.deck.sensors ?? []).map((sensor) => ({
    ref: `sensor:${sensor.id}` as const,
    head: say(thing('sensor', sensor.id)),
    text: say(phrase('unit.reads', { shaft: thing('shaft', sensor.reads), teeth: sensor.teeth })),
    of: sensor,
  }));
  return <Listing entries={entries} unit={unit} say={say} />;
}
