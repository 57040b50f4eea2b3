/**
 * At this output speed, what would the input do in each other range: turn slower than now, faster but within its
 * limit, or too fast? Ratios are in view. The engine speed is told as well and has no say: behind an open
 * converter it is not the input's.
 */
import type { Random } from '../../random.ts';
import { type Rational, rational } from '../../rational.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import { distinctLures, rangeOptions, rawApplied } from './chart-parts.ts';
import { decimalText, reckonableRanges, speedRefs } from './gear-parts.ts';
import { perUnit } from './per-unit.ts';
import { forwardLadder } from './shift-parts.ts';

const FACT = 'skill:shift-guard';
const FEWEST_RANGES = 4;
const MOST_OTHERS = 6;
/** No speed may be within this share of the limit. */
const CLEAR = rational(3, 100);

const MARKS = ['slower', 'within', 'too-fast'] as const;
type Mark = (typeof MARKS)[number];

/** Forward ranges of different ratio; none unless every one may be reckoned with. */
const ladder = perUnit((unit: Unit): Range[] => {
  const ranges = forwardLadder(unit);
  const reckonable = reckonableRanges(unit);
  return ranges.length >= FEWEST_RANGES && ranges.every((range) => reckonable.includes(range)) ? ranges : [];
});

interface Setting {
  readonly now: Range;
  readonly others: readonly Range[];
  readonly outputRpm: Rational;
  readonly inputRpm: Rational;
  readonly engineRpm: Rational;
  readonly limitRpm: Rational;
}

const whole = (value: Rational): Rational => value.add(rational(1, 2)).floor();

/** A limit that some ranges break, clear of every speed; undefined when this draw gives none. */
function draw(unit: Unit, random: Random): Setting | undefined {
  const all = ladder(unit);
  // In the lowest range there is nothing to shift down to.
  const now = random.pick(all.slice(1));
  const outputRpm = rational(50n * BigInt(random.int(16, 60)));
  const inputRpm = whole(outputRpm.mul(now.ratio));
  if (inputRpm.lt(1000n) || inputRpm.gt(3800n)) return undefined;
  const limitRpm = rational(100n * BigInt(random.int(42, 70)));
  const clear = all.every((range) => outputRpm.mul(range.ratio).sub(limitRpm).abs().gt(CLEAR.mul(limitRpm)));
  const breaks = all.some((range) => outputRpm.mul(range.ratio).gt(limitRpm));
  if (!clear || !breaks) return undefined;
  const engineRpm = inputRpm.add(50n * BigInt(random.int(4, 16)));
  const picked = random.sample(
    all.filter((range) => range !== now),
    MOST_OTHERS,
  );
  return {
    now,
    others: all.filter((range) => picked.includes(range)),
    outputRpm,
    inputRpm,
    engineRpm,
    limitRpm,
  };
}

function luresFor(
  { now, others, inputRpm, engineRpm, limitRpm }: Setting,
  told: (rule: (range: Range) => Mark) => Answer,
): Lure[] {
  const markBy =
    (speedIn: (range: Range) => Rational, from: Rational) =>
    (range: Range): Mark => {
      const speed = speedIn(range);
      return speed.gt(limitRpm) ? 'too-fast' : speed.lt(from) ? 'slower' : 'within';
    };
  const isLower = (range: Range) => range.ratio.gt(now.ratio);
  const lower = others.filter(isLower);
  const next = lower.at(-1);
  const byFactor = (speed: Rational) => (range: Range) => speed.mul(range.ratio).div(now.ratio);
  return distinctLures([
    { answer: told(markBy(byFactor(engineRpm), engineRpm)), slipUp: 'engine-for-input', fact: FACT },
    {
      answer: told(markBy((range) => inputRpm.mul(now.ratio).div(range.ratio), inputRpm)),
      slipUp: 'inverse-ratio',
      fact: FACT,
    },
    { answer: told((range) => (isLower(range) ? 'within' : 'slower')), slipUp: 'limit-left-out', fact: FACT },
    {
      answer: told((range) => (isLower(range) ? 'too-fast' : 'slower')),
      slipUp: 'every-downshift-too-fast',
      fact: FACT,
    },
    {
      answer: told((range) => (!isLower(range) ? 'slower' : range === next ? 'within' : 'too-fast')),
      slipUp: 'only-next-allowed',
      fact: FACT,
    },
  ]);
}

export const shiftGuard: Family = {
  id: 'shift-guard',
  level: 'apply',
  form: 'pair',
  facts: (unit) => (ladder(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const setting = fact === FACT && ladder(unit).length > 0 ? draw(unit, random) : undefined;
    if (!setting) return undefined;
    const { now, others, outputRpm, inputRpm, engineRpm, limitRpm } = setting;
    const speedIn = (range: Range) => outputRpm.mul(range.ratio);
    const markOf = (range: Range): Mark =>
      speedIn(range).gt(limitRpm) ? 'too-fast' : range.ratio.lt(now.ratio) ? 'slower' : 'within';
    const told = (rule: (range: Range) => Mark): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(others.map((range) => [range.id, rule(range)])),
    });
    const [output, input, engine, limit] = [outputRpm, inputRpm, engineRpm, limitRpm].map((rpm) =>
      rpm.toFraction(),
    ) as [string, string, string, string];
    const over = others.filter((range) => markOf(range) === 'too-fast');
    let checked: ReadonlyMap<string, Mark> | undefined;
    return {
      facts: [fact],
      uses: [...new Set(ladder(unit).flatMap((range) => speedRefs(unit, range)))],
      prompt: say('shift-guard.prompt', { range: thing('range', now.id), output, input, engine, limit }),
      drawing: {
        kind: 'chart',
        rows: ladder(unit).map(({ id }) => id),
        litRows: [now.id],
        showRatios: true,
      },
      space: {
        form: 'pair',
        left: rangeOptions(others),
        right: MARKS.map((id) => ({ id, label: say(`shift-guard.${id}`) })),
      },
      answers: [told(markOf)],
      lures: luresFor(setting, told),
      explanation: {
        row: say('shift-guard.row', {
          count: over.length,
          ranges: over.map(({ id }) => thing('range', id)),
          limit,
        }),
        reason: say('shift-guard.reason', { output }),
        more: others.map((range) =>
          say('shift-guard.line', {
            range: thing('range', range.id),
            output,
            ratio: decimalText(range.ratio, range.decimals),
            speed: decimalText(speedIn(range), 0),
          }),
        ),
        drawing: { kind: 'chart', litRows: over.map(({ id }) => id), showRatios: true },
      },
      isRight(answer) {
        checked ??= new Map(
          others.map(({ id }) => {
            const turns = (range: string) =>
              Number(output) / floatOutput(unit.deck.train, rawApplied(unit, range))!;
            const speed = turns(id);
            return [id, speed > Number(limit) ? 'too-fast' : speed < turns(now.id) ? 'slower' : 'within'];
          }),
        );
        return answer.form === 'pair' && [...checked].every(([id, mark]) => answer.pairs[id] === mark);
      },
    };
  },
};
