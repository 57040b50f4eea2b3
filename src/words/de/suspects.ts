/** Questions on suspects, in German: which faults fit, which test tells them apart, where the chain breaks. */
export const SUSPECTS = {
  'suspects.feeding': '{fault} (versorgt {elements})',
  'suspects.bearing': '{fault} (daran hängen {solenoids})',
  'suspects.unit': 'Getriebe {name}',
  'suspects.left': 'Es bleiben: {faults}.',
  'suspects.stands': 'Bleibt: {fault}.',
  'suspects.struck': 'Ausgeschlossen: {fault}. {test}: „{would}“ wäre zu sehen, zu sehen war aber „{seen}“.',

  'family.faults-that-fit': 'Fehler, die zu den Gängen passen',
  'faults-that-fit.prompt':
    'Im Getriebe steckt ein Fehler. Auf der Probefahrt: {rows}. Welcher davon könnte es sein? Kreuze alle an, die passen.',
  'faults-that-fit.rows': 'in {ranges} „{does}“',
  'faults-that-fit.reason':
    'Ein Fehler passt nur, wenn er jede Zeile ergibt: die Gänge, die noch gehen, zählen so viel wie die, die es nicht tun.',

  'family.one-cause': 'Zwei Beanstandungen, eine Ursache',
  'one-cause.prompt':
    'Zwei Beanstandungen an einem Getriebe. Erstens: {first}. Zweitens: {second}. Es gibt einen Fehler. Welcher davon steckte hinter beiden? Kreuze alle an.',
  'one-cause.reason': 'Ein Fehler muss beide erklären. Was nur eine davon erklärt, ist ausgeschlossen.',

  'family.impossible-suspects': 'Mögliche Fehler, die Ergebnisse ausschließen',
  'impossible-suspects.prompt':
    'Die Beanstandung: {symptom}. Alle diese Fehler würden das tun. Dann kamen zwei Ergebnisse. {first} {second} Welche der Fehler sind jetzt unmöglich?',
  'impossible-suspects.reason':
    'Ein Ergebnis, das ein Fehler nicht geben kann, schließt ihn aus. Was nur nicht bewiesen ist, bleibt.',

  'family.separating-test': 'Die Prüfung, die zwei mögliche Fehler trennt',
  'separating-test.prompt':
    'Die Beanstandung: {symptom}. Zwei mögliche Fehler sind übrig. Erstens: {first}. Zweitens: {second}. Welche dieser Prüfungen trennt sie?',
  'separating-test.row': '{test}: „{first}“ beim einen, „{second}“ beim anderen.',
  'separating-test.reason':
    'Eine Prüfung trennt zwei mögliche Fehler nur, wenn sie beim einen etwas anderes zeigt als beim anderen.',
  'separating-test.alike': '{test}: „{reading}“ bei beiden.',

  'family.next-test': 'Prüfungen nach dem, was sie für ihren Aufwand sagen',
  'next-test.prompt':
    'Die Beanstandung: {symptom}. Sechs mögliche Fehler sind übrig, jeder gleich wahrscheinlich. Die Tabelle sagt, was vier Prüfungen zeigen würden. Ordne die Prüfungen danach, wie viele mögliche Fehler sie im Mittel je Punkt Aufwand ausschließen.',
  'next-test.item': '{test} ({cost, plural, one {# Punkt} other {# Punkte}})',
  'next-test.first': 'schließt für den Aufwand am meisten aus',
  'next-test.last': 'schließt für den Aufwand am wenigsten aus',
  'next-test.row': 'Zuerst: {test}.',
  'next-test.reason':
    'Eine Prüfung teilt die möglichen Fehler in Haufen. Danach bleibt nur der Haufen mit der Ursache: ein Haufen mit k kommt k-mal von {count} vor und schließt die anderen aus.',
  'next-test.line':
    '{test}: Haufen mit {heaps}, im Mittel also {struck} ausgeschlossen; durch {cost, plural, one {# Punkt} other {# Punkte}} Aufwand sind das {gain}.',

  'family.predicted-gauge': 'Was ein Manometer bei einem Fehler zeigt',
  'predicted-gauge.prompt':
    'Angenommen: {fault}. Alles andere ist in Ordnung und wie in der Matrix angefordert. Was zeigt ein Manometer an jedem dieser Anschlüsse?',
  'predicted-gauge.row-behind':
    'Der Fehler liegt bei {element} selbst, hinter dem Anschluss: das Manometer zeigt, was es immer zeigt.',
  'predicted-gauge.row-port': 'Der Fehler ändert, was zum Anschluss kommt; das Manometer zeigt es also.',
  'predicted-gauge.reason':
    'Ein Manometer sagt, welcher Druck zum Anschluss kommt, nicht, was das Schaltelement daraus macht.',

  'family.first-break': 'Wo die Kette bricht',
  'first-break.prompt':
    'Drei Getriebe, je ein Fehler. Jede Zeile wurde von der Anforderung bis zum Gang abgelesen. An welchem Glied geht es bei jedem zuerst schief?',
  'first-break.case':
    '{name}: {element} in Gang {range}, soll {wanted, select, on {geschlossen} other {offen}} sein; {solenoid} gibt abgesteckt {gives, select, full {vollen Druck} other {keinen}}',
  'first-break.column-asked': 'angefordert',
  'first-break.column-voltage': 'Spannung an der Wicklung',
  'first-break.column-current': 'Strom',
  'first-break.column-given': 'nach dem Magnetventil',
  'first-break.column-port': 'am Anschluss',
  'first-break.column-road': 'der Gang',
  'first-break.on': 'Strom',
  'first-break.off': 'kein Strom',
  'first-break.voltage': 'da',
  'first-break.no-voltage': 'keine',
  'first-break.row':
    'Geh die Kette von der Anforderung an entlang; die erste Ablesung, die nicht aus der davor folgt, ist die Stelle.',
  'first-break.reason':
    'Nach diesem Glied stimmt auch nichts mehr, aber nur seinetwegen. Davor ist alles in Ordnung: dort musst du nicht suchen.',
  'first-break.line':
    '{name}: {link}. {side, select, driver {Strom ist angefordert, aber es kommt keine Spannung: eine Versorgung oder Endstufe.} winding {Spannung ist da, aber es fließt kein Strom: die Wicklung oder ihr Stecker.} valve {Das Magnetventil gibt nicht, was sein Strom verlangt.} feed {Das Magnetventil gibt Druck, aber er kommt nicht am Anschluss an.} other {Am Anschluss ist es, wie es sein soll, aber das Schaltelement tut nicht, was sein Druck sagt.}}',

  'family.slip-or-ratio': 'Schlupf, ein anderer Gang oder falsch gezählt',
  'slip-or-ratio.prompt':
    'Übersetzungen dieses Getriebes: {ratios}. Vier Getriebe wurden in je zwei angeforderten Gängen gefahren und zu zwei Zeitpunkten abgelesen (Antrieb und Abtrieb, U/min). Was ist mit jedem?',
  'slip-or-ratio.ratio': '{range} {ratio}',
  'slip-or-ratio.first': 'erste Ablesung',
  'slip-or-ratio.second': 'zweite Ablesung',
  'slip-or-ratio.row': '{name}, Gang {range} ({ratio} : 1)',
  'slip-or-ratio.speeds': '{input} an, {output} ab',
  'slip-or-ratio.seen': '{ratio} : 1',
  'slip-or-ratio.as-commanded': 'alles wie angefordert',
  'slip-or-ratio.other-range': 'wirklich in einem anderen Gang',
  'slip-or-ratio.slip': 'schlupft',
  'slip-or-ratio.wrong-count': 'eine Zähnezahl ist falsch eingestellt',
  'slip-or-ratio.by': 'Teile Antrieb durch Abtrieb und halte es neben die angeforderte Übersetzung.',
  'slip-or-ratio.reason':
    'Ruhig bei der Übersetzung eines anderen Gangs: es ist in diesem Gang. Wandernd und bei keiner Übersetzung: Schlupf. In jedem Gang um den gleichen Faktor daneben: eine Drehzahl wird falsch gezählt.',
  'slip-or-ratio.line': '{name}: {verdict}.',

  'family.air-check': 'Was eine Prüfung mit Druckluft sagt',
  'air-check.prompt':
    'Druckluft, geregelt nach den Herstellerangaben und mit Augenschutz, wird nacheinander in die Kanäle von vier Schaltelementen gegeben. Was sagt jeder?',
  'air-check.passage': '{element}: {noticed}',
  'air-check.thud': 'ein dumpfer Schlag, dann still',
  'air-check.nothing': 'nichts bewegt sich, und keine Luft ist zu hören',
  'air-check.hiss': 'kein Schlag; Luft zischt weiter am Kolben von {element}',
  'air-check.two': 'ein Schlag, und {other} bewegt sich auch; dort zischt Luft weiter',
  'air-check.sound': 'in Ordnung',
  'air-check.blocked': 'der Kanal ist verstopft',
  'air-check.seal': 'der Dichtring des Kolbens ist undicht',
  'air-check.crosses': 'es leckt in einen anderen Kanal',
  'air-check.row':
    'Ein dumpfer Schlag ist ein Kolben, der sich bewegt; ein Zischen ist Luft, die weiter entweicht.',
  'air-check.reason':
    'Frage, wo es zischt und was sich noch bewegt: am eigenen Kolben ist es der Dichtring, an einem anderen Schaltelement sind die Kanäle verbunden.',
  'air-check.line': '{element}: {noticed}. Also: {verdict}.',
} as const;
