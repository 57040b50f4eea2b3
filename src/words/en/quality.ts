/** How well the kinds of question measure. */
export const QUALITY = {
  'group.part.quality': 'How well the questions measure',
  'quality.open': 'Work it out from the reports',
  'quality.about':
    'First answers only. A kind tells well when those who answer it right are also right elsewhere: near 0 it tells nothing, below 0 it misleads.',
  'quality.too-few':
    'Too little to say: a kind of question needs {answers} first answers from {people} people.',
  'quality.misleads': 'Misleads.',
  'quality.figures':
    '{missed} % not right, {answers, plural, one {# answer} other {# answers}} from {people, plural, one {# person} other {# people}}; {settled, select, yes {agreement with the rest {discrimination}} other {everybody alike, so it tells nobody apart}}.',
} as const;
