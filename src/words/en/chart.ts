/** Questions on reading the apply chart and on shifts. */
export const CHART = {
  'shaft.case': 'the case',
  'chart.row': '{range}: {elements}.',
  'chart.drives-at': 'With these on, {range} drives at {ratio} : 1.',
  'chart.element-joins': '{element} joins {first} and {second}.',
  'family.range-elements': 'Elements of a range',
  'range-elements.prompt': 'Which elements are on in {range}?',
} as const;
