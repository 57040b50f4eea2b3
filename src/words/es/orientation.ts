/** Questions about bearings, washers and seals along the shaft line, and which way they face. */
export const ORIENTATION = {
  'seat.front': 'el frente',
  'seat.rear': 'la parte trasera',
  'seat.face': '{seat}: {mark}',
  'seat.side': '{mark} contra {touches}',
  'seat.plain-side': 'contra {touches}',
  'seat.line': '{seat}: hacia el frente: {front}; hacia atrás: {rear}. Anotado viendo desde {from}.',
  'seat.by-neighbour':
    'Una cara se conoce por su marca y por lo que toca. Eso vale desde cualquier extremo que mires.',

  'family.seat-faces': 'Hacia dónde miran las piezas',
  'seat-faces.prompt':
    '¿Hacia qué extremo de la unidad mira cada una de estas caras? El frente, el lado del convertidor, está arriba en el dibujo.',
  'seat.gap': 'entre {front} y {rear}',
  'seat.kind-thrust-bearing': 'cojinete axial',
  'seat.kind-thrust-washer': 'arandela de empuje',
  'seat.kind-lip-seal': 'sello de labio',
  'seat.kind-sealing-ring': 'anillo de sello',

  'family.seat-view': 'La unidad volteada',
  'seat-view.standing':
    'El dibujo muestra cómo van las piezas. Ahora la unidad se pone de pie como dice cada línea. El frente es el lado del convertidor. ¿La cara mira hacia arriba o hacia abajo?',
  'seat-view.looking':
    'El dibujo muestra cómo van las piezas. Ahora miras a lo largo del eje como dice cada línea. El frente es el lado del convertidor. ¿La cara está de frente a ti, o de espaldas?',
  'seat-view.standing-row': '{face}; arriba está {end}',
  'seat-view.looking-row': '{face}; miras desde {end}',
  'seat-view.up': 'hacia arriba',
  'seat-view.down': 'hacia abajo',
  'seat-view.seen': 'de frente a ti',
  'seat-view.hidden': 'de espaldas',
  'seat-view.standing-rule': 'Una cara que mira al extremo que está arriba mira hacia arriba.',
  'seat-view.looking-rule': 'Desde un extremo ves las caras que miran a ese extremo.',
  'seat-view.reason': 'En el dibujo: {faces}.',
  'seat-view.faces': '{face} (mira hacia {end})',

  'family.race-side': 'Lado de la pista cerrada',
  'race-side.prompt':
    '¿De qué lado de qué hueco va la pista cerrada de {seat}? El frente, el lado del convertidor, está arriba en el dibujo.',
  'race-side.front': 'justo detrás de {body}',
  'race-side.rear': 'justo delante de {body}',

  'family.seat-pilot': 'Qué centra un cojinete',
  'seat-pilot.prompt':
    '¿Qué lado centra cada uno de estos, y por qué borde? El frente es el lado del convertidor.',
  'seat-pilot.by':
    'lado {end, select, front {del frente} other {de atrás}}, borde {rim, select, inner {interior} other {exterior}}',
  'seat-pilot.line':
    'A {seat} lo centra {by}, hacia {end}, por el borde {rim, select, inner {interior} other {exterior}}, {diameter} {unit}.',
  'seat-pilot.reason': 'Puesto contra la otra pieza no queda centrado, y gira descentrado.',

  'family.seat-places': 'Cada pieza a su hueco',
  'seat-places.prompt':
    'Estas están en el banco. ¿En qué parte de la línea de ejes va cada una? El frente, el lado del convertidor, está arriba en el dibujo.',
  'seat-places.part': '{kind}, {inner} × {outer} × {thickness} {unit}',
  'seat-places.place': '{number}: {gap}',
  'seat-places.row': '{part}: es {seat}, {gap}.',
  'seat-places.reason': 'Las medidas son diámetro interior, exterior y espesor. Mide antes de poner una.',

  'family.seat-neighbours': 'Qué hay de cada lado',
  'seat-neighbours.prompt':
    '¿Entre qué dos cuerpos va {seat}? El frente es el lado del convertidor. Otros asientos en medio no cuentan.',
  'seat-neighbours.side': 'hacia {end}',
  'seat-neighbours.reason': 'Del frente hacia atrás: {bodies}.',

  'family.seat-turned': 'Una pieza al revés',
  'seat-turned.prompt': 'Alguien intenta poner {seat} al revés. ¿Qué pasa?',
  'seat-turned.nothing': 'Nada. De los dos modos hace lo mismo.',
  'seat-turned.keyed': 'Así no entra.',
  'seat-turned.goes-in': '{seat} entra de los dos modos. {effect}',
  'seat-turned.stays-out': '{seat} no entra al revés. {effect}',
  'seat-turned.other': '{seat} al revés: {effect}',

  'family.seal-lip': 'Hacia dónde mira un labio',
  'seal-lip.prompt':
    '¿Hacia dónde mira el labio de {seat}, y de dónde viene la presión? El frente, el lado del convertidor, está arriba en el dibujo.',
  'seal-lip.pressure': 'hacia {touches}, de donde viene la presión',
  'seal-lip.away': 'hacia {touches}, lejos de donde viene la presión',
  'seal-lip.row': 'El labio de {seat} mira hacia {touches}, hacia {lip}. La presión viene desde {pressure}.',
  'seal-lip.rule': 'La presión dentro del labio lo aprieta contra el eje, y eso lo hace sellar.',
  'seal-lip.exception': 'Aquí el registro se aparta de la regla usual de que el labio mira hacia la presión.',
} as const;
