/** Questions on suspects: which faults fit, which test tells them apart, where the chain breaks. */
export const SUSPECTS = {
  'suspects.seen': 'what it does',
  'suspects.left': 'Left standing: {faults}.',
  'suspects.stands': 'Stands: {fault}.',
  'suspects.struck': 'Struck out: {fault}. {test}: then “{would}”, but seen was “{seen}”.',

  'family.faults-that-fit': 'Faults that fit what the ranges do',
  'faults-that-fit.prompt':
    'One fault is in the unit, and the ranges do what the table says. Which of these could it be? Tick every one that fits.',
  'faults-that-fit.reason':
    'A fault fits only when it gives each row: the ranges that still work count as much as those that do not.',

  'family.one-cause': 'Two complaints, one cause',
  'one-cause.prompt':
    'Two complaints about one unit: {first}, and {second}. There is one fault. Which of these would be behind both? Tick every one.',
  'one-cause.reason': 'One fault has to explain both. What explains only one of them is struck out.',

  'family.impossible-suspects': 'Suspects that results strike out',
  'impossible-suspects.prompt':
    'The complaint: {symptom}. All of these faults would do that. Then the two results in the table came in. Which of the faults are now impossible?',
  'impossible-suspects.reason':
    'One result that a fault cannot give strikes it out. What is merely not proved stays.',
} as const;
