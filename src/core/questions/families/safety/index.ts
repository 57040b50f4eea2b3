/** Families on working safely. */
import type { Family } from '../../question.ts';
import { lookUpFirst } from './look-up-first.ts';
import { rollAway } from './roll-away.ts';
import { slingLoad } from './sling-load.ts';
import { stepHazards } from './step-hazards.ts';
import { storedEnergy } from './stored-energy.ts';

export const ABOUT_SAFETY: readonly Family[] = [stepHazards, storedEnergy, rollAway, slingLoad, lookUpFirst];
