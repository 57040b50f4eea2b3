/** Zusammengeführte Datensätze: zwei Ausbilder, die getrennt geändert haben, und Varianten, die sich Werte teilen. */
export const TOGETHER = {
  'workshop.section.together': 'Änderungen anderer',
  'together.hint':
    'Jemand hat denselben Datensatz auf einem anderen Gerät geändert. Dessen Datei hier öffnen: Was nur auf einer Seite geändert wurde, kommt zusammen; wo beide sich unterscheiden, wird gewählt.',
  'together.open': 'Datei der anderen Seite öffnen',
  'together.other-deck':
    'Diese Datei ist der Datensatz „{id}“, der Entwurf ist „{own}“. Nur zwei Fassungen eines Datensatzes lassen sich zusammenführen.',
  'together.missing':
    'Im Entwurf {count, plural, one {fehlt noch eine Angabe} other {fehlen noch # Angaben}}. Das zuerst ausfüllen.',
  'together.base': 'Beide Seiten begannen mit',
  'together.base-unknown': 'unbekannt: bei allem wählen, was verschieden ist',
  'together.taken':
    '{count, plural, =0 {Von selbst kommt nichts aus {other}} one {Eine Änderung kommt aus {other}} other {# Änderungen kommen aus {other}}}',
  'together.conflicts':
    '{count, plural, =0 {Nichts zu wählen} one {Eines ist zu wählen} other {# Dinge sind zu wählen}}',
  'together.facts':
    '{count, plural, one {Offen bis zur Wahl: {facts}} other {Offen bis zur Wahl, # Dinge: {facts}}}',
  'together.no-fact': 'Auf diesen beruht keine Frage',
  'together.changed': 'war {base}, auf beiden Seiten geändert',
  'together.removed': 'auf einer Seite entfernt, auf der anderen geändert; war {base}',
  'together.added': 'auf beiden Seiten hinzugefügt, nicht gleich',
  'together.order': 'auf beiden Seiten anders gereiht',
  'together.vouched': 'auf einer Seite geändert, auf der anderen der alte Wert geprüft',
  'together.mine': 'Dieser Entwurf: {value}',
  'together.theirs': '{other}: {value}',
  'together.leave-unsure': 'Unsicher lassen: wird nicht gefragt, bis es jemand prüft',
  'together.left':
    '{count, plural, =0 {Alles ist gewählt.} one {Eine Wahl steht noch aus.} other {# Wahlen stehen noch aus.}}',
  'together.take': 'In den Entwurf übernehmen',
  'together.done':
    'Beides ist jetzt im Entwurf. Rückgängig nimmt es zurück. Nachsehen, was die Prüfungen sagen: Zwei richtige Änderungen passen nicht immer zusammen.',
  'variant.heading': 'Variante',
  'variant.make-it': 'Variante anlegen',
  'variant.make': 'Variante anlegen von {title}',
  'variant.named': '{title}, Variante',
  'variant.of':
    'Eine Variante von {title}, zuletzt verglichen mit Stand {revision}; die neueste hier ist {newest}.',
  'variant.no-parent': 'Es ist eine Variante des Datensatzes „{deck}“, der nicht auf diesem Gerät ist.',
  'variant.differs':
    '{count, plural, =0 {Alles ist wie in {title}.} one {Eines ist nicht wie in {title}:} other {# Dinge sind nicht wie in {title}:}}',
  'variant.bring': 'Herüberholen, was sich in {title} bis Stand {revision} geändert hat',
} as const;
