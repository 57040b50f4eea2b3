/** The case-run screen. */
export const CASE = {
  'case.title': 'Un caso por resolver',
  'case.link': 'Resolver un caso',
  'case.work-order': 'Orden de trabajo',
  'case.one-fault': 'Detrás hay una sola falla. Pide pruebas, una por una; nombra la causa cuando la tengas.',
  'case.found-so-far':
    'Lo que muestran las pruebas ({spent, plural, one {# punto} other {# puntos}} de esfuerzo hasta ahora)',
  'case.ask-next': 'Pide una prueba',
  'case.tests-of-kind': '{kind}, {cost, plural, one {# punto} other {# puntos}} cada una',
  'test-kind.road': 'Prueba de manejo, marcha por marcha',
  'test-kind.codes': 'Códigos',
  'test-kind.signal': 'Señales de los sensores',
  'test-kind.voltage': 'Voltaje en el conector',
  'test-kind.resistance': 'Resistencia en el conector',
  'test-kind.gauge': 'Manómetro en una toma',
  'case.name-cause': 'Nombra la causa',
  'case.cause-field': 'La causa es',
  'case.no-cause': 'todavía no se sabe',
  'case.name-it': 'Nombrarla',
  'case.chart': 'Tabla y tren de engranajes',
  'case.none':
    'Los datos de este cuaderno no dan para un caso: hacen falta solenoides o elementos cuyas fallas se noten.',
  'case.found': 'La causa: {cause}.',
  'case.found-early':
    'La causa: {cause}. La nombraste cuando una prueba todavía podía separar las fallas posibles, así que en parte fue suerte.',
  'case.not-found': 'La causa era otra: {cause}.',
  'case.contradicted': 'Lo que nombraste no concuerda con esto: {seen}',
  'case.effort':
    'Gastaste {spent, plural, one {# punto} other {# puntos}} en {tests, plural, one {# prueba} other {# pruebas}}. El mejor camino desde esta orden de trabajo toma {average} en promedio, {worst} en el peor caso y {here} para esta causa.',
  'case.your-way': 'Tu camino, prueba por prueba',
  'case.suspects-first':
    '{count, plural, one {Una falla concuerda} other {# fallas concuerdan}} con la orden de trabajo antes de cualquier prueba.',
  'case.struck-out': 'descartadas',
  'case.struck-nobody': 'No descartó ninguna.',
  'case.better-test': 'Más habría dicho, por el mismo esfuerzo: {test}.',
  'case.best-way': 'El mejor camino a esta causa',
  'case.another': 'Otro caso',
} as const;
