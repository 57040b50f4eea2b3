/** The way to a class date: what will be known, what is left out, how well it is predicted. */
export const PLAN = {
  'plan.title': 'On the way to class',
  'plan.waiting': 'Working it out. The drill need not wait.',
  'plan.not-here': 'This browser cannot work it out. The drill follows a simple rule instead.',
  'plan.forecast': 'By class day about {share}\u00a0%, likely {low} to {high}\u00a0%.',
  'plan.forecast-today': 'Today about {share}\u00a0%, likely {low} to {high}\u00a0%.',
  'plan.meaning':
    'That is the part of {assigned, select, yes {what is assigned} other {this deck}} you would know, if you practise {minutes, plural, one {# minute} other {# minutes}} {days, select, 7 {every day} 1 {one day a week} other {{days} days a week}}.',
  'plan.ceiling':
    'With {minutes} minutes a day at most {most}\u00a0%; with {more} at most {moreMost}\u00a0%.',
  'plan.ceiling-flat': 'With {minutes} minutes a day at most {most}\u00a0%. More minutes would add little.',
  'plan.ceiling-more': 'With {more} minutes a day at most {moreMost}\u00a0%.',
  'plan.left-out':
    '{count, plural, one {One of {all} facts finds no time before class} other {# of {all} facts find no time before class}}',
  'plan.which-out': 'Left out are those that count least for the time they take:',
  'plan.left-out-area': '{area}: {count}',
  'plan.make-room': 'More minutes or more days a week make room for them.',
  'plan.days-field': 'Days a week with practice',
  'plan.more': 'How you stand, topic by topic',
  'plan.worth': 'Today’s drill is worth about {facts, plural, one {one fact} other {# facts}} on class day.',

  'progress.title': 'How you stand',
  'progress.no-class': 'Set a class date on the first page to see where practice leads.',
  'progress.course': 'From today to class',
  'progress.course-said':
    'Expected on class day: {kept}\u00a0% with today’s drill, {skipped}\u00a0% if you leave it out today.',
  'progress.with-today': 'with today’s drill',
  'progress.without-today': 'left out today',
  'progress.minutes': 'The plan uses {minutes, plural, one {# minute} other {# minutes}} a day.',
  'progress.minutes-spare':
    'The plan uses about {used, plural, one {# minute} other {# minutes}} of your {minutes} a day; more would add little.',
  'progress.axis-share': 'known, %',
  'progress.axis-today': 'today',
  'progress.axis-class': 'class',
  'progress.axis-minutes': 'minutes',
  'progress.topics': 'Topic by topic',
  'progress.topic': '{area}: now {now}\u00a0%',
  'progress.topic-class': '{area}: now {now}\u00a0%, by class likely {low} to {high}\u00a0%',
  'progress.fact': 'Fact',
  'progress.now': 'Now',
  'progress.by-class': 'By class',
  'progress.not-met': 'not met',
  'progress.share': '{share}\u00a0%',
  'progress.no-time': 'no time',

  'progress.calibration': 'How well this is foreseen',
  'progress.too-few':
    'Too few answers yet. Each question about a single fact shows how likely a right answer was, and then whether it came.',
  'progress.foreseen':
    'In {answers} questions about a single fact, asked again after a day or more, {predicted}\u00a0% right answers were expected and {observed}\u00a0% came.',
  'progress.gap':
    'Group by group the expectation was off by about {points, plural, one {# point} other {# points}}.',
  'progress.surprise':
    'Mean surprise of an answer: {own}. Expecting your average each time would give {plain}, so the forecast {helps, select, yes {tells more than your average} other {does not yet tell more than your average}}.',
  'progress.bin-axis': 'expected right, %',
  'progress.bin-came': 'came right, %',
  'progress.bin':
    '{count, plural, one {# answer} other {# answers}}: {predicted}\u00a0% expected, {observed}\u00a0% came',
  'progress.chart-note':
    'Each square is a group of answers; larger ones hold more. On the slanted line expectation and result agree. The bar is how far chance alone may stray.',
  'progress.as-list': 'The same as a list',

  'progress.scale': 'Your own pace of forgetting',
  'progress.scale-waiting': 'Working it out…',
  'progress.scale-not-here': 'This browser cannot work it out. The usual pace of forgetting is used.',
  'progress.scale-too-few':
    'Too few answers yet to hold some back for a test. The usual pace of forgetting is used.',
  'progress.scale-tested':
    'Estimated from your first {fitted} answers and tried on the {heldOut} after them. Mean surprise there: {usual} by the usual pace, {personal} by your own; chance alone makes a difference of {error}.',
  'progress.scale-adopted':
    'Your own foresees you better, so it is used: a first memory lasts {times} times as long as usual.',
  'progress.scale-kept': 'That is no clear gain, so the usual pace stays in use.',

  'fact.named': '{kind}: {what}',
} as const;
