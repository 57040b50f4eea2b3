/** The way to a class date: what will be known, what is left out, how well it is predicted. */
export const PLAN = {
  'plan.title': 'On the way to class',
  'plan.waiting': 'Working it out. The drill need not wait.',
  'plan.not-here': 'This browser cannot work it out. The drill follows a simple rule instead.',
  'plan.forecast': 'By class day about {share} %, likely {low} to {high} %.',
  'plan.forecast-today': 'Today about {share} %, likely {low} to {high} %.',
  'plan.meaning':
    'That is the part of {assigned, select, yes {what is assigned} other {this deck}} you would know, if you practise {minutes, plural, one {# minute} other {# minutes}} {days, select, 7 {every day} 1 {one day a week} other {{days} days a week}}.',
  'plan.ceiling': 'With {minutes} minutes a day at most {most} %; with {more} at most {moreMost} %.',
  'plan.ceiling-flat': 'With {minutes} minutes a day at most {most} %. More minutes would add little.',
  'plan.ceiling-more': 'With {more} minutes a day at most {moreMost} %.',
  'plan.left-out':
    '{count, plural, one {One of {all} facts finds no time before class} other {# of {all} facts find no time before class}}',
  'plan.which-out': 'Left out are those that count least for the time they take:',
  'plan.left-out-area': '{area}: {count}',
  'plan.make-room': 'More minutes or more days a week make room for them.',
  'plan.days-field': 'Days a week with practice',
  'plan.more': 'How you stand, topic by topic',

  'fact.named': '{kind}: {what}',
} as const;
