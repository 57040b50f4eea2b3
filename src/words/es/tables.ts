/** What is wrong in a table that was pasted or opened. */
export const TABLES = {
  'table.unreadable':
    'Esto no es una tabla que se pueda leer. Copia las celdas de la hoja de cálculo y pégalas otra vez.',
  'table.no-rows': 'No hay líneas debajo de la primera.',
  'table.column-missing': 'A la primera línea le falta la columna “{text}”.',
  'table.column-unknown':
    'Columna {column}: “{text}” no es una columna de esta tabla. Puede tener {choices}.',
  'table.column-twice': 'Columna {column}: “{text}” está dos veces.',
  'table.id-missing': 'Línea {line}, columna {column}: no hay nada, y aquí hace falta algo.',
  'table.id-twice': 'Línea {line}, columna {column}: “{text}” ya está.',
  'table.mark-unknown':
    'Línea {line}, columna {column}: “{text}” no es una marca. Escribe X si actúa, (X) para un unidireccional que sujeta, ? donde no sea seguro, y nada si no actúa.',
  'table.word-unknown': 'Línea {line}, columna {column}: “{text}” no puede ir aquí. Puede ser {choices}.',
  'table.number-wrong': 'Línea {line}, columna {column}: “{text}” no es una cifra como 1.78 o 1,78.',
} as const;
