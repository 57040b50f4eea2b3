/** The self-check. It never says that a person is fit for anything: only what was answered, and when. */
export const SELF_CHECK = {
  'self-check.title': 'Autoevaluación',
  'self-check.link': 'Autoevaluación',
  'self-check.about':
    'Una prueba mezclada, sin ayuda. Las respuestas y las razones vienen al final. Se queda en este dispositivo y no va en ningún informe.',
  'self-check.questions-field': 'Preguntas',
  'self-check.minutes-field': 'Minutos (vacío: sin límite)',
  'self-check.threshold-field': 'Tu meta, % correcto',
  'self-check.unseen-field': 'De unidades que no has estudiado, %',
  'self-check.pocket': 'Al guardar el teléfono en el bolsillo',
  'self-check.pocket-stops': 'el reloj se para',
  'self-check.pocket-runs': 'el reloj sigue',
  'self-check.weights': 'Cuánto de cada área',
  'self-check.weights-note':
    'Solo cuentan las proporciones. Seguridad siempre sale. Estas son un comienzo nuestro: pon lo que diga tu examen.',
  'self-check.fault.questions-out-of-range': 'Preguntas: un número entero de 5 a 200.',
  'self-check.fault.minutes-out-of-range': 'Minutos: de 1 a 600, o vacío.',
  'self-check.fault.threshold-out-of-range': 'La meta: más de 0 y hasta 100 %.',
  'self-check.fault.weights-unusable': 'Áreas: números de 0 o más, al menos uno mayor que 0.',
  'self-check.left': '{minutes, plural, one {queda # minuto} other {quedan # minutos}}',
  'self-check.unseen-unit': 'Una unidad que no has estudiado. Se muestra su tabla: razona con ella.',
  'self-check.sure-legend': '¿Con cuánta seguridad? (Puedes dejarlo.)',
  'self-check.sure': 'con seguridad',
  'self-check.unsure': 'con dudas',
  'self-check.all-questions': 'Todas las preguntas',
  'self-check.item':
    'Pregunta {place}, {answered, select, yes {respondida} other {abierta}}{marked, select, yes {, marcada} other {}}',
  'self-check.mark': 'Marcar',
  'self-check.back': 'Atrás',
  'self-check.finish': 'Terminar',
  'self-check.finish-sure':
    '{open, plural, =0 {Todas las preguntas están respondidas.} one {Queda una pregunta abierta.} other {Quedan # preguntas abiertas.}} Después de esto no se puede cambiar nada.',
  'self-check.finish-not': 'Todavía no',
  'self-check.right-of': '{right} de {asked} respuestas correctas en estas preguntas, el {date}',
  'self-check.interval': 'Con tan pocas respuestas la parte real puede estar entre {low} % y {high} %.',
  'self-check.chance':
    'Otra prueba hecha como esta llegaría a {threshold} % con una probabilidad de cerca de {chance} %. Se calcula solo con estas respuestas, área por área; no dice nada de ningún otro examen.',
  'self-check.changed':
    'La vez pasada {before} de {beforeAsked}, ahora {after} de {afterAsked}: un cambio de {low} a {high} puntos, más de lo que explica el azar.',
  'self-check.not-changed':
    'La vez pasada {before} de {beforeAsked}, ahora {after} de {afterAsked}: un cambio de {low} a {high} puntos, no más de lo que explica el azar.',
  'self-check.words': 'Son respuestas a preguntas, en una fecha. No prueban destreza en el banco.',
  'self-check.sure-and-wrong': 'Con seguridad, y no correcto',
  'self-check.by-area': 'Por área',
  'self-check.area-score': '{right} de {asked}',
  'self-check.too-few': 'Menos de 10 preguntas: sin juicio.',
  'self-check.missed': 'Cada pregunta que no salió correcta',
  'self-check.worked':
    'Pregunta {place}, {verdict, select, open {dejada abierta} right {correcta} other {no correcta}}: {family}',
  'self-check.close': 'Guardar las cifras y cerrar',
  'self-check.wipe': 'Borrar todo de este dispositivo',
  'self-check.wipe-past':
    '{count, plural, one {Borrar la prueba anterior} other {Borrar las # pruebas anteriores}}',

  'area.diagnosis': 'Diagnóstico',
  'area.power-flow': 'Flujo de potencia y cambios',
  'area.hydraulics': 'Hidráulica',
  'area.electrical': 'Electricidad, sensores, códigos',
  'area.measuring': 'Medir y elegir',
  'area.assembly': 'Orden y dirección',
  'area.safety': 'Seguridad',
  'area.reading.diagnosis':
    'En el libro del fabricante: las tablas de síntomas y las páginas de la prueba de manejo.',
  'area.reading.power-flow':
    'En el libro del fabricante: la tabla de aplicación y las páginas de flujo de potencia.',
  'area.reading.hydraulics': 'En el libro del fabricante: los circuitos de aceite y la tabla de solenoides.',
  'area.reading.electrical':
    'En el libro del fabricante: el diagrama eléctrico, los datos de sensores y la lista de códigos.',
  'area.reading.measuring':
    'En el libro del fabricante: el juego axial, las holguras y las piezas selectivas.',
  'area.reading.assembly': 'En el libro del fabricante: las páginas de desarmado y armado con sus dibujos.',
  'area.reading.safety': 'En el libro del fabricante: las advertencias al comienzo de cada procedimiento.',
} as const;
