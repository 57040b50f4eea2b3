/** Connector faces with what their pins serve, and the resistances that a meter should find. */
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Band, Resistance } from '../../core/unit/record.ts';
import type { Ref, Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import type { Say } from '../../words/words.ts';
import { useNarrowed } from './found.ts';
import { Listing } from './Listing.tsx';

const bandText = ({ low, high }: Band<Resistance>): string =>
  low.unit === high.unit
    ? `${low.value}–${high.value} ${low.unit}`
    : `${low.value} ${low.unit}–${high.value} ${high.unit}`;

export function WiresSection({ unit, say }: { unit: Unit; say: Say }) {
  const { shows } = useNarrowed();
  const { windings = [], pickups = [], thermistors = [], connectors = [] } = unit.deck.electrical ?? {};
  const entries = [
    ...windings.map((winding) => ({
      ref: `winding:${winding.solenoid}` as const,
      head: winding.solenoid,
      text: say(
        phrase('unit.winding', {
          ohms: bandText(winding.at20),
          supply: thing('supply', winding.supply),
          side: winding.switched,
        }),
      ),
      of: winding,
    })),
    ...pickups.map((pickup) => ({
      ref: `pickup:${pickup.sensor}` as const,
      head: say(thing('sensor', pickup.sensor)),
      text: pickup.at20
        ? say(phrase('unit.coil', { ohms: bandText(pickup.at20) }))
        : say(phrase('unit.hall', { supply: pickup.supply ? thing('supply', pickup.supply) : '' })),
      of: pickup,
    })),
    ...thermistors.map((thermistor) => ({
      ref: `thermistor:${thermistor.id}` as const,
      head: say(thing('thermistor', thermistor.id)),
      text: thermistor.points
        .map(({ at, ohms }) =>
          say(phrase('text', { text: `${at.value.replace('-', '−')} ${at.unit}: ${bandText(ohms)}` })),
        )
        .join('; '),
      of: thermistor,
    })),
  ];
  /** A connector is looked for by its own name, or by a supply that comes in there. */
  const pictured = connectors.filter(
    ({ id, pins }) =>
      shows(`connector:${id}`) ||
      pins.some(({ serves }) => serves.startsWith('supply:') && shows(serves as Ref)),
  );
  return (
    <>
      {pictured.map(({ id }) => (
        <DrawingView
          key={id}
          drawing={{ kind: 'connector', connector: id, showServes: true }}
          unit={unit}
          say={say}
        />
      ))}
      {entries.length > 0 && <Listing entries={entries} unit={unit} say={say} />}
    </>
  );
}
