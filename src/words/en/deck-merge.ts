/** What differs between two decks, and what cannot be merged without somebody choosing. */
export const DECK_MERGE = {
  'difference.added': '{where}: added, {after}',
  'difference.removed': '{where}: taken away, was {before}',
  'difference.changed': '{where}: {before} → {after}',
  'difference.moved': '{where}: order was {before}, is {after}',
  'difference.yes': 'yes',
  'difference.no': 'no',
  'difference.band': '{low} to {high}',
  'difference.vouched': '{by} on {on}',
  'conflict.changed': '{where}: here {mine}, there {theirs}, before {base}. Choose one.',
  'conflict.removed': '{where}: taken away on one side and changed on the other. Choose one.',
  'conflict.added': '{where}: added on both sides, not alike: here {mine}, there {theirs}. Choose one.',
  'conflict.order': '{where}: put in another order on both sides. Choose one.',
  'conflict.vouched':
    '{where}: the merged value is not the one that was verified. It counts as unsure, and is not asked, until somebody checks it.',
} as const;
