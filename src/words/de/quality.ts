/** How well the kinds of question measure, in German. */
export const QUALITY = {
  'group.part.quality': 'Wie gut die Fragen messen',
  'quality.open': 'Aus den Berichten ausrechnen',
  'quality.about':
    'Nur erste Antworten. Eine Frageart sagt viel, wenn alle, die sie richtig beantworten, auch sonst richtig liegen: nahe 0 sagt sie nichts, unter 0 führt sie in die Irre.',
  'quality.too-few':
    'Zu wenig für eine Aussage: eine Frageart braucht {answers} erste Antworten von {people} Personen.',
  'quality.misleads': 'Führt in die Irre.',
  'quality.figures':
    '{missed} % nicht richtig, {answers, plural, one {# Antwort} other {# Antworten}} von {people, plural, one {# Person} other {# Personen}}; {settled, select, yes {Übereinstimmung mit dem Rest {discrimination}} other {bei allen gleich, trennt also niemanden}}.',
} as const;
