/**
 * Solenoids with their tags gone were tried on the bench: pressure at one or two currents. What does each give
 * unplugged, or do the readings not tell? The solenoids are the deck's, nameless, so that memory does not help.
 */
import type { Random } from '../../random.ts';
import { makeDecimal, type Rational, rational } from '../../rational.ts';
import type { DeckSolenoid } from '../../unit/deck.ts';
import type { Unit } from '../../unit/unit.ts';
import { type Phrase, say } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { distinctLures } from './chart-parts.ts';

const FACT = 'skill:polarity-evidence';
const PIECES = 4;
const LETTERS = ['A', 'B', 'C', 'D'] as const;

const VERDICTS = ['full', 'none', 'dead', 'open'] as const;
/** full, none: what it gives unplugged. dead: pressure does not follow current. open: too few readings. */
type Verdict = (typeof VERDICTS)[number];

/** Milliamperes, and kilopascals for exact arithmetic; shown as A and bar. */
interface Reading {
  readonly currentMa: number;
  readonly pressureKpa: number;
}

interface Piece {
  readonly letter: string;
  readonly solenoid: DeckSolenoid;
  readonly verdict: Verdict;
  /** In the order they are printed. */
  readonly readings: readonly Reading[];
}

const LOW_MA = [0, 100, 150] as const;
const HIGH_MA = [800, 900, 1000] as const;
const MIDDLE_MA = [450, 500, 550] as const;
const LOW_KPA = [0, 20, 40] as const;
const HIGH_KPA = [520, 580, 640] as const;
const MIDDLE_KPA = [240, 300, 360] as const;

const usable = (unit: Unit): DeckSolenoid[] =>
  (unit.deck.solenoids ?? []).filter(({ id }) => unit.sure(`solenoid:${id}`));

function readingsFor(verdict: Verdict, random: Random): Reading[] {
  const [low, high] = [random.pick(LOW_MA), random.pick(HIGH_MA)];
  if (verdict === 'open')
    return [{ currentMa: random.pick(MIDDLE_MA), pressureKpa: random.pick(MIDDLE_KPA) }];
  if (verdict === 'dead') {
    const pressureKpa = random.pick([...LOW_KPA, ...HIGH_KPA]);
    return random.shuffle([low, high].map((currentMa) => ({ currentMa, pressureKpa })));
  }
  const [atLow, atHigh] = verdict === 'full' ? [HIGH_KPA, LOW_KPA] : [LOW_KPA, HIGH_KPA];
  return random.shuffle([
    { currentMa: low, pressureKpa: random.pick(atLow) },
    { currentMa: high, pressureKpa: random.pick(atHigh) },
  ]);
}

/** Two or three that tell what they give unplugged, the others dead or tried once only. */
function draw(unit: Unit, random: Random): Piece[] {
  const telling = random.int(2, 3);
  const kinds = random.shuffle(
    Array.from({ length: PIECES }, (_, place) =>
      place < telling ? 'sound' : random.pick(['dead', 'open'] as const),
    ),
  );
  return kinds.map((kind, place) => {
    const solenoid = random.pick(usable(unit));
    const verdict = kind === 'sound' ? solenoid.whenUnplugged : kind;
    return { letter: LETTERS[place]!, solenoid, verdict, readings: readingsFor(verdict, random) };
  });
}

const HALF_KPA = 300;
const givesAt = ({ pressureKpa }: Reading): Verdict => (pressureKpa >= HALF_KPA ? 'full' : 'none');
const opposite: Record<Verdict, Verdict> = { full: 'none', none: 'full', dead: 'dead', open: 'open' };

const shownIn = (value: Rational, places: number) => makeDecimal(value, places);
const readingInWords = ({ currentMa, pressureKpa }: Reading): Phrase =>
  say('polarity-evidence.reading', {
    current: shownIn(rational(currentMa, 1000), 2),
    pressure: shownIn(rational(pressureKpa, 100), 1),
  });

export const polarityEvidence: Family = {
  id: 'polarity-evidence',
  level: 'reason',
  form: 'pair',
  facts: (unit) => (usable(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || usable(unit).length === 0) return undefined;
    const pieces = draw(unit, random);
    const told = (rule: (piece: Piece) => Verdict): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(pieces.map((piece) => [piece.letter, rule(piece)])),
    });
    const sound = ({ verdict }: Piece) => verdict === 'full' || verdict === 'none';
    const lures: Lure[] = [
      { answer: told(({ verdict }) => opposite[verdict]), slipUp: 'polarity-turned-round', fact },
      {
        answer: told((piece) => (sound(piece) ? 'none' : piece.verdict)),
        slipUp: 'current-means-pressure',
        fact,
      },
      {
        answer: told((piece) => (sound(piece) ? 'full' : piece.verdict)),
        slipUp: 'current-cuts-pressure',
        fact,
      },
      { answer: told(({ readings }) => givesAt(readings[0]!)), slipUp: 'first-reading-decides', fact },
      {
        answer: told(({ verdict, readings }) => (verdict === 'open' ? givesAt(readings[0]!) : verdict)),
        slipUp: 'one-reading-enough',
        fact,
      },
      {
        answer: told(({ verdict, readings }) => (verdict === 'dead' ? givesAt(readings[0]!) : verdict)),
        slipUp: 'dead-taken-for-sound',
        fact,
      },
    ];
    const shown = pieces.find(sound)!;
    const lineFor = ({ letter, verdict, readings }: Piece): Phrase =>
      say(`polarity-evidence.line-${verdict}`, {
        letter,
        readings: readings.toSorted((a, b) => a.currentMa - b.currentMa).map(readingInWords),
      });
    return {
      facts: [fact],
      uses: [...new Set(pieces.map(({ solenoid }) => `solenoid:${solenoid.id}` as const))],
      prompt: say('polarity-evidence.prompt'),
      space: {
        form: 'pair',
        left: pieces.map(({ letter, readings }) => ({
          id: letter,
          label: say('polarity-evidence.piece', { letter, readings: readings.map(readingInWords) }),
        })),
        right: VERDICTS.map((id) => ({ id, label: say(`polarity-evidence.${id}`) })),
      },
      answers: [told(({ verdict }) => verdict)],
      lures: distinctLures(lures),
      explanation: {
        row: lineFor(shown),
        reason: say('polarity-evidence.reason'),
        more: pieces.map(lineFor),
      },
      // By the slope: pressure against current, falling or rising, flat, or one point only.
      isRight: (answer) =>
        answer.form === 'pair' &&
        pieces.every(({ letter, readings: [first, second] }) => {
          const given = answer.pairs[letter];
          if (!second) return given === 'open';
          const slope = (first!.pressureKpa - second.pressureKpa) / (first!.currentMa - second.currentMa);
          return given === (slope === 0 ? 'dead' : slope < 0 ? 'full' : 'none');
        }),
    };
  },
};
