/** Every rule, in the order of a deck's parts. Adding one: a file, its words, a line here, a row in the test. */
import type { Deck } from '../../core/unit/deck.ts';
import { type Finding, makeFinding } from '../finding.ts';
import { aimInLimits } from './aim-in-limits.ts';
import { aliasesClear } from './aliases-clear.ts';
import { assemblyWorded } from './assembly-worded.ts';
import { assemblyWorks } from './assembly-works.ts';
import { bandsOrdered } from './bands-ordered.ts';
import { capacityAgrees } from './capacity-agrees.ts';
import { cautionsAttached } from './cautions-attached.ts';
import { checksPossible } from './checks-possible.ts';
import { clearanceInLimits } from './clearance-in-limits.ts';
import { codesWatch } from './codes-watch.ts';
import { effectProved } from './effect-proved.ts';
import { elementJoins } from './element-joins.ts';
import { elementsExist } from './elements-exist.ts';
import { elementsUsed } from './elements-used.ts';
import { feedsAgree } from './feeds-agree.ts';
import { feedsRecorded } from './feeds-recorded.ts';
import { feedsSingle } from './feeds-single.ts';
import { fitOneUnit } from './fit-one-unit.ts';
import { fitPlace } from './fit-place.ts';
import { frictionsFaced } from './frictions-faced.ts';
import { gearsetMembers } from './gearset-members.ts';
import { hazardsCautioned } from './hazards-cautioned.ts';
import { identicalAlike } from './identical-alike.ts';
import { identicalMarked } from './identical-marked.ts';
import { idsUnique } from './ids-unique.ts';
import { innerSmaller } from './inner-smaller.ts';
import { inputOutput } from './input-output.ts';
import { interlocksAllow } from './interlocks-allow.ts';
import { interlocksSettle } from './interlocks-settle.ts';
import { leverValve } from './lever-valve.ts';
import { lipFacesPressure } from './lip-faces-pressure.ts';
import { listedOnce } from './listed-once.ts';
import { namesReserved } from './names-reserved.ts';
import { neutralStays } from './neutral-stays.ts';
import { oneWayBinds } from './one-way-binds.ts';
import { oneWayHolds } from './one-way-holds.ts';
import { oneWayIdle } from './one-way-idle.ts';
import { oneWaysFew } from './one-ways-few.ts';
import { oneWaysUnfed } from './one-ways-unfed.ts';
import { oneWaysUsed } from './one-ways-used.ts';
import { pickupKind } from './pickup-kind.ts';
import { pinsComplete } from './pins-complete.ts';
import { pinsPlaced } from './pins-placed.ts';
import { planetsSpaced } from './planets-spaced.ts';
import { planetsWhole } from './planets-whole.ts';
import { platesMeasured } from './plates-measured.ts';
import { positionsAllow } from './positions-allow.ts';
import { rangeDrives } from './range-drives.ts';
import { rangesDistinct } from './ranges-distinct.ts';
import { ratioAgrees } from './ratio-agrees.ts';
import { ratioCut } from './ratio-cut.ts';
import { ratiosDistinct } from './ratios-distinct.ts';
import { readingsComplete } from './readings-complete.ts';
import { readingsPossible } from './readings-possible.ts';
import { recordsExist } from './records-exist.ts';
import { rowsExist } from './rows-exist.ts';
import { rowsReached } from './rows-reached.ts';
import type { Rule } from './rule.ts';
import { seatFaces } from './seat-faces.ts';
import { seatPilots } from './seat-pilots.ts';
import { seatsInLine } from './seats-in-line.ts';
import { seatsPlaced } from './seats-placed.ts';
import { seatsTouch } from './seats-touch.ts';
import { selectiveListed } from './selective-listed.ts';
import { selectiveSorted } from './selective-sorted.ts';
import { sequenceAcyclic } from './sequence-acyclic.ts';
import { sequenceOrder } from './sequence-order.ts';
import { shaftsExist } from './shafts-exist.ts';
import { shaftsJoined } from './shafts-joined.ts';
import { solenoidDemands } from './solenoid-demands.ts';
import { solenoidFeeds } from './solenoid-feeds.ts';
import { solenoidsPlaced } from './solenoids-placed.ts';
import { sourcesExist } from './sources-exist.ts';
import { stackRoom } from './stack-room.ts';
import { stepTorque } from './step-torque.ts';
import { stepsExist } from './steps-exist.ts';
import { thermistorSense } from './thermistor-sense.ts';
import { thingsExist } from './things-exist.ts';
import { unpluggedSafe } from './unplugged-safe.ts';
import { wavesHigher } from './waves-higher.ts';

export const RULES: readonly Rule[] = [
  // names and references
  idsUnique,
  namesReserved,
  listedOnce,
  sourcesExist,
  shaftsExist,
  elementsExist,
  rowsExist,
  stepsExist,
  cautionsAttached,
  thingsExist,
  recordsExist,
  aliasesClear,
  // amounts
  bandsOrdered,
  innerSmaller,
  // train
  inputOutput,
  gearsetMembers,
  elementJoins,
  shaftsJoined,
  planetsWhole,
  planetsSpaced,
  oneWaysFew,
  // chart
  rangeDrives,
  ratioAgrees,
  ratioCut,
  rangesDistinct,
  ratiosDistinct,
  oneWayHolds,
  oneWayBinds,
  oneWayIdle,
  neutralStays,
  elementsUsed,
  oneWaysUsed,
  // oil and lever
  solenoidFeeds,
  oneWaysUnfed,
  solenoidDemands,
  feedsRecorded,
  feedsSingle,
  feedsAgree,
  leverValve,
  rowsReached,
  positionsAllow,
  interlocksAllow,
  interlocksSettle,
  unpluggedSafe,
  // seats, stacks, fits
  seatsTouch,
  seatsPlaced,
  seatsInLine,
  seatFaces,
  seatPilots,
  lipFacesPressure,
  platesMeasured,
  wavesHigher,
  identicalAlike,
  identicalMarked,
  frictionsFaced,
  stackRoom,
  capacityAgrees,
  fitPlace,
  fitOneUnit,
  aimInLimits,
  selectiveSorted,
  selectiveListed,
  clearanceInLimits,
  readingsComplete,
  readingsPossible,
  effectProved,
  // work
  sequenceAcyclic,
  sequenceOrder,
  assemblyWorks,
  assemblyWorded,
  checksPossible,
  stepTorque,
  hazardsCautioned,
  // wires and codes
  solenoidsPlaced,
  pinsPlaced,
  pinsComplete,
  pickupKind,
  thermistorSense,
  codesWatch,
];

/** All that the rules find, by rule. */
export function checkRules(deck: Deck): Finding[] {
  return RULES.flatMap((rule) =>
    rule.check(deck).map((spot) => makeFinding(rule.id, rule.severity, deck, spot)),
  );
}
