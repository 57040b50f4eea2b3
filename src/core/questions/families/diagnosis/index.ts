/** Families on faults and on finding them. */
import type { Family } from '../../question.ts';
import { airCheck } from './air-check.ts';
import { faultsThatFit } from './faults-that-fit.ts';
import { firstBreak } from './first-break.ts';
import { impossibleSuspects } from './impossible-suspects.ts';
import { nextTest } from './next-test.ts';
import { oneCause } from './one-cause.ts';
import { oneWayReversed } from './one-way-reversed.ts';
import { plateShort } from './plate-short.ts';
import { predictedGauge } from './predicted-gauge.ts';
import { sensorLost } from './sensor-lost.ts';
import { separatingTest } from './separating-test.ts';
import { slipOrRatio } from './slip-or-ratio.ts';
import { slipsFirst } from './slips-first.ts';
import { solenoidStuck } from './solenoid-stuck.ts';
import { supplyLost } from './supply-lost.ts';

export const ABOUT_FAULTS: readonly Family[] = [
  solenoidStuck,
  oneWayReversed,
  supplyLost,
  sensorLost,
  slipsFirst,
  plateShort,
  faultsThatFit,
  oneCause,
  impossibleSuspects,
  separatingTest,
  nextTest,
  predictedGauge,
  firstBreak,
  slipOrRatio,
  airCheck,
];
