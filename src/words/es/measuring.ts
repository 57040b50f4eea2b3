/** Questions on measuring: reading instruments, plays and gaps, choosing the part, checking figures. */
export const MEASURING = {
  'measuring.part': '{part} ({thickness} {unit})',
  'measuring.place-low': 'muy poco',
  'measuring.place-in': 'dentro de los límites',
  'measuring.place-high': 'demasiado',
  'measuring.read-bare': '{play} {unit}, sin pieza puesta',
  'measuring.read-part': '{play} {unit}, puesta: {part}',
  'measuring.read-depths':
    'asiento {seat} {unit}{seatBar, select, yes { sobre la barra} other {}}, saliente {standOff} {unit}{standOffBar, select, yes { sobre la barra} other {}}',
  'measuring.bare-read': 'Sin pieza puesta el juego es {bare} {unit}, tal como se leyó.',
  'measuring.bare-closes': 'Juego sin pieza puesta: {play} + {part} = {bare} {unit}.',
  'measuring.bare-opens': 'Juego sin pieza puesta: {play} − {part} = {bare} {unit}.',
  'measuring.bare-depths': 'Juego sin pieza puesta: {seat} − {standOff}{gasket} = {bare} {unit}.',

  'family.dial-reading': 'Leer un indicador de carátula',
  'dial-reading.prompt-zeroed':
    '{fit}: el indicador se puso en cero en un extremo del recorrido y muestra esto en el otro. Una división es {division} {unit}. ¿Cuánto recorrió, en {unit, select, in {pulgadas} other {{unit}}}? Vale ± {tolerance}.',
  'dial-reading.prompt-moved':
    '{fit}: el indicador no se puso en cero. Mostró la primera carátula en un extremo del recorrido y la segunda en el otro. Una división es {division} {unit}. ¿Cuánto recorrió, en {unit, select, in {pulgadas} other {{unit}}}? Vale ± {tolerance}.',
  'dial-reading.face': '{steps} × {turn} + {divisions} × {division} = {shown} {unit} en el indicador.',
  'dial-reading.reason-zeroed': 'Empezó en cero, así que recorrió {travel} {unit}.',
  'dial-reading.reason-moved': '{to} − {from} = {travel} {unit}.',
  'dial-reading.small-hand':
    'La aguja chica pasó tantos números como vueltas enteras dio la grande, {turn} {unit} cada una.',

  'family.micrometer-reading': 'Leer un micrómetro',
  'micrometer-reading.prompt':
    '{fit}: se mide una pieza de la caja. Una división del tambor es {division} {unit}. ¿Cuánto mide, en {unit, select, in {pulgadas} other {{unit}}}? Vale ± {tolerance}.',
  'micrometer-reading.sleeve':
    'Cilindro: {steps} {steps, plural, one {línea} other {líneas}} × {line} = {sleeve} {unit}.',
  'micrometer-reading.sum':
    'Tambor: {divisions} × {division} = {fine} {unit}. {sleeve} + {fine} = {value} {unit}.',
  'micrometer-reading.lines-mm':
    'Las líneas del otro lado de la referencia son los medios milímetros: dos líneas del cilindro por milímetro.',
  'micrometer-reading.lines-in': 'Cuatro líneas del cilindro, de 0.025 in cada una, por número.',

  'family.depth-gauge-reading': 'Leer un calibrador de profundidad',
  'depth-gauge-reading.prompt':
    '{fit}: se mide la profundidad del asiento bajo la cara{bar, select, none {} other {, con el calibrador sobre una barra de {bar} {unit} puesta en la cara}}. Una línea del vernier es {division} {unit}. ¿A qué profundidad está el asiento bajo la cara, en {unit, select, in {pulgadas} other {{unit}}}? Vale ± {tolerance}.',
  'depth-gauge-reading.scales':
    'Escala principal {main}, vernier {divisions} × {division} = {fine}: en total {shown} {unit}.',
  'depth-gauge-reading.bar': 'Menos la barra: {shown} − {bar} = {depth} {unit}.',
  'depth-gauge-reading.no-bar':
    'El calibrador se apoya en la cara misma, así que esa es la profundidad: {depth} {unit}.',
  'depth-gauge-reading.vernier':
    'El cero del vernier dice la línea principal; la línea del vernier que coincide con alguna línea principal dice el resto, {division} {unit} cada una.',

  'family.depth-gap': 'Juego según dos profundidades',
  'depth-gap.prompt':
    '{fit}: de la cara al asiento el calibrador lee {seat} {unit}{seatBar, select, yes { sobre la barra} other {}}. La pieza de arriba sobresale de su propia cara una lectura de {standOff} {unit}{standOffBar, select, yes { sobre la barra} other {}}.{bar, select, none {} other { La barra es de {bar} {unit}.}}{gasket, select, none {} other { La junta entre las caras mide {gasket} {unit} apretada.}} ¿Cuánto juego hay sin pieza selectiva, en {unit, select, in {pulgadas} other {{unit}}}? Vale ± {tolerance}.',
  'depth-gap.reason': 'Lo hondo que está el asiento, menos lo que la pieza baja hacia él, deja el espacio.',
  'depth-gap.bar': 'Una lectura sobre la barra incluye la barra: se restan {bar} {unit}.',
  'depth-gap.gasket': 'La junta separa las caras {gasket} {unit}, así que se suma al espacio.',

  'family.select-part': 'Elegir la pieza selectiva',
  'select-part.prompt':
    '{fit}: límites {low} a {high} {unit}, se busca {aim}{aimed, select, middle {, el medio} other {}}. Una pieza más gruesa {effect, select, closes {quita juego} other {da más juego}}, en la misma medida. Se midieron dos unidades.{bar, select, none {} other { La barra es de {bar} {unit}.}}{gasket, select, none {} other { La junta suma {gasket} {unit}.}} Dale a cada una la pieza de la lista que la deje más cerca de lo buscado y dentro de los límites.',
  'select-part.row': 'Primera unidad: {first}. Segunda unidad: {second}.',
  'select-part.reason-closes':
    'El juego sin pieza puesta, menos el juego que debe quedar, es el espesor que hace falta.',
  'select-part.reason-opens':
    'El juego que debe quedar, menos el juego sin pieza puesta, es el espesor que hace falta.',
  'select-part.first': 'Primera unidad.',
  'select-part.second': 'Segunda unidad.',
  'select-part.aim-closes': 'Para dejar {aim}: {bare} − {aim} = {thickness} {unit}.',
  'select-part.aim-opens': 'Para llegar a {aim}: {aim} − {bare} = {thickness} {unit}.',
  'select-part.leaves': 'La más cercana de la lista: {part}. Deja {play} {unit}, dentro de {low} a {high}.',

  'family.play-after': 'Juego con otra pieza',
  'play-after.prompt':
    '{fit}: límites {low} a {high} {unit}. Se lee {reading}. ¿Cuál sería el juego con cada una de estas en su lugar?',
  'play-after.reason-closes': 'Aquí la pieza está en lo que cierra el juego: una más gruesa quita juego.',
  'play-after.reason-opens': 'Aquí la pieza mantiene abierto el juego: una más gruesa da más juego.',
  'play-after.line-closes': '{part}: {bare} − {thickness} = {play} {unit}, {place}.',
  'play-after.line-opens': '{part}: {bare} + {thickness} = {play} {unit}, {place}.',
  'play-after.line-none': '{part}: {bare} es menos que {thickness}, así que no queda nada: {place}.',

  'measuring.count': '{count}',
  'measuring.length': '{value} {unit}',
  'measuring.nothing': '–',
  'measuring.readings': '{readings} {unit}',
  'measuring.plates-apply': '{count, plural, one {plato de aplicación} other {platos de aplicación}}',
  'measuring.plates-friction': '{count, plural, one {disco de fricción} other {discos de fricción}}',
  'measuring.plates-steel': '{count, plural, one {disco de acero} other {discos de acero}}',
  'measuring.plates-waved': '{count, plural, one {disco ondulado} other {discos ondulados}}',
  'measuring.plates-dished': '{count, plural, one {disco cónico} other {discos cónicos}}',
  'measuring.plates-backing': '{count, plural, one {plato de respaldo} other {platos de respaldo}}',
  'measuring.plates-washer': '{count, plural, one {arandela} other {arandelas}}',
  'measuring.plates-snap-ring': '{count, plural, one {anillo de retención} other {anillos de retención}}',

  'family.pack-clearance': 'Holgura de un paquete',
  'pack-clearance.prompt':
    '{stack}: del tope del pistón a la cara lejana de la ranura del anillo aquí mide {room} {unit}. {waves, select, flat {Los discos con resorte cuentan aplastados. } free {Los discos con resorte cuentan sin carga. } other {}}¿Cuánta holgura dejan estos, en {unit, select, in {pulgadas} other {{unit}}}? Vale ± {tolerance}.',
  'pack-clearance.how-many': 'Cuántos',
  'pack-clearance.each': 'Cada uno',
  'pack-clearance.free': 'Sin carga',
  'pack-clearance.line': '{count} {kind} × {each} = {all} {unit}.',
  'pack-clearance.row': '{room} − {height} = {clearance} {unit}.',
  'pack-clearance.reason': 'La holgura es el espacio menos todo lo que va en él, también el anillo.',

  'family.impossible-reading': 'Cifras que no pueden ser',
  'impossible-reading.prompt':
    '{fit}: cinco notas del banco. Una pieza más gruesa quita juego en la misma medida; las lecturas tienen una precisión de {tolerance} {unit}. ¿Cuáles de estas no pueden ser?',
  'impossible-reading.note': 'Límites {low} a {high}. Leído {reading}.',
  'impossible-reading.note-then':
    'Límites {low} a {high}. Leído {reading}; luego {play} {unit}, puesta: {part}.',
  'impossible-reading.row':
    'Una nota no puede ser cuando sus propias cifras se contradicen, sean cuales sean los límites.',
  'impossible-reading.reason':
    'El juego y la pieza juntos son el espacio, y el espacio no cambia; sin pieza hay al menos tanto juego como con una.',
  'impossible-reading.because-sound':
    'Nota {number}: {first} + {was} − {put} = {expected}, como se leyó. Puede ser.',
  'impossible-reading.because-out':
    'Nota {number}: {first} + {was} − {put} = {expected}, como se leyó. {play} no está dentro de {low} a {high}, pero puede ser.',
  'impossible-reading.because-none-in': 'Nota {number}: {first} sin pieza deja lugar para una. Puede ser.',
  'impossible-reading.because-limits-swapped':
    'Nota {number}: el límite bajo, {low}, es mayor que el alto, {high}.',
  'impossible-reading.because-sum-disagrees':
    'Nota {number}: {first} + {was} − {put} = {expected}, no {play}.',
  'impossible-reading.because-play-exceeds-depth':
    'Nota {number}: {play} es más que todo el espacio que hay, {first} + {was} = {room}.',
  'impossible-reading.because-stack-exceeds-depth':
    'Nota {number}: hay espacio para {first} + {was} = {room}; una pieza de {put} no entra.',
  'impossible-reading.because-bare-below-limits':
    'Nota {number}: {first} sin pieza ya es menos que {low}, y una pieza solo quitaría más. Algo no está asentado.',

  'family.mean-reading': 'Media de varias lecturas',
  'mean-reading.prompt':
    '{fit}: leído cuatro veces, con un cuarto de vuelta entre una y otra: {readings}. ¿Cuál es la media, en {unit, select, in {pulgadas} other {{unit}}}? Vale ± {tolerance}.',
  'mean-reading.row': '{sum} = {total}; {total} ÷ {count} = {mean} {unit}.',
  'mean-reading.reason': 'Todas las lecturas cuentan igual, así que una alta y una baja se compensan.',

  'family.repeat-readings': 'Lecturas que concuerdan o no',
  'repeat-readings.prompt':
    '{fit}: límites {low} a {high} {unit}; las lecturas pueden separarse {spread} {unit}. Cada línea se leyó en una unidad, cada cuarto de vuelta. ¿Qué resulta de cada una?',
  'repeat-readings.accept': 'bien: dentro de los límites',
  'repeat-readings.reseat': 'asienta las piezas y lee otra vez',
  'repeat-readings.out-of-limits': 'fuera de los límites: otra pieza',
  'repeat-readings.row':
    'Primero la diferencia, la mayor menos la menor: si pasa de {spread} {unit}, todavía no resulta nada.',
  'repeat-readings.reason': 'Solo después la media, contra los límites.',
  'repeat-readings.line-accept':
    '{highest} − {lowest} = {spread}, no más de {allowed}. ({sum}) ÷ {count} = {mean} {unit}, dentro de los límites.',
  'repeat-readings.line-reseat':
    '{highest} − {lowest} = {spread} {unit}, más de {allowed}: no está asentado, o no cada vez igual.',
  'repeat-readings.line-out-of-limits':
    '{highest} − {lowest} = {spread}, no más de {allowed}. ({sum}) ÷ {count} = {mean} {unit}, fuera de los límites.',

  'family.unit-convert': 'De una unidad a otra',
  'unit-convert.prompt':
    '{value} {unit}, {of}: ¿cuánto es en {to, select, in {pulgadas} other {{to}}}? {decimals, plural, =0 {Número entero} =1 {Un decimal} =2 {Dos decimales} =3 {Tres decimales} other {# decimales}}; vale ± {tolerance}. {rule}',
  'unit-convert.pressure-of': 'mayor presión de aplicación de {element}',
  'unit-convert.limit-of': 'un límite de {fit}',
  'unit-convert.fill-of': 'llenado en seco de {fluid}',
  'unit-convert.refill-of': 'llenado de {fluid} después de drenar',
  'unit-convert.level-of': '{fluid} al revisar el nivel',
  'unit-convert.rule': '1 {large} {exact, select, yes {=} other {≈}} {factor} {small}.',
  'unit-convert.rule-none': '',
  'unit-convert.rule-temperature': '°F = °C × 9 ÷ 5 + 32.',
  'unit-convert.work-times': '{value} × {factor} = {shown} {unit}.',
  'unit-convert.work-over': '{value} ÷ {factor} = {shown} {unit}.',
  'unit-convert.work-fahrenheit': '{value} × 9 ÷ 5 + 32 = {shown} °F.',
  'unit-convert.work-celsius': '({value} − 32) × 5 ÷ 9 = {shown} °C.',
  'unit-convert.reason-size':
    '1 {from} es {more, select, yes {más que 1 {to}, así que la cifra crece.} other {menos que 1 {to}, así que la cifra se achica.}}',
  'unit-convert.reason-zero':
    'Las escalas empiezan en ceros distintos, así que el 32 entra una vez: hacia °F después de multiplicar, hacia °C antes.',
  'unit-convert.twelve': '1 lbf·ft son 12 lbf·in. Una llave puesta en la otra unidad se equivoca doce veces.',
  'unit-convert.quarts': 'Un cuarto de EE. UU. son 0.946 L, un cuarto imperial 1.137 L: pregunta cuál es.',

  'family.crowfoot-setting': 'Torquímetro con adaptador',
  'crowfoot-setting.prompt':
    '{torque}: {target} {unit}. Un adaptador de {adapter} {length}, del cuadro al tornillo, va en un torquímetro de {lever} {length} de la mano al cuadro, {angle, select, 0 {derecho hacia afuera} 90 {atravesado a escuadra} 180 {doblado derecho hacia atrás} 45 {inclinado 45° respecto a derecho (coseno 0.707)} other {inclinado 135° respecto a derecho (coseno −0.707)}}. ¿En cuánto se ajusta el torquímetro? Vale ± {tolerance} {unit}.',
  'crowfoot-setting.row': '{target} × {lever} ÷ {reach} = {setting} {unit}.',
  'crowfoot-setting.reason':
    '{angle, select, 90 {A escuadra el tornillo no queda más lejos de la mano: se ajusta al torque mismo.} other {Al tornillo le llega la fuerza por la distancia de la mano al tornillo; el torquímetro solo conoce la distancia de la mano al cuadro.}}',
  'crowfoot-setting.reach':
    'De la mano al tornillo, en línea: {lever} + {adapter} × {cosine} = {reach} {length}.',
} as const;
