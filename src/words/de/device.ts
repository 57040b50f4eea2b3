/** Dieses Gerät: wie sicher das Gespeicherte ist, eine Sicherung, ein neues Handy. */
export const DEVICE = {
  'device.title': 'Dieses Gerät',
  'device.language': 'Sprache',
  'device.link': 'Dieses Gerät: Sprache, Sicherung, neues Handy',
  'device.reading': 'Wird gelesen…',
  'device.keeping': 'Ist es hier sicher?',
  'device.keeping.promised':
    'Der Browser hat zugesagt, deine Antworten zu behalten. Nur du kannst sie entfernen, indem du die Daten dieser Seite löschst.',
  'device.keeping.not-promised':
    'Der Browser wurde gefragt und hat nicht zugesagt, deine Antworten zu behalten: wird auf diesem Gerät der Platz knapp, kann er sie löschen. Speichere ab und zu eine Sicherung.',
  'device.keeping.not-asked':
    'Der Browser wurde noch nicht gebeten, deine Antworten zu behalten. Das geschieht nach der ersten Übung.',
  'device.keeping.unknown':
    'Dieser Browser sagt nicht, ob er deine Antworten behält. Speichere ab und zu eine Sicherung.',
  'device.ask': 'Den Browser bitten, sie zu behalten',
  'device.room': 'Etwa {used, number} MB hier belegt, von {room, number} GB, die es gibt.',
  'device.where': 'In einem privaten Fenster ist alles weg, sobald das Fenster geschlossen wird.',
  'device.backup': 'Sicherung',
  'device.backup-how':
    'Eine Datei mit allem, was auf diesem Gerät von dir ist: Antworten, Datensätze, Einstellungen, die laufende Übung, Selbstprüfungen und was du aufgegeben oder eingesammelt hast.',
  'device.backup-save': 'Eine Sicherung speichern',
  'device.backup-saved':
    '{file} ist fertig. Heb sie dort auf, wo du sie findest, wenn dieses Gerät verloren geht.',
  'device.backup-without':
    'Die Datei ist nicht verschlüsselt: wer sie hat, kann sie lesen. Nicht darin ist der Schlüssel, der Berichte versiegelt; er kann dieses Gerät nicht verlassen, ein neues Handy bekommt einen eigenen.',
  'device.new-phone': 'Neues Handy',
  'device.new-phone-how':
    'Am besten nimmst du die Sicherungsdatei mit und spielst sie dort ein. Ohne Kabel und Konto gehen auch Codes, solange es nicht zu viele Antworten sind: hier zeigen, dort lesen.',
  'device.codes-decks': 'Auch die Datensätze (mehr Codes; für die mitgelieferten nicht nötig)',
  'device.codes': 'Die Codes zeigen',
  'device.codes-title': 'Deine Sicherung als Codes',
  'device.restore': 'Eine Sicherung einspielen',
  'device.restore-how': 'Wähle die Datei einer Sicherung, oder lies die Codes, die dein anderes Gerät zeigt.',
  'device.no-backup': 'Das ist lesbar, aber keine Sicherung.',
  'device.offer-title': 'Eine Sicherung',
  'device.offer':
    'Vom {made}{named, select, yes { von {name}} other {}}, mit {answers, plural, =0 {keinen Antworten} one {einer Antwort} other {# Antworten}} und {decks, plural, =0 {keinem Datensatz} one {einem Datensatz} other {# Datensätzen}}.',
  'device.left-out':
    'Diese Datensätze darin bestehen die Prüfung nicht und bleiben draußen: {decks}. Antworten dazu werden eingespielt und zählen, sobald der Datensatz da ist.',
  'device.another-person':
    'Diese Sicherung ist von {theirs}, und auf diesem Gerät übt {own}. Eingespielt zählen diese Antworten als die von {own}.',
  'device.offer-joins':
    'Auf diesem Gerät wird nichts überschrieben: Antworten, die schon da sind, bleiben, wie sie sind, fehlende kommen dazu.',
  'device.put-in': 'Einspielen',
  'device.restored':
    '{answers, plural, =0 {Keine Antwort fehlte} one {Eine Antwort kam dazu} other {# Antworten kamen dazu}}, {known, plural, =0 {keine war} one {eine war} other {# waren}} schon da; {decks, plural, =0 {kein Datensatz kam dazu} one {ein Datensatz kam dazu} other {# Datensätze kamen dazu}}.',
  'clock.behind':
    'Die Uhr dieses Geräts geht deiner letzten Antwort nach. Deine Antworten sind sicher und behalten ihre Reihenfolge, aber Tage werden nach dieser Uhr gezählt: stell sie richtig.',
  'clock.moved':
    'Zuletzt hast du nach der Uhr von {before} geübt, jetzt gilt die von {now}. Schon gezählte Tage bleiben, wie sie sind.',
} as const;
