/** What the electrical families say alike: windings that may be asked, resistances drawn for them, ohms as text. */
import type { Limits } from '../../../measure/limits.ts';
import type { Random } from '../../../random.ts';
import { makeDecimal, parseRational, type Rational, rational } from '../../../rational.ts';
import type { DeckWinding } from '../../../unit/electrical.ts';
import { limitsIn } from '../../../unit/record.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { perUnit } from '../per-unit.ts';

export interface AskedWinding {
  readonly winding: DeckWinding;
  /** At 20 °C, in ohms. */
  readonly band: Limits;
  readonly uses: readonly Ref[];
}

/** Windings with nothing unverified, in the order of the deck. */
export const askedWindings = perUnit((unit: Unit): AskedWinding[] =>
  (unit.deck.electrical?.windings ?? [])
    .map((winding): AskedWinding => {
      const { solenoid, at20 } = winding;
      return {
        winding,
        band: limitsIn(at20, 'Ω'),
        uses: [`winding:${solenoid}`, `solenoid:${solenoid}`],
      };
    })
    .filter(({ uses, band }) => uses.every((ref) => unit.sure(ref)) && band.low.lte(band.high)),
);

/** A tenth of an ohm: what a shop's meter shows. */
export const TENTH: Rational = rational(1, 10);

/** A resistance in the band, in tenths of an ohm; the low end where the band is narrower. */
export function ohmsIn({ low, high }: Limits, random: Random): Rational {
  const steps = Number(high.sub(low).div(TENTH).floor().toFraction());
  return low.add(TENTH.mul(BigInt(random.int(0, Math.max(0, steps)))));
}

/** Rounded to tenths of an ohm, a half up. */
export const toTenths = (ohms: Rational): Rational => ohms.div(TENTH).add(rational(1, 2)).floor().mul(TENTH);

/** "5.2": at least one place, two below ten. */
export function ohmsText(ohms: Rational): string {
  const short = makeDecimal(ohms, 1);
  return parseRational(short)!.equals(ohms) ? short : makeDecimal(ohms, 2);
}
