/** Families on windings, sensors and wires, in the order they are learned. */
import type { Family } from '../../question.ts';
import { driverPin } from './driver-pin.ts';
import { heatPairs } from './heat-pairs.ts';
import { pinPairs } from './pin-pairs.ts';
import { sensorFrequency } from './sensor-frequency.ts';
import { solenoidCurrent } from './solenoid-current.ts';
import { windingAtHeat } from './winding-at-heat.ts';
import { windingFault } from './winding-fault.ts';
import { windingVerdict } from './winding-verdict.ts';

export const ELECTRICAL: readonly Family[] = [
  heatPairs,
  windingAtHeat,
  windingVerdict,
  pinPairs,
  windingFault,
  solenoidCurrent,
  driverPin,
  sensorFrequency,
];
