/** Families on work in steps. */
import type { Family } from '../../question.ts';
import { assemblyOrder } from './assembly-order.ts';
import { lastChance } from './last-chance.ts';
import { nextSteps } from './next-steps.ts';
import { stepOrder } from './step-order.ts';
import { stepReason } from './step-reason.ts';
import { stepSkipped } from './step-skipped.ts';

export const WORK: readonly Family[] = [
  nextSteps,
  stepOrder,
  stepReason,
  stepSkipped,
  assemblyOrder,
  lastChance,
];
