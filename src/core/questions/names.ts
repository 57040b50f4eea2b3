/** What a deck calls its things, by kind: all that sentences about it need of it. Plain JSON. */
import type { Deck, Named } from '../unit/deck.ts';
import type { ThingKind } from './phrase.ts';

type Name = Pick<Named, 'id' | 'name'>;

export interface DeckNames {
  readonly language: Deck['language'];
  readonly aliases: NonNullable<Deck['aliases']>;
  readonly things: Readonly<Record<ThingKind, readonly Name[]>>;
}

export function namesOf(deck: Deck): DeckNames {
  const bare = (records: readonly Name[] = []) => records.map(({ id, name }) => ({ id, name }));
  return {
    language: deck.language,
    aliases: deck.aliases ?? [],
    things: {
      element: bare(deck.train.elements),
      range: bare([...deck.chart.ranges, ...(deck.chart.neutral ?? [])]),
      gearset: bare(deck.train.gearsets),
      shaft: bare(deck.train.shafts),
      solenoid: bare(deck.solenoids),
      position: bare(deck.lever?.positions),
      interlock: bare(deck.interlocks),
      sensor: bare(deck.sensors),
      part: bare(deck.shaftLine),
      seat: bare(deck.seats),
      sequence: bare(deck.sequences),
      stack: bare(deck.stacks),
      fit: bare(deck.fits),
      supply: bare(deck.electrical?.supplies),
      thermistor: bare(deck.electrical?.thermistors),
      connector: bare(deck.electrical?.connectors),
      fluid: bare(deck.fluids),
      torque: bare(deck.torques),
      weight: bare(deck.weights),
    },
  };
}
