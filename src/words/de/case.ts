/** The case-run screen, in German. */
export const CASE = {
  'case.title': 'Ein Fall zum Lösen',
  'case.link': 'Einen Fall lösen',
  'case.work-order': 'Werkstattauftrag',
  'case.one-fault':
    'Ein einziger Fehler steckt dahinter. Fordere Prüfungen an, eine nach der anderen; nenne die Ursache, wenn du sie hast.',
  'case.found-so-far':
    'Was die Prüfungen zeigen (bisher {spent, plural, one {# Punkt} other {# Punkte}} Aufwand)',
  'case.ask-next': 'Prüfung anfordern',
  'case.tests-of-kind': '{kind}, je {cost, plural, one {# Punkt} other {# Punkte}}',
  'test-kind.road': 'Probefahrt, Gang für Gang',
  'test-kind.codes': 'Fehlercodes',
  'test-kind.signal': 'Sensorsignale',
  'test-kind.voltage': 'Spannung am Stecker',
  'test-kind.resistance': 'Widerstand am Stecker',
  'test-kind.gauge': 'Manometer an einem Anschluss',
  'case.name-cause': 'Ursache nennen',
  'case.cause-field': 'Die Ursache ist',
  'case.no-cause': 'noch nicht bekannt',
  'case.name-it': 'Nennen',
  'case.chart': 'Schaltmatrix und Räderwerk',
  'case.none':
    'Die Daten dieses Datensatzes ergeben keinen Fall: dafür braucht es Magnetventile oder Schaltelemente, deren Fehler sich zeigen.',
  'case.found': 'Die Ursache: {cause}.',
  'case.found-early':
    'Die Ursache: {cause}. Als du sie genannt hast, hätte eine Prüfung die möglichen Fehler noch trennen können; zum Teil war es also geraten.',
  'case.not-found': 'Die Ursache war eine andere: {cause}.',
  'case.contradicted': 'Was du genannt hast, passt nicht dazu: {seen}',
  'case.effort':
    'Du hast {spent, plural, one {# Punkt} other {# Punkte}} für {tests, plural, one {# Prüfung} other {# Prüfungen}} aufgewendet. Der beste Weg von diesem Auftrag aus braucht im Mittel {average}, schlimmstenfalls {worst}, und bei dieser Ursache {here}.',
  'case.your-way': 'Dein Weg, Prüfung für Prüfung',
  'case.suspects-first':
    '{count, plural, one {Ein Fehler passt} other {# Fehler passen}} vor jeder Prüfung zum Auftrag.',
  'case.struck-out': 'ausgeschlossen',
  'case.struck-nobody': 'Das hat nichts ausgeschlossen.',
  'case.better-test': 'Mehr für den Aufwand hätte gezeigt: {test}.',
  'case.best-way': 'Der beste Weg zu dieser Ursache',
  'case.another': 'Ein anderer Fall',
} as const;
