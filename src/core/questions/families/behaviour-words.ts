/** What a combination of elements does, in words: "B1 + C2: drives as range 3, at 2.105 : 1." */
import type { Behaviour } from '../../faults/behaviour.ts';
import { rangeOf, type Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import { decimalText, together } from './gear-parts.ts';

/** Places for a ratio that no range has. */
const PLACES = 3;

export function behaviourInWords(unit: Unit, elements: readonly string[], behaviour: Behaviour): Phrase {
  const named = together(elements);
  if (behaviour.does !== 'drives') return say(`gears.does-${behaviour.does}`, { elements: named });
  const { range, ratio } = behaviour;
  const places = range === null ? PLACES : rangeOf(unit, range)!.decimals;
  return range === null
    ? say('gears.does-drive', { elements: named, ratio: decimalText(ratio, places) })
    : say('gears.does-drive-as', {
        elements: named,
        range: thing('range', range),
        ratio: decimalText(ratio, places),
      });
}
