/** From something wrong to its correction: where it is written, who has it wrong, what goes to them. */
export const FIX = {
  'fix.link': 'Put it right',
  'fix.look-up': 'Wrong? Put it right: {what}',
  'fix.no-deck': 'The deck “{deck}” is not on this device.',
  'fix.flagged': 'A learner flagged: “{note}”',
  'fix.looked-up': 'To be put right:',
  'fix.cell': 'cell of the chart',
  'fix.capacity': 'capacity of',
  'fix.valve-body': 'valve body',
  'fix.then': 'Change the value where it is written; it is computed everywhere from there. Then:',
  'fix.correction': 'Tell those who learnt it',
  'fix.behind':
    '{groups} {count, plural, one {has} other {have}} an earlier revision than {revision}. Say what was wrong: the correction goes with the next issue of the assignment, answers on it count no more, and it is asked again.',
  'fix.wrong': 'What was wrong, in a sentence',
  'fix.hand-out': 'Make the correction',
  'fix.done':
    '{facts, plural, =0 {No fact comes out otherwise} one {One fact comes out otherwise} other {# facts come out otherwise}}; {count, plural, one {one assignment goes} other {# assignments go}} out again. Hand it over:',
  'fix.for-group': 'Correction for {group}',
} as const;
