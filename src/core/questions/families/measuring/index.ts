/** Families on measuring, in the order they are learned. */
import type { Family } from '../../question.ts';
import { depthGap } from './depth-gap.ts';
import { depthGaugeReading } from './depth-gauge-reading.ts';
import { dialReading } from './dial-reading.ts';
import { micrometerReading } from './micrometer-reading.ts';
import { playAfter } from './play-after.ts';
import { selectPart } from './select-part.ts';

export const MEASURING: readonly Family[] = [
  dialReading,
  micrometerReading,
  depthGaugeReading,
  depthGap,
  playAfter,
  selectPart,
];
