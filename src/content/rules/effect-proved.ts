import { placeIn } from '../../core/measure/limits.ts';
import { bareGap, EFFECTS, type Effect, playWith } from '../../core/measure/play.ts';
import { decimalsOf, makeDecimal, type Rational, rational } from '../../core/rational.ts';
import { type DeckFit, type DeckReading, fitWith, readingOf, unitOf } from '../../core/unit/fits.ts';
import { exactIn } from '../../core/unit/record.ts';
import type { Path, Spot } from '../finding.ts';
import { isLess, written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** The play that the chosen part gives by the figures; null where a figure is missing or cannot be. */
function playBy(fit: DeckFit, reading: DeckReading, effect: Effect): Rational | null {
  const read = readingOf(fit, reading);
  const chosen = fit.parts.find(({ id }) => id === reading.chosen);
  const bare = read && bareGap(read, effect);
  return bare?.ok && chosen ? playWith(bare.value, effect, exactIn(chosen.thickness, unitOf(fit))) : null;
}

function findings(fit: DeckFit, reading: DeckReading, at: Path): Spot[] {
  const { effect, limits, spread } = fit;
  const expected = playBy(fit, reading, effect);
  if (!expected || !reading.result || !isLess(limits.low, limits.high)) return [];
  const unit = unitOf(fit);
  const result = exactIn(reading.result, unit);
  const step = rational(1n, 10n ** BigInt(decimalsOf(reading.result.value)));
  const allowed = spread ? exactIn(spread, unit) : step;
  const values = {
    result: written(reading.result),
    play: `${makeDecimal(expected, Math.max(2, decimalsOf(reading.result.value)))} ${unit}`,
    effect,
  };
  if (expected.sub(result).abs().gt(allowed)) {
    const other = playBy(fit, reading, EFFECTS.find((one) => one !== effect)!);
    const turned = other?.sub(result).abs().lte(allowed);
    return [{ at: [...at, 'result'], case: turned ? 'other-way' : 'differs', values }];
  }
  const read = readingOf(fit, reading)!;
  return placeIn(fitWith(fit, read).limits, result) === 'in'
    ? []
    : [{ at: [...at, 'result'], case: 'outside', values }];
}

/** Where a reading tells what was chosen and what play that gave, the figures bear out the fit's effect. */
export const effectProved: Rule = {
  id: 'effect-proved',
  severity: 'error',
  check: (deck) =>
    (deck.fits ?? []).flatMap((fit, f) =>
      (fit.readings ?? []).flatMap((reading, index) =>
        findings(fit, reading, ['fits', f, 'readings', index]),
      ),
    ),
};
