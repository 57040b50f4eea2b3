/** What the command line says, in German. */
export const CLI = {
  'cli.usage': `Detent-Datensätze von der Befehlszeile aus.

  npm run -s deck -- check DATEI... [--json]   was an einem Datensatz nicht stimmt (Rückgabe 1 bei Fehlern)
  npm run -s deck -- solve DATEI [--json]      Zustand, Übersetzung, Drehzahlen und Drehmomente jeder Zeile
  npm run -s deck -- ask DATEI [--family ID] [--fact ID] [--seed N] [--count K] [--json]
                                               ganze Fragen mit Antworten und Erklärungen
  npm run -s deck -- families [--json]         die Fragearten, je eine Zeile

Rückgabe: 0 erledigt; 1 der Datensatz hat Fehler, oder es gibt nichts zu fragen; 2 Befehl oder Datei unbrauchbar.`,
  'cli.no-command': 'Kein Befehl angegeben. Nimm einen von diesen: {known}, oder --help.',
  'cli.unknown-command': 'Einen Befehl "{name}" gibt es nicht. Nimm einen von diesen: {known}.',
  'cli.unknown-option': 'Der Befehl {command} hat keine Option {option}. Nimm: {known}.',
  'cli.flag-value': 'Die Option {option} hat keinen Wert. Lass weg, was nach dem Gleichheitszeichen steht.',
  'cli.no-value': 'Die Option {option} braucht einen Wert dahinter.',
  'cli.option-twice': 'Die Option {option} steht zweimal da. Lass eine weg.',
  'cli.bad-number':
    'Die Option {option} ist "{text}". Gib eine ganze Zahl von {least, number, ::group-off} bis {most, number, ::group-off} an.',
  'cli.no-file':
    'Der Befehl {command} braucht die Datei eines Datensatzes: npm run -s deck -- {command} decks/kestrel-7.json',
  'cli.one-file': 'Der Befehl {command} nimmt eine Datei. Lass "{extra}" weg.',
  'cli.no-files': 'Der Befehl {command} nimmt keine Datei. Lass sie weg.',
  'cli.file-missing': 'Die Datei {file} gibt es nicht. Prüfe den Pfad.',
  'cli.file-folder': 'Der Pfad {file} ist ein Ordner. Nenne die Datei eines Datensatzes darin.',
  'cli.file-forbidden': 'Die Datei {file} darf nicht gelesen werden. Prüfe die Rechte.',
  'cli.file-device': 'Der Pfad {file} ist keine Datei. Nenne die Datei eines Datensatzes.',
  'cli.file-large':
    'Die Datei {file} ist {size, number} Byte lang, viel zu groß für einen Datensatz. Nenne die Datei eines Datensatzes.',
  'cli.file-unread': 'Die Datei {file} ist nicht lesbar ({code}). Prüfe Pfad und Datenträger.',
  'cli.file-binary': 'Die Datei {file} ist kein Text. Gib einen Datensatz an: JSON-Text in UTF-8.',
  'cli.not-json':
    'Die Datei {file} ist kein JSON (Zeile {line}, Spalte {column}). Mit check siehst du, warum.',
  'cli.not-a-deck':
    'Die Datei {file} hat nicht die Form eines Datensatzes ({count, plural, one {ein Befund} other {# Befunde}}). Mit check siehst du mehr.',
  'cli.broken':
    'In diesem Programm ist etwas schiefgegangen ({message}). Geändert wurde nichts; bitte melde es.',
  'cli.revision': 'Stand {revision}',
  'cli.check.head':
    '{file}: {errors, plural, =0 {{warnings, plural, =0 {in Ordnung} one {eine Warnung} other {# Warnungen}}} one {ein Fehler} other {# Fehler}}{errors, plural, =0 {} other {{warnings, plural, =0 {} one {, eine Warnung} other {, # Warnungen}}}}',
  'cli.check.error': 'FEHLER   {where}{line}  [{rule}]',
  'cli.check.warning': 'Warnung  {where}{line}  [{rule}]',
  'cli.check.line': ' (Zeile {line, number, ::group-off})',
  'cli.check.found': 'da steht',
  'cli.check.expected': 'erwartet',
  'cli.solve.row': 'Zeile',
  'cli.solve.on': 'geschlossen',
  'cli.solve.state': 'Zustand',
  'cli.solve.ratio': 'Übersetzung',
  'cli.solve.exact': 'genau',
  'cli.solve.output': 'Abtrieb',
  'cli.solve.case': 'Gehäuse',
  'cli.solve.drives': 'Kraftschluss',
  'cli.solve.free': 'frei',
  'cli.solve.output-held': 'Abtrieb festgehalten',
  'cli.solve.tied-up': 'verspannt',
  'cli.solve.unsolved': 'nicht lösbar',
  'cli.solve.open': 'unbestimmt',
  'cli.solve.holding': 'Freilauf {holding} sperrt',
  'cli.solve.speeds':
    'Drehzahl jeder Welle je Umdrehung des Antriebs. Minus dreht gegen den Antrieb; "unbestimmt" ist nicht festgelegt.',
  'cli.solve.torques':
    'Drehmoment bei 1 N·m am Antrieb, ohne Verluste: was jedes Schaltelement auf die Welle nach dem Doppelpunkt gibt, dann was Last und Gehäuse auf das Getriebe geben. Plus wirkt in Drehrichtung des Antriebs.',
  'cli.solve.indeterminate':
    '? ist unbestimmt: mehrere Schaltelemente teilen sich die Last, und nur ihre Steifigkeit entscheidet wie.',
  'cli.solve.errors':
    'Der Datensatz {file} hat {count, plural, one {einen Fehler} other {# Fehler}}. Mit check siehst du {count, plural, one {ihn} other {sie}}.',
  'cli.ask.no-family': 'Eine Frageart "{family}" gibt es nicht. Nimm eine von diesen: {known}.',
  'cli.ask.no-fact':
    'Hier handelt keine Frage von "{fact}". Nimm eines von diesen: {known}{more, plural, =0 {} other { und weitere}}.',
  'cli.ask.nothing':
    'Zu diesem Datensatz gibt es{family, select, all {} other { in der Frageart {family}}} nichts, was sich sauber fragen lässt. Versuche eine andere Frageart oder einen anderen Startwert, oder prüfe, was als unsicher markiert ist.',
  'cli.ask.errors':
    'Der Datensatz {file} hat {count, plural, one {einen Fehler} other {# Fehler}}, darum wird nichts daraus gefragt. Sieh mit check nach und berichtige das zuerst.',
  'cli.ask.seed': 'Startwert {seed}',
  'cli.ask.answer': 'Antwort',
  'cli.ask.guess': 'geraten',
  'cli.ask.why': 'warum',
  'cli.ask.more': 'mehr',
  'cli.ask.slip-up': 'Ausrutscher',
  'cli.ask.caution': 'WARNHINWEIS',
  'cli.ask.guess-rate': '{rate, number, ::percent .0}',
  'cli.ask.train':
    'Das Räderwerk ist gezeigt mit {count, plural, =0 {nichts} other {{applied}}} geschlossen.',
  'cli.ask.drawing': 'Gezeichnet: {title}.',
  'cli.ask.form-set': 'Kreuze alles Richtige an:',
  'cli.ask.form-one': 'Wähle eines:',
  'cli.ask.form-order': 'Bringe in Reihenfolge, von {first} bis {last}:',
  'cli.ask.form-number':
    '{tolerance, select, 0 {Gib eine ganze Zahl ein.} other {Gib eine Zahl{unit, select, none {} other { in {unit}}} ein, richtig bis {tolerance} Abweichung{signed, select, yes {, mit Vorzeichen} other {}}.}}',
  'cli.ask.form-pair': 'Gib jedem eines davon: {right}',
  'cli.ask.form-place': 'Wähle einen der Plätze auf der Zeichnung:',
  'cli.ask.form-fill': 'Fülle die Felder mit ? mit je einem davon: {marks}',
} as const;
