/** The self-check, in German. It never says that a person is fit for anything: only what was answered, and when. */
export const SELF_CHECK = {
  'self-check.title': 'Selbstprüfung',
  'self-check.link': 'Selbstprüfung',
  'self-check.about':
    'Eine gemischte Prüfung ohne Hilfe. Antworten und Gründe kommen am Ende. Sie bleibt auf diesem Gerät und geht in keinen Bericht.',
  'self-check.questions-field': 'Fragen',
  'self-check.minutes-field': 'Minuten (leer: keine Grenze)',
  'self-check.threshold-field': 'Dein Ziel, % richtig',
  'self-check.unseen-field': 'Zu Getrieben, die du nicht gelernt hast, %',
  'self-check.pocket': 'Wenn das Handy in die Tasche kommt',
  'self-check.pocket-stops': 'bleibt die Uhr stehen',
  'self-check.pocket-runs': 'läuft die Uhr weiter',
  'self-check.weights': 'Wie viel von jedem Gebiet',
  'self-check.weights-note':
    'Es zählt nur das Verhältnis. Sicherheit kommt immer. Das hier ist unser eigener Anfang: trage ein, was deine Prüfung angibt.',
  'self-check.fault.questions-out-of-range': 'Fragen: eine ganze Zahl von 5 bis 200.',
  'self-check.fault.minutes-out-of-range': 'Minuten: von 1 bis 600, oder leer.',
  'self-check.fault.threshold-out-of-range': 'Das Ziel: über 0 und bis 100 %.',
  'self-check.fault.weights-unusable': 'Gebiete: Zahlen ab 0, mindestens eine davon über 0.',
  'self-check.left': '{minutes, plural, one {noch # Minute} other {noch # Minuten}}',
  'self-check.unseen-unit':
    'Ein Getriebe, das du nicht gelernt hast. Seine Schaltmatrix ist gezeigt: leite es daraus ab.',
  'self-check.sure-legend': 'Wie sicher bist du? (Du darfst das offen lassen.)',
  'self-check.sure': 'sicher',
  'self-check.unsure': 'nicht sicher',
  'self-check.all-questions': 'Alle Fragen',
  'self-check.item':
    'Frage {place}, {answered, select, yes {beantwortet} other {offen}}{marked, select, yes {, markiert} other {}}',
  'self-check.mark': 'Markieren',
  'self-check.back': 'Zurück',
  'self-check.finish': 'Abschließen',
  'self-check.finish-sure':
    '{open, plural, =0 {Jede Frage ist beantwortet.} one {Eine Frage ist noch offen.} other {# Fragen sind noch offen.}} Danach lässt sich nichts mehr ändern.',
  'self-check.finish-not': 'Noch nicht',
  'self-check.right-of': '{right} von {asked} Antworten richtig bei diesen Fragen, am {date}',
  'self-check.interval':
    'Bei so wenigen Antworten kann der wahre Anteil zwischen {low} % und {high} % liegen.',
  'self-check.chance':
    'Eine weitere Prüfung dieser Art würde {threshold} % mit einer Wahrscheinlichkeit von etwa {chance} % erreichen. Das ist nur aus diesen Antworten gerechnet, Gebiet für Gebiet; über eine andere Prüfung sagt es nichts.',
  'self-check.changed':
    'Letztes Mal {before} von {beforeAsked}, jetzt {after} von {afterAsked}: eine Änderung um {low} bis {high} Punkte, mehr als der Zufall erklärt.',
  'self-check.not-changed':
    'Letztes Mal {before} von {beforeAsked}, jetzt {after} von {afterAsked}: eine Änderung um {low} bis {high} Punkte, nicht mehr als der Zufall erklärt.',
  'self-check.words':
    'Das sind Antworten auf Fragen, an einem Tag. Sie sind kein Nachweis für Können an der Werkbank.',
  'self-check.sure-and-wrong': 'Sicher, und nicht richtig',
  'self-check.by-area': 'Nach Gebiet',
  'self-check.area-score': '{right} von {asked}',
  'self-check.too-few': 'Weniger als 10 Fragen: keine Aussage.',
  'self-check.missed': 'Jede Frage, die nicht richtig war',
  'self-check.worked':
    'Frage {place}, {verdict, select, open {offen gelassen} right {richtig} other {nicht richtig}}: {family}',
  'self-check.close': 'Zahlen behalten und schließen',
  'self-check.wipe': 'Alles davon auf diesem Gerät löschen',
  'self-check.wipe-past':
    '{count, plural, one {Die frühere Prüfung löschen} other {Die # früheren Prüfungen löschen}}',

  'area.diagnosis': 'Diagnose',
  'area.power-flow': 'Kraftfluss und Schaltungen',
  'area.hydraulics': 'Hydraulik',
  'area.electrical': 'Elektrik, Sensoren, Fehlercodes',
  'area.measuring': 'Messen und Auswählen',
  'area.assembly': 'Reihenfolge und Einbaurichtung',
  'area.safety': 'Sicherheit',
  'area.reading.diagnosis': 'In den Herstellerunterlagen: Fehlertabellen und Seiten zur Probefahrt.',
  'area.reading.power-flow': 'In den Herstellerunterlagen: Schaltmatrix und Seiten zum Kraftfluss.',
  'area.reading.hydraulics': 'In den Herstellerunterlagen: Ölkreise und Tabelle der Magnetventile.',
  'area.reading.electrical':
    'In den Herstellerunterlagen: Schaltplan, Sensordaten und Liste der Fehlercodes.',
  'area.reading.measuring': 'In den Herstellerunterlagen: Axialspiel, Lüftspiele und Auswahlteile.',
  'area.reading.assembly': 'In den Herstellerunterlagen: Zerlegen und Zusammenbau mit ihren Zeichnungen.',
  'area.reading.safety': 'In den Herstellerunterlagen: die Warnhinweise am Anfang jeder Arbeit.',
} as const;
