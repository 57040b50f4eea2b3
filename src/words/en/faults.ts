/** Questions on faults and on speeds read from the scan tool. */
export const FAULTS = {
  'outcome.works': 'Range {range}: works as charted.',
  'outcome.covered': 'Range {range}: still drives on {oneWays}, but no longer brakes the engine.',
  'outcome.unneeded': 'Range {range}: drives just as well without {element}.',
  'outcome.no-drive': 'Range {range}: nothing takes the load, so it does not drive.',
  'outcome.output-held': 'Range {range}: the output is held still.',
  'outcome.tied-up': 'Range {range}: ties up, the input cannot turn.',
  'outcome.becomes': 'Range {range}: drives as range {becomes}, at {ratio} : 1.',
  'outcome.other-ratio': 'Range {range}: drives at {ratio} : 1, the ratio of no range.',

  'family.element-fails': 'Ranges lost when an element fails',
  'element-fails.prompt':
    '{element} no longer applies. Which ranges are lost, with the engine pulling? A range is lost when it does not drive or drives at another ratio.',
  'element-fails.prompt-one-way':
    '{element} no longer holds. Which ranges are lost, with the engine pulling? A range is lost when it does not drive or drives at another ratio.',
  'element-fails.row': 'The chart uses {element} in {ranges}.',
  'element-fails.reason': 'Lost without it: {ranges}.',

  'family.element-stuck': 'Ranges when an element is stuck on',
  'element-stuck.prompt':
    '{element} is stuck on: it never lets go. What does each range do, with the engine pulling?',
  'element-stuck.works': 'works as charted',
  'element-stuck.other-ratio': 'drives at another ratio',
  'element-stuck.tied-up': 'ties up',
  'element-stuck.no-drive': 'does not drive',
  'element-stuck.row': 'The chart uses {element} in {ranges}.',
  'element-stuck.reason':
    'One element more ties the train up, unless the shafts it joins can turn alike there.',

  'family.actual-range': 'The range the speeds show',
  'actual-range.prompt':
    'Range {commanded} is commanded. The scan tool reads {input} rpm at the input and {output} rpm at the output, both steady. Which range is the unit really in?',
  'actual-range.row': '{input} ÷ {output} = {seen}.',
  'actual-range.reason':
    'That is the ratio of range {range} ({ratio} : 1), not of the commanded range {commanded} ({commandedRatio} : 1).',
  'actual-range.reason-commanded': 'That is the ratio of range {range} ({ratio} : 1), the one commanded.',
  'actual-range.line': 'Range {range}: {output} × {ratio} = {expected} rpm at the input.',

  'family.slip-speed': 'Slip from two speeds',
  'slip-speed.prompt-rpm':
    'Range {range} is commanded, ratio {ratio} : 1. The scan tool reads {input} rpm at the input and {output} rpm at the output. By how many rpm does the unit slip? Within {tolerance} rpm is right.',
  'slip-speed.prompt-share':
    'Range {range} is commanded, ratio {ratio} : 1. The scan tool reads {input} rpm at the input and {output} rpm at the output. How much does the unit slip, in percent of the input speed? Within {tolerance} is right.',
  'slip-speed.row': 'With no slip the input turns at {output} × {ratio} = {expected} rpm.',
  'slip-speed.reason': 'Slip is what is left of the input speed: {input} − {expected} = {slip} rpm.',
  'slip-speed.share': '{slip} ÷ {input} = {share} % of the input speed.',
  'slip-speed.not-another': '{input} ÷ {output} = {seen}, the ratio of no other range.',
} as const;
