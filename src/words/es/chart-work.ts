/** Questions that work with the chart: what goes together, what to look at, what was copied wrong. */
export const CHART_WORK = {
  'family.element-company': 'Qué actúa junto con un elemento',
  'element-company.prompt':
    'Toma todas las marchas en que actúa {element}, también reversa. ¿En cuántas de ellas actúa además cada uno de estos?',
  'element-company.all': 'en todas',
  'element-company.some': 'en algunas',
  'element-company.none': 'en ninguna',
  'element-company.row': '{element} actúa en {ranges}.',
  'element-company.reason':
    'Siempre actúa con él: {alwaysCount, plural, =0 {nada} other {{always}}}. Nunca actúa con él: {neverCount, plural, =0 {nada} other {{never}}}.',
  'element-company.line':
    '{other}: {count, plural, =0 {en ninguna de estas} other {actúa también en {ranges}}}.',

  'family.look-first': 'Qué mirar primero',
  'look-first.prompt':
    'La unidad transmite, y quieres saber en qué marcha está mirando un elemento a la vez. {count, plural, =0 {Todavía no se sabe nada.} other {Se sabe hasta ahora: {known}.}} ¿Qué elemento conviene mirar ahora para que, aun en el peor caso, queden las menos marchas? Marca todos los que sirvan igual.',
  'look-first.on': '{element} actúa',
  'look-first.off': '{element} no actúa',
  'look-first.row': 'Todavía posibles: {ranges}.',
  'look-first.reason':
    '{element} actúa en {on} de ellas y no en {off}; veas lo que veas, quedan como mucho {worst}.',
  'look-first.line': '{element}: actúa en {on}, no actúa en {off}; en el peor caso quedan {worst}.',

  'family.copied-rows': 'Celdas mal copiadas de una tabla',
  'copied-rows.prompt':
    'Estas filas se copiaron de la tabla, con su relación correcta. En algunas se copió mal una celda: sobra o falta un elemento. ¿Cuál?',
  'copied-rows.row': '{range}, con {ratio} : 1: {elements}',
  'copied-rows.as-copied': 'bien copiada',
  'copied-rows.cell': 'celda de {element}',
  'copied-rows.too-many': 'Marcha {range}, {ratio} : 1: {element} no debe actuar.',
  'copied-rows.too-few': 'Marcha {range}, {ratio} : 1: {element} debe actuar.',
  'copied-rows.reason':
    'Con esa celda corregida la fila transmite con su relación; cambiando cualquier otra, no.',
} as const;
