/** Families on faults and on finding them. */
import type { Family } from '../../question.ts';
import { faultsThatFit } from './faults-that-fit.ts';
import { impossibleSuspects } from './impossible-suspects.ts';
import { nextTest } from './next-test.ts';
import { oneCause } from './one-cause.ts';
import { oneWayReversed } from './one-way-reversed.ts';
import { predictedGauge } from './predicted-gauge.ts';
import { sensorLost } from './sensor-lost.ts';
import { separatingTest } from './separating-test.ts';
import { solenoidStuck } from './solenoid-stuck.ts';
import { supplyLost } from './supply-lost.ts';

export const ABOUT_FAULTS: readonly Family[] = [
  solenoidStuck,
  oneWayReversed,
  supplyLost,
  sensorLost,
  faultsThatFit,
  oneCause,
  impossibleSuspects,
  separatingTest,
  nextTest,
  predictedGauge,
];
