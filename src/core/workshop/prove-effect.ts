/**
 * Whether a thicker part closes or opens the play, by one real case: what was read, what was fitted then, what play
 * that gave. The case proves one of the two, or neither, and only then is the sign worth writing down.
 */
import { bareGap, EFFECTS, type Effect, METHODS, playWith, type Reading } from '../measure/play.ts';
import { decimalsOf, type Rational, rational } from '../rational.ts';
import { exactIn } from '../unit/record.ts';
import { lengthFrom, sizeFrom } from './amounts.ts';
import type { DeckDraft } from './draft.ts';

type DraftFit = NonNullable<DeckDraft['fits']>[number];
type DraftReading = NonNullable<DraftFit['readings']>[number];

/** waits: figures are missing. both: the case cannot tell, for nothing thicker or thinner was fitted. */
export type Proof = Effect | 'neither' | 'both' | 'waits';

const mm = (length: ReturnType<typeof lengthFrom>): Rational | null => length && exactIn(length, 'mm');

function readingOf(fit: DraftFit, reading: DraftReading): Reading | null {
  const method = METHODS.find((known) => known === fit.method);
  const play = mm(lengthFrom(reading.play));
  if (method === 'bare') return play && { method, play };
  if (method === 'part-fitted') {
    const part = mm(sizeFrom(fit.parts?.find(({ id }) => id === reading.fitted)?.thickness));
    return play && part && { method, play, part };
  }
  if (method !== 'depths') return null;
  const bar = mm(sizeFrom(fit.bar));
  const depth = (typed: DraftReading['seat']) => {
    const read = mm(lengthFrom(typed?.reading));
    if (!read || (typed?.overBar && !bar)) return null;
    return { reading: read, bar: typed?.overBar ? (bar ?? undefined) : undefined };
  };
  const [seat, standOff] = [depth(reading.seat), depth(reading.standOff)];
  return seat && standOff && { method, seat, standOff, gasket: mm(lengthFrom(fit.gasket)) ?? undefined };
}

/** Which effect the case bears out. Figures agree when they differ by no more than readings may, or a last digit. */
export function proveEffect(fit: DraftFit, reading: DraftReading): Proof {
  const read = readingOf(fit, reading);
  const chosen = mm(sizeFrom(fit.parts?.find(({ id }) => id === reading.chosen)?.thickness));
  const result = lengthFrom(reading.result);
  if (!read || !chosen || !result) return 'waits';
  const lastDigit = exactIn({ value: '1', unit: result.unit }, 'mm').div(
    rational(10n ** BigInt(decimalsOf(result.value))),
  );
  const allowed = mm(sizeFrom(fit.spread)) ?? lastDigit;
  const borneOut = EFFECTS.filter((effect) => {
    const bare = bareGap(read, effect);
    return bare.ok && playWith(bare.value, effect, chosen).sub(exactIn(result, 'mm')).abs().lte(allowed);
  });
  return borneOut.length === 2 ? 'both' : (borneOut[0] ?? 'neither');
}
