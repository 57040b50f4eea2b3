/** Questions on what a fault does: to ranges, to pressure, to torque, to figures. */
export const FAULT_EFFECTS = {
  'before-after.sound': 'sin falla',
  'before-after.fault': 'con la falla',
  'before-after.line': 'Marcha {range}: {does}.',

  'family.solenoid-stuck': 'Marchas con un solenoide atascado',
  'solenoid-stuck.prompt-off':
    '{solenoid} alimenta a {elements}. Se atascó como si no tuviera corriente, pida lo que pida el módulo. ¿Qué hace cada marcha, con el motor tirando?',
  'solenoid-stuck.prompt-on':
    '{solenoid} alimenta a {elements}. Se atascó como si tuviera corriente máxima, pida lo que pida el módulo. ¿Qué hace cada marcha, con el motor tirando?',
  'solenoid-stuck.row-full': 'Así atascado, {solenoid} siempre da presión total.',
  'solenoid-stuck.row-none': 'Así atascado, {solenoid} nunca da presión.',
  'solenoid-stuck.reason-full':
    'Por eso hay presión en {elements} donde la palanca le deja paso al aceite, lo pida la marcha o no.',
  'solenoid-stuck.reason-none':
    'Por eso nunca hay presión en {elements}, salvo que la palanca le dé aceite por sí misma.',

  'family.one-way-reversed': 'Marchas con un unidireccional al revés',
  'one-way-reversed.prompt': '{element} se montó al revés. ¿Qué hace cada marcha, con el motor tirando?',
  'one-way-reversed.reason':
    'Al revés, suelta donde debería sujetar, y sujeta donde sus ejes deberían girar libres.',

  'family.supply-lost': 'Qué tiene presión al perder una línea de voltaje',
  'supply-lost.prompt':
    'Se pide la marcha {range}{lever, select, some {, palanca en {position}} other {}}. Se pierde la línea de voltaje {supply}, que comparten {solenoids}. ¿Qué elementos tienen presión entonces?',
  'supply-lost.hangs': 'solenoide',
  'supply-lost.charted': 'en la unidad sin falla',
  'supply-lost.on-it': 'en esta línea',
  'supply-lost.not-on-it': 'en otra línea',
  'supply-lost.row': 'Presión en {elements}.',
  'supply-lost.reason':
    'Todos los solenoides de la línea pierden la corriente a la vez. Cada uno da entonces lo que da desconectado, hasta donde la palanca y los enclavamientos lo dejan.',

  'family.sensor-lost': 'Datos que se pierden con un sensor de velocidad',
  'sensor-lost.prompt':
    '{sensor} lee la velocidad de {shaft} y ya no da señal; los otros sensores están bien. ¿Qué datos ya no se pueden calcular?',
  'sensor-lost.row': 'Se pierde: {figures}.',
  'sensor-lost.reason': 'Un dato se pierde cuando ya no se lee una de las velocidades que necesita.',
  'speed-figure.input-speed': 'velocidad de entrada',
  'speed-figure.output-speed': 'velocidad de salida',
  'speed-figure.ratio': 'la relación en que está de verdad la unidad',
  'speed-figure.slip': 'patinaje de los elementos',
  'speed-figure.shift-time': 'cuánto tarda un cambio',
  'speed-figure.converter-slip': 'patinaje del convertidor (la velocidad del motor viene del motor)',
  'speed-figure.road-speed': 'velocidad del vehículo según la transmisión',
  'speed-figure-needs.input-speed': 'Velocidad de entrada: su propio sensor.',
  'speed-figure-needs.output-speed': 'Velocidad de salida: su propio sensor.',
  'speed-figure-needs.ratio': 'Relación: entrada entre salida.',
  'speed-figure-needs.slip': 'Patinaje: entrada menos salida por relación.',
  'speed-figure-needs.shift-time':
    'Tiempo de un cambio: lo que tarda la relación en pasar de una a otra, o sea las dos.',
  'speed-figure-needs.converter-slip': 'Patinaje del convertidor: motor menos entrada.',
  'speed-figure-needs.road-speed': 'Velocidad del vehículo: salida.',

  'family.slips-first': 'Qué patina primero cuando baja la presión',
  'slips-first.prompt':
    'La presión baja en todas partes en la misma proporción, y el motor tira igual de fuerte. ¿En qué orden empiezan a patinar? La tabla dice cuánto sujeta cada uno con presión total, y cuánto tiene que sujetar.',
  'slips-first.item': '{element} en la marcha {range}',
  'slips-first.holds': 'sujeta',
  'slips-first.asks': 'tiene que sujetar',
  'slips-first.torque': '{torque} N·m',
  'slips-first.first': 'patina primero',
  'slips-first.last': 'patina al final',
  'slips-first.row': 'Primero: {element} en la marcha {range}.',
  'slips-first.reason':
    'Divide lo que sujeta entre lo que tiene que sujetar: el que menos reserva tiene patina primero. Lo que tiene que sujetar se calcula con el torque que deja 15 % de reserva al más débil de la unidad; el torque para el que se construyó puede ser otro.',
  'slips-first.line': '{element} en la marcha {range}: {holds} ÷ {asks} = {margin}.',

  'family.plate-short': 'Un elemento armado con un disco de menos',
  'plate-short.prompt':
    '{element} sujeta {holds} N·m con sus {plates} discos de fricción. Se armó con {left}. La tabla dice cuánto lleva en cada marcha. ¿Con qué torque en la entrada patina la primera de estas marchas? Vale ± {tolerance} N·m.',
  'plate-short.carries': 'lleva, por 100 N·m en la entrada',
  'plate-short.row': '{left} de {plates} discos sujetan {left}/{plates} de {holds} N·m: {short} N·m.',
  'plate-short.reason':
    'La marcha {range} es la que más le exige, {share} N·m por 100 en la entrada: {short} ÷ {share} × 100 = {answer} N·m.',
  'plate-short.line': 'Marcha {range}: {share} por 100, así que patina con {torque} N·m en la entrada.',
} as const;
