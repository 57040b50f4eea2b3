/** Questions on one-ways: when they hold, when they overrun, what brakes the engine. */
export const ONE_WAYS = {
  'family.manual-range': 'The same ratio, held by hand',
  'manual-range.prompt':
    'Ranges {free} and {firm} have the same ratio; the row of {free} is given. What is on in {firm}, and which of the two brakes the engine when you lift off?',
  'manual-range.element': '{element} on',
  'manual-range.braking': 'brakes the engine',
  'manual-range.yes': 'yes',
  'manual-range.no': 'no',
  'manual-range.row':
    'Range {firm} has {extraCount, plural, =0 {nothing} other {{extra}}} on that {free} has not{sparedCount, plural, =0 {} other {, and does without {spared}}}.',
  'manual-range.reason':
    'In range {free} the load is held by {oneWays}. A one-way lets go when the output pushes back, so range {free} freewheels, and range {firm}, held by friction elements, brakes the engine.',

  'family.one-way-acts': 'When a one-way holds',
  'one-way-acts.prompt':
    'What does {oneWay} do in each range: with the engine pulling, and when you lift off and the output pushes back?',
  'one-way-acts.drive': 'engine pulling',
  'one-way-acts.coast': 'output pushing',
  'one-way-acts.holds': 'holds',
  'one-way-acts.overruns': 'overruns',
  'one-way-acts.reason':
    'It holds only where the load would turn it the way it blocks: here with the engine pulling in {ranges}. On coast the load pushes the other way and it lets go.',
  'one-way-acts.line-holds':
    'Range {range}: the engine pushes against what {oneWay} blocks; on coast it lets go.',
  'one-way-acts.line-overruns': 'Range {range}: its shafts run apart, so {oneWay} overruns either way.',
} as const;
