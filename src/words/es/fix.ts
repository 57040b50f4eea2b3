/** From a mistake to its correction: where it is written, who has it wrong, what reaches them. */
export const FIX = {
  'fix.link': 'Corregirlo',
  'fix.look-up': '¿Está mal? Corregirlo: {what}',
  'fix.no-deck': 'El cuaderno “{deck}” no está en este dispositivo.',
  'fix.flagged': 'Un aprendiz avisó: “{note}”',
  'fix.looked-up': 'Por corregir:',
  'fix.cell': 'celda de la tabla',
  'fix.capacity': 'capacidad de',
  'fix.valve-body': 'cuerpo de válvulas',
  'fix.then': 'Cambia el valor donde está escrito; desde ahí se calcula en todas partes. Después:',
  'fix.correction': 'Decirlo a quienes lo aprendieron',
  'fix.behind':
    '{groups} {count, plural, one {tiene} other {tienen}} una revisión anterior a la {revision}. Di qué estaba mal: la corrección va con la próxima edición de la tarea, las respuestas sobre ello ya no cuentan, y se pregunta otra vez.',
  'fix.wrong': 'Qué estaba mal, en una frase',
  'fix.hand-out': 'Hacer la corrección',
  'fix.done':
    '{facts, plural, =0 {Ningún dato sale distinto} one {Un dato sale distinto} other {# datos salen distintos}}; {count, plural, one {una tarea sale} other {# tareas salen}} otra vez. Entregar:',
  'fix.for-group': 'Corrección para {group}',
} as const;
