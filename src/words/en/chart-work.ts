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
} as const;
