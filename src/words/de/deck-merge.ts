/** What differs between two decks, and what cannot be merged without somebody choosing, in German. */
export const DECK_MERGE = {
  'difference.added': '{where}: dazugekommen, {after}',
  'difference.removed': '{where}: weggenommen, war {before}',
  'difference.changed': '{where}: {before} → {after}',
  'difference.moved': '{where}: Reihenfolge war {before}, ist {after}',
  'difference.yes': 'ja',
  'difference.no': 'nein',
  'difference.band': '{low} bis {high}',
  'difference.vouched': '{by} am {on}',
  'conflict.changed': '{where}: hier {mine}, dort {theirs}, vorher {base}. Wähle eines.',
  'conflict.removed': '{where}: auf der einen Seite weggenommen, auf der anderen geändert. Wähle eines.',
  'conflict.added':
    '{where}: auf beiden Seiten dazugekommen, nicht gleich: hier {mine}, dort {theirs}. Wähle eines.',
  'conflict.order': '{where}: auf beiden Seiten anders geordnet. Wähle eines.',
  'conflict.vouched':
    '{where}: der zusammengeführte Wert ist nicht der geprüfte. Er gilt als unsicher und wird nicht gefragt, bis ihn jemand prüft.',
} as const;
