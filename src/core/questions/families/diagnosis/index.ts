/** Families on faults and on finding them. */
import type { Family } from '../../question.ts';
import { faultsThatFit } from './faults-that-fit.ts';
import { impossibleSuspects } from './impossible-suspects.ts';
import { oneCause } from './one-cause.ts';

export const ABOUT_FAULTS: readonly Family[] = [faultsThatFit, oneCause, impossibleSuspects];
