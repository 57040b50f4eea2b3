/** How well the kinds of question measure. */
export const QUALITY = {
  'group.part.quality': 'Qué tan bien miden las preguntas',
  'quality.open': 'Calcularlo con los informes',
  'quality.about':
    'Solo primeras respuestas. Un tipo dice bien cuando quienes lo aciertan también aciertan en lo demás: cerca de 0 no dice nada, bajo 0 engaña.',
  'quality.too-few':
    'Muy poco para decir algo: un tipo de pregunta necesita {answers} primeras respuestas de {people} personas.',
  'quality.misleads': 'Engaña.',
  'quality.figures':
    '{missed} % no correcto, {answers, plural, one {# respuesta} other {# respuestas}} de {people, plural, one {# persona} other {# personas}}; {settled, select, yes {acuerdo con el resto {discrimination}} other {todos por igual, así que no distingue a nadie}}.',
} as const;
