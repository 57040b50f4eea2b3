/** Every family, by subject. Adding one: a file, its test, a line here, its words (docs/families.md). */
import type { Family } from '../question.ts';
import { actualRange } from './actual-range.ts';
import { ABOUT_CODES } from './codes/index.ts';
import { copiedRows } from './copied-rows.ts';
import { elementCompany } from './element-company.ts';
import { elementFails } from './element-fails.ts';
import { elementRanges } from './element-ranges.ts';
import { elementStuck } from './element-stuck.ts';
import { elementTorque } from './element-torque.ts';
import { heldPush } from './held-push.ts';
import { lookFirst } from './look-first.ts';
import { manualRange } from './manual-range.ts';
import { MEASURING } from './measuring/index.ts';
import { neutralDrive } from './neutral-drive.ts';
import { oneSet } from './one-set.ts';
import { oneWayActs } from './one-way-acts.ts';
import { raceSide } from './orientation/race-side.ts';
import { sealLip } from './orientation/seal-lip.ts';
import { seatFaces } from './orientation/seat-faces.ts';
import { seatNeighbours } from './orientation/seat-neighbours.ts';
import { seatPilot } from './orientation/seat-pilot.ts';
import { seatPlaces } from './orientation/seat-places.ts';
import { seatTurned } from './orientation/seat-turned.ts';
import { seatView } from './orientation/seat-view.ts';
import { outputSpeed } from './output-speed.ts';
import { polarityEvidence } from './polarity-evidence.ts';
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
import { plateFaces } from './stacks/plate-faces.ts';
import { plateNeighbours } from './stacks/plate-neighbours.ts';
import { stackCount } from './stacks/stack-count.ts';
import { stackGap } from './stacks/stack-gap.ts';
import { stackHeightFamily } from './stacks/stack-height.ts';
import { stackOrder } from './stacks/stack-order.ts';
import { stackSlip } from './stacks/stack-slip.ts';
import { stackStranger } from './stacks/stack-stranger.ts';
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
  elementFails,
  elementStuck,
  setStripped,
  unplugged,
  actualRange,
  slipSpeed,
  seatFaces,
  seatView,
  raceSide,
  seatPilot,
  seatPlaces,
  seatNeighbours,
  seatTurned,
  sealLip,
  stackOrder,
  plateNeighbours,
  plateFaces,
  stackGap,
  stackStranger,
  stackCount,
  stackHeightFamily,
  stackSlip,
  ...MEASURING,
  ...ABOUT_CODES,
  ...ABOUT_SAFETY,
];
