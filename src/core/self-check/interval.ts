/**
 * What a few answers can and cannot say. Wilson's score interval for a share, and Newcombe's for the difference
 * of two (docs/sources.md [I1], [I2]): both stay honest near 0 and 1 and for few answers, where the textbook
 * interval does not. Floats: these are estimates.
 */

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The standard normal deviate that leaves 2.5 % on each side. */
export const Z95 = 1.959963984540054;

/** Fewer answers than this in an area give no verdict. */
export const LEAST_ANSWERS = 10;

/** 95 % interval for the true share after `right` of `asked`, 0 ≤ right ≤ asked; [0, 1] when none was asked. */
export function wilson(right: number, asked: number, z = Z95): Interval {
  if (asked === 0) return { low: 0, high: 1 };
  const share = right / asked;
  const z2 = (z * z) / asked;
  const centre = (share + z2 / 2) / (1 + z2);
  const half = (z * Math.sqrt((share * (1 - share)) / asked + z2 / (4 * asked))) / (1 + z2);
  return {
    low: right === 0 ? 0 : Math.max(0, centre - half),
    high: right === asked ? 1 : Math.min(1, centre + half),
  };
}

export interface Score {
  readonly right: number;
  readonly asked: number;
}

/** 95 % interval for how much the true share rose from the first check to the second (−1 to 1). */
export function change(first: Score, second: Score): Interval {
  const [p1, p2] = [first, second].map(({ right, asked }) => (asked === 0 ? 0.5 : right / asked)) as [
    number,
    number,
  ];
  const [one, two] = [first, second].map(({ right, asked }) => wilson(right, asked)) as [Interval, Interval];
  const difference = p2 - p1;
  return {
    low: difference - Math.hypot(p2 - two.low, one.high - p1),
    high: difference + Math.hypot(two.high - p2, p1 - one.low),
  };
}

/** Whether the change is more than chance would explain: its interval leaves 0 out. */
export const exceedsError = ({ low, high }: Interval): boolean => low > 0 || high < 0;
