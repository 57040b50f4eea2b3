/** German: every message the project can say, by key. One file per subject, as in English. */
import { BENCH } from './bench.ts';
import { CASE } from './case.ts';
import { CHART } from './chart.ts';
import { CHART_WORK } from './chart-work.ts';
import { CLASSROOM } from './classroom.ts';
import { CLI } from './cli.ts';
import { CODES } from './codes.ts';
import { DECK_MERGE } from './deck-merge.ts';
import { DEVICE } from './device.ts';
import { DIAGNOSIS } from './diagnosis.ts';
import { DRAWINGS } from './drawings.ts';
import { ELECTRICAL } from './electrical.ts';
import { EXCHANGE } from './exchange.ts';
import { FAULT_EFFECTS } from './fault-effects.ts';
import { FAULTS } from './faults.ts';
import { FINDINGS } from './findings.ts';
import { FIX } from './fix.ts';
import { GAUGE_DRAWINGS } from './gauge-drawings.ts';
import { GEARS } from './gears.ts';
import { HAND_RULE_WORDS } from './hand-rules.ts';
import { LEARNERS } from './learners.ts';
import { MEASURING } from './measuring.ts';
import { OIL } from './oil.ts';
import { ONE_WAYS } from './one-ways.ts';
import { ORIENTATION } from './orientation.ts';
import { PART_DRAWINGS } from './part-drawings.ts';
import { PLAN } from './plan.ts';
import { PRESSURE } from './pressure.ts';
import { PROCEDURE } from './procedure.ts';
import { QUALITY } from './quality.ts';
import { RULE_WORDS } from './rules.ts';
import { SAFETY } from './safety.ts';
import { SCREENS } from './screens.ts';
import { SELF_CHECK } from './self-check.ts';
import { SHIFTS } from './shifts.ts';
import { SLIP_UP_WORDS } from './slip-ups.ts';
import { SOLENOIDS } from './solenoids.ts';
import { STACKS } from './stacks.ts';
import { STORAGE } from './storage.ts';
import { SUSPECTS } from './suspects.ts';
import { TABLES } from './tables.ts';
import { TOGETHER } from './together.ts';
import { TORQUE } from './torque.ts';
import { WORKSHOP } from './workshop.ts';
import { WORKSHOP_PARTS } from './workshop-parts.ts';

export const DE: Readonly<Record<string, string>> = {
  ...BENCH,
  ...CASE,
  ...CHART,
  ...CODES,
  ...CHART_WORK,
  ...CLASSROOM,
  ...CLI,
  ...GEARS,
  ...GAUGE_DRAWINGS,
  ...DECK_MERGE,
  ...DEVICE,
  ...DIAGNOSIS,
  ...DRAWINGS,
  ...EXCHANGE,
  ...ELECTRICAL,
  ...FAULT_EFFECTS,
  ...FAULTS,
  ...FINDINGS,
  ...FIX,
  ...HAND_RULE_WORDS,
  ...OIL,
  ...ONE_WAYS,
  ...ORIENTATION,
  ...LEARNERS,
  ...MEASURING,
  ...PART_DRAWINGS,
  ...PROCEDURE,
  ...PRESSURE,
  ...PLAN,
  ...QUALITY,
  ...RULE_WORDS,
  ...SAFETY,
  ...SCREENS,
  ...SHIFTS,
  ...SELF_CHECK,
  ...SLIP_UP_WORDS,
  ...SOLENOIDS,
  ...STACKS,
  ...STORAGE,
  ...TABLES,
  ...SUSPECTS,
  ...TOGETHER,
  ...TORQUE,
  ...WORKSHOP,
  ...WORKSHOP_PARTS,
};
