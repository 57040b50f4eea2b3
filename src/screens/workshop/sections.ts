/** The sections of the workshop, in the order in which a deck is best written, and which part of a deck is in which. */
export const SECTION_IDS = [
  'unit', 'chart', 'train', 'solenoids', 'lever', 'seats', 'stacks', 'fits', 'sequences', 'names', 'cautions', 'rest',
  'revisions', 'publish',
] as const; // biome-ignore format: names read across
export type SectionId = (typeof SECTION_IDS)[number];

/** Parts without a form of their own. */
export const REST_PARTS = [
  'sensors', 'interlocks', 'valveBody', 'electrical', 'fluids', 'torques', 'weights', 'codes',
] as const; // biome-ignore format: names read across

const PART_OF: Readonly<Record<string, SectionId>> = {
  chart: 'chart',
  train: 'train',
  solenoids: 'solenoids',
  lever: 'lever',
  shaftLine: 'seats',
  seats: 'seats',
  stacks: 'stacks',
  fits: 'fits',
  sequences: 'sequences',
  aliases: 'names',
  cautions: 'cautions',
};

/** The section that a place of the deck is written in, by its JSON Pointer. */
export function sectionOf(pointer: string): SectionId {
  const part = pointer.split('/')[1] ?? '';
  return PART_OF[part] ?? (REST_PARTS.some((rest) => rest === part) ? 'rest' : 'unit');
}
