/** Questions on suspects: which faults fit, which test tells them apart, where the chain breaks. */
export const SUSPECTS = {
  'suspects.feeding': '{fault} (it feeds {elements})',
  'suspects.bearing': '{fault} ({solenoids} hang on it)',
  'suspects.left': 'Left standing: {faults}.',
  'suspects.stands': 'Stands: {fault}.',
  'suspects.struck': 'Struck out: {fault}. {test}: then “{would}”, but seen was “{seen}”.',

  'family.faults-that-fit': 'Faults that fit what the ranges do',
  'faults-that-fit.prompt':
    'One fault is in the unit. On the road: {rows}. Which of these could it be? Tick every one that fits.',
  'faults-that-fit.rows': 'in {ranges} “{does}”',
  'faults-that-fit.reason':
    'A fault fits only when it gives each row: the ranges that still work count as much as those that do not.',

  'family.one-cause': 'Two complaints, one cause',
  'one-cause.prompt':
    'Two complaints about one unit: {first}, and {second}. There is one fault. Which of these would be behind both? Tick every one.',
  'one-cause.reason': 'One fault has to explain both. What explains only one of them is struck out.',

  'family.impossible-suspects': 'Suspects that results strike out',
  'impossible-suspects.prompt':
    'The complaint: {symptom}. All of these faults would do that. Then two results came in. {first} {second} Which of the faults are now impossible?',
  'impossible-suspects.reason':
    'One result that a fault cannot give strikes it out. What is merely not proved stays.',

  'family.separating-test': 'The test that tells two suspects apart',
  'separating-test.prompt':
    'The complaint: {symptom}. Two suspects are left: {first}, or {second}. Which of these tests tells them apart?',
  'separating-test.row': '{test}: “{first}” with the one, “{second}” with the other.',
  'separating-test.reason':
    'A test tells two suspects apart only when it shows one thing with the one and another with the other.',
  'separating-test.alike': '{test}: “{reading}” with both.',

  'family.next-test': 'Tests by what they tell for their effort',
  'next-test.prompt':
    'The complaint: {symptom}. Six suspects are left, each as likely as any other. The table says what four tests would show. Order the tests by how many suspects they strike out on average for each point of effort.',
  'next-test.item': '{test} ({cost, plural, one {# point} other {# points}})',
  'next-test.first': 'strikes out most for the effort',
  'next-test.last': 'strikes out least for the effort',
  'next-test.row': 'First: {test}.',
  'next-test.reason':
    'A test sorts the suspects into heaps. After it only the heap with the cause is left: a heap of k comes up k times in {count} and strikes out the others.',
  'next-test.line':
    '{test}: heaps of {heaps}, so {struck} struck out on average; by {cost, plural, one {# point} other {# points}} of effort that is {gain}.',

  'family.predicted-gauge': 'What a gauge shows with a fault',
  'predicted-gauge.prompt':
    'Suppose {fault}. Everything else is sound and commanded as charted. What does a gauge show at each of these ports?',
  'predicted-gauge.row-behind':
    'The fault is in {element} itself, behind its port: the gauge shows what it always does.',
  'predicted-gauge.row-port': 'The fault changes what comes to the port, so the gauge shows it.',
  'predicted-gauge.reason':
    'A gauge tells what pressure comes to the port, not what the element does with it.',
} as const;
