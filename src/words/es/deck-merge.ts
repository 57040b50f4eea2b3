/** What differs between two decks, and what cannot be merged without somebody choosing. */
export const DECK_MERGE = {
  'difference.added': '{where}: agregado, {after}',
  'difference.removed': '{where}: quitado, era {before}',
  'difference.changed': '{where}: {before} → {after}',
  'difference.moved': '{where}: el orden era {before}, es {after}',
  'difference.yes': 'sí',
  'difference.no': 'no',
  'difference.band': '{low} a {high}',
  'difference.vouched': '{by} el {on}',
  'conflict.changed': '{where}: aquí {mine}, allá {theirs}, antes {base}. Elige uno.',
  'conflict.removed': '{where}: quitado de un lado y cambiado del otro. Elige uno.',
  'conflict.added':
    '{where}: agregado de los dos lados, pero distinto: aquí {mine}, allá {theirs}. Elige uno.',
  'conflict.order': '{where}: puesto en otro orden de los dos lados. Elige uno.',
  'conflict.vouched':
    '{where}: el valor unido no es el que se verificó. Cuenta como dudoso, y no se pregunta, hasta que alguien lo revise.',
} as const;
