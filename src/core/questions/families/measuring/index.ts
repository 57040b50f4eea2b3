/** Families on measuring, in the order they are learned. */
import type { Family } from '../../question.ts';
import { crowfootSetting } from './crowfoot-setting.ts';
import { depthGap } from './depth-gap.ts';
import { depthGaugeReading } from './depth-gauge-reading.ts';
import { dialReading } from './dial-reading.ts';
import { impossibleReading } from './impossible-reading.ts';
import { meanReading } from './mean-reading.ts';
import { micrometerReading } from './micrometer-reading.ts';
import { packClearance } from './pack-clearance.ts';
import { playAfter } from './play-after.ts';
import { repeatReadings } from './repeat-readings.ts';
import { selectPart } from './select-part.ts';
import { unitConvert } from './unit-convert.ts';

export const MEASURING: readonly Family[] = [
  dialReading,
  micrometerReading,
  depthGaugeReading,
  depthGap,
  playAfter,
  selectPart,
  packClearance,
  meanReading,
  repeatReadings,
  impossibleReading,
  unitConvert,
  crowfootSetting,
];
