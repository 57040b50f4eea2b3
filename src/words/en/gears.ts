/** Questions on the gear train: ratios and speeds from tooth counts, tie-ups, neutral. */
export const GEARS = {
  'gears.start': 'Put the input at 1; what is held to the case is at 0.',
  'gears.rule-simple':
    'A simple set: sun teeth × sun speed + ring teeth × ring speed = both teeth together × carrier speed.',
  'gears.rule-double-pinion':
    'A set with pinions in pairs: ring teeth × ring speed − sun teeth × sun speed = the difference in teeth × carrier speed.',
  'gears.equation-simple':
    '{gearset}: {sunTeeth} × {sun} + {ringTeeth} × {ring} = {carrierTeeth} × {carrier}',
  'gears.equation-double-pinion':
    '{gearset}: {ringTeeth} × {ring} − {sunTeeth} × {sun} = {carrierTeeth} × {carrier}',
  'gears.step-call': 'The speed of {shaft} is not known yet: call it {letter}.',
  'gears.step-locks':
    'Two members of {gearset} turn at the same speed, so the whole set does: {shaft} = {speed}.',
  'gears.step-solves': '{equation}, so {shaft} = {speed}.',
  'gears.step-closes': '{equation}, so {letter} = {speed}.',
  'gears.step-clashes': '{equation} cannot be true.',

  'family.row-ratio': 'Ratio of a range',
  'row-ratio.prompt':
    'Range {range} has {elements} on. Work out its ratio, input speed ÷ output speed, to two decimals; within {tolerance} of it is right. Minus if the output turns backward.',
  'row-ratio.reason':
    'With the input at 1, {output} turns at {speed}, {way, select, backward {backward, against the input} other {the same way as the input}}: 1 ÷ {speed} gives a ratio of {ratio}.',

  'gears.elements': '{elements}',

  'family.shaft-speed': 'Speed of a shaft in between',
  'shaft-speed.prompt':
    'Range {range} has {elements} on and the input turns at {rpm} rpm. How fast does {shaft} turn? Whole rpm; within {tolerance} of it is right. Minus if it turns backward.',
  'shaft-speed.reason':
    '{shaft} turns {way, select, backward {backward, against the input,} other {the same way as the input,}} {speed} times as fast: {rpm} rpm.',
  'shaft-speed.scaled': 'At {inputRpm} rpm: {inputRpm} × {speed} = {rpm} rpm.',

  'family.ratio-order': 'Ratios put in order',
  'ratio-order.prompt':
    'The input turns at the same speed each time, with only these elements on. Put them in order of output speed, the fastest forward first. Backward comes last.',
  'ratio-order.first': 'fastest forward',
  'ratio-order.last': 'slowest, or backward',
  'ratio-order.row': 'From fast to slow: ranges {ranges}.',
  'ratio-order.reason':
    'Their ratios are {ratios}. The smaller the ratio, the faster the output; a minus is backward.',
  'ratio-order.detail':
    '{elements} (range {range}): per turn of the input the output turns {speed}, {way, select, backward {backward} other {forward}}.',
} as const;
