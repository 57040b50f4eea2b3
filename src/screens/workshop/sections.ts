/** The sections of the workshop, in the order in which a deck is best written, and which part of a deck is in which. */
export const SECTION_IDS = [
  'unit', 'notes', 'chart', 'train', 'solenoids', 'lever', 'controls', 'wires', 'seats', 'stacks', 'fits', 'service',
  'sequences', 'codes', 'names', 'cautions', 'revisions', 'together', 'publish',
] as const; // biome-ignore format: names read across
export type SectionId = (typeof SECTION_IDS)[number];

const PART_OF: Readonly<Record<string, SectionId>> = {
  chart: 'chart',
  train: 'train',
  solenoids: 'solenoids',
  lever: 'lever',
  sensors: 'controls',
  interlocks: 'controls',
  valveBody: 'controls',
  electrical: 'wires',
  shaftLine: 'seats',
  seats: 'seats',
  stacks: 'stacks',
  fits: 'fits',
  fluids: 'service',
  torques: 'service',
  weights: 'service',
  sequences: 'sequences',
  codes: 'codes',
  aliases: 'names',
  cautions: 'cautions',
  variantOf: 'revisions',
};

/** The section that a place of the deck is written in, by its JSON Pointer. */
export function sectionOf(pointer: string): SectionId {
  const part = pointer.split('/')[1] ?? '';
  return PART_OF[part] ?? 'unit';
}
