/** German: what only other screens and the command line say. */
import type { Messages } from '../speak.ts';
import { BENCH } from './bench.ts';
import { CASE } from './case.ts';
import { CLI } from './cli.ts';
import { DECK_MERGE } from './deck-merge.ts';
import { DEVICE } from './device.ts';
import { EXCHANGE } from './exchange.ts';
import { FINDINGS } from './findings.ts';
import { FIX } from './fix.ts';
import { HAND_RULE_WORDS } from './hand-rules.ts';
import { LEARNERS } from './learners.ts';
import { PLAN } from './plan.ts';
import { QUALITY } from './quality.ts';
import { RULE_WORDS } from './rules.ts';
import { SELF_CHECK } from './self-check.ts';
import { TOGETHER } from './together.ts';
import { WORKSHOP } from './workshop.ts';
import { WORKSHOP_PARTS } from './workshop-parts.ts';

export const REST: readonly Messages[] = [
  BENCH,
  CASE,
  CLI,
  DECK_MERGE,
  DEVICE,
  EXCHANGE,
  FINDINGS,
  FIX,
  HAND_RULE_WORDS,
  LEARNERS,
  PLAN,
  QUALITY,
  RULE_WORDS,
  SELF_CHECK,
  TOGETHER,
  WORKSHOP,
  WORKSHOP_PARTS,
];
