/** Questions on shifts beyond the next range, on how a shift hands over, and on speeds before and after. */
export const SHIFTS = {
  'family.skip-shift': 'What changes in a longer shift',
  'skip-shift.prompt': 'The unit shifts straight from range {from} to range {to}. What does each element do?',
  'skip-shift.reason':
    'Only the first and the last row count. What {count, plural, one {range {ranges} uses} other {ranges {ranges} use}} is passed by.',

  'family.shift-kind': 'How a shift hands over',
  'shift-kind.prompt': 'How does each of these shifts hand over, with the engine pulling?',
  'shift-kind.lets-go': 'a one-way lets go by itself, so no timing',
  'shift-kind.catches': 'a one-way catches by itself, so no timing',
  'shift-kind.exchange': 'one element for another, so it has to be timed',
  'shift-kind.comes-on-alone': 'an element comes on, nothing lets go',
  'shift-kind.line-lets-go': 'Range {from} to {to}: {on}, and {oneWays} overruns from then on.',
  'shift-kind.line-catches': 'Range {from} to {to}: {off}, and {oneWays} takes the load.',
  'shift-kind.line-exchange': 'Range {from} to {to}: {off} as {on}, and no one-way stands in.',
  'shift-kind.line-comes-on-alone': 'Range {from} to {to}: {on}.',
  'shift-kind.reason':
    'A one-way needs no timing: it lets go as soon as its shaft turns ahead, and catches as soon as it falls back. Two friction elements have to share the load for a moment.',

  'family.output-speed': 'Speed of the output',
  'output-speed.prompt':
    'Range {range}, ratio {ratio} : 1, input at {input} rpm. How fast does the output turn? Whole rpm; within {tolerance} of it is right. Minus if it turns backward.',
  'output-speed.prompt-road':
    'Range {range}, ratio {ratio} : 1, input at {input} rpm, no slip. The final drive is {final} : 1 and a wheel rolls {tyre} m in a turn. How fast does the vehicle go, in km/h? Within {tolerance} of it is right.',
  'output-speed.row': '{input} ÷ {ratio} = {output} rpm at the output.',
  'output-speed.reason': 'Ratio is input speed ÷ output speed, so the output speed is input speed ÷ ratio.',
  'output-speed.reason-road':
    'The final drive divides once more, and what the wheels roll in a minute times 60 is what they roll in an hour: {speed} km/h.',
  'output-speed.wheels': '{output} ÷ {final} = {wheels} rpm at the wheels.',
  'output-speed.road': '{wheels} rpm × {tyre} m × 60 ÷ 1000 = {speed} km/h.',

  'family.shift-guard': 'Shifts that turn the input too fast',
  'shift-guard.prompt':
    'Range {range}: the output turns at {output} rpm, the input at {input} and the engine, through the converter, at {engine}. The input may turn at {limit} rpm at most. What would it do in each other range, at this output speed?',
  'shift-guard.slower': 'turn slower than now',
  'shift-guard.within': 'turn faster, within the limit',
  'shift-guard.too-fast': 'turn too fast',
  'shift-guard.row': 'Above {limit} rpm in {count, plural, =0 {none of these} other {{ranges}}}.',
  'shift-guard.reason':
    'The output keeps its speed through a shift, so the input turns at {output} × ratio. The engine does not come into it.',
  'shift-guard.line': 'Range {range}: {output} × {ratio} = {speed} rpm.',
} as const;
