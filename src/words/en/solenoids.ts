/** Questions on solenoids: currents, pressure, the unplugged unit. */
export const SOLENOIDS = {
  'solenoid.on': 'full current',
  'solenoid.off': 'no current',
  'solenoid.elements': '{elements}',
  'solenoid.feeds': '{solenoid} (feeds {elements})',
  'solenoid.feeds-column': 'Feeds',
  'solenoid.current-column': 'Current',
  'solenoid.sense':
    '{solenoid} gives {unplugged, select, full {full pressure when unplugged, so current takes it away} other {no pressure when unplugged, so current brings it}}.',
  'solenoid.line':
    '{solenoid}: {current, select, on {full current} other {no current}}, so {pressure, select, full {full pressure} other {no pressure}} to {elements}.',

  'family.solenoid-elements': 'Elements from solenoid currents',
  'solenoid-elements.prompt': 'These are the solenoid currents. Which elements have pressure?',
  'solenoid-elements.prompt-lever':
    'Lever in {position}, so these feeds are all open. Which elements have pressure?',
  'solenoid-elements.row': 'With pressure: {elements}.',

  'family.range-solenoids': 'Solenoid currents for a range',
  'range-solenoids.prompt-lever':
    'Lever in {position}, range {range} commanded; its row is shown. Which solenoids carry current?',
  'range-solenoids.prompt':
    'Range {range} is commanded, and its row is shown. Which solenoids carry current?',

  'family.unplugged': 'The unplugged unit',
  'unplugged.prompt':
    'The connector is off, so no solenoid has current. Lever in {position}. What does the unit do, with the engine running?',
  'unplugged.range': 'drives in range {range}',
  'unplugged.no-drive': 'drives in no range',
  'unplugged.tied-up': 'ties up',
  'unplugged.output-held': 'holds the output still',
  'unplugged.other-ratio': 'drives at the ratio of no range',
  'unplugged.row': 'Unplugged, in {position}, there is pressure at {elements}.',
  'unplugged.row-none': 'Unplugged, in {position}, no element has pressure.',
  'unplugged.reason': 'So the unit {does}.',
  'unplugged.by-hand': 'In {position} the manual valve feeds {elements} by hand.',
  'unplugged.cut': 'In {position} the manual valve cuts the feed of {elements}.',
} as const;
