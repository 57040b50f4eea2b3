/** One device, several learners, in German. What a PIN does and does not is meant literally. */
export const LEARNERS = {
  'learners.link': 'Wer dieses Gerät benutzt',
  'learners.title': 'Wer dieses Gerät benutzt',

  'names.title': 'Wer übt?',
  'names.with-pin': 'mit PIN',
  'names.none': 'Kein Name ist lesbar.',
  'names.unreadable':
    '{count, plural, one {Ein Name ist für diese Version nicht lesbar und bleibt} other {# Namen sind für diese Version nicht lesbar und bleiben}} weg. Gelöscht wurde nichts.',
  'names.gone': 'Der Name, der hier offen war, wurde aus einem anderen Tab von diesem Gerät genommen.',
  'names.idle':
    'Eine Weile hat niemand den Bildschirm berührt, darum ist er zu den Namen zurückgekehrt. Alle Antworten sind behalten.',
  'names.leaving':
    '{count, plural, one {Ein Name wird} other {# Namen werden}} noch weggenommen: Detent ist in einem anderen Tab offen, der das Gespeicherte festhält. Schließe diesen Tab und versuche es dann noch einmal.',
  'names.again': 'Noch einmal versuchen',
  'names.trouble': 'Die Namen auf diesem Gerät lassen sich nicht öffnen.',
  'names.trouble-own': 'Was für {name} gespeichert ist, lässt sich nicht öffnen.',
  'names.go-on': 'Ohne die Namen üben',
  'names.go-on-note':
    'Die Namen sind getrennt von den Antworten gespeichert. Wer dieses Gerät zuerst hatte, kann ohne sie üben: was dann beantwortet wird, kommt zu den Antworten des ersten Namens. Sonst sollte das niemand.',
  'names.other': 'Zurück zu den Namen',
  'names.other-note': 'Die Antworten der anderen sind davon getrennt gespeichert.',

  'who.here': 'Wer übt',
  'who.as': 'Es übt: {name}',
  'who.leave': 'Verlassen',
  'who.still-there':
    'Eine Weile hat niemand den Bildschirm berührt. In weniger als {seconds} Sekunden geht es zurück zu den Namen. Die Antworten von {name} sind behalten.',
  'who.stay': 'Bleiben',
  'who.pin-off':
    'Am {date} wurde deine PIN auf der Seite „Wer dieses Gerät benutzt“ weggenommen. Wenn das nicht mit dir abgesprochen war, frage, wer sich um dieses Gerät kümmert, und setze eine neue.',
  'who.pin-off-read': 'Gelesen',

  'pin.of': 'PIN von {name}',
  'pin.shop': 'PIN der Werkstatt',
  'pin.field': 'PIN',
  'pin.enter': 'Öffnen',
  'pin.checking': 'Wird geprüft …',
  'pin.back': 'Anderer Name',
  'pin.wrong': 'Das ist nicht die PIN. Geändert wurde nichts.',
  'pin.wait':
    'Das ist nicht die PIN. Nach mehreren falschen wartet der nächste Versuch: {seconds, plural, one {# Sekunde} other {# Sekunden}}.',
  'pin.wait-minutes':
    'Das ist nicht die PIN. Nach mehreren falschen wartet der nächste Versuch: {minutes, plural, one {# Minute} other {# Minuten}}.',
  'pin.may-try': 'Du darfst es jetzt wieder versuchen.',
  'pin.empty': 'Eine PIN hat vier bis acht Ziffern.',
  'pin.forgotten':
    'Vergessen? Auf der Seite „Wer dieses Gerät benutzt“ lässt sie sich wegnehmen. Die Antworten bleiben.',
  'pin.no-crypto':
    'PINs brauchen eine Seite, die über https geöffnet wurde (oder auf diesem Gerät selbst). Diese wurde es nicht.',

  'own.title': 'Dein Platz: {name}',
  'own.pin': 'Deine PIN',
  'own.pin-does':
    'Eine PIN hindert einen Kollegen daran, unter deinem Namen zu antworten. Sie verschlüsselt deine Antworten nicht: wer weiß, wie es geht, kann sie auf diesem Gerät auch ohne sie lesen.',
  'own.pin-none': 'Du hast keine.',
  'own.pin-some': 'Du hast eine.',
  'own.pin-new': 'Neue PIN, vier bis acht Ziffern',
  'own.pin-again': 'Dieselbe noch einmal',
  'own.pin-differ': 'Die beiden sind nicht gleich.',
  'own.pin-now': 'Deine jetzige PIN',
  'own.pin-set': 'PIN setzen',
  'own.pin-change': 'PIN ändern',
  'own.pin-off': 'PIN wegnehmen',
  'own.pin-is-set': 'Die PIN ist gesetzt. Sie wird gefragt, wenn dein Name gewählt wird.',
  'own.pin-is-off': 'Die PIN ist weg.',
  'own.pin-saving': 'Wird gesetzt: das dauert mit Absicht einen Moment.',
  'own.data': 'Deine Antworten',
  'own.data-note':
    'Alles, was unter deinem Namen gespeichert ist, in einer Datei. Sie ist nicht verschlüsselt: wer sie bekommt, kann sie lesen.',
  'own.data-save': 'Meine Antworten in einer Datei speichern',
  'own.data-saved': 'Gespeichert als {file}.',

  'shop.title': 'Für alle auf diesem Gerät',
  'shop.about-one':
    'Auf einem Gerät können mehrere üben, jeder mit eigenen Antworten, Übungen und Datensätzen. Was hier bisher gespeichert ist, bleibt beim ersten Namen.',
  'shop.first': 'Wessen Antworten sind bisher hier?',
  'shop.second': 'Wer kommt dazu?',
  'shop.share': 'Dieses Gerät teilen',
  'shop.names': 'Namen',
  'shop.new': 'Noch ein Name',
  'shop.add': 'Namen hinzufügen',
  'shop.added': '{name} wurde hinzugefügt.',
  'shop.fault.empty': 'Ein Name fehlt.',
  'shop.fault.long': 'Dieser Name ist zu lang: höchstens 40 Zeichen.',
  'shop.fault.taken':
    'Diesen Namen gibt es hier schon. Setze einen Buchstaben dazu, um die zwei zu unterscheiden.',
  'shop.here-now': 'gerade hier',
  'shop.rename': 'Name',
  'shop.rename-save': 'Namen speichern',
  'shop.renamed': 'Der Name ist jetzt {name}.',
  'shop.pin-off': 'PIN wegnehmen: {name}',
  'shop.pin-off-note': 'Für eine vergessene PIN. {name} erfährt davon beim nächsten Start.',
  'shop.pin-is-off': 'Die PIN von {name} ist weg.',
  'shop.remove': 'Von diesem Gerät nehmen: {name}',
  'shop.remove-note':
    'Nimmt den Namen weg und alles, was darunter gespeichert war: Antworten, Übungen, Selbstprüfungen, Datensätze, und was dort aufgegeben oder geschrieben wurde. Das lässt sich nicht rückgängig machen. Sichere die Antworten vorher, wenn jemand sie noch will.',
  'shop.remove-sure': 'Ja, wegnehmen: {name}',
  'shop.remove-not': 'Behalten: {name}',
  'shop.removed': '{name} wurde weggenommen, mit allem, was unter diesem Namen gespeichert war.',
  'shop.save-of': 'Antworten sichern: {name}',
  'shop.idle': 'Zurück zu den Namen',
  'shop.idle-field': 'Wenn niemand den Bildschirm berührt, nach',
  'shop.idle-choice': '{minutes, plural, one {# Minute} other {# Minuten}}',
  'shop.idle-never': 'nie von selbst',
  'shop.idle-note':
    'Eine halbe Minute vorher sagt die Seite es. Nichts geht verloren: jede Antwort ist gespeichert, wenn Prüfen gedrückt wird, und eine Übung geht weiter, wo sie verlassen wurde.',
  'shop.pin': 'PIN der Werkstatt',
  'shop.pin-note':
    'Mit ihr kann nur, wer sie kennt, Namen hinzufügen, ändern oder wegnehmen, eine PIN wegnehmen und löschen. Ohne sie kann es, wer dieses Gerät in der Hand hat. Ist sie vergessen, hilft nur, die Daten dieser Seite im Browser zu löschen, und das löscht jede Antwort.',
  'shop.pin-set': 'PIN der Werkstatt setzen',
  'shop.pin-take': 'PIN der Werkstatt wegnehmen',
  'shop.pin-is-set': 'Die PIN der Werkstatt ist gesetzt.',
  'shop.pin-gone': 'Die PIN der Werkstatt ist weg.',
  'shop.locked': 'Der Rest dieser Seite braucht die PIN der Werkstatt.',
  'shop.wipe': 'Ende des Lehrjahrs: alles löschen',
  'shop.wipe-note':
    'Nimmt jeden Namen von diesem Gerät, mit allen Antworten, Übungen, Selbstprüfungen, Datensätzen, Aufträgen, Berichten und Entwürfen. Detent selbst bleibt, mit seinen Beispieldatensätzen. Das lässt sich nicht rückgängig machen.',
  'shop.wipe-first': 'Sichere vorher, was jemand noch will, je eine Datei:',
  'shop.wipe-word': 'ALLES',
  'shop.wipe-type': 'Zum Löschen hier {word} eintippen',
  'shop.wipe-mistyped': 'Nichts wurde gelöscht: im Feld steht nicht das Wort {word}.',
  'shop.wipe-now': '{count, plural, one {Einen Namen} other {# Namen}} mit allem von diesem Gerät löschen',
  'shop.wiped': 'Alles wurde gelöscht. Dieses Gerät fängt neu an.',
  'shop.held-up':
    'Noch konnte nicht alles weg: Detent ist in einem anderen Tab offen, der das Gespeicherte festhält. Schließe diesen Tab; dann geht es von selbst.',
} as const;
