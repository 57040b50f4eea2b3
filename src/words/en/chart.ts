/** Questions on reading the apply chart and on shifts. */
export const CHART = {
  'shaft.case': 'the case',
  'chart.row': 'Range {range}: {elements}.',
  'chart.drives-at': 'With these on, range {range} drives at {ratio} : 1.',
  'chart.brake-holds': '{element} holds {first} still.',
  'chart.clutch-joins': '{element} makes two shafts turn as one: {first}; {second}.',
  'chart.one-way-joins':
    '{element} is a one-way: it stops {first} turning {blocked, select, forward {forward} other {backward}} past {second}.',

  'family.range-elements': 'Elements of a range',
  'range-elements.prompt': 'Which elements are on in range {range}?',

  'family.range-from-elements': 'Range from its elements',
  'range-from-elements.prompt': 'On, and nothing else: {elements}. Which range is it?',
  'range-from-elements.reason': 'No other range has just these on.',

  'family.element-ranges': 'Ranges of an element',
  'element-ranges.prompt': 'In which ranges is {element} on?',
  'element-ranges.row': '{element} is on in {count, plural, one {range} other {ranges}} {ranges}.',

  'change.comes-on': 'comes on',
  'change.goes-off': 'goes off',
  'change.stays-on': 'stays on',
  'change.stays-off': 'stays off',
  'shift.named': '{from} to {to}',
  'shift.off': '{count, plural, =0 {nothing goes off} one {{elements} goes off} other {{elements} go off}}',
  'shift.on': '{count, plural, =0 {nothing comes on} one {{elements} comes on} other {{elements} come on}}',
  'shift.changes': '{count}',

  'family.shift-changes': 'What changes in a shift',
  'shift-changes.prompt': 'Shift from range {from} to range {to}: what does each element do?',
  'shift-changes.row': 'In this shift {off} and {on}.',
  'shift-changes.held': '{count, plural, one {Stays} other {Stay}} on through the shift: {elements}.',
  'shift-changes.none-held': 'Nothing stays on through the shift.',
  'shift-changes.idle': 'Off before and after: {elements}.',
  'shift-changes.ratios':
    '{before, select, higher {The ratio falls from range {from} to range {to}: the output turns faster for the same input.} other {The ratio rises from range {from} to range {to}: the output turns slower for the same input.}}',

  'family.shift-count': 'How much a shift changes',
  'shift-count.prompt':
    'How many elements change in each shift? Count those that go off and those that come on.',
  'shift-count.prompt-with-one-ways':
    'How many elements change in each shift? Count those that go off and those that come on, one-ways that start or stop holding too.',
  'shift-count.row': 'In the order asked: {counts} elements.',
  'shift-count.reason':
    'What is on in both ranges does not count, and what a range in between uses does not either.',
  'shift-count.detail': 'From range {from} to range {to} {off} and {on}.',
} as const;
