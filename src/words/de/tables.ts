/** What is wrong in a table that was pasted or opened, in German. */
export const TABLES = {
  'table.unreadable':
    'Das ist keine lesbare Tabelle. Kopiere die Zellen aus der Tabellenkalkulation und füge sie noch einmal ein.',
  'table.no-rows': 'Unter der ersten Zeile steht nichts.',
  'table.column-missing': 'In der ersten Zeile fehlt die Spalte „{text}“.',
  'table.column-unknown':
    'Spalte {column}: „{text}“ ist keine Spalte dieser Tabelle. Möglich ist: {choices}.',
  'table.column-twice': 'Spalte {column}: „{text}“ steht zweimal da.',
  'table.id-missing': 'Zeile {line}, Spalte {column}: hier steht nichts, und hier wird etwas gebraucht.',
  'table.id-twice': 'Zeile {line}, Spalte {column}: „{text}“ steht schon da.',
  'table.mark-unknown':
    'Zeile {line}, Spalte {column}: „{text}“ ist kein Zeichen. Schreibe X für geschlossen, (X) für einen Freilauf, der sperrt, ? wo es unsicher ist, und nichts für offen.',
  'table.word-unknown':
    'Zeile {line}, Spalte {column}: „{text}“ kann hier nicht stehen. Möglich ist: {choices}.',
  'table.number-wrong': 'Zeile {line}, Spalte {column}: „{text}“ ist keine Zahl wie 1.78 oder 1,78.',
} as const;
