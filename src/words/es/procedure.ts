/** Questions about work in steps: what may come next, in which order, why, and until when. */
export const PROCEDURE = {
  'step.quoted': '“{step}”',
  'step.first': 'Primero',
  'step.last': 'Último',
  'step.order': 'En orden: {steps}',
  'step.before': '“{earlier}” va antes de “{later}”',
  'step.because': '“{earlier}” va antes de “{later}” {reason}',

  'family.next-steps': 'Qué puede seguir',
  'next-steps.prompt':
    'Trabajo: {work}. Lo marcado ya está hecho, y también todo lo que debe ir antes. ¿Cuáles de estos se pueden hacer ahora?',
  'next-steps.row': 'Posible ahora: {steps}',
  'next-steps.now': '“{step}” Todo lo que necesita está hecho.',

  'family.step-order': 'Pasos en orden',
  'step-order.prompt': 'Trabajo: {work}. Pon estos pasos en el orden en que hay que hacerlos.',

  'family.step-reason': 'Por qué un paso va primero',
  'step-reason.prompt': '¿Por qué “{earlier}” debe ir antes de “{later}”?',
  'step-reason.reason': 'La hoja da esta razón para estos dos pasos.',

  'family.step-skipped': 'Un paso omitido',
  'step-skipped.prompt': 'Alguien omite este paso: “{step}” ¿Qué pasa?',
  'step-skipped.reason': 'Es lo que la hoja anota de este paso.',
  'step-skipped.line': '“{step}” omitido: {outcome}',

  'family.assembly-order': 'El armado en orden',
  'assembly-order.prompt':
    'Trabajo: {work}. Pon estos pasos del armado en un orden que funcione. No es simplemente el desarmado al revés.',
  'assembly-order.row': 'Un orden que funciona: {steps}',

  'family.last-chance': 'La última oportunidad de medir',
  'last-chance.prompt':
    'Se quiere: “{check}” Trabajo: {work}. Solo se puede durante una parte del trabajo. ¿Qué paso quita la última oportunidad?',
  'last-chance.row': '“{check}” Antes de este paso o nunca: “{closing}”',
  'last-chance.needs':
    '{count, plural, =0 {Se puede desde el principio.} other {Se puede en cuanto esto esté hecho: {needs}}}',
} as const;
