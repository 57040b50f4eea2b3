/** The way to a class date, in German: what will be known, what is left out, how well it is predicted. */
export const PLAN = {
  'plan.title': 'Auf dem Weg zum Unterricht',
  'plan.waiting': 'Wird ausgerechnet. Die Übung muss nicht warten.',
  'plan.not-here':
    'Dieser Browser kann es nicht ausrechnen. Die Übung folgt stattdessen einer einfachen Regel.',
  'plan.forecast': 'Am Unterrichtstag etwa {share}\u00a0%, wahrscheinlich {low} bis {high}\u00a0%.',
  'plan.forecast-today': 'Heute etwa {share}\u00a0%, wahrscheinlich {low} bis {high}\u00a0%.',
  'plan.meaning':
    'So viel wüsstest du von {assigned, select, yes {dem, was aufgegeben ist} other {diesem Datensatz}}, wenn du {days, select, 7 {jeden Tag} 1 {an einem Tag in der Woche} other {an {days} Tagen in der Woche}} {minutes, plural, one {# Minute} other {# Minuten}} übst.',
  'plan.ceiling':
    'Mit {minutes} Minuten am Tag höchstens {most}\u00a0%; mit {more} höchstens {moreMost}\u00a0%.',
  'plan.ceiling-flat': 'Mit {minutes} Minuten am Tag höchstens {most}\u00a0%. Mehr Minuten brächten wenig.',
  'plan.ceiling-more': 'Mit {more} Minuten am Tag höchstens {moreMost}\u00a0%.',
  'plan.left-out':
    '{count, plural, one {Für einen von {all} Fakten bleibt vor dem Unterricht keine Zeit} other {Für # von {all} Fakten bleibt vor dem Unterricht keine Zeit}}',
  'plan.which-out': 'Weg bleiben die, die für ihre Zeit am wenigsten zählen:',
  'plan.left-out-area': '{area}: {count}',
  'plan.make-room': 'Mehr Minuten oder mehr Tage in der Woche schaffen Platz dafür.',
  'plan.days-field': 'Übungstage in der Woche',
  'plan.more': 'Wo du stehst, Gebiet für Gebiet',
  'plan.worth':
    'Die Übung von heute bringt am Unterrichtstag etwa {facts, plural, one {einen Fakt} other {# Fakten}}.',

  'progress.title': 'Wo du stehst',
  'progress.no-class':
    'Trage auf der ersten Seite den Unterrichtstag ein, dann siehst du, wohin das Üben führt.',
  'progress.course': 'Von heute bis zum Unterricht',
  'progress.course-said':
    'Am Unterrichtstag zu erwarten: {kept}\u00a0% mit der Übung von heute, {skipped}\u00a0%, wenn du sie heute auslässt.',
  'progress.with-today': 'mit der Übung von heute',
  'progress.without-today': 'heute ausgelassen',
  'progress.minutes': 'Der Plan braucht {minutes, plural, one {# Minute} other {# Minuten}} am Tag.',
  'progress.minutes-spare':
    'Der Plan braucht etwa {used, plural, one {# Minute} other {# Minuten}} von deinen {minutes} am Tag; mehr brächte wenig.',
  'progress.axis-share': 'gewusst, %',
  'progress.axis-today': 'heute',
  'progress.axis-class': 'Unterricht',
  'progress.axis-minutes': 'Minuten',
  'progress.topics': 'Gebiet für Gebiet',
  'progress.topic': '{area}: jetzt {now}\u00a0%',
  'progress.topic-class': '{area}: jetzt {now}\u00a0%, zum Unterricht wahrscheinlich {low} bis {high}\u00a0%',
  'progress.fact': 'Fakt',
  'progress.now': 'Jetzt',
  'progress.by-class': 'Zum Unterricht',
  'progress.not-met': 'nie gefragt',
  'progress.share': '{share}\u00a0%',
  'progress.no-time': 'keine Zeit',

  'progress.calibration': 'Wie gut das vorausgesehen wird',
  'progress.too-few':
    'Noch zu wenige Antworten. Jede Frage zu einem einzelnen Fakt zeigt, wie wahrscheinlich eine richtige Antwort war, und dann, ob sie kam.',
  'progress.foreseen':
    'Bei {answers} Fragen zu einem einzelnen Fakt, nach einem Tag oder mehr wieder gestellt, waren {predicted}\u00a0% richtige Antworten erwartet, und {observed}\u00a0% kamen.',
  'progress.gap':
    'Gruppe für Gruppe lag die Erwartung um etwa {points, plural, one {# Punkt} other {# Punkte}} daneben.',
  'progress.surprise':
    'Mittlere Überraschung je Antwort: {own}. Jedes Mal deinen Mittelwert zu erwarten gäbe {plain}; die Vorhersage {helps, select, yes {sagt also mehr als dein Mittelwert} other {sagt also noch nicht mehr als dein Mittelwert}}.',
  'progress.bin-axis': 'richtig erwartet, %',
  'progress.bin-came': 'richtig gekommen, %',
  'progress.bin':
    '{count, plural, one {# Antwort} other {# Antworten}}: {predicted}\u00a0% erwartet, {observed}\u00a0% gekommen',
  'progress.chart-note':
    'Jedes Quadrat ist eine Gruppe von Antworten; größere enthalten mehr. Auf der schrägen Linie stimmen Erwartung und Ergebnis überein. Der Balken zeigt, wie weit der Zufall allein abweichen kann.',
  'progress.as-list': 'Dasselbe als Liste',

  'progress.scale': 'Wie schnell du selbst vergisst',
  'progress.scale-waiting': 'Wird ausgerechnet …',
  'progress.scale-not-here':
    'Dieser Browser kann es nicht ausrechnen. Es gilt das übliche Tempo des Vergessens.',
  'progress.scale-too-few':
    'Noch zu wenige Antworten, um einige für eine Probe zurückzuhalten. Es gilt das übliche Tempo des Vergessens.',
  'progress.scale-tested':
    'Geschätzt aus deinen ersten {fitted} Antworten und erprobt an den {heldOut} danach. Mittlere Überraschung dort: {usual} beim üblichen Tempo, {personal} bei deinem eigenen; der Zufall allein macht einen Unterschied von {error}.',
  'progress.scale-adopted':
    'Dein eigenes sieht dich besser voraus, darum gilt es: eine erste Erinnerung hält {times}-mal so lange wie üblich.',
  'progress.scale-kept': 'Das ist kein klarer Gewinn, darum bleibt das übliche Tempo.',

  'fact.named': '{kind}: {what}',
} as const;
