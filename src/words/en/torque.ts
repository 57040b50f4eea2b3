/** Questions on torque and on gearsets: what one does by itself, what carries the load, what is lost without it. */
export const TORQUE = {
  'member.sun': 'sun',
  'member.ring': 'ring',
  'member.carrier': 'carrier',

  'family.one-set': 'One gearset by itself',
  'one-set.prompt-simple':
    'Take {gearset} by itself: sun {sunTeeth} teeth, ring {ringTeeth}, single pinions. How does the output turn against the member that drives?',
  'one-set.prompt-double-pinion':
    'Take {gearset} by itself: sun {sunTeeth} teeth, ring {ringTeeth}, pinions in pairs. How does the output turn against the member that drives?',
  'one-set.held': '{driven} drives, {out} drives out, {third} held',
  'one-set.joined': '{driven} and {third} joined and driven, {out} drives out',
  'one-set.slower': 'same way, slower',
  'one-set.alike': 'same way, just as fast',
  'one-set.faster': 'same way, faster',
  'one-set.backward-slower': 'other way, slower',
  'one-set.backward-faster': 'other way, faster',
  'one-set.line':
    '{way}: one turn in gives {turns} out, {sense, select, backward {the other way} other {the same way}}.',
  'one-set.reason-simple':
    'With single pinions the carrier is the slow one: it is slower than what drives it and makes what it drives faster. With the carrier held, sun and ring turn opposite ways.',
  'one-set.reason-double-pinion':
    'With pinions in pairs sun and ring turn the same way when the carrier is held, and the ring takes the place that the carrier has with single pinions.',

  'torque.carried': '{element} in range {range}{count, plural, =0 { (alone)} other { (with {others})}}',
  'torque.set':
    '{gearset} shares torque as its teeth, sun {sunPart}, ring {ringPart}, carrier {carrierPart}: {sun}, {ring} and {carrier} N·m.',
  'torque.shaft': '{shaft} is kept in balance by {element} with {torque} N·m.',
  'torque.case':
    'As a check: {input} N·m go in and {output} come out, so the case gives {reaction} N·m in all, through brakes, one-ways and gears fixed to it.',

  'family.element-torque': 'Torque on an element',
  'element-torque.prompt':
    'Range {range} has {elements} on and {input} N·m go into the input. How much torque does {element} carry? Whole N·m, losses left out; within {tolerance} of it is right.',
  'element-torque.reason': '{element} carries {torque} N·m, {times} times what goes in.',

  'family.torque-order': 'Torque put in order',
  'torque-order.prompt':
    'The same torque goes into the input each time. Put these in order of the torque the element carries, the most first.',
  'torque-order.first': 'most torque',
  'torque-order.last': 'least torque',
  'torque-order.row': 'From most to least: {carried}.',
  'torque-order.reason':
    'How much an element carries depends on where it stands in the train, not only on how low the range is.',
  'torque-order.line': '{carried}: {times} times the torque on the input.',

  'family.held-push': 'Which way a held part is pushed',
  'held-push.prompt':
    'The engine pulls. Which way would the part that each brake holds turn if the brake let go?',
  'held-push.forward': 'forward, the way the input turns',
  'held-push.backward': 'backward, against the input',
  'held-push.nowhere': 'neither way: nothing pushes it',
  'held-push.line':
    '{carried}: {push, select, forward {forward} other {backward}}.{known, select, yes { With the output stalled and the brake off, {shaft} turns {turns} that way for one turn of the input.} other {}}',
  'held-push.reason':
    'Think of the output stalled by the load and the brake let go: the way the input then turns the part is the way it pushes.',

  'family.set-stripped': 'Ranges lost when a gearset strips',
  'set-stripped.prompt':
    'The teeth of {gearset} are stripped: its members turn past each other and pass no torque. Which ranges are lost, with the engine pulling? A range is lost when it does not drive or drives at another ratio.',
  'set-stripped.row': 'Lost without {gearset}: {ranges}.',
  'set-stripped.reason':
    'A range is kept when its elements make the torque go round the set. That a set turns does not mean that it works, and a set that turns as one may be carrying the load.',
  'set-stripped.line-kept': 'Range {range}: drives as before, no torque goes through {gearset}.',
  'set-stripped.line-other': 'Range {range}: drives at {ratio} : 1, another ratio.',
  'set-stripped.line-no-drive': 'Range {range}: does not drive without {gearset}.',
  'set-stripped.line-output-held': 'Range {range}: the output is held still without {gearset}.',
  'set-stripped.line-tied-up': 'Range {range}: ties up without {gearset}.',
} as const;
