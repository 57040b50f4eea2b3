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

  'gears.together': '{sum} + {element}',

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

  'gears.does-drive-as': '{elements}: drives as range {range}, at {ratio} : 1.',
  'gears.does-drive': '{elements}: drives at {ratio} : 1, the ratio of no range.',
  'gears.does-no-drive': '{elements}: does not drive, the speed of the output is not settled.',
  'gears.does-output-held': '{elements}: holds the output still, but the input can turn.',
  'gears.does-tied-up': '{elements}: ties up, the input cannot turn.',

  'family.tie-ups': 'What ties the train up',
  'tie-ups.prompt':
    'Which of these, on together and nothing else, tie the train up, so that the input cannot turn?',
  'tie-ups.row': 'Tied up: {combinations}.',
  'tie-ups.reason':
    'For these no speed of the input but 0 fits every gearset. Holding the output alone still lets the input turn.',
  'tie-ups.proof': 'Try {elements} with the input turning.',
  'tie-ups.input-held': 'So the input itself is held to the case.',

  'family.neutral-drive': 'What would make neutral drive',
  'neutral-drive.prompt':
    '{count, plural, =0 {In {row}, nothing is on} one {In {row}, {elements} stays on} other {In {row}, {elements} stay on}}. Which elements, each coming on alone{count, plural, =0 {} other { beside that}}, would make it drive?',
  'neutral-drive.row':
    'As soon as {count, plural, one {{elements} comes} other {any one of {elements} comes}} on, {row} drives.',
  'neutral-drive.free':
    '{count, plural, =0 {With nothing on,} other {With {elements} alone,}} nothing settles the speed of the output, so no torque reaches it.',
  'neutral-drive.output-held':
    '{count, plural, =0 {With nothing on,} other {With {elements} alone,}} the output is held still while the input turns.',
  'neutral-drive.tied-up':
    '{count, plural, =0 {With nothing on,} other {With {elements} alone,}} the input cannot turn.',
} as const;
