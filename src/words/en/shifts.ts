/** Questions on shifts beyond the next range, on how a shift hands over, and on speeds before and after. */
export const SHIFTS = {
  'family.skip-shift': 'What changes in a longer shift',
  'skip-shift.prompt': 'The unit shifts straight from range {from} to range {to}. What does each element do?',
  'skip-shift.reason':
    'Only the first and the last row count. What {count, plural, one {range {ranges} uses} other {ranges {ranges} use}} is passed by.',

  'family.shift-kind': 'How a shift hands over',
  'shift-kind.prompt': 'How does each of these shifts hand over, with the engine pulling?',
  'shift-kind.lets-go': 'an element comes on and a one-way lets go by itself, so no timing',
  'shift-kind.catches': 'an element goes off and a one-way catches by itself, so no timing',
  'shift-kind.exchange': 'one goes off while another comes on, so it has to be timed',
  'shift-kind.comes-on-alone': 'an element comes on and nothing lets go',
  'shift-kind.line-lets-go': 'Range {from} to {to}: {on}, and {oneWays} overruns from then on.',
  'shift-kind.line-catches': 'Range {from} to {to}: {off}, and {oneWays} takes the load.',
  'shift-kind.line-exchange': 'Range {from} to {to}: {off} as {on}, and no one-way stands in.',
  'shift-kind.line-comes-on-alone': 'Range {from} to {to}: {on}.',
  'shift-kind.reason':
    'A one-way needs no timing: it lets go as soon as its shaft turns ahead, and catches as soon as it falls back. Two friction elements have to share the load for a moment.',
} as const;
