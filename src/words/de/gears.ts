/** Questions on the gear train, in German: ratios and speeds from tooth counts, tie-ups, neutral. */
export const GEARS = {
  'gears.start': 'Setze den Antrieb auf 1; was am Gehäuse gehalten ist, steht auf 0.',
  'gears.rule-simple':
    'Einfacher Satz: Zähne Sonnenrad × Drehzahl Sonnenrad + Zähne Hohlrad × Drehzahl Hohlrad = beide Zähnezahlen zusammen × Drehzahl Steg.',
  'gears.rule-double-pinion':
    'Satz mit Planeten in Paaren: Zähne Hohlrad × Drehzahl Hohlrad − Zähne Sonnenrad × Drehzahl Sonnenrad = Unterschied der Zähnezahlen × Drehzahl Steg.',
  'gears.equation-simple':
    '{gearset}: {sunTeeth} × {sun} + {ringTeeth} × {ring} = {carrierTeeth} × {carrier}',
  'gears.equation-double-pinion':
    '{gearset}: {ringTeeth} × {ring} − {sunTeeth} × {sun} = {carrierTeeth} × {carrier}',
  'gears.step-call': 'Noch nicht bekannt ist die Drehzahl von {shaft}: nenne sie {letter}.',
  'gears.step-locks':
    'Zwei Glieder von {gearset} drehen gleich schnell, also der ganze Satz: {shaft} = {speed}.',
  'gears.step-solves': '{equation}, also {shaft} = {speed}.',
  'gears.step-closes': '{equation}, also {letter} = {speed}.',
  'gears.step-clashes': '{equation} kann nicht stimmen.',

  'family.row-ratio': 'Übersetzung eines Gangs',
  'row-ratio.prompt':
    'In Gang {range} sind geschlossen: {elements}. Rechne die Übersetzung aus, Antriebsdrehzahl ÷ Abtriebsdrehzahl, auf zwei Nachkommastellen; bis {tolerance} Abweichung gilt als richtig. Minus, wenn der Abtrieb rückwärts dreht.',
  'row-ratio.reason':
    'Mit dem Antrieb auf 1: {output} dreht mit {speed}, {way, select, backward {rückwärts, gegen den Antrieb} other {in Drehrichtung des Antriebs}}. 1 ÷ {speed} gibt eine Übersetzung von {ratio}.',

  'gears.together': '{sum} + {element}',

  'family.shaft-speed': 'Drehzahl einer Welle dazwischen',
  'shaft-speed.prompt':
    'In Gang {range} sind geschlossen: {elements}. Der Antrieb dreht mit {rpm} U/min. Wie schnell dreht {shaft}? Ganze U/min; bis {tolerance} Abweichung gilt als richtig. Minus, wenn die Welle rückwärts dreht.',
  'shaft-speed.reason':
    '{shaft} dreht {way, select, backward {rückwärts, gegen den Antrieb,} other {in Drehrichtung des Antriebs,}} {speed}-mal so schnell: {rpm} U/min.',
  'shaft-speed.scaled': 'Bei {inputRpm} U/min: {inputRpm} × {speed} = {rpm} U/min.',

  'family.ratio-order': 'Übersetzungen in Reihenfolge',
  'ratio-order.prompt':
    'Der Antrieb dreht jedes Mal gleich schnell, geschlossen sind nur diese Schaltelemente. Ordne nach der Abtriebsdrehzahl, die schnellste vorwärts zuerst. Rückwärts kommt zuletzt.',
  'ratio-order.first': 'am schnellsten vorwärts',
  'ratio-order.last': 'am langsamsten, oder rückwärts',
  'ratio-order.row': 'Von schnell nach langsam: Gänge {ranges}.',
  'ratio-order.reason':
    'Die Übersetzungen sind {ratios}. Je kleiner die Übersetzung, desto schneller der Abtrieb; ein Minus heißt rückwärts.',
  'ratio-order.detail':
    '{elements} (Gang {range}): je Umdrehung des Antriebs macht der Abtrieb {speed}, {way, select, backward {rückwärts} other {vorwärts}}.',

  'gears.does-drive-as': '{elements}: treibt wie Gang {range}, mit {ratio} : 1.',
  'gears.does-drive': '{elements}: treibt mit {ratio} : 1, der Übersetzung keines Gangs.',
  'gears.does-no-drive': '{elements}: kein Kraftschluss, die Drehzahl des Abtriebs ist nicht bestimmt.',
  'gears.does-output-held': '{elements}: hält den Abtrieb fest, aber der Antrieb kann drehen.',
  'gears.does-tied-up': '{elements}: verspannt, der Antrieb kann nicht drehen.',

  'family.tie-ups': 'Was das Räderwerk verspannt',
  'tie-ups.prompt':
    'Welche davon, zusammen geschlossen und sonst nichts, verspannen das Räderwerk, sodass der Antrieb nicht drehen kann?',
  'tie-ups.row': 'Verspannt: {combinations}.',
  'tie-ups.reason':
    'Bei diesen passt keine Drehzahl des Antriebs außer 0 zu allen Planetensätzen. Wird nur der Abtrieb festgehalten, kann der Antrieb noch drehen.',
  'tie-ups.proof': 'Versuche es mit drehendem Antrieb: {elements}.',
  'tie-ups.input-held': 'Der Antrieb selbst ist also am Gehäuse festgehalten.',

  'family.neutral-drive': 'Was Neutral Kraftschluss gäbe',
  'neutral-drive.prompt':
    '{count, plural, =0 {In {row} ist nichts geschlossen} one {In {row} bleibt {elements} geschlossen} other {In {row} bleiben {elements} geschlossen}}. Welche Schaltelemente, jedes allein{count, plural, =0 {} other { dazu}} geschlossen, gäben Kraftschluss?',
  'neutral-drive.row':
    'Sobald {count, plural, one {{elements} schließt} other {eines davon schließt ({elements})}}, hat {row} Kraftschluss.',
  'neutral-drive.free':
    '{count, plural, =0 {Ist nichts geschlossen,} other {Ist nur {elements} geschlossen,}} so bestimmt nichts die Drehzahl des Abtriebs; es kommt kein Drehmoment an.',
  'neutral-drive.output-held':
    '{count, plural, =0 {Ist nichts geschlossen,} other {Ist nur {elements} geschlossen,}} so ist der Abtrieb festgehalten, während der Antrieb dreht.',
  'neutral-drive.tied-up':
    '{count, plural, =0 {Ist nichts geschlossen,} other {Ist nur {elements} geschlossen,}} so kann der Antrieb nicht drehen.',
} as const;
