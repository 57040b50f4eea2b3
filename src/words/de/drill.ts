/** German: all that a drill can say. It is loaded first. */
import type { Messages } from '../speak.ts';
import { CHART } from './chart.ts';
import { CHART_WORK } from './chart-work.ts';
import { CLASSROOM } from './classroom.ts';
import { CODES } from './codes.ts';
import { DIAGNOSIS } from './diagnosis.ts';
import { DRAWINGS } from './drawings.ts';
import { ELECTRICAL } from './electrical.ts';
import { FAULT_EFFECTS } from './fault-effects.ts';
import { FAULTS } from './faults.ts';
import { GAUGE_DRAWINGS } from './gauge-drawings.ts';
import { GEARS } from './gears.ts';
import { MEASURING } from './measuring.ts';
import { OIL } from './oil.ts';
import { ONE_WAYS } from './one-ways.ts';
import { ORIENTATION } from './orientation.ts';
import { PART_DRAWINGS } from './part-drawings.ts';
import { PRESSURE } from './pressure.ts';
import { PROCEDURE } from './procedure.ts';
import { SAFETY } from './safety.ts';
import { SCREENS } from './screens.ts';
import { SHIFTS } from './shifts.ts';
import { SLIP_UP_WORDS } from './slip-ups.ts';
import { SOLENOIDS } from './solenoids.ts';
import { STACKS } from './stacks.ts';
import { STORAGE } from './storage.ts';
import { SUSPECTS } from './suspects.ts';
import { TABLES } from './tables.ts';
import { TORQUE } from './torque.ts';

export const DRILL: readonly Messages[] = [
  CHART,
  CHART_WORK,
  CLASSROOM,
  CODES,
  DIAGNOSIS,
  DRAWINGS,
  ELECTRICAL,
  FAULT_EFFECTS,
  FAULTS,
  GAUGE_DRAWINGS,
  GEARS,
  MEASURING,
  OIL,
  ONE_WAYS,
  ORIENTATION,
  PART_DRAWINGS,
  PRESSURE,
  PROCEDURE,
  SAFETY,
  SCREENS,
  SHIFTS,
  SLIP_UP_WORDS,
  SOLENOIDS,
  STACKS,
  STORAGE,
  SUSPECTS,
  TABLES,
  TORQUE,
];
