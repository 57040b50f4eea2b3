/** What is said of parts that are drawn: packs, seats, the shaft line, connectors and the valve body. */
export const PART_DRAWINGS = {
  'drawing.end.front': 'frente',
  'drawing.end.rear': 'atrás',

  'drawing.stack.title': 'Media sección del paquete {stack}, espesores a escala',
  'drawing.stack.floor': 'Contado desde {floor} (extremo de la unidad: {end}) hasta la boca.',
  'drawing.stack.floor-caption': '{floor} (extremo: {end})',
  'drawing.stack.covered': 'tapado',
  'drawing.stack.free': '{flat} aplastado, {free} libre',
  'drawing.stack.plate':
    '{place, plural, =0 {Núm.} other {Lugar #: núm.}} {position} desde el fondo, {name}{sized, select, yes {, {size}} other {}}{looks, select, step {, escalón} bevel {, chaflán} dish {, lado hueco} lip {, labio} tab {, pestaña} other {}}{looks, select, none {} other {{towards, select, floor { hacia el fondo} other { hacia la boca}}}}{lit, select, yes {, marcado} other {}}.',

  'drawing.seat.title': 'Media sección del asiento {seat}',
  'drawing.seat.title-unnamed': 'Media sección de un asiento',
  'drawing.seat.face-title': 'La cara vista desde: {end}',
  'drawing.seat.face-caption': 'Vista desde: {end}',
  'drawing.seat.no-scale': 'No está a escala.',
  'drawing.seat.pressure': 'presión',
  'drawing.seat.neighbour': 'el vecino',
  'drawing.seat.lies':
    'Media sección a lo largo del eje. El frente de la unidad está {front, select, left {a la izquierda} right {a la derecha} up {arriba} other {abajo}}.',
  'drawing.seat.covered': 'La pieza está tapada.',
  'drawing.seat.kind-thrust-bearing': 'La pieza es un cojinete axial.',
  'drawing.seat.kind-thrust-washer': 'La pieza es una arandela de empuje.',
  'drawing.seat.kind-lip-seal': 'La pieza es un sello de labio.',
  'drawing.seat.kind-sealing-ring': 'La pieza es un anillo de sello.',
  'drawing.seat.size': 'Diámetro interior {inner}, diámetro exterior {outer}, espesor {thickness} {unit}.',
  'drawing.seat.side':
    '{place, plural, =0 {{end, select, front {Hacia el frente} other {Hacia atrás}}} other {Lugar #: {end, select, front {hacia el frente} other {hacia atrás}}}}, {touches}{rim, select, none {} inner {, que centra la pieza por su borde interior, {diameter}} other {, que centra la pieza por su borde exterior, {diameter}}}{mark, select, none {} other {; la cara que mira aquí: {text}}}{race, select, yes {; la pista cerrada está de este lado} other {}}{lip, select, yes {; el labio mira aquí} other {}}{pressure, select, yes {; la presión viene de aquí} other {}}.',
  'drawing.seat.face':
    '{marked, select, yes {Vista desde: {end}. {mark}.} other {Vista desde: {end}. La pieza se ve igual que desde el otro extremo.}}',
  'drawing.seat.note': '{end, select, front {Hacia el frente} other {Hacia atrás}}: {mark}',

  'drawing.line.title': 'Línea de ejes despiezada, no a escala',
  'drawing.line.lies':
    'El frente de la unidad está {front, select, up {arriba} other {abajo}}. Del frente hacia atrás:',
  'drawing.line.a-seat': 'Un asiento',
  'drawing.line.a-thrust-bearing': 'Un cojinete axial',
  'drawing.line.a-thrust-washer': 'Una arandela de empuje',
  'drawing.line.a-lip-seal': 'Un sello de labio',
  'drawing.line.a-sealing-ring': 'Un anillo de sello',
  'drawing.line.place':
    '{end, select, front {#{number}, su lado del frente} rear {#{number}, su lado de atrás} other {#{number}}}',
  'drawing.line.body':
    '{body}{numbered, select, yes {, lugar {places}} other {}}{lit, select, yes {, marcado} other {}}.',
  'drawing.line.side':
    '{mark, select, yes {{text}} other {{race, select, yes {pista cerrada} other {{lip, select, yes {labio} other {cara lisa}}}}}}{rim, select, none {} inner {, se centra aquí por el borde interior} other {, se centra aquí por el borde exterior}}',
  'drawing.line.seat':
    '{name}{numbered, select, yes {, lugar {places}} other {}}{covered, select, yes {, sin mostrar} other {{sides, select, yes {: hacia el frente {front}; hacia atrás {rear}} other {}}}}{lit, select, yes {, marcado} other {}}.',

  'drawing.pin.ground': 'tierra',
  'drawing.pin.spare': 'sin uso',
  'drawing.connector.title': 'Cara: {connector}',
  'drawing.connector.side':
    '{seen, select, unit {El conector de la unidad, visto desde afuera.} other {El enchufe del arnés, visto de frente.}}',
  'drawing.connector.seen':
    '{seen, select, unit {El conector de la unidad, visto desde afuera} other {El enchufe del arnés, visto de frente}}: {rows, plural, one {una fila} other {# filas}} de {columns}.',
  'drawing.connector.row': 'Fila {row}, desde la izquierda: {pins}.',
  'drawing.connector.at': '{pin} en la columna {column}',
  'drawing.connector.place': 'lugar {number}',
  'drawing.connector.pin': 'un pin',
  'drawing.connector.probes': 'Las puntas del multímetro están en {from} y {to}.',
  'drawing.connector.lit': 'Marcado: {pins}.',

  'drawing.circuit': 'Circuito',
  'drawing.circuit.title': 'Circuito de {solenoid}',
  'drawing.circuit.supply': 'línea de voltaje',
  'drawing.circuit.ground': 'tierra',
  'drawing.circuit.pin': 'pin del módulo',
  'drawing.circuit.winding': 'bobina de {solenoid}',
  'drawing.circuit.controller':
    'interruptor del módulo{driver, select, on {, cerrado} off {, abierto} other {}}',
  'drawing.circuit.low':
    'La bobina de {solenoid} cuelga de la línea de voltaje. De ella va un cable al pin del módulo, y tras el pin el interruptor del módulo lleva a tierra.',
  'drawing.circuit.high':
    'El interruptor del módulo lleva de la línea de voltaje al pin del módulo. Del pin va un cable a la bobina de {solenoid}, que va a tierra.',
  'drawing.circuit.driver-on': 'El interruptor está cerrado.',
  'drawing.circuit.driver-off': 'El interruptor está abierto.',
  'drawing.circuit.open': 'El cable entre el pin y la bobina está cortado.',
  'drawing.circuit.short-to-ground': 'El cable entre el pin y la bobina toca tierra.',
  'drawing.circuit.short-to-supply': 'El cable entre el pin y la bobina toca la línea de voltaje.',

  'drawing.valve-body.title': 'Solenoides del cuerpo de válvulas',
  'drawing.valve-body.names': 'Nombres de los solenoides',
  'drawing.valve-body.side': 'Vista: {from}.',
  'drawing.valve-body.seen':
    'La cara vista así: {from}. {rows, plural, one {Una fila} other {# filas}} de {columns}.',
  'drawing.valve-body.listed': 'En el orden de la lista: el cuaderno no dice dónde van.',
  'drawing.valve-body.unnamed': 'un solenoide',
  'drawing.valve-body.solenoid':
    '{place, plural, =0 {Fila} other {Lugar #, fila}} {row}, columna {column}: {name}{state, select, on {, con corriente} off {, sin corriente} unplugged {, desconectado} other {}}{lit, select, yes {, marcado} other {}}.',
  'drawing.valve-body.on': 'con corriente',
  'drawing.valve-body.off': 'sin corriente',
  'drawing.valve-body.unplugged': 'desconectado',

  'drawing.window.aim-short': 'busca {aim}',

  'drawing.member.sun': 'solar',
  'drawing.member.ring': 'corona',
  'drawing.member.carrier': 'portaplanetas',
  'drawing.speeds.title': 'Velocidades en {range}, palancas a escala',
  'drawing.speeds.open': 'sin definir',
  'drawing.speeds.scale':
    'Velocidades en {range}, {rpm, plural, =0 {con la entrada girando a 1} other {en rpm, con la entrada girando a {rpm}}}. Más es girar con la entrada.',
  'drawing.speeds.lever': '{set}: {nodes}.',
  'drawing.speeds.node':
    '{member} en {shaft} {state, select, known {{speed}} covered {sin mostrar} other {sin definir}}{lit, select, yes {, marcado} other {}}',

  'drawing.steps.done': 'hecho',
} as const;
