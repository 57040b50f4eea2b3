/** The way to a class date: what will be known, what is left out, how well it is predicted. */
export const PLAN = {
  'plan.title': 'Camino a la clase',
  'plan.waiting': 'Calculando. La práctica no tiene que esperar.',
  'plan.not-here': 'Este navegador no puede calcularlo. La práctica sigue entonces una regla simple.',
  'plan.forecast': 'El día de la clase cerca de {share}\u00a0%, probablemente de {low} a {high}\u00a0%.',
  'plan.forecast-today': 'Hoy cerca de {share}\u00a0%, probablemente de {low} a {high}\u00a0%.',
  'plan.meaning':
    'Es la parte de {assigned, select, yes {lo asignado} other {este cuaderno}} que sabrías si practicas {minutes, plural, one {# minuto} other {# minutos}} {days, select, 7 {todos los días} 1 {un día por semana} other {{days} días por semana}}.',
  'plan.ceiling':
    'Con {minutes} minutos al día, como mucho {most}\u00a0%; con {more}, como mucho {moreMost}\u00a0%.',
  'plan.ceiling-flat': 'Con {minutes} minutos al día, como mucho {most}\u00a0%. Más minutos agregarían poco.',
  'plan.ceiling-more': 'Con {more} minutos al día, como mucho {moreMost}\u00a0%.',
  'plan.left-out':
    '{count, plural, one {Uno de {all} datos no cabe antes de la clase} other {# de {all} datos no caben antes de la clase}}',
  'plan.which-out': 'Quedan fuera los que menos aportan para el tiempo que piden:',
  'plan.left-out-area': '{area}: {count}',
  'plan.make-room': 'Con más minutos o más días por semana caben.',
  'plan.days-field': 'Días de práctica por semana',
  'plan.more': 'Cómo vas, tema por tema',
  'plan.worth':
    'La práctica de hoy vale cerca de {facts, plural, one {un dato} other {# datos}} el día de la clase.',

  'progress.title': 'Cómo vas',
  'progress.no-class': 'Pon una fecha de clase en la primera página para ver a dónde lleva la práctica.',
  'progress.course': 'De hoy a la clase',
  'progress.course-said':
    'Esperado el día de la clase: {kept}\u00a0% con la práctica de hoy, {skipped}\u00a0% si hoy no practicas.',
  'progress.with-today': 'con la práctica de hoy',
  'progress.without-today': 'hoy sin práctica',
  'progress.minutes': 'El plan usa {minutes, plural, one {# minuto} other {# minutos}} al día.',
  'progress.minutes-spare':
    'El plan usa cerca de {used, plural, one {# minuto} other {# minutos}} de tus {minutes} al día; más agregarían poco.',
  'progress.axis-share': 'se sabe, %',
  'progress.axis-today': 'hoy',
  'progress.axis-class': 'clase',
  'progress.axis-minutes': 'minutos',
  'progress.topics': 'Tema por tema',
  'progress.topic': '{area}: ahora {now}\u00a0%',
  'progress.topic-class': '{area}: ahora {now}\u00a0%, para la clase probablemente de {low} a {high}\u00a0%',
  'progress.fact': 'Dato',
  'progress.now': 'Ahora',
  'progress.by-class': 'Para la clase',
  'progress.not-met': 'sin ver',
  'progress.share': '{share}\u00a0%',
  'progress.no-time': 'sin tiempo',

  'progress.calibration': 'Qué tan bien se prevé',
  'progress.too-few':
    'Todavía hay pocas respuestas. Cada pregunta sobre un solo dato muestra qué tan probable era acertar, y luego si se acertó.',
  'progress.foreseen':
    'En {answers} preguntas sobre un solo dato, repetidas después de un día o más, se esperaba {predicted}\u00a0% de respuestas correctas y salió {observed}\u00a0%.',
  'progress.gap':
    'Grupo por grupo, lo esperado falló por cerca de {points, plural, one {# punto} other {# puntos}}.',
  'progress.surprise':
    'Sorpresa media de una respuesta: {own}. Esperar siempre tu promedio daría {plain}, así que la previsión {helps, select, yes {dice más que tu promedio} other {todavía no dice más que tu promedio}}.',
  'progress.bin-axis': 'esperado correcto, %',
  'progress.bin-came': 'salió correcto, %',
  'progress.bin':
    '{count, plural, one {# respuesta} other {# respuestas}}: {predicted}\u00a0% esperado, salió {observed}\u00a0%',
  'progress.chart-note':
    'Cada cuadro es un grupo de respuestas; los grandes tienen más. Sobre la línea inclinada, lo esperado y lo que salió coinciden. La barra es lo que puede desviar el puro azar.',
  'progress.as-list': 'Lo mismo en lista',

  'progress.scale': 'Tu propio ritmo de olvido',
  'progress.scale-waiting': 'Calculando…',
  'progress.scale-not-here': 'Este navegador no puede calcularlo. Se usa el ritmo de olvido común.',
  'progress.scale-too-few':
    'Todavía hay pocas respuestas para apartar algunas como prueba. Se usa el ritmo de olvido común.',
  'progress.scale-tested':
    'Calculado con tus primeras {fitted} respuestas y probado con las {heldOut} siguientes. Sorpresa media ahí: {usual} con el ritmo común, {personal} con el tuyo; el puro azar hace una diferencia de {error}.',
  'progress.scale-adopted':
    'El tuyo prevé mejor, así que se usa: un primer recuerdo dura {times} veces lo común.',
  'progress.scale-kept': 'La mejora no es clara, así que se sigue usando el ritmo común.',

  'fact.named': '{kind}: {what}',
} as const;
