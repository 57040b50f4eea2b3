import { decimalsOf, makeDecimal, type Rational } from '../../core/rational.ts';
import type { Deck } from '../../core/unit/deck.ts';
import type { Path } from '../finding.ts';
import { statedHint } from './nearby.ts';
import { rangesOf, solveRow } from './rows.ts';
import type { Rule } from './rule.ts';

export interface Stated {
  readonly at: Path;
  readonly index: number;
  readonly stated: string;
  /** The solved ratio to as many digits as the deck states, rounded (half away from zero). */
  readonly rounded: string;
  /** The same, cut off instead of rounded. */
  readonly cut: string;
  readonly ratio: Rational;
}

/** Leading zeros and the sign of zero do not count. */
const plain = (text: string) => text.replace(/^(-?)0+(?=\d)/, '$1').replace(/^-(?=[0.]+$)/, '');

function cutTo(ratio: Rational, decimals: number): string {
  const scale = 10n ** BigInt(decimals);
  const whole = (ratio.n * scale) / ratio.d;
  const digits = whole.toString().padStart(decimals + 1, '0');
  const sign = ratio.s < 0n && whole > 0n ? '-' : '';
  const point = digits.length - decimals;
  return `${sign}${digits.slice(0, point)}${decimals > 0 ? `.${digits.slice(point)}` : ''}`;
}

/** Ranges that state a ratio and drive. */
export function statedRatios(deck: Deck): Stated[] {
  return rangesOf(deck).flatMap(({ at, row }, index) => {
    const ratio = solveRow(deck.train, row.applied)?.ratio;
    if (!ratio || row.ratio === undefined) return [];
    const decimals = decimalsOf(row.ratio);
    return [
      {
        at: [...at, 'ratio'],
        index,
        stated: plain(row.ratio),
        rounded: makeDecimal(ratio, decimals),
        cut: cutTo(ratio, decimals),
        ratio,
      },
    ];
  });
}

/** What plate or book states is what the train gives, to the last digit stated. */
export const ratioAgrees: Rule = {
  id: 'ratio-agrees',
  severity: 'error',
  check: (deck) =>
    statedRatios(deck)
      .filter(({ stated, rounded, cut }) => stated !== rounded && stated !== cut)
      .map(({ at, index, stated, rounded, ratio }) => {
        const range = deck.chart.ranges[index]!;
        return {
          at,
          values: {
            stated,
            rounded,
            exact: makeDecimal(ratio, decimalsOf(stated) + 3),
            elements: range.applied,
            hint: statedHint(deck, range),
          },
        };
      }),
};
