/** Notizen an der Werkbank, auf Deutsch: beim Zerlegen am Handy gemacht, später Teil eines Datensatzes. */
export const BENCH = {
  'workshop.section.notes': 'Notizen',
  'bench.link': 'Notizen beim Zerlegen',
  'bench.heading': 'Notizen beim Zerlegen',
  'bench.intro':
    'Eine Notiz für jedes Teil, das herauskommt: was es ist, von welchem Ende du schaust, was du siehst, wie dick es ist. Jeder Buchstabe und jedes Foto wird sofort auf diesem Handy behalten, mit und ohne Netz. Am Schreibtisch wird aus jeder Notiz ein Teil eines Datensatzes.',
  'bench.new': 'Neue Notiz',
  'bench.next': 'Nächste Notiz',
  'bench.part': 'Was es ist',
  'bench.seen-from': 'Von welchem Ende des Getriebes schaust du?',
  'bench.end.front': 'von vorn',
  'bench.end.rear': 'von hinten',
  'bench.was-seen-from': 'gesehen {end}',
  'bench.text': 'Was du siehst oder tust',
  'bench.thickness': 'Dicke, oder was du abliest',
  'bench.keyboard-speech':
    'Zum Sprechen das Mikrofon auf der Tastatur des Handys nehmen. Ob es ohne Netz geht und wohin es die Stimme schickt, liegt am Handy.',
  'bench.speak': 'Sprechen (bleibt auf diesem Gerät)',
  'bench.stop': 'Nicht mehr zuhören',
  'bench.photo': 'Foto machen',
  'bench.other-photo': 'Stattdessen ein anderes Foto',
  'bench.photo-hint':
    'Es wird verkleinert, und wo es gemacht wurde, wird nicht behalten. Keine Gesichter, keine Kennzeichen.',
  'bench.no-picture': 'Das ist kein Bild, das dieser Browser lesen kann.',
  'bench.photo-of': 'Foto: {part}',
  'bench.unit': 'Von welchem Getriebe',
  'bench.kept': '{count, plural, one {Eine Notiz} other {# Notizen}}',
  'bench.change': 'Ändern',
  'bench.unnamed': 'Notiz ohne Namen',
  'bench.section-hint':
    'Notizen, die auf diesem Gerät beim Zerlegen gemacht wurden. Sag, was jede ist; was sie enthält, kommt in die Felder, und ihr Foto steht hier daneben. Fotos bleiben auf diesem Gerät: In der Datei des Datensatzes sind sie nicht.',
  'bench.open':
    '{count, plural, =0 {Keine Notiz wartet.} one {Eine Notiz wartet.} other {# Notizen warten.}}',
  'bench.make-it': 'Das ist',
  'bench.new-work': 'neue Arbeit',
  'bench.as.seat': 'ein Lager, eine Scheibe oder eine Dichtung',
  'bench.as.plate': 'eine Lamelle im Paket {within}',
  'bench.as.step': 'ein Schritt von: {within}',
  'bench.as.reading': 'eine Messung zum Spiel {within}',
  'bench.used': '{part} ist jetzt im Datensatz: {section}.',
  'bench.in-here': '{count, plural, one {Eine Notiz ist} other {# Notizen sind}} in diesem Entwurf',
  'bench.evidence': '({count, plural, one {eine Notiz} other {# Notizen}})',
} as const;
