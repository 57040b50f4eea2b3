/** Speeds of all members in one range, for levers; and in words. */
import { MEMBERS, type Member, willis } from '../../gears/train.ts';
import { makeDecimal, type Rational, rational } from '../../rational.ts';
import { type Range, rangeOf, type Unit } from '../../unit/unit.ts';
import type { SpeedsDrawing } from '../drawing.ts';
import { type Phrase, say, thing } from '../phrase.ts';

export interface LeverNode {
  readonly member: Member;
  readonly shaft: string;
  /** Along the lever, 0 to 1; by tooth counts, so that speeds lie on one line (docs/sources.md [W1]). */
  readonly along: number;
  /** In turns of the input; null where the train leaves it open. */
  readonly speed: Rational | null;
  /** What is written: null where it is covered or open. */
  readonly text: string | null;
  readonly isCovered: boolean;
  readonly isLit: boolean;
}

export interface Lever {
  readonly set: string;
  readonly nodes: readonly LeverNode[];
}

/** Decimals of a speed in turns of the input. */
const DECIMALS = 3;

/** The range with this id; an unknown id is a mistake of the caller and throws. */
export function rangeShown(unit: Unit, id: string): Range {
  const range = rangeOf(unit, id);
  if (!range) throw new Error(`no range "${id}"`);
  return range;
}

/** "−0.549" turns, or "−1098" rpm; "0" for what stands still. */
export function speedText(speed: Rational, inputRpm: number | undefined): string {
  if (speed.n === 0n) return '0';
  const shown =
    inputRpm === undefined ? makeDecimal(speed, DECIMALS) : makeDecimal(speed.mul(rational(inputRpm)), 0);
  return shown.replace('-', '−');
}

/** One lever for each gearset: ring at one end, sun at the other, the carrier where the teeth put it. */
export function leversOf(unit: Unit, drawing: SpeedsDrawing): Lever[] {
  const { speeds } = rangeShown(unit, drawing.range).solution;
  return unit.deck.train.gearsets.map((set) => {
    const parts = willis(set);
    // The carrier's speed is the mean of sun's and ring's, weighted so; beyond the ring in a double-pinion set.
    const carrier = Number(parts.ring) / Number(parts.ring + parts.sun);
    const raw: Record<Member, number> = { sun: 0, ring: 1, carrier };
    const [least, most] = [Math.min(...Object.values(raw)), Math.max(...Object.values(raw))];
    return {
      set: set.id,
      nodes: MEMBERS.map((member): LeverNode => {
        const { shaft } = set[member];
        const speed = shaft === 'case' ? rational(0) : (speeds.get(shaft) ?? null);
        const isCovered = drawing.covered?.includes(shaft) ?? false;
        return {
          member,
          shaft,
          along: (raw[member] - least) / (most - least),
          speed,
          text: speed === null || isCovered ? null : speedText(speed, drawing.inputRpm),
          isCovered,
          isLit: drawing.lit?.includes(shaft) ?? false,
        };
      }).sort((a, b) => b.along - a.along),
    };
  });
}

export function describeSpeeds(unit: Unit, drawing: SpeedsDrawing): Phrase[] {
  return [
    say('drawing.speeds.scale', {
      range: thing('range', drawing.range),
      rpm: drawing.inputRpm ?? 0,
    }),
    ...leversOf(unit, drawing).map(({ set, nodes }) =>
      say('drawing.speeds.lever', {
        set: thing('gearset', set),
        nodes: nodes.map(({ member, shaft, text, isCovered, isLit }) =>
          say('drawing.speeds.node', {
            member: say(`drawing.member.${member}`),
            shaft: thing('shaft', shaft),
            speed: text ?? '',
            state: isCovered ? 'covered' : text === null ? 'open' : 'known',
            lit: isLit ? 'yes' : 'no',
          }),
        ),
      }),
    ),
  ];
}
