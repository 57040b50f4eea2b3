/** Vom Fehler zur Berichtigung, auf Deutsch: wo der Wert steht, wer ihn falsch hat, was zu ihnen geht. */
export const FIX = {
  'fix.link': 'Berichtigen',
  'fix.look-up': 'Falsch? Berichtigen: {what}',
  'fix.no-deck': 'Der Datensatz „{deck}“ ist nicht auf diesem Gerät.',
  'fix.flagged': 'Gemeldet: „{note}“',
  'fix.looked-up': 'Zu berichtigen:',
  'fix.cell': 'Zelle der Matrix',
  'fix.capacity': 'Kapazität von',
  'fix.valve-body': 'Steuerplatte',
  'fix.then': 'Den Wert dort ändern, wo er steht; von da an wird überall mit ihm gerechnet. Danach:',
  'fix.correction': 'Denen sagen, die es gelernt haben',
  'fix.behind':
    '{groups} {count, plural, one {hat} other {haben}} einen früheren Stand als {revision}. Sag, was falsch war: Die Berichtigung geht mit der nächsten Ausgabe der Aufgabe mit, Antworten dazu zählen nicht mehr, und es wird wieder gefragt.',
  'fix.wrong': 'Was falsch war, in einem Satz',
  'fix.hand-out': 'Berichtigung anlegen',
  'fix.done':
    '{facts, plural, =0 {Nichts kommt anders heraus} one {Eines kommt anders heraus} other {# Dinge kommen anders heraus}}; {count, plural, one {eine Aufgabe geht} other {# Aufgaben gehen}} neu hinaus. Übergeben:',
  'fix.for-group': 'Berichtigung für {group}',
} as const;
