/**
 * What cannot be known once a speed sensor is lost. A figure needs the speed of the input shaft, of the output
 * shaft, or of both; it is lost with the last sensor that reads one of them. What a controller does instead is
 * not in a deck and not guessed. Source: docs/sources.md [SPEED-1], [CONVERTER-1].
 */
import type { Deck } from '../unit/deck.ts';

type End = 'input' | 'output';

/**
 * ratio: the ratio the unit is really in. slip: of the elements, against the commanded ratio. converter-slip:
 * engine against input. shift-time: how long the ratio takes to go over. road-speed: from the output.
 */
const NEEDS = {
  'input-speed': ['input'],
  'output-speed': ['output'],
  ratio: ['input', 'output'],
  slip: ['input', 'output'],
  'shift-time': ['input', 'output'],
  'converter-slip': ['input'],
  'road-speed': ['output'],
} as const satisfies Record<string, readonly End[]>;
export type SpeedFigure = keyof typeof NEEDS;
export const SPEED_FIGURES = Object.keys(NEEDS) as readonly SpeedFigure[];

/** Figures that the deck's sensors give, those in `lost` not counted. */
export function figuresFrom(deck: Deck, lost: readonly string[] = []): SpeedFigure[] {
  const heard = (deck.sensors ?? []).filter(({ id }) => !lost.includes(id)).map(({ reads }) => reads);
  const { input, output } = deck.train;
  const known = { input: heard.includes(input), output: heard.includes(output) };
  return SPEED_FIGURES.filter((figure) => NEEDS[figure].every((end) => known[end]));
}

/** Figures that are gone with this sensor. */
export function figuresLostWith(deck: Deck, sensor: string): SpeedFigure[] {
  const left = figuresFrom(deck, [sensor]);
  return figuresFrom(deck).filter((figure) => !left.includes(figure));
}
