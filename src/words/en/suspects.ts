/** Questions on suspects: which faults fit, which test tells them apart, where the chain breaks. */
export const SUSPECTS = {
  'suspects.feeding': '{fault} (it feeds {elements})',
  'suspects.bearing': '{fault} ({solenoids} hang on it)',
  'suspects.unit': 'Unit {name}',
  'suspects.left': 'Left standing: {faults}.',
  'suspects.stands': 'Stands: {fault}.',
  'suspects.struck': 'Struck out: {fault}. {test}: it would be “{would}”, but “{seen}” was seen.',

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

  'family.first-break': 'Where the chain breaks',
  'first-break.prompt':
    'Three units, one fault each. Every row was read from the command to the range. At which link does each go wrong first?',
  'first-break.case':
    '{name}: {element} in range {range}, where it should be {wanted, select, on {on} other {off}}; {solenoid} gives {gives, select, full {full pressure} other {none}} unplugged',
  'first-break.column-asked': 'commanded',
  'first-break.column-voltage': 'voltage at the winding',
  'first-break.column-current': 'current',
  'first-break.column-given': 'after the solenoid',
  'first-break.column-port': 'at the port',
  'first-break.column-road': 'the range',
  'first-break.on': 'current',
  'first-break.off': 'no current',
  'first-break.voltage': 'there',
  'first-break.no-voltage': 'none',
  'first-break.row':
    'Go along the chain from the command; the first reading that does not follow from the one before it is the place.',
  'first-break.reason':
    'Everything after that link is off as well, but only because of it. Before it all is sound: no need to look there.',
  'first-break.line':
    '{name}: {link}. {side, select, driver {Current is commanded, but no voltage comes: a supply or driver.} winding {Voltage is there, but no current flows: the winding or its plug.} valve {The solenoid does not give what its current asks for.} feed {The solenoid gives pressure, but it does not come to the port.} other {The port is as it should be, but the element does not do as its pressure says.}}',

  'family.slip-or-ratio': 'Slip, another range, or a wrong count',
  'slip-or-ratio.prompt':
    'Ratios of this unit: {ratios}. Four units were driven in two commanded ranges each, read at two moments (input and output, rpm). What is the matter with each?',
  'slip-or-ratio.ratio': '{range} {ratio}',
  'slip-or-ratio.first': 'first reading',
  'slip-or-ratio.second': 'second reading',
  'slip-or-ratio.row': '{name}, range {range} ({ratio} : 1)',
  'slip-or-ratio.speeds': '{input} in, {output} out',
  'slip-or-ratio.seen': '{ratio} : 1',
  'slip-or-ratio.as-commanded': 'all as commanded',
  'slip-or-ratio.other-range': 'really in another range',
  'slip-or-ratio.slip': 'slips',
  'slip-or-ratio.wrong-count': 'a tooth count is set wrong',
  'slip-or-ratio.by': 'Divide input by output and set it beside the commanded ratio.',
  'slip-or-ratio.reason':
    'Steady at the ratio of another range: it is in that range. Drifting and at no ratio: slip. Off by the same factor in every range: a speed is counted wrong.',
  'slip-or-ratio.line': '{name}: {verdict}.',

  'family.air-check': 'What an air check tells',
  'air-check.prompt':
    'Air, regulated as the maker’s information says and with eyes covered, is let into the passages of four elements, one after the other. What does each tell?',
  'air-check.passage': '{element}: {noticed}',
  'air-check.thud': 'a dull thud, then quiet',
  'air-check.nothing': 'nothing moves, and no air is heard',
  'air-check.hiss': 'no thud; air hisses on at the piston of {element}',
  'air-check.two': 'a thud, and {other} moves as well; air hisses on there',
  'air-check.sound': 'sound',
  'air-check.blocked': 'the passage is blocked',
  'air-check.seal': 'the seal of its piston leaks',
  'air-check.crosses': 'it leaks into another passage',
  'air-check.row': 'A thud is a piston that moves; a hiss is air that goes on escaping.',
  'air-check.reason':
    'Ask where it hisses and what else moves: at its own piston it is the seal, at another element the passages are joined.',
  'air-check.line': '{element}: {noticed}. So: {verdict}.',
} as const;
