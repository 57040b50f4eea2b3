/** Decks brought together: two instructors who changed apart, and variants that share facts. */
export const TOGETHER = {
  'workshop.section.together': 'Cambios de otra persona',
  'together.hint':
    'Otra persona cambió el mismo cuaderno en otro dispositivo. Se abre aquí su archivo: lo que cambió una sola parte se reúne, y donde difieren se elige.',
  'together.open': 'Abrir el archivo de la otra persona',
  'together.other-deck':
    'Este archivo es el cuaderno “{id}”; el borrador es “{own}”. Solo se reúnen dos versiones de un mismo cuaderno.',
  'together.missing':
    'En el borrador {count, plural, one {falta todavía una cosa} other {faltan todavía # cosas}}. Hay que completarlo primero.',
  'together.base': 'Ambos empezaron con',
  'together.base-unknown': 'no se sabe: elegir en todo lo que difiere',
  'together.taken':
    '{count, plural, =0 {Nada viene por sí solo de {other}} one {Un cambio viene de {other}} other {# cambios vienen de {other}}}',
  'together.conflicts':
    '{count, plural, =0 {Nada que elegir} one {Una cosa que elegir} other {# cosas que elegir}}',
  'together.facts':
    '{count, plural, one {En duda hasta elegir: {facts}} other {En duda hasta elegir, # cosas: {facts}}}',
  'together.no-fact': 'Ninguna pregunta se apoya en esto',
  'together.changed': 'era {base}, cambiado en ambas partes',
  'together.removed': 'quitado en una parte, cambiado en la otra; era {base}',
  'together.added': 'agregado en ambas partes, no igual',
  'together.order': 'puesto en otro orden en ambas partes',
  'together.vouched': 'cambiado en una parte, y el valor antiguo comprobado en la otra',
  'together.mine': 'Este borrador: {value}',
  'together.theirs': '{other}: {value}',
  'together.leave-unsure': 'Dejarlo dudoso: no se pregunta hasta que alguien lo compruebe',
  'together.left':
    '{count, plural, =0 {Todo está elegido.} one {Queda una elección.} other {Quedan # elecciones.}}',
  'together.take': 'Tomar esto en el borrador',
  'together.done':
    'Ambos están ahora en el borrador. Deshacer lo devuelve. Hay que mirar qué dicen las comprobaciones: dos cambios correctos pueden no ir juntos.',
  'variant.heading': 'Variante',
  'variant.make-it': 'Hacer una variante',
  'variant.make': 'Hacer una variante de {title}',
  'variant.named': '{title}, variante',
  'variant.of':
    'Una variante de {title}, comparada por última vez con su revisión {revision}; la más nueva aquí es la {newest}.',
  'variant.no-parent': 'Es una variante del cuaderno “{deck}”, que no está en este dispositivo.',
  'variant.differs':
    '{count, plural, =0 {Todo es como en {title}.} one {Una cosa no es como en {title}:} other {# cosas no son como en {title}:}}',
  'variant.bring': 'Traer lo que cambió en {title} hasta la revisión {revision}',
} as const;
