/** Families on pressure, force and torque, in the order they are learned. */
import type { Family } from '../../question.ts';
import { clutchTorque } from './clutch-torque.ts';
import { pistonForce } from './piston-force.ts';
import { pressureNeeded } from './pressure-needed.ts';
import { tapPressures } from './tap-pressures.ts';

export const PRESSURE: readonly Family[] = [pistonForce, clutchTorque, pressureNeeded, tapPressures];
