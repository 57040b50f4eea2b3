/** Questions about bearings, washers and seals along the shaft line, and which way they face, in German. */
export const ORIENTATION = {
  'seat.front': 'vorn',
  'seat.rear': 'hinten',
  'seat.face': '{seat}: {mark}',
  'seat.side': '{mark}, an {touches}',
  'seat.plain-side': 'an {touches}',
  'seat.line': '{seat}: nach vorn: {front}; nach hinten: {rear}. Notiert mit Blick von {from}.',
  'seat.by-neighbour':
    'Eine Seite erkennst du an ihrem Merkmal und an dem, woran sie liegt. Das gilt, von welchem Ende du auch schaust.',

  'family.seat-faces': 'Wohin Teile zeigen',
  'seat-faces.prompt':
    'Zu welchem Ende des Getriebes zeigt jede dieser Seiten? Vorn, wo der Wandler sitzt, ist auf der Zeichnung oben.',
  'seat.gap': 'zwischen {front} und {rear}',
  'seat.kind-thrust-bearing': 'Axiallager',
  'seat.kind-thrust-washer': 'Anlaufscheibe',
  'seat.kind-lip-seal': 'Wellendichtring',
  'seat.kind-sealing-ring': 'Rechteckdichtring',

  'family.seat-view': 'Das Getriebe umgedreht',
  'seat-view.standing':
    'Die Zeichnung zeigt, wie die Teile liegen. Jetzt wird das Getriebe aufgestellt, wie jede Zeile sagt. Vorn ist, wo der Wandler sitzt. Zeigt die Seite nach oben oder nach unten?',
  'seat-view.looking':
    'Die Zeichnung zeigt, wie die Teile liegen. Jetzt schaust du die Welle entlang, wie jede Zeile sagt. Vorn ist, wo der Wandler sitzt. Ist die Seite dir zugewandt oder abgewandt?',
  'seat-view.standing-row': '{face}; oben ist {end}',
  'seat-view.looking-row': '{face}; Blick von {end}',
  'seat-view.up': 'nach oben',
  'seat-view.down': 'nach unten',
  'seat-view.seen': 'dir zugewandt',
  'seat-view.hidden': 'abgewandt',
  'seat-view.standing-rule': 'Eine Seite, die zu dem Ende zeigt, das oben ist, zeigt nach oben.',
  'seat-view.looking-rule': 'Von einem Ende aus siehst du die Seiten, die zu diesem Ende zeigen.',
  'seat-view.reason': 'Auf der Zeichnung: {faces}.',
  'seat-view.faces': '{face} (zeigt nach {end})',

  'family.race-side': 'Seite der geschlossenen Laufscheibe',
  'race-side.prompt':
    'Auf welcher Seite welcher Lücke liegt die geschlossene Laufscheibe von {seat}? Vorn, wo der Wandler sitzt, ist auf der Zeichnung oben.',
  'race-side.front': 'direkt hinter {body}',
  'race-side.rear': 'direkt vor {body}',

  'family.seat-pilot': 'Was ein Lager zentriert',
  'seat-pilot.prompt':
    'Welche Seite zentriert jedes von diesen, und an welchem Rand? Vorn ist, wo der Wandler sitzt.',
  'seat-pilot.by':
    '{end, select, front {vorn} other {hinten}}, am {rim, select, inner {Innenrand} other {Außenrand}}',
  'seat-pilot.line':
    '{seat}: zentriert von {by}, nach {end}, am {rim, select, inner {Innenrand} other {Außenrand}}, {diameter} {unit}.',
  'seat-pilot.reason': 'An das andere Teil gelegt ist es nicht zentriert und läuft unrund.',

  'family.seat-places': 'Teile an ihre Plätze',
  'seat-places.prompt':
    'Diese liegen auf der Werkbank. Wo im Wellenstrang gehört jedes hin? Vorn, wo der Wandler sitzt, ist auf der Zeichnung oben.',
  'seat-places.part': '{kind}, {inner} × {outer} × {thickness} {unit}',
  'seat-places.place': '{number}: {gap}',
  'seat-places.row': '{part} ist {seat}, {gap}.',
  'seat-places.reason': 'Die Maße sind Bohrung, Außendurchmesser und Dicke. Miss, bevor du eines einlegst.',

  'family.seat-neighbours': 'Was auf beiden Seiten liegt',
  'seat-neighbours.prompt':
    'Zwischen welchen zwei Körpern liegt {seat}? Vorn ist, wo der Wandler sitzt. Andere Einbauplätze dazwischen zählen nicht.',
  'seat-neighbours.side': 'nach {end}',
  'seat-neighbours.reason': 'Von vorn nach hinten: {bodies}.',

  'family.seat-turned': 'Ein Teil verkehrt herum',
  'seat-turned.prompt': 'Jemand versucht, {seat} verkehrt herum einzubauen. Was kommt dabei heraus?',
  'seat-turned.nothing': 'Nichts. Beide Richtungen tun dasselbe.',
  'seat-turned.keyed': 'So herum geht es nicht hinein.',
  'seat-turned.goes-in': '{seat} geht in beiden Richtungen hinein. {effect}',
  'seat-turned.stays-out': '{seat} geht verkehrt herum nicht hinein. {effect}',
  'seat-turned.other': '{seat} verkehrt herum: {effect}',

  'family.seal-lip': 'Wohin eine Dichtlippe zeigt',
  'seal-lip.prompt':
    'Wohin zeigt die Dichtlippe von {seat}, und woher kommt der Druck? Vorn, wo der Wandler sitzt, ist auf der Zeichnung oben.',
  'seal-lip.pressure': 'zu {touches} hin, dorthin, woher der Druck kommt',
  'seal-lip.away': 'zu {touches} hin, weg von dort, woher der Druck kommt',
  'seal-lip.row':
    'Die Dichtlippe von {seat} zeigt zu {touches} hin, nach {lip}. Der Druck kommt von {pressure}.',
  'seal-lip.rule': 'Druck in der Lippe presst sie an die Welle; so dichtet sie.',
  'seal-lip.exception':
    'Hier weichen die Unterlagen von der üblichen Regel ab, dass eine Lippe zum Druck zeigt.',
} as const;
