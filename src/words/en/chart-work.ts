/** Questions that work with the chart: what goes together, what to look at, what was copied wrong. */
export const CHART_WORK = {
  'family.element-company': 'What is on beside an element',
  'element-company.prompt':
    'Take all ranges that have {element} on, reverse too. In how many of them is each of these on as well?',
  'element-company.all': 'in all of them',
  'element-company.some': 'in some of them',
  'element-company.none': 'in none of them',
  'element-company.row': '{element} is on in {ranges}.',
  'element-company.reason':
    'Always on with it: {alwaysCount, plural, =0 {nothing} other {{always}}}. Never on with it: {neverCount, plural, =0 {nothing} other {{never}}}.',
  'element-company.line': '{other}: {count, plural, =0 {in none of these} other {on as well in {ranges}}}.',

  'family.look-first': 'What to look at first',
  'look-first.prompt':
    'The unit drives, and you want to tell the range by looking at one element at a time. {count, plural, =0 {Nothing is known yet.} other {Known so far: {known}.}} Which element is best looked at next, so that the fewest ranges are left even if it goes badly? Tick every one that is as good.',
  'look-first.on': '{element} is on',
  'look-first.off': '{element} is off',
  'look-first.row': 'Still possible: {ranges}.',
  'look-first.reason':
    '{element} is on in {on} of them and off in {off}, so whatever you see, at most {worst} are left.',
  'look-first.line': '{element}: on in {on}, off in {off}, at worst {worst} left.',

  'family.copied-rows': 'Wrong cells in a copied chart',
  'copied-rows.prompt':
    'These rows were copied from the chart, their ratios correctly. In some of them one cell was copied wrong: an element too many or one too few. Which?',
  'copied-rows.row': '{range}, at {ratio} : 1: {elements}',
  'copied-rows.as-copied': 'right as copied',
  'copied-rows.cell': 'cell of {element}',
  'copied-rows.too-many': 'Range {range}, {ratio} : 1: {element} has to be off.',
  'copied-rows.too-few': 'Range {range}, {ratio} : 1: {element} has to be on.',
  'copied-rows.reason':
    'With that one cell put right the row drives at its ratio; with any other one changed it does not.',
} as const;
