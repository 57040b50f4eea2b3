/**
 * What the measuring families say alike: fits that may be asked, readings drawn for them, the sum from reading to
 * bare play in words. All lengths are in the fit's own unit, as exact numbers.
 */
import { type Limits, middleOf } from '../../../measure/limits.ts';
import { bareGap, playWith, type Reading } from '../../../measure/play.ts';
import type { Part } from '../../../measure/select.ts';
import type { Random } from '../../../random.ts';
import { decimalsOf, parseRational, type Rational, rational, ZERO } from '../../../rational.ts';
import { type DeckFit, partsOf, readingOf, unitOf } from '../../../unit/fits.ts';
import { exactIn, type Length, limitsIn } from '../../../unit/record.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say } from '../../phrase.ts';
import { decimalText } from '../gear-parts.ts';
import { perUnit } from '../per-unit.ts';
import { PLACES } from './scale-parts.ts';

export interface AskedFit {
  readonly fit: DeckFit;
  readonly ref: Ref;
  readonly unit: Length['unit'];
  readonly limits: Limits;
  /** Thinnest first. */
  readonly parts: readonly Part[];
  /** The play aimed at: the stated one, else the middle. */
  readonly aim: Rational;
  /** Decimals that readings are written with, and the step of the last one. */
  readonly places: number;
  readonly step: Rational;
}

function askedFit(fit: DeckFit): AskedFit {
  const unit = unitOf(fit);
  const limits = limitsIn(fit.limits, unit);
  const figures = [fit.limits.low, fit.limits.high, ...fit.parts.map(({ thickness }) => thickness)];
  const places = Math.max(PLACES[unit], ...figures.map(({ value }) => decimalsOf(value)));
  return {
    fit,
    ref: `fit:${fit.id}`,
    unit,
    limits,
    parts: partsOf(fit).sort((a, b) => a.thickness.compare(b.thickness)),
    aim: fit.aim ? exactIn(fit.aim, unit) : middleOf(limits),
    places,
    step: rational(1n, 10n ** BigInt(places)),
  };
}

/** Fits with nothing unverified and limits that leave room, in the order of the deck. */
export const askedFits = perUnit((unit: Unit): AskedFit[] =>
  (unit.deck.fits ?? [])
    .map(askedFit)
    .filter(({ ref, limits }) => unit.sure(ref) && limits.low.lt(limits.high)),
);

/** Always with this many places: "0.95", "−0.10". */
export const fixed = ({ places }: Pick<AskedFit, 'places'>, value: Rational): string =>
  decimalText(value, places);

/** As many places as it takes, four more than readings have at most: 0.325, 1.8250. */
export function exactText({ places }: Pick<AskedFit, 'places'>, value: Rational): string {
  for (let more = 0; more < 4; more++) {
    const text = decimalText(value, places + more);
    if (parseRational(text.replace('−', '-'))!.equals(value)) return text;
  }
  return decimalText(value, places + 4);
}

/** "W1, 1.20 mm": what the list calls it and how thick it is, as entered. */
export function partLabel({ fit }: AskedFit, part: Part): Phrase {
  const listed = fit.parts.find(({ id }) => id === part.id)!;
  const { value, unit } = listed.thickness;
  return say('measuring.part', { part: listed.name ?? listed.id, thickness: value, unit });
}

/** A reading, and the part that was in when it was taken. */
export interface Drawn {
  readonly reading: Reading;
  readonly present: Part | null;
  /** Play with no part at all. */
  readonly bare: Rational;
}

/** Where the seat lies when no reading is recorded: hand-sized depths. */
const DEPTHS: Readonly<Record<Length['unit'], readonly [number, number]>> = { mm: [30, 60], in: [1, 2] };

function depthsFor(asked: AskedFit, bare: Rational, random: Random): Drawn | undefined {
  const { fit, unit, step } = asked;
  const recorded = fit.readings?.find(({ seat, standOff }) => seat && standOff);
  const known = recorded && readingOf(fit, recorded);
  const bar = fit.bar && exactIn(fit.bar, unit);
  const gasket = fit.gasket && exactIn(fit.gasket, unit);
  const overBar = known?.method === 'depths' ? [known.seat.bar, known.standOff.bar] : [bar, bar];
  const per = Number(step.inverse().toFraction());
  const [low, high] = DEPTHS[unit];
  const standOff =
    known?.method === 'depths'
      ? known.standOff.reading.sub(overBar[1] ?? ZERO).add(step.mul(BigInt(random.int(-40, 40))))
      : step.mul(BigInt(random.int(low * per, high * per)));
  const seat = standOff.add(bare).sub(gasket ?? ZERO);
  if (standOff.lte(0n) || seat.lte(0n)) return undefined;
  const reading: Reading = {
    method: 'depths',
    seat: { reading: seat.add(overBar[0] ?? ZERO), bar: overBar[0] },
    standOff: { reading: standOff.add(overBar[1] ?? ZERO), bar: overBar[1] },
    gasket,
  };
  return { reading, present: null, bare };
}

/** The reading of the fit's method that this bare play gives, with `present` in where one has to be. */
export function readingFor(
  asked: AskedFit,
  bare: Rational,
  present: Part | null,
  random: Random,
): Drawn | undefined {
  const { fit } = asked;
  if (fit.method === 'depths') return depthsFor(asked, bare, random);
  if (fit.method === 'bare') return { reading: { method: 'bare', play: bare }, present: null, bare };
  if (!present) return undefined;
  const play = playWith(bare, fit.effect, present.thickness);
  return { reading: { method: 'part-fitted', play, part: present.thickness }, present, bare };
}

/** Draws for one reading before it is given up: some parts leave no play to read. */
const TRIES = 12;

/** A reading for which some listed part brings the play within its limits; undefined when none is found. */
export function drawReading(asked: AskedFit, random: Random): Drawn | undefined {
  if (asked.parts.length < 2) return undefined;
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const drawn = tryReading(asked, random);
    if (drawn) return drawn;
  }
  return undefined;
}

function tryReading(asked: AskedFit, random: Random): Drawn | undefined {
  const { fit, parts, limits, step } = asked;
  const part = random.pick(parts);
  const room = Number(limits.high.sub(limits.low).div(step).floor().toFraction());
  const play = limits.low.add(step.mul(BigInt(random.int(0, room))));
  const bare = playWith(play, fit.effect === 'closes' ? 'opens' : 'closes', part.thickness);
  const present = random.pick(parts.filter(({ id }) => id !== part.id));
  const drawn = readingFor(asked, bare, present, random);
  if (!drawn || ('play' in drawn.reading && drawn.reading.play.lte(0n))) return undefined;
  const gap = bareGap(drawn.reading, fit.effect);
  return gap.ok && gap.value.equals(bare) ? drawn : undefined;
}

/** "0.95 mm with W1, 1.20 mm in" */
export function readingInWords(asked: AskedFit, { reading, present }: Drawn): Phrase {
  const { unit } = asked;
  if (reading.method === 'depths')
    return say('measuring.read-depths', {
      unit,
      seat: fixed(asked, reading.seat.reading),
      seatBar: reading.seat.bar ? 'yes' : 'no',
      standOff: fixed(asked, reading.standOff.reading),
      standOffBar: reading.standOff.bar ? 'yes' : 'no',
    });
  const play = fixed(asked, reading.play);
  return present
    ? say('measuring.read-part', { play, unit, part: partLabel(asked, present) })
    : say('measuring.read-bare', { play, unit });
}

/** "(63.42 − 25.00)" */
function depthText(asked: AskedFit, { reading, bar }: { reading: Rational; bar?: Rational | undefined }) {
  return bar ? `(${fixed(asked, reading)} − ${fixed(asked, bar)})` : fixed(asked, reading);
}

/** The sum from the reading to the play with no part in, figures put in. */
export function bareInWords(asked: AskedFit, { reading, bare }: Drawn): Phrase {
  const [found, { unit, fit }] = [fixed(asked, bare), asked];
  if (reading.method === 'bare') return say('measuring.bare-read', { bare: found, unit });
  if (reading.method === 'depths')
    return say('measuring.bare-depths', {
      seat: depthText(asked, reading.seat),
      standOff: depthText(asked, reading.standOff),
      gasket: reading.gasket ? ` + ${fixed(asked, reading.gasket)}` : '',
      bare: found,
      unit,
    });
  return say(`measuring.bare-${fit.effect}`, {
    play: fixed(asked, reading.play),
    part: fixed(asked, reading.part),
    bare: found,
    unit,
  });
}

/** The play with this part in, by plain floating point from the figures as they were read. */
export function floatPlay({ fit }: AskedFit, { reading, present }: Drawn, part: Part): number {
  const sense = fit.effect === 'closes' ? -1 : 1;
  const [thick, was] = [part.thickness.valueOf(), present?.thickness.valueOf() ?? 0];
  if (reading.method !== 'depths') return reading.play.valueOf() + sense * (thick - was);
  const faces = [reading.seat, reading.standOff].map((of) => of.reading.valueOf() - (of.bar?.valueOf() ?? 0));
  return faces[0]! - faces[1]! + (reading.gasket?.valueOf() ?? 0) + sense * thick;
}

/** Floats that stand for exact decimals are as good as equal within this. */
export const HAIR = 1e-9;
