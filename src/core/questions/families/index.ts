/** Every family, by subject. Adding one: a file, its test, a line here, its words (docs/families.md). */
import type { Family } from '../question.ts';
import { actualRange } from './actual-range.ts';
import { ABOUT_CODES } from './codes/index.ts';
import { copiedRows } from './copied-rows.ts';
import { ABOUT_FAULTS } from './diagnosis/index.ts';
import { ELECTRICAL } from './electrical/index.ts';
import { elementCompany } from './element-company.ts';
import { elementFails } from './element-fails.ts';
import { elementRanges } from './element-ranges.ts';
import { elementStuck } from './element-stuck.ts';
import { elementTorque } from './element-torque.ts';
import { heldPush } from './held-push.ts';
import { interlock } from './interlock.ts';
import { lookFirst } from './look-first.ts';
import { manualRange } from './manual-range.ts';
import { MEASURING } from './measuring/index.ts';
import { neutralDrive } from './neutral-drive.ts';
import { oneSet } from './one-set.ts';
import { oneWayActs } from './one-way-acts.ts';
import { ORIENTATION } from './orientation/index.ts';
import { outputSpeed } from './output-speed.ts';
import { polarityEvidence } from './polarity-evidence.ts';
import { PRESSURE } from './pressure/index.ts';
import { WORK } from './procedure/index.ts';
import { rangeElements } from './range-elements.ts';
import { rangeFromElements } from './range-from-elements.ts';
import { rangeSolenoids } from './range-solenoids.ts';
import { ratioOrder } from './ratio-order.ts';
import { rowRatio } from './row-ratio.ts';
import { ABOUT_SAFETY } from './safety/index.ts';
import { setStripped } from './set-stripped.ts';
import { shaftSpeed } from './shaft-speed.ts';
import { shiftChanges } from './shift-changes.ts';
import { shiftCount } from './shift-count.ts';
import { shiftGuard } from './shift-guard.ts';
import { shiftKind } from './shift-kind.ts';
import { skipShift } from './skip-shift.ts';
import { slipSpeed } from './slip-speed.ts';
import { solenoidChanges } from './solenoid-changes.ts';
import { solenoidElements } from './solenoid-elements.ts';
import { PACKS } from './stacks/index.ts';
import { tieUps } from './tie-ups.ts';
import { torqueOrder } from './torque-order.ts';
import { unplugged } from './unplugged.ts';
import { valveCuts } from './valve-cuts.ts';

export const FAMILIES: readonly Family[] = [
  rangeElements,
  rangeFromElements,
  copiedRows,
  elementRanges,
  elementCompany,
  lookFirst,
  shiftChanges,
  skipShift,
  shiftCount,
  shiftKind,
  manualRange,
  oneWayActs,
  rowRatio,
  oneSet,
  ratioOrder,
  shaftSpeed,
  elementTorque,
  torqueOrder,
  heldPush,
  outputSpeed,
  shiftGuard,
  tieUps,
  neutralDrive,
  solenoidElements,
  rangeSolenoids,
  solenoidChanges,
  polarityEvidence,
  valveCuts,
  interlock,
  elementFails,
  elementStuck,
  setStripped,
  unplugged,
  actualRange,
  slipSpeed,
  ...ORIENTATION,
  ...PACKS,
  ...WORK,
  ...MEASURING,
  ...ELECTRICAL,
  ...PRESSURE,
  ...ABOUT_FAULTS,
  ...ABOUT_CODES,
  ...ABOUT_SAFETY,
];
