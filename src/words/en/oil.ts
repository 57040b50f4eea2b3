/** Questions on oil: currents through a shift, bench readings, the manual valve, interlocks. */
export const OIL = {
  'family.solenoid-changes': 'Solenoids in a shift',
  'solenoid-changes.prompt':
    'Range {from} to range {to}; both rows are shown. What does the current of each solenoid do?',
  'solenoid-changes.prompt-lever':
    'Lever in {position}, range {from} to range {to}; both rows are shown. What does the current of each solenoid do?',
  'solenoid-changes.switched-on': 'is switched on',
  'solenoid-changes.switched-off': 'is switched off',
  'solenoid-changes.stays-on': 'stays on',
  'solenoid-changes.stays-off': 'stays off',
  'solenoid-changes.rows': '{from} {to}',
  'solenoid-changes.line':
    '{solenoid}: the pressure at {elements} {change, select, gains {comes} loses {goes} kept {stays} other {stays away}}, so its current {sense}.',

  'family.polarity-evidence': 'What bench readings tell of a solenoid',
  'polarity-evidence.prompt':
    'Four solenoids without tags were tried on the bench, full supply pressure behind them. What does each give with no current?',
  'polarity-evidence.piece': '{letter}: {readings}',
  'polarity-evidence.reading': '{pressure} bar at {current} A',
  'polarity-evidence.full': 'full pressure: current takes it away',
  'polarity-evidence.none': 'no pressure: current brings it',
  'polarity-evidence.dead': 'it does not follow the current, so it is not in order',
  'polarity-evidence.open': 'the readings do not tell: another current is needed',
  'polarity-evidence.line-full':
    '{letter}, by current: {readings}. The pressure falls, so it is full at no current.',
  'polarity-evidence.line-none':
    '{letter}, by current: {readings}. The pressure rises, so it is none at no current.',
  'polarity-evidence.line-dead': '{letter}, by current: {readings}. The same at both, so it does not follow.',
  'polarity-evidence.line-open': '{letter}: {readings}. One reading half way says nothing of the sense.',
  'polarity-evidence.reason':
    'Put the readings in the order of the current first. What matters is which way the pressure goes, not how high one reading is.',

  'family.valve-cuts': 'What the manual valve lets through',
  'valve-cuts.prompt': 'Lever in {position}. Who decides whether each of these has pressure?',
  'valve-cuts.solenoid': 'its solenoid: the feed is open',
  'valve-cuts.by-hand': 'the manual valve: it feeds it, whatever the solenoids do',
  'valve-cuts.cut': 'nobody: its feed is cut off',
  'valve-cuts.row': 'Cut off in {position}: {count, plural, =0 {nothing} other {{elements}}}.',
  'valve-cuts.reason':
    'A solenoid can only pass on what the manual valve gives it. Where the feed is cut, no current brings pressure.',
  'valve-cuts.line-solenoid': 'Open to their solenoids: {count, plural, =0 {nothing} other {{elements}}}.',
  'valve-cuts.line-by-hand': 'Fed by the valve itself: {count, plural, =0 {nothing} other {{elements}}}.',

  'family.interlock': 'What an interlock keeps off',
  'interlock.prompt':
    'Each of these is commanded on together. Which does interlock {interlock} not let come on as commanded?',
  'interlock.prompt-lever':
    'Lever in {position}, and each of these is commanded on together. Which does interlock {interlock} not let come on as commanded?',
  'interlock.row':
    '{interlock} acts while {count, plural, one {{whenApplied} has} other {{whenApplied} have}} pressure, and keeps it from {blocks}.',
  'interlock.reason':
    'It needs all it waits for, and something to keep off. Whether the rest would tie up does not come into it.',
  'interlock.line':
    '{elements}: {off} {count, plural, one {gets} other {get}} no pressure. What is left: {does}',
} as const;
