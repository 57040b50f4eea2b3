/**
 * Speeds of four units, each in two commanded ranges and at two moments: as commanded, really in another range,
 * slipping, or a tooth count wrong? A range is another's ratio and steady, slip drifts, a wrong count is the same
 * factor in every range. Figures near a threshold are not asked.
 */
import type { Random } from '../../../random.ts';
import { type Rational, rational } from '../../../rational.ts';
import { relativeDistance } from '../../../speeds/actual-range.ts';
import type { Range, Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { floatOutput } from '../../second-route.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { rawApplied } from '../chart-parts.ts';
import { decimalText } from '../gear-parts.ts';
import { outputRpmFor, RATIO_TOLERANCE, rounded, type Scan, scanOf } from '../scan-parts.ts';

const FACT = 'skill:slip-or-ratio';
const NAMES = ['A', 'B', 'C', 'D'] as const;

const VERDICTS = ['as-commanded', 'other-range', 'slip', 'wrong-count'] as const;
type Verdict = (typeof VERDICTS)[number];

/** Counts that are taken for one another: read 6/5 as fast, and so on. */
const FACTORS = [rational(6, 5), rational(5, 6), rational(9, 8), rational(8, 9), rational(4, 5)];
/** A share that no reading of a slipping or miscounted unit comes within of any range's ratio. */
const CLEAR = RATIO_TOLERANCE.add(rational(1, 100));

interface Moment {
  readonly inputRpm: Rational;
  readonly outputRpm: Rational;
}

interface Driven {
  readonly commanded: Range;
  readonly moments: readonly Moment[];
}

interface Case {
  readonly verdict: Verdict;
  readonly driven: readonly Driven[];
}

const clear = ({ forward }: Scan, ratio: Rational): boolean =>
  forward.every((range) => relativeDistance(ratio, range.ratio).gt(CLEAR));

/** Two moments at these ratios; null where no fitting output speed is found. */
function momentsAt(ratios: readonly Rational[], random: Random): Moment[] | null {
  const moments = ratios.map((ratio) => {
    const outputRpm = outputRpmFor(ratio, random);
    return outputRpm ? { inputRpm: rounded(outputRpm.mul(ratio)), outputRpm } : null;
  });
  return moments.every((moment) => moment !== null) ? moments : null;
}

/** What the speeds show in each range, as ratios; null where the draw comes too near a range. */
function ratiosOf(
  verdict: Verdict,
  scan: Scan,
  ranges: readonly Range[],
  random: Random,
): Rational[][] | null {
  const [first, second] = ranges as [Range, Range];
  const as = (range: Range) => [range.ratio, range.ratio];
  switch (verdict) {
    case 'as-commanded':
      return [as(first), as(second)];
    case 'other-range': {
      const others = scan.apart.filter((range) => range !== first && range !== second);
      return others.length > 0 ? [as(first), as(random.pick(others))] : null;
    }
    case 'slip': {
      const share = random.int(5, 9);
      const slipping = [share, share + random.int(6, 10)].map((percent) =>
        second.ratio.mul(rational(100 + percent, 100)),
      );
      return slipping.every((ratio) => clear(scan, ratio)) ? [as(first), slipping] : null;
    }
    case 'wrong-count': {
      const factors = FACTORS.filter((factor) => ranges.every(({ ratio }) => clear(scan, ratio.mul(factor))));
      if (factors.length === 0) return null;
      const factor = random.pick(factors);
      return ranges.map(({ ratio }) => [ratio.mul(factor), ratio.mul(factor)]);
    }
  }
}

function drawCase(verdict: Verdict, scan: Scan, random: Random): Case | null {
  for (let attempt = 0; attempt < 12; attempt++) {
    const ranges = random.sample(scan.apart, 2);
    const ratios = ratiosOf(verdict, scan, ranges, random);
    const moments = ratios?.map((pair) => momentsAt(pair, random));
    if (!moments?.every((pair) => pair !== null)) continue;
    const driven = ranges.map((commanded, place) => ({ commanded, moments: moments[place]! }));
    return { verdict, driven: random.shuffle(driven) };
  }
  return null;
}

/** Judged afresh from speeds: how far each is from what the commanded range would give. */
function judged(unit: Unit, { driven }: Case): Verdict | null {
  const off = driven.map(({ commanded, moments }) => {
    const perTurn = floatOutput(unit.deck.train, rawApplied(unit, commanded.id)) ?? Number.NaN;
    return moments.map(({ inputRpm, outputRpm }) => (inputRpm.valueOf() * perTurn) / outputRpm.valueOf());
  });
  const right = (factor: number) => Math.abs(factor - 1) <= RATIO_TOLERANCE.valueOf();
  if (off.flat().every(right)) return 'as-commanded';
  if (off.some(([one, other]) => Math.abs(one! / other! - 1) > 0.04)) return 'slip';
  const [first, second] = off as [number[], number[]];
  if (Math.abs(first[0]! / second[0]! - 1) < 0.02) return 'wrong-count';
  return first.every(right) !== second.every(right) ? 'other-range' : null;
}

export const slipOrRatio: Family = {
  id: 'slip-or-ratio',
  level: 'reason',
  form: 'pair',
  facts(unit) {
    const scan = scanOf(unit);
    return scan && scan.apart.length > 2 ? [FACT] : [];
  },
  pose(unit, fact, random) {
    const scan = scanOf(unit);
    if (!scan || scan.apart.length <= 2 || fact !== FACT) return undefined;
    // Three different verdicts at least, so that no one answer fits all.
    const verdicts = random.shuffle([...random.sample(VERDICTS, 3), random.pick(VERDICTS)]);
    const cases = verdicts.map((verdict) => drawCase(verdict, scan, random));
    if (!cases.every((one) => one !== null)) return undefined;
    const told = (rule: (verdict: Verdict) => Verdict): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(cases.map(({ verdict }, place) => [NAMES[place]!, rule(verdict)])),
    });
    const instead =
      (...swaps: readonly (readonly [Verdict, Verdict])[]) =>
      (verdict: Verdict): Verdict =>
        swaps.find(([from]) => from === verdict)?.[1] ?? verdict;
    const lures: readonly (readonly [SlipUp, (verdict: Verdict) => Verdict])[] = [
      ['commanded-not-actual', () => 'as-commanded'],
      ['every-odd-ratio-slips', instead(['other-range', 'slip'], ['wrong-count', 'slip'])],
      ['count-taken-for-range', instead(['wrong-count', 'other-range'])],
      ['slip-taken-for-range', instead(['slip', 'other-range'])],
      ['range-taken-for-count', instead(['other-range', 'wrong-count'])],
    ];
    const ratioText = (range: Range) => decimalText(range.ratio, range.decimals);
    const places = 3;
    const headOf = (name: string, { commanded }: Driven) =>
      say('slip-or-ratio.row', {
        name,
        range: thing('range', commanded.id),
        ratio: ratioText(commanded),
      });
    let checked: readonly (Verdict | null)[] | undefined;
    return {
      facts: [fact],
      uses: scan.uses,
      prompt: say('slip-or-ratio.prompt', {
        ratios: scan.forward.map((range) =>
          say('slip-or-ratio.ratio', { range: thing('range', range.id), ratio: ratioText(range) }),
        ),
      }),
      drawing: {
        kind: 'table',
        columns: [say('slip-or-ratio.first'), say('slip-or-ratio.second')],
        rows: cases.flatMap(({ driven }, place) =>
          driven.map((one) => ({
            head: headOf(NAMES[place]!, one),
            cells: one.moments.map(({ inputRpm, outputRpm }) =>
              say('slip-or-ratio.speeds', {
                input: inputRpm.toFraction(),
                output: outputRpm.toFraction(),
              }),
            ),
          })),
        ),
      },
      space: {
        form: 'pair',
        left: cases.map((_, place) => ({
          id: NAMES[place]!,
          label: say('suspects.unit', { name: NAMES[place]! }),
        })),
        right: VERDICTS.map((id) => ({ id, label: say(`slip-or-ratio.${id}`) })),
      },
      answers: [told((verdict) => verdict)],
      lures: lures.map(([slipUp, rule]): Lure => ({ answer: told(rule), slipUp, fact })),
      explanation: {
        row: say('slip-or-ratio.by'),
        reason: say('slip-or-ratio.reason'),
        more: cases.map(({ verdict }, place) =>
          say('slip-or-ratio.line', {
            name: NAMES[place]!,
            verdict: say(`slip-or-ratio.${verdict}`),
          }),
        ),
        drawing: {
          kind: 'table',
          columns: [say('slip-or-ratio.first'), say('slip-or-ratio.second')],
          rows: cases.flatMap(({ driven }, place) =>
            driven.map((one) => ({
              head: headOf(NAMES[place]!, one),
              cells: one.moments.map(({ inputRpm, outputRpm }) =>
                say('slip-or-ratio.seen', { ratio: decimalText(inputRpm.div(outputRpm), places) }),
              ),
              lit: one.moments.some(({ inputRpm, outputRpm }) =>
                relativeDistance(inputRpm.div(outputRpm), one.commanded.ratio).gt(RATIO_TOLERANCE),
              ),
            })),
          ),
        },
      },
      isRight(answer) {
        checked ??= cases.map((one) => judged(unit, one));
        return (
          answer.form === 'pair' && checked.every((verdict, place) => answer.pairs[NAMES[place]!] === verdict)
        );
      },
    };
  },
};
