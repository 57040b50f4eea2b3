/** Questions about packs of plates: their order, what is in them, how high they are. */
export const STACKS = {
  'plate.piston': 'pistón',
  'plate.return-spring': 'resorte de retorno',
  'plate.apply': 'plato de aplicación',
  'plate.friction': 'disco de fricción',
  'plate.steel': 'disco de acero',
  'plate.waved': 'disco ondulado',
  'plate.dished': 'disco cónico',
  'plate.separator': 'separador ondulado',
  'plate.backing': 'plato de respaldo',
  'plate.washer': 'arandela',
  'plate.snap-ring': 'anillo de retención',
  'plate.thick': '{what} {thickness} {unit}',

  'stack.floor': '{floor}, {end, select, front {al frente} other {atrás}}',
  'stack.line': '{stack}, desde el fondo ({floor}) hacia arriba: {plates}.',
  'stack.run': '{times, number} veces {first} y encima {second}',
  'stack.belongs': 'Va en {stack}: {plate}.',
  'stack.length': '{value} {unit}',
  'stack.no-length': 'no tiene',
  'stack.count': '{count, number}',
  'stack.column-count': 'cuántos',
  'stack.column-thickness': 'espesor',
  'stack.column-free': 'altura sin carga',

  'family.stack-order': 'Un paquete en orden',
  'stack-order.prompt': '{stack}: pon todas sus piezas en orden, desde el fondo ({floor}) hacia arriba.',
  'stack-order.part':
    '{stack}: estas van una junto a otra. Ponlas en orden, desde el fondo ({floor}) hacia arriba.',
  'stack-order.first': 'En el fondo: {floor}',
  'stack-order.lower': 'Hacia el fondo',
  'stack-order.last': 'Hacia la boca',
  'stack-order.reason': 'Cada clase según aparece primero: {kinds}.',
  'stack-order.step': 'Encima de {lower} va {upper}.',

  'family.stack-gap': 'Una pieza tapada',
  'stack-gap.prompt': '{stack}: ¿cuál es la pieza tapada? El fondo es: {floor}; en el dibujo está abajo.',
  'stack-gap.reason': 'El número {place} desde el fondo es: {plate}.',

  'family.stack-stranger': 'Una pieza de otro paquete',
  'stack-stranger.prompt':
    'Sobre la mesa: {stack}, pero una pieza es de otro paquete. ¿Cuál? El fondo es: {floor}; en el dibujo está abajo.',
  'stack-stranger.reason': 'En su lugar va: {plate}.',

  'family.stack-count': 'Cuántos discos',
  'stack-count.prompt':
    '¿Cuántos {kind, select, friction {discos de fricción} other {discos de acero}} hay en {stack}? Los platos de aplicación y de respaldo no cuentan.',
  'stack-count.kit':
    '¿Cuántos {kind, select, friction {discos de fricción} other {discos de acero}} debe traer un juego de reparación para todos los paquetes de la unidad? Los platos de aplicación y de respaldo no cuentan.',
  'stack-count.sum': '{counts}: {total, number} en total.',
  'stack-count.one': '{stack} {count, number}',
  'stack-count.reason':
    'Cuenta uno por uno {kind, select, friction {los discos con forro} other {los discos lisos entre los forrados}} al ponerlos sobre la mesa.',

  'family.stack-height': 'Altura de un paquete',
  'stack-height.prompt':
    '¿Qué altura tiene {stack}, con todas las piezas de la tabla una sobre otra{ring, select, yes {, también el anillo de retención} other {}}{waves, select, flat {, los discos con resorte aplastados} free {, los discos con resorte sin carga} other {}}?',
  'stack-height.row': '{stack} mide {height} {unit} de alto.',
  'stack-height.reason':
    '{waves, select, flat {Aplastado, un disco con resorte cuenta con su espesor.} free {Sin carga, un disco con resorte cuenta con su altura libre.} other {Cada pieza cuenta con su espesor.}}',
  'stack-height.step': '{plate}: {count, number} × {each} = {sum} {unit}',

  'family.stack-slip': 'Un paquete muy alto o muy bajo',
  'stack-slip.prompt':
    '{stack} debe medir {right} {unit} de alto. Armado mide {measured} {unit}, con ± {tolerance} {unit}. Sobra o falta una pieza. ¿Cuál?',
  'stack-slip.doubled': 'sobra: {plate}',
  'stack-slip.left-out': 'falta: {plate}',
  'stack-slip.row':
    'Está {difference} {unit} {sense, select, doubled {demasiado alto} other {demasiado bajo}}.',
  'stack-slip.reason': 'Es la altura de una pieza: {plate}, {height} {unit}.',
  'stack-slip.other': 'Una pieza, {plate}, hace {height} {unit}.',

  'family.plate-neighbours': 'Entre qué va una pieza',
  'plate-neighbours.prompt':
    '{stack}, fondo: {floor}. ¿Qué va justo debajo y encima de esta pieza: {plate}? Debajo es hacia el fondo.',
  'plate-neighbours.below': 'debajo, hacia el fondo',
  'plate-neighbours.above': 'encima, hacia la boca',
  'plate-neighbours.row': 'Pieza: {plate}. Debajo va {below}; encima va {above}.',

  'family.plate-faces': 'Hacia dónde miran los discos',
  'plate-faces.prompt':
    '¿Hacia dónde miran estos, visto desde el paquete mismo: hacia su fondo o hacia su boca?',
  'plate-faces.plate':
    '{stack}, {plate}: {feature, select, step {escalón} bevel {chaflán} dish {lado hueco} lip {labio} other {pestaña}}',
  'plate-faces.floor': 'hacia el fondo',
  'plate-faces.opening': 'hacia la boca',
  'plate-faces.line':
    '{stack}, {plate}: {feature, select, step {el escalón} bevel {el chaflán} dish {el lado hueco} lip {el labio} other {la pestaña}} mira hacia {towards, select, floor {el fondo} other {la boca}}. Fondo: {floor}.',
  'plate-faces.reason': 'Fondo y boca son del paquete, así que esto vale esté como esté la unidad.',
} as const;
