/** Every family, by subject. Adding one: a file, its test, a line here, its words (docs/families.md). */
import type { Family } from '../question.ts';
import { actualRange } from './actual-range.ts';
import { copiedRows } from './copied-rows.ts';
import { elementCompany } from './element-company.ts';
import { elementFails } from './element-fails.ts';
import { elementRanges } from './element-ranges.ts';
import { elementStuck } from './element-stuck.ts';
import { lookFirst } from './look-first.ts';
import { manualRange } from './manual-range.ts';
import { neutralDrive } from './neutral-drive.ts';
import { oneWayActs } from './one-way-acts.ts';
import { seatFaces } from './orientation/seat-faces.ts';
import { rangeElements } from './range-elements.ts';
import { rangeFromElements } from './range-from-elements.ts';
import { rangeSolenoids } from './range-solenoids.ts';
import { ratioOrder } from './ratio-order.ts';
import { rowRatio } from './row-ratio.ts';
import { shaftSpeed } from './shaft-speed.ts';
import { shiftChanges } from './shift-changes.ts';
import { shiftCount } from './shift-count.ts';
import { shiftKind } from './shift-kind.ts';
import { skipShift } from './skip-shift.ts';
import { slipSpeed } from './slip-speed.ts';
import { solenoidElements } from './solenoid-elements.ts';
import { tieUps } from './tie-ups.ts';
import { unplugged } from './unplugged.ts';

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
  ratioOrder,
  shaftSpeed,
  tieUps,
  neutralDrive,
  solenoidElements,
  rangeSolenoids,
  elementFails,
  elementStuck,
  unplugged,
  actualRange,
  slipSpeed,
  seatFaces,
];
