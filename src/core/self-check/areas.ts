/**
 * Areas of a self-check, and which family belongs to which. The weights are a start, common practice without a
 * source: the person edits them, and no examining body's are claimed.
 */
import type { Family } from '../questions/question.ts';

export const AREAS = [
  'diagnosis',
  'power-flow',
  'hydraulics',
  'electrical',
  'measuring',
  'assembly',
  'safety',
] as const;
export type Area = (typeof AREAS)[number];

export const USUAL_WEIGHTS: Readonly<Record<Area, number>> = {
  diagnosis: 35,
  'power-flow': 15,
  hydraulics: 10,
  electrical: 15,
  measuring: 10,
  assembly: 10,
  safety: 5,
};

/** A family without an entry is asked in no self-check; tests/core/self-check holds that there is none. */
export const AREA_OF: Readonly<Record<string, Area>> = {
  'range-elements': 'power-flow',
  'range-from-elements': 'power-flow',
  'element-ranges': 'power-flow',
  'element-company': 'power-flow',
  'shift-changes': 'power-flow',
  'skip-shift': 'power-flow',
  'shift-count': 'power-flow',
  'row-ratio': 'power-flow',
  'ratio-order': 'power-flow',
  'shaft-speed': 'power-flow',
  'tie-ups': 'power-flow',
  'neutral-drive': 'power-flow',
  'copied-rows': 'power-flow',
  'look-first': 'diagnosis',
  'solenoid-elements': 'hydraulics',
  'range-solenoids': 'hydraulics',
  unplugged: 'hydraulics',
  'element-fails': 'diagnosis',
  'element-stuck': 'diagnosis',
  'actual-range': 'electrical',
  'slip-speed': 'electrical',
};

export const familiesOf = (families: readonly Family[], area: Area): Family[] =>
  families.filter((family) => AREA_OF[family.id] === area);
