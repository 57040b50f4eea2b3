/** Questions on shifts beyond the next range, on how a shift hands over, and on speeds before and after. */
export const SHIFTS = {
  'family.skip-shift': 'What changes in a longer shift',
  'skip-shift.prompt': 'The unit shifts straight from range {from} to range {to}. What does each element do?',
  'skip-shift.reason':
    'Only the first and the last row count. What {count, plural, one {range {ranges} uses} other {ranges {ranges} use}} is passed by.',
} as const;
