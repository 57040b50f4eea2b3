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
} as const;
