/** Questions about work in steps: what may come next, in which order, why, and until when. */
export const PROCEDURE = {
  'step.quoted': '“{step}”',
  'step.first': 'First',
  'step.last': 'Last',
  'step.order': 'In order: {steps}',
  'step.before': '“{earlier}” comes before “{later}”',
  'step.because': '“{earlier}” comes before “{later}” {reason}',

  'family.next-steps': 'What may come next',
  'next-steps.prompt':
    'Work: {work}. What is ticked is done, and everything that has to come before it. Which of these may be done now?',
  'next-steps.row': 'Possible now: {steps}',
  'next-steps.now': '“{step}” All it needs is done.',

  'family.step-order': 'Steps in order',
  'step-order.prompt': 'Work: {work}. Put these steps in the order they have to be done in.',

  'family.step-reason': 'Why one step comes first',
  'step-reason.prompt': 'Why does “{earlier}” have to come before “{later}”?',
  'step-reason.reason': 'The sheet gives this reason for these two steps.',

  'family.step-skipped': 'A step left out',
  'step-skipped.prompt': 'Somebody leaves this step out: “{step}” What comes of it?',
  'step-skipped.reason': 'That is what the sheet notes of this step.',
  'step-skipped.line': '“{step}” left out: {outcome}',

  'family.assembly-order': 'Assembly in order',
  'assembly-order.prompt':
    'Work: {work}. Put these steps of the assembly in an order that works. It is not simply stripping turned round.',
  'assembly-order.row': 'One order that works: {steps}',

  'family.last-chance': 'The last chance to measure',
  'last-chance.prompt':
    'Wanted: “{check}” Work: {work}. It can be had for part of the work only. Which step takes the last chance away?',
  'last-chance.row': '“{check}” Before this step or never: “{closing}”',
  'last-chance.needs':
    '{count, plural, =0 {It is possible from the start.} other {It is possible as soon as this is done: {needs}}}',
} as const;
