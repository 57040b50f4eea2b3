/** The sections of the workshop, in the order in which a deck is best written, and what part of a deck is in which. */
export const SECTION_IDS = ['unit', 'chart', 'train', 'solenoids', 'publish'] as const;
export type SectionId = (typeof SECTION_IDS)[number];

const PART_OF: Readonly<Record<string, SectionId>> = {
  chart: 'chart',
  train: 'train',
  solenoids: 'solenoids',
};

const OF_THE_UNIT = ['', 'detentDeck', 'id', 'title', 'unit', 'revision', 'language', 'sources'];

/** The section that a place of the deck is written in, by its JSON Pointer. */
export function sectionOf(pointer: string): SectionId {
  const part = pointer.split('/')[1] ?? '';
  return PART_OF[part] ?? (OF_THE_UNIT.includes(part) ? 'unit' : 'publish');
}
