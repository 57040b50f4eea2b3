/** Questions about packs of plates, in German: their order, what is in them, how high they are. */
export const STACKS = {
  'plate.piston': 'Kolben',
  'plate.return-spring': 'Rückstellfeder',
  'plate.apply': 'Drucklamelle',
  'plate.friction': 'Belaglamelle',
  'plate.steel': 'Stahllamelle',
  'plate.waved': 'Wellfeder',
  'plate.dished': 'Tellerfeder',
  'plate.separator': 'gewellte Zwischenlamelle',
  'plate.backing': 'Endlamelle',
  'plate.washer': 'Scheibe',
  'plate.snap-ring': 'Sicherungsring',
  'plate.thick': '{what} {thickness} {unit}',

  'stack.floor': '{floor}, am Getriebe {end, select, front {vorn} other {hinten}}',
  'stack.line': '{stack}, vom Boden ({floor}) aufwärts: {plates}.',
  'stack.run': '{times, number}-mal {first} und darauf {second}',
  'stack.belongs': '{plate} gehört zu {stack}.',
  'stack.length': '{value} {unit}',
  'stack.no-length': 'keine',
  'stack.count': '{count, number}',
  'stack.column-count': 'wie viele',
  'stack.column-thickness': 'Dicke',
  'stack.column-free': 'Höhe, unbelastet',

  'family.stack-order': 'Ein Paket in Reihenfolge',
  'stack-order.prompt': '{stack}: bringe alle Teile in Reihenfolge, vom Boden ({floor}) aufwärts.',
  'stack-order.part':
    '{stack}: diese liegen aufeinander. Bringe sie in Reihenfolge, vom Boden ({floor}) aufwärts.',
  'stack-order.first': 'Am Boden: {floor}',
  'stack-order.lower': 'Zum Boden hin',
  'stack-order.last': 'Zur Öffnung hin',
  'stack-order.reason': 'Jede Sorte, wie sie zuerst vorkommt: {kinds}.',
  'stack-order.step': 'Unten {lower}, darauf {upper}.',

  'family.stack-gap': 'Eine verdeckte Lamelle',
  'stack-gap.prompt': '{stack}: was ist das verdeckte Teil? Der Boden ({floor}) ist auf der Zeichnung unten.',
  'stack-gap.reason': 'Nummer {place} vom Boden: {plate}.',

  'family.stack-stranger': 'Eine Lamelle aus einem anderen Paket',
  'stack-stranger.prompt':
    '{stack} liegt aus, aber ein Teil gehört zu einem anderen Paket. Welches? Der Boden ({floor}) ist auf der Zeichnung unten.',
  'stack-stranger.reason': 'An diesen Platz gehört: {plate}.',

  'family.stack-count': 'Wie viele Lamellen',
  'stack-count.prompt':
    'Wie viele {kind, select, friction {Belaglamellen} other {Stahllamellen}} sind in {stack}? Drucklamelle und Endlamelle zählen nicht.',
  'stack-count.kit':
    'Wie viele {kind, select, friction {Belaglamellen} other {Stahllamellen}} braucht ein Satz für alle Pakete des Getriebes? Drucklamellen und Endlamellen zählen nicht.',
  'stack-count.sum': '{counts}: zusammen {total, number}.',
  'stack-count.one': '{stack} {count, number}',
  'stack-count.reason':
    'Zähle die {kind, select, friction {Lamellen mit Belag} other {glatten Lamellen zwischen denen mit Belag}} einzeln, wenn du sie auslegst.',

  'family.stack-height': 'Höhe eines Pakets',
  'stack-height.prompt':
    'Wie hoch ist {stack}, alle Teile der Tabelle aufeinander{ring, select, yes {, auch der Sicherungsring} other {}}{waves, select, flat {, federnde Lamellen flach gedrückt} free {, federnde Lamellen unbelastet} other {}}?',
  'stack-height.row': '{stack} ist {height} {unit} hoch.',
  'stack-height.reason':
    '{waves, select, flat {Flach gedrückt zählt eine federnde Lamelle mit ihrer Dicke.} free {Unbelastet zählt eine federnde Lamelle mit ihrer freien Höhe.} other {Jedes Teil zählt mit seiner Dicke.}}',
  'stack-height.step': '{plate}: {count, number} × {each} = {sum} {unit}',

  'family.stack-slip': 'Ein Paket zu hoch oder zu niedrig',
  'stack-slip.prompt':
    '{stack} soll {right} {unit} hoch sein. Zusammengebaut misst es {measured} {unit}, auf ± {tolerance} {unit} genau. Eine Lamelle ist zu viel oder fehlt. Welche?',
  'stack-slip.doubled': '{plate}, eine zu viel',
  'stack-slip.left-out': '{plate}, eine fehlt',
  'stack-slip.row': 'Es ist {difference} {unit} {sense, select, doubled {zu hoch} other {zu niedrig}}.',
  'stack-slip.reason': 'So hoch ist: {plate}, {height} {unit}.',
  'stack-slip.other': '{plate} macht {height} {unit}.',

  'family.plate-neighbours': 'Wozwischen eine Lamelle liegt',
  'plate-neighbours.prompt':
    '{stack}, Boden: {floor}. Was liegt direkt unter und über diesem Teil: {plate}? Unten heißt zum Boden hin.',
  'plate-neighbours.below': 'darunter, zum Boden hin',
  'plate-neighbours.above': 'darüber, zur Öffnung hin',
  'plate-neighbours.row': '{plate}: darunter {below}, darüber {above}.',

  'family.plate-faces': 'Wie herum Lamellen liegen',
  'plate-faces.prompt': 'Wohin zeigen diese, vom Paket selbst aus gesehen: zum Boden oder zur Öffnung?',
  'plate-faces.plate':
    '{stack}, {plate}: {feature, select, step {Absatz} bevel {Fase} dish {hohle Seite} lip {Lippe} other {Nase}}',
  'plate-faces.floor': 'zum Boden',
  'plate-faces.opening': 'zur Öffnung',
  'plate-faces.line':
    '{stack}, {plate}: {feature, select, step {Absatz} bevel {Fase} dish {hohle Seite} lip {Lippe} other {Nase}} {towards, select, floor {zum Boden} other {zur Öffnung}}. Boden: {floor}.',
  'plate-faces.reason': 'Boden und Öffnung gehören zum Paket; das gilt also, wie das Getriebe auch liegt.',
} as const;
