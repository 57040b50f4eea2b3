/** Decks brought together: two instructors who edited apart, and variants that share facts. */
export const TOGETHER = {
  'workshop.section.together': 'A colleague’s changes',
  'together.hint':
    'A colleague changed the same deck on another device. Open that deck file here: what only one of you changed is put together, and where you differ you choose.',
  'together.open': 'Open the colleague’s deck file',
  'together.other-deck':
    'This file is the deck “{id}”; the draft is “{own}”. Only two versions of one deck can be brought together.',
  'together.missing':
    '{count, plural, one {One thing is} other {# things are}} still missing in the draft. Fill that in first.',
  'together.base': 'Both of you started from',
  'together.base-unknown': 'not known: choose for all that differs',
  'together.taken':
    '{count, plural, =0 {Nothing comes over from {other} by itself} one {One change comes over from {other}} other {# changes come over from {other}}}',
  'together.conflicts':
    '{count, plural, =0 {Nothing to choose} one {One thing to choose} other {# things to choose}}',
  'together.facts':
    '{count, plural, one {In doubt until you choose: {facts}} other {In doubt until you choose, # facts: {facts}}}',
  'together.no-fact': 'No question rests on these',
  'together.changed': 'was {base}, changed on both sides',
  'together.removed': 'taken away on one side, changed on the other; was {base}',
  'together.added': 'added on both sides, not alike',
  'together.order': 'put in another order on both sides',
  'together.vouched': 'changed on one side, and the old value checked on the other',
  'together.mine': 'This draft: {value}',
  'together.theirs': '{other}: {value}',
  'together.leave-unsure': 'Leave it unsure: it is not asked until somebody checks it',
  'together.left':
    '{count, plural, =0 {All is chosen.} one {One choice is still to be made.} other {# choices are still to be made.}}',
  'together.take': 'Take this into the draft',
  'together.done':
    'Both are in the draft now. Undo takes it back. Look at what the checks say: two right changes may not go together.',
  'variant.heading': 'Variant',
  'variant.make-it': 'Make a variant',
  'variant.make': 'Make a variant of {title}',
  'variant.named': '{title}, variant',
  'variant.of':
    'A variant of {title}, last compared with its revision {revision}; the newest here is {newest}.',
  'variant.no-parent': 'It is a variant of the deck “{deck}”, which is not on this device.',
  'variant.differs':
    '{count, plural, =0 {Every fact is as in {title}.} one {One thing is not as in {title}:} other {# things are not as in {title}:}}',
  'variant.bring': 'Bring over what changed in {title} up to revision {revision}',
} as const;
