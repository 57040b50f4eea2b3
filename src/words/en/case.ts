/** The case-run screen. */
export const CASE = {
  'case.title': 'A case to solve',
  'case.link': 'Solve a case',
  'case.work-order': 'Work order',
  'case.one-fault': 'One fault is behind it. Ask for tests, one at a time; name the cause when you have it.',
  'case.found-so-far':
    'What the tests show ({spent, plural, one {# point} other {# points}} of effort so far)',
  'case.ask-next': 'Ask for a test',
  'case.tests-of-kind': '{kind}, {cost, plural, one {# point} other {# points}} each',
  'test-kind.road': 'Road test, range by range',
  'test-kind.codes': 'Codes',
  'test-kind.signal': 'Sensor signals',
  'test-kind.voltage': 'Voltage at the connector',
  'test-kind.resistance': 'Resistance at the connector',
  'test-kind.gauge': 'Pressure gauge at a port',
  'case.name-cause': 'Name the cause',
  'case.cause-field': 'The cause is',
  'case.no-cause': 'not yet known',
  'case.name-it': 'Name it',
  'case.chart': 'Chart and gear train',
  'case.none': 'The data of this deck do not make a case: it needs solenoids or elements whose faults show.',
  'case.found': 'The cause: {cause}.',
  'case.found-early':
    'The cause: {cause}. You named it while a test could still have told the suspects apart, so it was partly a guess.',
  'case.not-found': 'The cause was another one: {cause}.',
  'case.contradicted': 'What you named does not fit this: {seen}',
  'case.effort':
    'You spent {spent, plural, one {# point} other {# points}} on {tests, plural, one {# test} other {# tests}}. The best way from this work order takes {average} on average, {worst} at worst, and {here} for this cause.',
  'case.your-way': 'Your way, test by test',
  'case.suspects-first':
    '{count, plural, one {One fault fits} other {# faults fit}} the work order before any test.',
  'case.struck-out': 'struck out',
  'case.struck-nobody': 'It struck none of them out.',
  'case.better-test': 'More would have been told for the effort by: {test}.',
  'case.best-way': 'The best way to this cause',
  'case.another': 'Another case',
} as const;
