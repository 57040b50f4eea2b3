/** Assigning, taking, handing in, the group board, print, in German. Words on who sees what are meant literally. */
export const CLASSROOM = {
  'handing.files': 'Dateien oder Bilder von Codes',
  'handing.camera': 'Kamera benutzen',
  'handing.camera-view': 'Was die Kamera sieht',
  'handing.camera-hint':
    'Halte einen Code ins Bild, bis er gelesen ist, dann den nächsten. Das Bild wird nicht behalten und geht nirgendwohin.',
  'handing.camera-close': 'Kamera schließen',
  'handing.no-camera':
    'Die Kamera geht hier nicht: es gibt keine, sie wurde nicht erlaubt, oder diese Seite ist nicht über https geöffnet. Mach ein Foto des Codes und wähle es als Bild, oder nimm die Datei oder den Link.',
  'handing.codes-read':
    '{read, plural, one {1 Code} other {# Codes}} von {of} gelesen. Noch zu lesen: {missing}. Die Reihenfolge ist egal.',
  'handing.start-over': 'Diese Codes vergessen',
  'handing.paste': 'Oder hier einen Link einfügen',
  'handing.read': 'Lesen',
  'handing.how':
    'Einer der drei Wege reicht. Keiner braucht ein Netz, und von hier wird von selbst nichts gesendet. Es ist nicht verschlüsselt: wer es bekommt, kann es lesen.',
  'handing.as-file': 'Als Datei',
  'handing.save': 'Datei speichern ({kilobytes} kB)',
  'handing.as-link': 'Als Link',
  'handing.link': 'Der Link, {letters} Zeichen',
  'handing.copy': 'Link kopieren',
  'handing.copied-yes': 'Kopiert.',
  'handing.copied-refused':
    'Der Browser lässt diese Seite nicht kopieren. Markiere den Link und kopiere ihn von Hand.',
  'handing.link-long':
    'Dieser Link ist lang. Manche Messenger schneiden solche Links ab; die andere Seite erfährt es, wenn das passiert. Die Datei ist sicherer.',
  'handing.as-codes': 'Als Codes auf Bildschirm oder Papier',
  'handing.chain':
    '{count} Codes, jeder ein Teil davon. Die andere Seite liest alle, in beliebiger Reihenfolge: mit der Kamera oder von Fotos.',
  'handing.code': 'Code {number} von {of}',
  'handing.code-back': 'Code davor',
  'handing.code-next': 'Nächster Code',
  'handing.codes-run': 'Alle {seconds} s wechseln',
  'handing.codes-on-paper': 'Alle Codes für Papier',
  'handing.codes-off-paper': 'Papier weglegen',
  'handing.paper-how':
    '{count, plural, one {Öffne die Kamera des Handys oder Detent und lies den Code.} other {Öffne Detent, geh zu „Übernehmen“ und lies alle # Codes in beliebiger Reihenfolge.}}',
  'handing.print': 'Drucken',
  'handing.who': '{learner} · {date}',

  'class-time': '{date}, {time} ({zone})',
  'scope.deck': 'den ganzen Datensatz',
  'scope.areas': '{areas}',
  'scope.facts': '{count, plural, one {einen Fakt} other {# Fakten}} des Datensatzes',

  'assign.title': 'Auftrag geben',
  'assign.link': 'Aufträge geben und einsammeln',
  'assign.made': 'Hier gemachte Aufträge',
  'assign.line': '{unit}, Stand {revision}. Gefragt: {scope}',
  'assign.class': 'Unterricht: {when}',
  'assign.issue': '{issue, plural, one {einmal ausgegeben} other {Ausgabe #}}',
  'assign.hand-out': 'Ausgeben',
  'assign.change': 'Ändern',
  'assign.remove': 'Entfernen, mit den Berichten',
  'assign.remove-sure': 'Ja, mit allen Berichten dazu entfernen',
  'assign.remove-not': 'Behalten',
  'assign.new': 'Ein neuer Auftrag zu {unit}',
  'assign.changing': 'Auftrag ändern: {group}',
  'assign.group': 'Name der Gruppe',
  'assign.what': 'Was gefragt wird',
  'assign.areas': 'einige Gebiete daraus',
  'assign.which-areas': 'Gebiete',
  'assign.facts': 'Damit {count, plural, one {wird ein Fakt} other {werden # Fakten}} gefragt.',
  'assign.counting': 'Was mehr zählt, was weniger',
  'assign.counting-note':
    'Reichen die Tage nicht für alles, werden Bereiche, die doppelt zählen, zuerst geübt, und Bereiche, die halb zählen, zuerst weggelassen.',
  'counts.double': 'doppelt',
  'counts.usual': 'wie üblich',
  'counts.half': 'halb',
  'assign.date': 'Tag des Unterrichts',
  'assign.time': 'Uhrzeit',
  'assign.zone': 'Zeitzone',
  'assign.minutes': 'Minuten am Tag',
  'assign.share': 'Bereit ab, % der Fakten',
  'assign.cautioned': 'Fakten mit Warnhinweis müssen alle richtig sein',
  'assign.note': 'Ein Wort an die Lernenden (darf leer bleiben)',
  'assign.roster': 'Namen, die du erwartest, je Zeile einer (bleiben auf diesem Gerät)',
  'assign.with-deck': 'Den Datensatz mitgeben',
  'assign.with-deck-note': 'Lass ihn weg, wo alle diesen Stand haben: Link und Codes werden viel kürzer.',
  'assign.wrong': 'Was vor diesem Stand falsch war (erfährt, wer darauf geantwortet hatte)',
  'assign.wrong-note':
    'Ausgegeben wurde Stand {before}; der Datensatz hier hat Stand {after}. Was anders herauskommt, ergibt der Vergleich der beiden; Antworten darauf zählen nicht mehr, und es wird noch einmal gefragt.',
  'assign.corrected':
    '{facts, plural, =0 {Zwischen den zwei Ständen kommt keine Antwort anders heraus.} one {Ein Fakt kommt anders heraus. Wer darauf geantwortet hat, erfährt es, wenn das hier auf dem Handy ankommt, und wird noch einmal gefragt.} other {# Fakten kommen anders heraus. Wer darauf geantwortet hat, erfährt es, wenn das hier auf dem Handy ankommt, und wird noch einmal gefragt.}}',
  'assign.make': 'Auftrag machen',
  'assign.make-again': 'Ausgabe {issue} machen',
  'assign.fault.group': 'Gib der Gruppe einen Namen mit bis zu 200 Zeichen.',
  'assign.fault.date': 'Gib den Tag des Unterrichts an.',
  'assign.fault.time': 'Gib die Uhrzeit in Stunden und Minuten an: 08:00.',
  'assign.fault.zone': 'Diese Zeitzone ist hier nicht bekannt. Sie sieht aus wie Europe/Berlin.',
  'assign.fault.minutes': 'Minuten am Tag: eine ganze Zahl von 1 bis 120.',
  'assign.fault.share': 'Bereit ab: 1 bis 100 %.',
  'assign.fault.areas': 'Wähle mindestens ein Gebiet, in dem der Datensatz etwas zu fragen hat.',
  'assign.fault.note': 'Das Wort an die Lernenden ist zu lang: höchstens 2000 Zeichen.',
  'assign.other-text':
    'Stand {revision} dieses Datensatzes wurde schon mit anderem Inhalt ausgegeben. Gib dem Datensatz den nächsten Stand und dann den Auftrag: sonst kann niemand sagen, welchen ein Handy hat.',
  'assign.ready': 'Auftrag: {group}',

  'take.title': 'Übernehmen',
  'take.link': 'Datei, Link oder Code übernehmen',
  'take.how': 'Ein Auftrag von deinem Ausbilder, ein Bericht oder ein Datensatz: als Datei, Link oder Code.',
  'take.from': 'Ein Auftrag für {group}',
  'take.note': 'Dein Ausbilder schreibt: {note}',
  'take.class-here': 'Unterricht nach deiner Uhr: {when}',
  'take.class-there': 'So hat es dein Ausbilder geschrieben: {when}',
  'take.days':
    '{days, plural, =0 {Heute ist Unterricht.} one {Ein Tag bis zum Unterricht.} other {# Tage bis zum Unterricht.}} {minutes} Minuten am Tag.',
  'take.past':
    'Der Unterricht war am {date}. Du kannst noch üben; Wiederholungen kommen dann in wachsenden Abständen.',
  'take.asks': 'Gefragt wird {scope}: {count, plural, one {ein Fakt} other {# Fakten}}.',
  'take.double': 'Zählt doppelt: {areas}',
  'take.half': 'Zählt halb: {areas}',
  'take.missing':
    '{count, plural, one {Ein Fakt daraus ist} other {# Fakten daraus sind}} nicht in diesem Stand des Datensatzes und wird nicht gefragt.',
  'take.who-title': 'Wer was sieht',
  'take.who':
    'Beim Übernehmen wird nichts gesendet. Deine Antworten bleiben auf diesem Handy, bis du selbst einen Bericht abgibst. Der Bericht zeigt deinem Ausbilder den Namen, den du eintippst, jede Antwort zu diesem Auftrag mit ihrer Uhrzeit, und was du gemeldet hast. Er zeigt nichts von anderen Datensätzen, Selbstprüfungen oder Fällen. Andere Lernende sehen nichts von hier. Wer die Datei oder den Link eines Berichts bekommt, kann ihn lesen; gib ihn also nur deinem Ausbilder.',
  'take.it': 'Übernehmen',
  'take.no-deck':
    'Der Datensatz „{deck}“, Stand {revision}, ist nicht auf diesem Gerät und kam nicht mit. Bitte um den Auftrag mit dem Datensatz darin, oder füge den Datensatz erst hinzu und übernimm das hier dann noch einmal.',
  'take.older-deck':
    'Der Datensatz auf diesem Gerät hat Stand {here}; der Auftrag ist zu Stand {revision}. Bitte um den Auftrag mit dem Datensatz darin.',
  'take.newer-deck':
    'Dieses Gerät hat einen späteren Stand des Datensatzes ({here}) als der mitgekommene ({revision}). Der spätere bleibt.',
  'take.other-deck':
    'Der mitgekommene Datensatz ist nicht der, den der Auftrag nennt. Es wurde nichts übernommen.',
  'take.deck-refused':
    'Der mitgekommene Datensatz besteht seine Prüfungen nicht, darum wurde nichts übernommen. {count, plural, one {Eine Sache ist} other {# Sachen sind}} zu berichtigen:',
  'take.done': 'Übernommen.',
  'take.done-later': 'Eine spätere Ausgabe dieses Auftrags war schon hier. Die gilt.',
  'take.drill': 'Zur Übung',
  'take.corrections': 'Werte, die falsch waren',
  'take.correction':
    '{note} Du hattest darauf {answers, plural, one {einmal} other {#-mal}} geantwortet; diese Antworten zählen nicht mehr, und es wird noch einmal gefragt.',
  'take.deck': 'Das ist ein einzelner Datensatz. Hinzugefügt wird er auf der Seite der Datensätze.',
  'take.decks': 'Zu den Datensätzen',

  'flag.trust': 'Trau dem Getriebe und den Herstellerunterlagen, nicht dieser Seite.',
  'flag.note': 'Was nicht stimmt, in deinen Worten',
  'flag.raise': 'Melden',
  'flag.raised': 'Auf diesem Gerät behalten. Es geht mit deinem nächsten Bericht an deinen Ausbilder.',
  'flag.take-back': 'Zurücknehmen',
  'flag.reference': 'Diese Frage: {reference}',

  'today.assigned': 'Für {group}: {count, plural, one {ein Fakt} other {# Fakten}}.',

  'report.title': 'Bericht abgeben',
  'report.link': 'Bericht abgeben',
  'report.none':
    'Auf diesem Gerät wurde kein Auftrag zu {unit} übernommen. Übernimm erst einen, oder wähle seinen Datensatz.',
  'report.for': 'Bericht für',
  'report.name': 'Dein Name, oder der, unter dem dich dein Ausbilder kennt',
  'report.name-missing': 'Tippe den Namen ein, der gezeigt werden soll, bis zu 200 Zeichen.',
  'report.since': 'Was hineinkommt',
  'report.since-all': 'alles zu diesem Auftrag',
  'report.since-week': 'die letzten 7 Tage (kürzer, für Codes)',
  'report.holds':
    '{answers, plural, =0 {Keine Antworten} one {Eine Antwort} other {# Antworten}}, {flags, plural, =0 {nichts gemeldet} one {eine Meldung} other {# Meldungen}}.',
  'report.who':
    'Er zeigt deinem Ausbilder diesen Namen, jede Antwort zu diesem Auftrag mit ihrer Uhrzeit, und was du gemeldet hast. Er sagt nichts von anderen Datensätzen, Selbstprüfungen oder Fällen, und nicht, wo du warst. Von selbst geht er nirgendwohin: du gibst ihn ab. Zweimal abgeben schadet nicht.',
  'report.key':
    'Der Schlüssel dieses Geräts: {digits}. Lies ihn deinem Ausbilder vor, wenn er fragt, wessen Gerät es ist.',
  'report.no-key': 'Dieser Browser gibt hier keine Schlüssel, darum geht der Bericht ohne Siegel.',
  'report.make': 'Bericht machen',
  'report.ready': 'Bericht von {name}',
  'report.flags': 'Was du gemeldet hast',
  'report.flag-take-back': 'Zurücknehmen',
  'report.put-away': 'Diesen Auftrag weglegen',
  'report.put-away-sure': 'Ja, weglegen',
  'report.put-away-not': 'Behalten',
  'report.put-away-note':
    'Die Übung fragt dann wieder den ganzen Datensatz. Deine Antworten, der Datensatz und was du gemeldet hast, bleiben.',

  'group.title': 'Gruppe',
  'group.link': 'Tafel und Berichte',
  'group.assignments': 'Aufträge',
  'group.none':
    'Auf diesem Gerät wurde kein Auftrag gemacht. Die Tafel zeigt Berichte zu Aufträgen, die hier gemacht wurden.',
  'group.which': 'Auftrag',
  'group.no-deck':
    'Der Datensatz dieses Auftrags ist nicht mehr auf diesem Gerät. Füge ihn wieder hinzu, um die Tafel zu sehen.',
  'group.days':
    '{when, select, past {Der Unterricht war schon.} today {Heute ist Unterricht.} other {{days, plural, one {Ein Tag bis zum Unterricht.} other {# Tage bis zum Unterricht.}}}}',
  'group.started': 'von {of} angefangen',
  'group.likely-ready': 'wahrscheinlich bereit',
  'group.make-ups': 'brauchen eine Nachholübung',
  'group.not-heard': 'Nichts kam von {names}.',
  'group.no-roster':
    'Trage die Namen, die du erwartest, in den Auftrag ein; dann steht hier, von wem nichts kam.',
  'group.collect': 'Berichte übernehmen',
  'group.collect-how':
    'Dateien (mehrere auf einmal), Links oder Codes mit Kamera oder Foto. Derselbe Bericht zweimal, oder ein alter, schadet nicht.',
  'group.collected.kept':
    '{name}: {answers, plural, one {eine Antwort} other {# Antworten}}{flags, plural, =0 {} one {, eine Meldung} other {, # Meldungen}}. Übernommen.',
  'group.collected.known': '{name}: dieser Bericht war schon hier.',
  'group.collected.broken':
    '{name}: das Siegel passt nicht, der Bericht wurde also nachträglich verändert. Es wurde nichts übernommen. Bitte noch einmal darum.',
  'group.collected.stranger':
    '{name}: dieser Bericht gehört zu einem Auftrag, der nicht auf diesem Gerät gemacht wurde. Es wurde nichts übernommen.',
  'group.part.people': 'Wer wo steht',
  'group.part.mixed-up': 'Was durcheinanderkommt',
  'group.part.nobody-holds': 'Was bei niemandem sitzt',
  'group.part.bench-groups': 'Gruppen für die Werkbank',
  'group.part.before-after': 'Vor und nach dem Unterricht',
  'group.part.flags': 'Gemeldet: die Daten stimmen nicht',
  'group.part.exports': 'Für andere Programme',
  'group.show': 'Zeigen',
  'group.show.all': 'alle ({count})',
  'group.show.make-up': 'braucht eine Nachholübung ({count})',
  'group.show.likely': 'wahrscheinlich bereit ({count})',
  'group.show.open': 'zu wenig für eine Aussage ({count})',
  'group.show.unlikely': 'nach den Antworten nicht bereit ({count})',
  'group.likely.likely': 'wahrscheinlich bereit',
  'group.likely.open': 'zu wenig für eine Aussage',
  'group.likely.unlikely': 'nach den Antworten nicht bereit',
  'group.not-started': 'nichts beantwortet',
  'group.needs-make-up': 'braucht eine Nachholübung',
  'group.readiness':
    '{right} von {tried} gefragten richtig, {of} insgesamt. Gewusst wird damit zwischen {low} % und {high} %.',
  'group.activity':
    '{answers, plural, one {Eine Antwort} other {# Antworten}} an {days, plural, one {einem Tag} other {# Tagen}}{days, plural, =0 {} other {, zuletzt am {last}}}.{voided, plural, =0 {} one { Eine weitere zählt nicht mehr.} other { # weitere zählen nicht mehr.}}',
  'group.kept':
    'Nach dem Gedächtnismodell wären am Unterrichtstag noch {share} % da, wenn nichts mehr geübt würde. Das ist eine Schätzung.',
  'group.cautioned': 'Fakten mit Warnhinweis: beim letzten Mal {right} von {of} richtig.',
  'group.make-up.nothing-answered': 'Braucht eine Nachholübung: nichts beantwortet.',
  'group.make-up.caution-missed':
    'Braucht eine Nachholübung: ein Fakt mit Warnhinweis war beim letzten Mal nicht richtig.',
  'group.make-up.little-answered':
    'Braucht eine Nachholübung: weniger als die Hälfte der Fakten wurde gefragt.',
  'group.make-up.likely-not-ready': 'Braucht eine Nachholübung: nach den Antworten nicht bereit.',
  'group.make-up-sheet': 'Nachholblatt mit {count, plural, one {einer Frage} other {# Fragen}}',
  'group.mixed-up': 'Durcheinandergekommen',
  'group.slip-ups': 'Nach der Regel dahinter',
  'group.nothing-mixed-up': 'Nichts kam so durcheinander, dass es sich benennen lässt.',
  'group.by-people':
    '{what} ({people, plural, one {eine Person} other {# Personen}}, {times, plural, one {einmal} other {#-mal}})',
  'group.swapped': '{right} und {given}, jedes am Platz des anderen',
  'group.instead': '{given} statt {right}',
  'group.instead-about': '{given} statt {right}: {about}',
  'group.more': '{count, plural, one {Noch eines} other {Noch #}}',
  'group.fact': '{kind}: {fact}',
  'group.unheld':
    '{fact} ({tried, plural, =0 {niemand wurde gefragt} one {eine Person wurde gefragt} other {# Personen wurden gefragt}})',
  'group.all-held': 'Jeder Fakt sitzt bei irgendjemandem.',
  'group.size': 'Personen in einer Gruppe',
  'group.bench': '{names}. Nicht richtig waren dort {missed} % von {tried}, bei allen {all} %.',
  'group.no-groups': 'Noch gibt es keine Antworten, um Gruppen zu bilden.',
  'group.unplaced': 'Nicht zugeteilt, weil nichts bekannt ist: {names}.',
  'group.before-after-note':
    'Erste Antworten derselben Personen auf dieselben Fakten, ohne Namen, und nur, wo {least} Personen oder mehr dahinterstehen. Wer mehr übt, lernt auch mehr: das hier zeigt nicht, dass der Unterricht der Grund war.',
  'group.no-before-after': 'Noch gibt es keine Antworten von vor und nach dem Unterricht.',
  'group.rise':
    '{area}: vorher {before} von {asked} richtig, nachher {after} ({people} Personen). Der Anteil änderte sich um {low} bis {high} Punkte, {beyond, select, yes {mehr} other {nicht mehr}} als der Zufall erklärt.',
  'group.withheld': 'Weniger als {least} Personen: {areas}.',
  'group.no-flags': 'Nichts wurde gemeldet.',
  'group.flag-older':
    'Gemeldet zu Stand {revision}; der Datensatz hier hat einen anderen. Sieh nach, ob es noch gilt.',
  'group.devices': 'Geräte hinter den Berichten',
  'group.keys':
    '{count, plural, one {Von einem Gerät gesiegelt: {keys}.} other {Von # Geräten gesiegelt: {keys}.}}',
  'group.changed':
    '{count, plural, one {Eine Antwort kam mit zwei Inhalten} other {# Antworten kamen mit zwei Inhalten}}. Es zählt die zuerst abgegebene.',
  'group.lost':
    '{count, plural, one {Ein Bericht ist} other {# Berichte sind}} nicht lesbar, oder das Siegel passt nicht.',
  'group.untold': 'Noch nicht gesagt: diese Berichtigungen zu gegebenen Antworten',
  'group.flags-of': 'Gemeldet',
  'group.remove': 'Diese Person und alle ihre Berichte entfernen',
  'group.remove-sure': 'Ja, aus allen Aufträgen entfernen: {name}',
  'group.remove-not': 'Behalten',

  'print.title': 'Drucken',
  'print.link': 'Blätter drucken',
  'print.what': 'Blatt',
  'print.bench': 'Merkblatt',
  'print.work': 'Arbeitsblatt',
  'print.make-up': 'Nachholblatt',
  'print.parts': 'Was darauf steht',
  'print.torques': 'Anzugsmomente',
  'print.size': 'Papier',
  'print.size.a4': 'A4',
  'print.size.letter': 'Letter',
  'print.work-note':
    'Alle werden dieselben Fakten gefragt, mit anderen Fragen. Die Lösungen kommen zuletzt, auf eigenen Blättern. Derselbe Startwert druckt dieselben Blätter wieder.',
  'print.names': 'Namen, je Zeile einer (eine leere Zeile lässt Platz für einen)',
  'print.count': 'Fragen (bis zu 40)',
  'print.seed': 'Startwert',
  'print.area': 'Aus',
  'print.head': '{unit} · {deck}, Stand {revision} · gedruckt am {on}',
  'print.line': 'Name: {name} · Blatt {sheet}',
  'print.date-line': 'Datum: ____________',
  'print.key': 'Lösungen: {title}',
  'print.one': 'Kreuze eines an.',
  'print.order': 'Nummeriere ab 1: {first}, bis zum letzten: {last}.',
  'print.number':
    '{tolerance, select, 0 {(eine ganze Zahl)} other {{unit, select, none {(auf ± {tolerance})} other {(auf ± {tolerance} {unit})}}}}',
  'print.pair': 'Schreibe neben jedes eines davon: {right}.',
  'print.fill': 'Fülle jede Zeile mit einem davon: {marks}.',
  'print.place': 'Nummer der Stelle auf der Zeichnung:',
  'print.other-orders': 'Andere Reihenfolgen, die einhalten, was vorher kommen muss, sind auch richtig.',

  'print.make-up-note':
    '{count, plural, one {Eine Frage} other {# Fragen}}: zuerst nicht gewusste Fakten mit Warnhinweis, dann andere nicht gewusste, dann was nie gefragt wurde. Das Blatt hat die Nummer {sheet}; unter ihr werden die Antworten später eingetippt.',
  'print.keep': 'Dieses Blatt zum Drucken behalten',
  'print.kept': 'Behalten. Seine Antworten lassen sich auf der Tafel unter „Blätter auf Papier“ eintippen.',
  'print.no-make-up':
    'Nichts nachzuholen: diese Person braucht keine Nachholübung, oder keiner ihrer Fakten lässt sich fragen.',
  'marks.title': 'Antworten eines Blatts',
  'marks.note':
    'Blatt {sheet} von {name}. Wähle, was geschrieben wurde; was fehlt, bleibt offen. Es kommt zu den Antworten von {name} als Bericht, gesiegelt von diesem Gerät.',
  'marks.open': 'offen gelassen',
  'marks.right': 'richtig: {answer}{more, select, yes { (oder eine andere Reihenfolge, die gilt)} other {}}',
  'marks.wrong': 'nicht richtig: {answer}',
  'marks.other': 'nicht richtig: eine andere Antwort',
  'marks.keep':
    '{count, plural, =0 {Behalten (erst etwas eintragen)} one {Eine Antwort behalten} other {# Antworten behalten}}',
  'marks.done': 'Die Antworten dieses Blatts wurden schon eingetippt.',
  'marks.none':
    'Dieses Blatt ist nicht auf diesem Gerät, oder der Datensatz hat sich seit dem Druck geändert; seine Fragen lassen sich nicht wieder machen.',
  'group.sheet-waits': 'Antworten eintippen: Blatt {sheet}, gedruckt am {on}',
  'group.sheet-marked': 'Blatt {sheet}: Antworten eingetippt am {on}',
  'group.absent': 'Nachholblätter auf Papier für sie',
  'group.absent-note':
    'Die Antworten werden nachher eingetippt. Kommt später ein Bericht vom Handy, stehen die beiden als zwei Personen auf der Tafel.',
  'group.absent-sheet': 'Ein Blatt für {name}',
  'group.no-sheets': 'Noch wurde kein Nachholblatt gedruckt.',
  'group.part.sheets': 'Blätter auf Papier',
} as const;
