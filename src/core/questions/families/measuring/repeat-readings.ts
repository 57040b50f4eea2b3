/**
 * Four sets of four readings of one play: which is good, which says only that the parts have to be seated anew,
 * and which is out of limits? Spread comes first: readings that disagree say nothing of the play yet.
 */

import { placeIn } from '../../../measure/limits.ts';
import { type Advice, advise, type Summary, summarise } from '../../../measure/readings.ts';
import type { Random } from '../../../random.ts';
import type { Rational } from '../../../rational.ts';
import { exactIn } from '../../../unit/record.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { type AskedFit, askedFits, exactText, fixed, HAIR } from './fit-parts.ts';
import {
  drawReadings,
  floatMean,
  floatSpread,
  playWithin,
  readingsInWords,
  sumText,
} from './reading-set-parts.ts';

const FACT = 'skill:repeat-readings';
const SETS = ['a', 'b', 'c', 'd'] as const;
const VERDICTS = ['accept', 'reseat', 'out-of-limits'] as const satisfies readonly Advice[];

const fits = (unit: Unit) =>
  askedFits(unit).filter(({ fit, step, unit: length }) =>
    // Fewer than two steps leave nothing to judge.
    fit.spread ? exactIn(fit.spread, length).gte(step.mul(2n)) : false,
  );

interface ReadingSet {
  readonly readings: readonly Rational[];
  readonly summary: Summary;
  readonly advice: Advice;
}

/** A set that gets this advice, its mean a step or more from either limit, so that rounding cannot turn it. */
function drawSet(asked: AskedFit, allowed: Rational, advice: Advice, random: Random): ReadingSet | undefined {
  const { limits, step } = asked;
  const spread = Number(allowed.div(step).floor().toFraction());
  const steps = advice === 'reseat' ? spread + random.int(1, spread) : Math.max(1, Math.floor(spread / 2));
  const away = step.mul(BigInt(random.int(2, spread + 3)));
  const low = random.int(0, 1) === 0;
  const out = low ? limits.low.sub(away) : limits.high.add(away);
  const about = advice === 'out-of-limits' ? out : playWithin(asked, random);
  const readings = drawReadings(asked, about, steps, random);
  const summary = readings && summarise(readings);
  if (!readings || !summary?.ok) return undefined;
  const { mean } = summary.value;
  const near = [limits.low, limits.high].some((limit) => mean.sub(limit).abs().lt(step));
  if (near || advise(summary.value, allowed, limits) !== advice) return undefined;
  return { readings, summary: summary.value, advice };
}

export const repeatReadings: Family = {
  id: 'repeat-readings',
  level: 'apply',
  form: 'pair',
  facts: (unit) => (fits(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const among = fits(unit);
    if (fact !== FACT || among.length === 0) return undefined;
    const asked = random.pick(among);
    const { fit, ref, unit: length, limits } = asked;
    const allowed = exactIn(fit.spread!, length);
    const wanted = random.shuffle<Advice>(['reseat', 'accept', random.pick(VERDICTS), random.pick(VERDICTS)]);
    const sets = wanted.map((advice) => {
      for (let attempt = 0; attempt < 24; attempt++) {
        const drawn = drawSet(asked, allowed, advice, random);
        if (drawn) return drawn;
      }
      return undefined;
    });
    if (!sets.every((set) => set !== undefined)) return undefined;
    const told = (rule: (set: ReadingSet) => Advice): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(SETS.map((id, index) => [id, rule(sets[index]!)])),
    });
    const byPlay = (play: Rational): Advice => (placeIn(limits, play) === 'in' ? 'accept' : 'out-of-limits');
    const lures: Lure[] = [
      { slipUp: 'spread-ignored', answer: told(({ summary }) => byPlay(summary.mean)), fact },
      { slipUp: 'first-reading-only', answer: told(({ readings }) => byPlay(readings[0]!)), fact },
      {
        slipUp: 'any-out-condemns',
        answer: told(({ readings, advice }) =>
          readings.some((reading) => placeIn(limits, reading) !== 'in') ? 'out-of-limits' : advice,
        ),
        fact,
      },
      {
        slipUp: 'spread-as-play',
        answer: told(({ summary }) => (summary.spread.gt(allowed) ? 'out-of-limits' : 'accept')),
        fact,
      },
    ];
    return {
      facts: [FACT],
      uses: [ref],
      prompt: say('repeat-readings.prompt', {
        fit: thing('fit', fit.id),
        low: fixed(asked, limits.low),
        high: fixed(asked, limits.high),
        spread: fixed(asked, allowed),
        unit: length,
      }),
      space: {
        form: 'pair',
        left: sets.map(({ readings }, index) => ({
          id: SETS[index]!,
          label: readingsInWords(asked, readings),
        })),
        right: VERDICTS.map((id) => ({ id, label: say(`repeat-readings.${id}`) })),
      },
      answers: [told(({ advice }) => advice)],
      lures: distinctLures(lures),
      explanation: {
        row: say('repeat-readings.row', { spread: fixed(asked, allowed), unit: length }),
        reason: say('repeat-readings.reason'),
        more: sets.map(({ readings, summary, advice }) =>
          say(`repeat-readings.line-${advice}`, {
            highest: fixed(asked, summary.highest),
            lowest: fixed(asked, summary.lowest),
            spread: fixed(asked, summary.spread),
            allowed: fixed(asked, allowed),
            sum: sumText(asked, readings),
            count: readings.length,
            mean: exactText(asked, summary.mean),
            unit: length,
          }),
        ),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        sets.every(({ readings }, index) => {
          const mean = floatMean(readings);
          const within = mean >= limits.low.valueOf() && mean <= limits.high.valueOf();
          const apart = floatSpread(readings) > allowed.valueOf() + HAIR;
          return answer.pairs[SETS[index]!] === (apart ? 'reseat' : within ? 'accept' : 'out-of-limits');
        }),
    };
  },
};
