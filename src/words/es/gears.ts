/** Questions on the gear train: ratios and speeds from tooth counts, tie-ups, neutral. */
export const GEARS = {
  'gears.start': 'Pon la entrada en 1; lo que está sujeto a la carcasa está en 0.',
  'gears.rule-simple':
    'Un conjunto simple: dientes del solar × velocidad del solar + dientes de la corona × velocidad de la corona = suma de dientes × velocidad del portaplanetas.',
  'gears.rule-double-pinion':
    'Un conjunto con piñones en pares: dientes de la corona × velocidad de la corona − dientes del solar × velocidad del solar = diferencia de dientes × velocidad del portaplanetas.',
  'gears.equation-simple':
    '{gearset}: {sunTeeth} × {sun} + {ringTeeth} × {ring} = {carrierTeeth} × {carrier}',
  'gears.equation-double-pinion':
    '{gearset}: {ringTeeth} × {ring} − {sunTeeth} × {sun} = {carrierTeeth} × {carrier}',
  'gears.step-call': 'La velocidad de {shaft} todavía no se sabe: llámala {letter}.',
  'gears.step-locks':
    'Dos miembros de {gearset} giran a la misma velocidad, así que gira todo junto: {shaft} = {speed}.',
  'gears.step-solves': '{equation}, así que {shaft} = {speed}.',
  'gears.step-closes': '{equation}, así que {letter} = {speed}.',
  'gears.step-clashes': '{equation} no puede ser.',

  'family.row-ratio': 'Relación de una marcha',
  'row-ratio.prompt':
    'En la marcha {range}, elementos que actúan: {elements}. Calcula su relación, velocidad de entrada ÷ velocidad de salida, con dos decimales; vale ± {tolerance}. Con menos si la salida gira hacia atrás.',
  'row-ratio.reason':
    'Con la entrada en 1, {output} gira a {speed}, {way, select, backward {hacia atrás, contra la entrada} other {igual que la entrada}}: 1 ÷ {speed} da una relación de {ratio}.',

  'gears.together': '{sum} + {element}',

  'family.shaft-speed': 'Velocidad de un eje intermedio',
  'shaft-speed.prompt':
    'En la marcha {range}, elementos que actúan: {elements}. La entrada gira a {rpm} rpm. ¿A qué velocidad gira {shaft}? En rpm enteras; vale ± {tolerance}. Con menos si gira hacia atrás.',
  'shaft-speed.reason':
    '{shaft} gira {way, select, backward {hacia atrás, contra la entrada,} other {igual que la entrada,}} a {speed} veces su velocidad: {rpm} rpm.',
  'shaft-speed.scaled': 'A {inputRpm} rpm: {inputRpm} × {speed} = {rpm} rpm.',

  'family.ratio-order': 'Relaciones en orden',
  'ratio-order.prompt':
    'La entrada gira siempre a la misma velocidad, y actúan solo estos elementos. Ponlos en orden de velocidad de salida, primero lo más rápido hacia adelante. Hacia atrás va al final.',
  'ratio-order.first': 'más rápido hacia adelante',
  'ratio-order.last': 'más lento, o hacia atrás',
  'ratio-order.row': 'De rápido a lento: marchas {ranges}.',
  'ratio-order.reason':
    'Sus relaciones son {ratios}. Cuanto menor la relación, más rápida la salida; con menos es hacia atrás.',
  'ratio-order.detail':
    '{elements} (marcha {range}): por vuelta de la entrada la salida gira {speed}, {way, select, backward {hacia atrás} other {hacia adelante}}.',

  'gears.does-drive-as': '{elements}: transmite como la marcha {range}, con {ratio} : 1.',
  'gears.does-drive': '{elements}: transmite con {ratio} : 1, una relación que no es de ninguna marcha.',
  'gears.does-no-drive': '{elements}: no transmite, la velocidad de la salida no queda definida.',
  'gears.does-output-held': '{elements}: retiene la salida, pero la entrada puede girar.',
  'gears.does-tied-up': '{elements}: se traba, la entrada no puede girar.',

  'family.tie-ups': 'Qué traba el tren',
  'tie-ups.prompt':
    '¿Cuáles de estas combinaciones, juntas y sin nada más, traban el tren, de modo que la entrada no puede girar?',
  'tie-ups.row': 'Trabado: {combinations}.',
  'tie-ups.reason':
    'Con estas, ninguna velocidad de la entrada salvo 0 cumple con todos los conjuntos. Si solo se retiene la salida, la entrada aún puede girar.',
  'tie-ups.proof': 'Prueba {elements} con la entrada girando.',
  'tie-ups.input-held': 'Así que la entrada misma queda sujeta a la carcasa.',

  'family.neutral-drive': 'Qué haría transmitir en neutral',
  'neutral-drive.prompt':
    '{count, plural, =0 {En {row} no actúa nada} one {En {row} sigue actuando {elements}} other {En {row} siguen actuando {elements}}}. ¿Qué elementos, cada uno por sí solo{count, plural, =0 {} other { además de eso}}, harían que transmita?',
  'neutral-drive.row':
    'En cuanto se aplica {count, plural, one {{elements}} other {cualquiera de {elements}}}, {row} transmite.',
  'neutral-drive.free':
    '{count, plural, =0 {Sin que actúe nada,} other {Solo con {elements},}} nada define la velocidad de la salida, así que no le llega torque.',
  'neutral-drive.output-held':
    '{count, plural, =0 {Sin que actúe nada,} other {Solo con {elements},}} la salida queda retenida mientras la entrada gira.',
  'neutral-drive.tied-up':
    '{count, plural, =0 {Sin que actúe nada,} other {Solo con {elements},}} la entrada no puede girar.',
} as const;
