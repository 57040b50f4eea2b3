/** Every rule, in the order of a deck's parts. Adding one: a file, its words, a line here, a row in the test. */
import type { Deck } from '../../core/unit/deck.ts';
import { type Finding, makeFinding } from '../finding.ts';
import { cautionsAttached } from './cautions-attached.ts';
import { elementJoins } from './element-joins.ts';
import { elementsExist } from './elements-exist.ts';
import { elementsUsed } from './elements-used.ts';
import { feedsAgree } from './feeds-agree.ts';
import { feedsRecorded } from './feeds-recorded.ts';
import { feedsSingle } from './feeds-single.ts';
import { gearsetMembers } from './gearset-members.ts';
import { idsUnique } from './ids-unique.ts';
import { inputOutput } from './input-output.ts';
import { leverValve } from './lever-valve.ts';
import { listedOnce } from './listed-once.ts';
import { namesReserved } from './names-reserved.ts';
import { neutralStays } from './neutral-stays.ts';
import { oneWayBinds } from './one-way-binds.ts';
import { oneWayHolds } from './one-way-holds.ts';
import { oneWayIdle } from './one-way-idle.ts';
import { oneWaysFew } from './one-ways-few.ts';
import { oneWaysUnfed } from './one-ways-unfed.ts';
import { oneWaysUsed } from './one-ways-used.ts';
import { planetsSpaced } from './planets-spaced.ts';
import { planetsWhole } from './planets-whole.ts';
import { positionsAllow } from './positions-allow.ts';
import { rangeDrives } from './range-drives.ts';
import { rangesDistinct } from './ranges-distinct.ts';
import { ratioAgrees } from './ratio-agrees.ts';
import { ratioCut } from './ratio-cut.ts';
import { ratiosDistinct } from './ratios-distinct.ts';
import { rowsExist } from './rows-exist.ts';
import { rowsReached } from './rows-reached.ts';
import type { Rule } from './rule.ts';
import { sequenceAcyclic } from './sequence-acyclic.ts';
import { sequenceOrder } from './sequence-order.ts';
import { shaftsExist } from './shafts-exist.ts';
import { shaftsJoined } from './shafts-joined.ts';
import { solenoidDemands } from './solenoid-demands.ts';
import { solenoidFeeds } from './solenoid-feeds.ts';
import { sourcesExist } from './sources-exist.ts';
import { stepsExist } from './steps-exist.ts';
import { unpluggedSafe } from './unplugged-safe.ts';

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
  unpluggedSafe,
  // work
  sequenceAcyclic,
  sequenceOrder,
];

/** All that the rules find, by rule. */
export function checkRules(deck: Deck): Finding[] {
  return RULES.flatMap((rule) =>
    rule.check(deck).map((spot) => makeFinding(rule.id, rule.severity, deck, spot)),
  );
}
